package framing

import (
	"slices"
	"testing"

	"roomwright/geom"
)

// inch returns x inches; x is a whole number of 64ths.
func inch(x float64) geom.Length {
	return geom.Length(x*64) * geom.Inch / 64
}

func centres(lefts []geom.Length, t geom.Length) []geom.Length {
	var c []geom.Length
	for _, l := range lefts {
		c = append(c, l+t/2)
	}
	return c
}

func inches(list ...float64) []geom.Length {
	var c []geom.Length
	for _, x := range list {
		c = append(c, inch(x))
	}
	return c
}

func millimetres(list ...int64) []geom.Length {
	var c []geom.Length
	for _, x := range list {
		c = append(c, geom.MM(x))
	}
	return c
}

// Source of every row: worked example computed for this project (framing E1 to
// E3), from the stud layout of US Navy builder training manual 14044 (first
// mark 15-1/4, so that centres fall at 16) and dressed sizes of DOC PS 20.
func TestLayout(t *testing.T) {
	x := geom.InFrac(1, 1, 2)
	for _, c := range []struct {
		name              string
		length, thick, on geom.Length
		want              []geom.Length
	}{
		{"E1, 16 on center", geom.In(144), x, geom.In(16), inches(0.75, 16, 32, 48, 64, 80, 96, 112, 128, 143.25)},
		{"E1, 24 on center", geom.In(144), x, geom.In(24), inches(0.75, 24, 48, 72, 96, 120, 143.25)},
		{"E2, 96", geom.In(96), x, geom.In(16), inches(0.75, 16, 32, 48, 64, 80, 95.25)},
		{"E2, 96-3/4: no stud too many", inch(96.75), x, geom.In(16), inches(0.75, 16, 32, 48, 64, 80, 96)},
		{"E2, 97: slid to 94-3/4", geom.In(97), x, geom.In(16), inches(0.75, 16, 32, 48, 64, 80, 94.75, 96.25)},
		{"E2, 98-1/4: just touches", inch(98.25), x, geom.In(16), inches(0.75, 16, 32, 48, 64, 80, 96, 97.5)},
		{"E2, 100: last clear gap 1-3/4", geom.In(100), x, geom.In(16), inches(0.75, 16, 32, 48, 64, 80, 96, 99.25)},
		{"E3, 600", geom.MM(3600), geom.MM(38), geom.MM(600), millimetres(19, 600, 1200, 1800, 2400, 3000, 3581)},
		{"E3, 400", geom.MM(3600), geom.MM(38), geom.MM(400), millimetres(19, 400, 800, 1200, 1600, 2000, 2400, 2800, 3200, 3581)},
	} {
		got := centres(layout(c.length, c.thick, c.on, c.on), c.thick)
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: centres %v, want %v", c.name, got, c.want)
		}
		// F5: n = ceil((L - t/2)/s) + 1.
		n := int((c.length-c.thick/2+c.on-1)/c.on) + 1
		if len(got) != n {
			t.Errorf("%s: %d studs, want %d by the count rule", c.name, len(got), n)
		}
	}
}

func TestFirstBays(t *testing.T) {
	lefts := layout(geom.In(144), geom.InFrac(1, 1, 2), geom.In(16), geom.In(16))
	for i := 1; i < len(lefts); i++ {
		clear := lefts[i] - lefts[i-1] - geom.InFrac(1, 1, 2)
		want := inch(14.5)
		if i == 1 || i == len(lefts)-1 {
			want = inch(13.75) // E1, F4: 16 - 3/4 - 1-1/2
		}
		if clear != want {
			t.Errorf("bay %d is %v clear, want %v", i, clear, want)
		}
	}
}

// What the far end does, the near end does too; derived from F6, practice is
// common and has no source.
func TestLayoutEnds(t *testing.T) {
	x := geom.InFrac(1, 1, 2)
	for _, c := range []struct {
		name          string
		length, first float64
		want          []geom.Length
	}{
		{"the end stud is on the layout", 48.75, 0.75, inches(0.75, 16.75, 32.75, 48)},
		{"first stud slid tight against the end stud", 48, 1.5, inches(0.75, 2.25, 17.5, 33.5, 47.25)},
		{"first stud near, but clear", 48, 3, inches(0.75, 3, 19, 35, 47.25)},
		{"no room for one between", 4, 2, inches(0.75, 3.25)},
		{"two studs alone", 3, 16, inches(0.75, 2.25)},
		{"one stud alone", 2, 16, inches(0.75)},
		{"none at all", 1, 16, nil},
	} {
		if got := centres(layout(inch(c.length), x, geom.In(16), inch(c.first)), x); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}
