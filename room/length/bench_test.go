package length_test

import (
	"testing"

	"bunkwright/room/length"
)

var (
	keptReading length.Reading
	keptText    string
)

func BenchmarkRead(b *testing.B) {
	for _, text := range []string{"67", `5' 7-3/8"`, "1711.325 mm", "2*(38+1/4)", "5 7 3/8"} {
		b.Run(text, func(b *testing.B) {
			if length.Read(text, inches).Outcome == length.Refuse {
				b.Fatal("refused")
			}
			for b.Loop() {
				keptReading = length.Read(text, inches)
			}
		})
	}
}

func BenchmarkFormat(b *testing.B) {
	l := 67*length.Inch + 3*length.Inch/8
	for want, s := range map[string]length.Style{`5' 7-3/8"`: {}, "1711 mm": {Unit: length.Millimetres}} {
		b.Run(want, func(b *testing.B) {
			if length.Format(l, s) != want {
				b.Fatal(length.Format(l, s))
			}
			for b.Loop() {
				keptText = length.Format(l, s)
			}
		})
	}
}
