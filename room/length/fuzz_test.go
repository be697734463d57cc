package length_test

import (
	"strings"
	"testing"

	"bunkwright/room/length"
)

var fields = []length.Field{length.Plain, length.WallLength, length.RoomHeight, length.BoardThickness, length.Section}

// FuzzRead: no text panics; a value is exact and can be written and read again; a question offers lengths; a refusal has a
// reason.
func FuzzRead(f *testing.F) {
	for i, n := range notations(f) {
		f.Add(n["text"], uint8(i%3), uint8(i%len(fields)))
		f.Add(n["text"], uint8(1), uint8(0))
	}
	f.Fuzz(func(t *testing.T, text string, unit, field uint8) {
		c := length.Context{
			Unit:  length.Unit(unit % 3),
			Field: fields[int(field)%len(fields)],
			Near:  []length.Length{length.Foot, 7 * length.Foot}[:unit%2+field%2],
		}
		got := length.Read(text, c)
		switch got.Outcome {
		case length.Value:
			checkRewritten(t, text, got.Value)
			checkRewritten(t, text, got.Second)
		case length.Ask:
			checkOffers(t, text, got)
		default:
			if got.Reason == "" || got.Rule == "" || got.Question != "" {
				t.Errorf("%q: %+v", text, got)
			}
		}
		if again := length.Read(text, c); again.Value != got.Value || again.Question != got.Question {
			t.Errorf("%q: read twice: %+v, %+v", text, got, again)
		}
	})
}

func checkRewritten(t *testing.T, text string, l length.Length) {
	if l < 0 || l > length.MaxRead {
		t.Errorf("%q: read as %d nm", text, l)
	}
	for _, u := range []length.Unit{length.Inches, length.Millimetres} {
		written := length.Exact(l, u)
		if again, err := length.Parse(written, length.Context{}); err != nil || again != l {
			t.Errorf("%q: read as %d nm, written %q, read again as %d: %v", text, l, written, again, err)
		}
	}
}

func checkOffers(t *testing.T, text string, got length.Reading) {
	if !strings.HasSuffix(got.Question, "?") || len(got.Question) < 3 || got.Reason == "" || got.Value != 0 {
		t.Errorf("%q: %+v", text, got)
	}
	for _, l := range got.Offers {
		checkRewritten(t, text, l)
	}
}
