package svg

import (
	"bytes"
	"io"
	"strings"
	"testing"

	"bunkwright/render"
)

// TestWriteInline: a page's drawing has no size, colours and fonts of its own, keeps its words as words, and its inks as classes.
func TestWriteInline(t *testing.T) {
	var b bytes.Buffer
	if err := WriteInline(&b, sample(), `A to "B" <script>`); err != nil {
		t.Fatal(err)
	}
	list := read(t, b.Bytes())
	root := list[0].attrs
	if root["viewBox"] != "0 0 279.4 215.9" || root["width"] != "" || root["aria-label"] != `A to "B" <script>` || root["role"] != "img" {
		t.Errorf("root %v", root)
	}
	for i, class := range map[int]string{1: "fill-wall-cut", 2: "stroke-main", 3: "stroke-not-fit", 4: "fill-main", 5: "fill-soft"} {
		if list[i].attrs["class"] != class {
			t.Errorf("element %d: %v, want class %s", i, list[i].attrs, class)
		}
	}
	if list[3].attrs["stroke-dasharray"] != "2 1.2" || list[4].text != `(9' 10-1/8") < ½` || list[4].attrs["textLength"] == "" {
		t.Errorf("%v", list[3:5])
	}
	for _, not := range []string{`="#`, "font-face", "<style", "data:"} {
		if strings.Contains(b.String(), not) {
			t.Errorf("holds %q", not)
		}
	}
}

func TestInlineRefusesWhatCannotBeDrawn(t *testing.T) {
	if err := WriteInline(io.Discard, render.Drawing{}, ""); err == nil {
		t.Error("a drawing without a size was written")
	}
}
