package lettering

import (
	"sync"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// parsed returns the parsed font of a weight; the embedded files are ours, so
// one that cannot be parsed is a broken build.
func parsed(bold bool) face {
	if bold {
		return parsedBold()
	}
	return parsedRegular()
}

var (
	parsedRegular = sync.OnceValue(func() face { return parse(regularTTF) })
	parsedBold    = sync.OnceValue(func() face { return parse(boldTTF) })
)

func parse(ttf []byte) face {
	f, err := sfnt.Parse(ttf)
	if err != nil {
		panic("lettering: embedded font: " + err.Error())
	}
	return face{font: f, upem: fixed.I(int(f.UnitsPerEm()))}
}
