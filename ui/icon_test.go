package ui

import (
	"bytes"
	"flag"
	"os"
	"testing"
)

var update = flag.Bool("update", false, "write the icon file anew")

// TestIconFile: the picture that packaging takes is the one that the program draws.
func TestIconFile(t *testing.T) {
	const path = "../cmd/bunkwright/icon.png"
	want, err := IconPNG(512)
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(path, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile(path); err != nil || !bytes.Equal(got, want) {
		t.Errorf("%s is not what is drawn (%v); go test ./ui -run Icon -update", path, err)
	}
}
