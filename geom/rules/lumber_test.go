package rules

import (
	"testing"

	"roomwright/geom"
)

// Source: American Softwood Lumber Standard, DOC PS 20, dressed sizes, dry, as
// reprinted on a public page of engineering data.
func TestDressed(t *testing.T) {
	for _, c := range []struct {
		name        string
		thick, wide geom.Length
	}{
		{"1x2", geom.InFrac(0, 3, 4), geom.InFrac(1, 1, 2)},
		{"1x6", geom.InFrac(0, 3, 4), geom.InFrac(5, 1, 2)},
		{"1x7", geom.InFrac(0, 3, 4), geom.InFrac(6, 1, 2)}, // the 3/4 off starts at 8
		{"1x8", geom.InFrac(0, 3, 4), geom.InFrac(7, 1, 4)},
		{"5/4x6", geom.In(1), geom.InFrac(5, 1, 2)},
		{"2x2", geom.InFrac(1, 1, 2), geom.InFrac(1, 1, 2)},
		{"2x4", geom.InFrac(1, 1, 2), geom.InFrac(3, 1, 2)},
		{"2x6", geom.InFrac(1, 1, 2), geom.InFrac(5, 1, 2)},
		{"2x8", geom.InFrac(1, 1, 2), geom.InFrac(7, 1, 4)},
		{"2x10", geom.InFrac(1, 1, 2), geom.InFrac(9, 1, 4)},
		{"2x12", geom.InFrac(1, 1, 2), geom.InFrac(11, 1, 4)},
		{"2x14", geom.InFrac(1, 1, 2), geom.InFrac(13, 1, 4)},
		{"3x4", geom.InFrac(2, 1, 2), geom.InFrac(3, 1, 2)},
		{"4x4", geom.InFrac(3, 1, 2), geom.InFrac(3, 1, 2)},
		{"4x16", geom.InFrac(3, 1, 2), geom.InFrac(15, 1, 4)},
	} {
		thick, wide, ok := Dressed(c.name)
		if !ok || thick != c.thick || wide != c.wide {
			t.Errorf("%s: %v x %v in, %v; want %v x %v in", c.name, thick.Inches(), wide.Inches(), ok, c.thick.Inches(), c.wide.Inches())
		}
	}
	for _, name := range []string{"", "x", "2x", "x4", "2x9", "4x2", "38x89", "2x4x6", "2 x 4", "02x4", "6x6"} {
		if _, _, ok := Dressed(name); ok {
			t.Errorf("%q is no name of the table", name)
		}
	}
}
