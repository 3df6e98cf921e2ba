package lettering

import (
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// parsed returns the parsed font of a weight; the embedded files are ours, so
// one that cannot be parsed is a broken build.
func parsed(bold bool) *face {
	if bold {
		return parsedBold()
	}
	return parsedRegular()
}

var (
	parsedRegular = sync.OnceValue(func() *face { return parse(regularTTF) })
	parsedBold    = sync.OnceValue(func() *face { return parse(boldTTF) })
)

// face is one weight, ready to be measured.
type face struct {
	upem     int64
	advances [inTable]int32 // in sixty-fourths of a font unit, -1 where there is no glyph
	missing  int32          // of the mark for a missing glyph
}

// inTable is the first character that the fonts cannot have.
const inTable = 0x2800

// advance returns the width of a character, in sixty-fourths of a font unit.
func (f *face) advance(r rune) int64 {
	if r >= 0 && r < inTable && f.advances[r] >= 0 {
		return int64(f.advances[r])
	}
	return int64(f.missing)
}

// has reports whether there is a glyph for a character.
func (f *face) has(r rune) bool { return r >= 0 && r < inTable && f.advances[r] >= 0 }

func parse(ttf []byte) *face {
	f, err := sfnt.Parse(ttf)
	if err != nil {
		panic("lettering: embedded font: " + err.Error())
	}
	var b sfnt.Buffer
	upem := fixed.I(int(f.UnitsPerEm()))
	width := func(i sfnt.GlyphIndex) int32 {
		a, err := f.GlyphAdvance(&b, i, upem, font.HintingNone)
		if err != nil {
			panic("lettering: embedded font: " + err.Error())
		}
		return int32(a)
	}
	out := &face{upem: int64(f.UnitsPerEm()), missing: width(0)}
	for r := range out.advances {
		out.advances[r] = -1
		if i, err := f.GlyphIndex(&b, rune(r)); err == nil && i != 0 {
			out.advances[r] = width(i)
		}
	}
	return out
}
