package rules

import (
	"strings"

	"roomwright/geom"
)

// DressedSource is where the dressed sizes of lumber come from.
const DressedSource = "American Softwood Lumber Standard, DOC PS 20: table of dressed sizes, dry"

// Dressed returns the dressed size, dry, of lumber by its nominal name, such as
// "2x4": the lesser dimension, then the greater. It reports false for a name
// that is not in the table. Nominal thickness 1, 5/4, 2, 3 and 4; nominal
// width 2 to 16, of which 8 and more are 3/4 in less than their name and those
// below 1/2 in less, 7 included.
//
// Source: American Softwood Lumber Standard, DOC PS 20, table of dressed
// sizes, dry (19 % moisture or less), as reprinted on a public page of
// engineering data. That nominal 1-1/4 is called 5/4 is from memory.
func Dressed(name string) (thick, wide geom.Length, ok bool) {
	t, w, _ := strings.Cut(name, "x")
	thick, w1 := dressedThickness(t)
	wide, w2 := dressedWidth(w)
	if w1 == 0 || w2 == 0 || w2 < w1 {
		return 0, 0, false
	}
	return thick, wide, true
}

// dressedThickness gives the dressed thickness and the whole inches of the
// nominal one, zero when there is no such thickness.
func dressedThickness(name string) (geom.Length, int) {
	switch name {
	case "1":
		return geom.InFrac(0, 3, 4), 1
	case "5/4":
		return geom.In(1), 1
	case "2":
		return geom.InFrac(1, 1, 2), 2
	case "3":
		return geom.InFrac(2, 1, 2), 3
	case "4":
		return geom.InFrac(3, 1, 2), 4
	}
	return 0, 0
}

// dressedWidth gives the dressed width and the nominal one, zero when there is
// no such width.
func dressedWidth(name string) (geom.Length, int) {
	switch name {
	case "2":
		return geom.InFrac(1, 1, 2), 2
	case "3":
		return geom.InFrac(2, 1, 2), 3
	case "4":
		return geom.InFrac(3, 1, 2), 4
	case "5":
		return geom.InFrac(4, 1, 2), 5
	case "6":
		return geom.InFrac(5, 1, 2), 6
	case "7":
		return geom.InFrac(6, 1, 2), 7
	case "8":
		return geom.InFrac(7, 1, 4), 8
	case "10":
		return geom.InFrac(9, 1, 4), 10
	case "12":
		return geom.InFrac(11, 1, 4), 12
	case "14":
		return geom.InFrac(13, 1, 4), 14
	case "16":
		return geom.InFrac(15, 1, 4), 16
	}
	return 0, 0
}
