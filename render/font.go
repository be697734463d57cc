package render

import (
	"sync"
	"unicode/utf8"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/gomedium"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// Face is one weight of the embedded family. Every output embeds or draws these very fonts, so
// a text that fits in one fits in all.
type Face uint8

// The faces.
const (
	Regular Face = iota
	Medium       // semi-bold, for measures and headings
	Bold         // for titles
	faces
)

var faceNames = [faces]string{"regular", "medium", "bold"}

// String returns the face's name as Dump prints it.
func (f Face) String() string {
	if f >= faces {
		return "unknown"
	}
	return faceNames[f]
}

// TTF returns the font file of the face; it must not be changed.
func (f Face) TTF() []byte {
	return [faces][]byte{goregular.TTF, gomedium.TTF, gobold.TTF}[f]
}

// Font returns the parsed font of the face. It is safe for concurrent use with a buffer each.
func (f Face) Font() *sfnt.Font { return loadedFaces()[f].font }

// glyph is the size of one character in units of the font.
type glyph struct {
	advance, top, bottom int32 // top above and bottom below the baseline
	has                  bool
}

// loaded keeps the first 256 characters, which are nearly all that is ever set.
type loaded struct {
	font  *sfnt.Font
	units float64 // to the em
	latin [256]glyph
}

var loadedFaces = sync.OnceValue(func() *[faces]loaded {
	all := new([faces]loaded)
	for f := range faces {
		parsed, err := sfnt.Parse(f.TTF())
		if err != nil {
			panic(err) // the fonts are compiled in: either they always parse or never
		}
		l := &all[f]
		l.font, l.units = parsed, float64(parsed.UnitsPerEm())
		l.latin['?'] = l.measure('?')
		for r := range l.latin {
			l.latin[r] = l.measure(rune(r))
		}
	}
	return all
})

func (l *loaded) glyph(r rune) glyph {
	if r >= 0 && int(r) < len(l.latin) {
		return l.latin[r]
	}
	return l.measure(r)
}

// measure reads a character from the font. One pixel to the unit, and no hinting, makes the
// results whole font units.
func (l *loaded) measure(r rune) glyph {
	var buf sfnt.Buffer
	i, err := l.font.GlyphIndex(&buf, r)
	if err != nil || i == 0 || r == utf8.RuneError || r < ' ' {
		g := l.latin['?'] // what Substituted sets in its place
		g.has = false
		return g
	}
	box, advance, err := l.font.GlyphBounds(&buf, i, fixed.I(int(l.units)), font.HintingNone)
	if err != nil {
		return glyph{}
	}
	return glyph{int32(advance.Round()), int32((-box.Min.Y).Ceil()), int32(box.Max.Y.Ceil()), true}
}
