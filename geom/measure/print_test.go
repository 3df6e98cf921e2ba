package measure_test

import (
	"errors"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
)

var (
	feet16   = measure.Show{Form: measure.FeetAndInches, To: geom.Inch / 16}
	feet8    = measure.Show{Form: measure.FeetAndInches, To: geom.Inch / 8}
	inches16 = measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}
	inches1  = measure.Show{Form: measure.InchesOnly, To: geom.Inch}
	mm1      = measure.Show{Form: measure.MillimetresOnly, To: geom.Millimetre}
	mmTenth  = measure.Show{Form: measure.MillimetresOnly, To: geom.Millimetre / 10}
	mm5      = measure.Show{Form: measure.MillimetresOnly, To: 5 * geom.Millimetre}
)

// Zero inches kept, no leading zero under an inch, a hyphen between feet and
// inches in figures: common practice, no source. The carries are arithmetic.
func TestPrint(t *testing.T) {
	in := func(whole, num, den int64) geom.Length { return geom.InFrac(whole, num, den) }
	tests := []struct {
		show        measure.Show
		l           geom.Length
		say, figure string
	}{
		{feet16, in(182, 1, 4), `15' 2-1/4"`, `15'-2 1/4"`},
		{feet16, in(9, 1, 2), `9-1/2"`, `9 1/2"`},
		{feet16, in(0, 1, 2), `1/2"`, `1/2"`},
		{feet16, 0, `0"`, `0"`},
		{feet16, in(120, 0, 1), `10' 0"`, `10'-0"`},
		{feet16, in(120, 1, 2), `10' 0-1/2"`, `10'-0 1/2"`},
		{feet16, in(12, 0, 1), `1' 0"`, `1'-0"`},
		{feet16, in(3, 8, 16), `3-1/2"`, `3 1/2"`},
		{feet16, in(0, 31, 32), `1"`, `1"`},           // half a step: away from zero
		{feet16, in(0, 61, 64), `15/16"`, `15/16"`},   // 15.25 sixteenths
		{feet16, in(11, 31, 32), `1' 0"`, `1'-0"`},    // carries twice
		{feet16, in(143, 31, 32), `12' 0"`, `12'-0"`}, // 16/16 into inches, 12 in into feet
		{feet16, in(143, 15, 16), `11' 11-15/16"`, `11'-11 15/16"`},
		{feet8, in(143, 15, 16), `12' 0"`, `12'-0"`},
		{feet8, in(8, 3, 16), `8-1/4"`, `8 1/4"`}, // half of 1/8: away from zero
		{feet8, -in(8, 3, 16), `-8-1/4"`, `-8 1/4"`},
		{feet16, -in(27, 0, 1), `-2' 3"`, `-2'-3"`},
		{feet16, -in(0, 1, 64), `0"`, `0"`},
		{inches16, in(182, 1, 4), `182-1/4`, `182 1/4`},
		{inches16, in(97, 1, 2), `97-1/2`, `97 1/2`},
		{inches16, in(0, 3, 4), `3/4`, `3/4`},
		{inches16, 0, `0`, `0`},
		{inches1, in(11, 1, 2), `12`, `12`},
		{inches1, in(11, 31, 64), `11`, `11`},
		{mm1, geom.MM(4830), `4830`, `4830`},
		{mm1, geom.MM(4830) + geom.Millimetre/2, `4831`, `4831`},
		{mm1, -geom.MM(3) - geom.Millimetre/2, `-4`, `-4`},
		{mmTenth, geom.MM(4830) + geom.Millimetre/2, `4830.5`, `4830.5`},
		{mmTenth, in(1, 0, 1), `25.4`, `25.4`},
		{mmTenth, in(0, 1, 16), `1.6`, `1.6`},
		{mm5, geom.MM(2642), `2640`, `2640`},
		{mm5, geom.MM(2643), `2645`, `2645`},
		{measure.Show{}, in(9, 17, 32), `9-9/16"`, `9 9/16"`},
		{measure.Show{Form: measure.MillimetresOnly}, geom.MM(12), `12`, `12`},
		{measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16, Named: true}, in(97, 1, 2), `97-1/2 in`, `97 1/2`},
		{measure.Show{Form: measure.MillimetresOnly, Named: true}, geom.MM(2640), `2640 mm`, `2640`},
	}
	for _, tt := range tests {
		if got := tt.show.Say(tt.l); got != tt.say {
			t.Errorf("%v: Say(%d) = %s, want %s", tt.show, tt.l, got, tt.say)
		}
		if got := tt.show.Figure(tt.l); got != tt.figure {
			t.Errorf("%v: Figure(%d) = %s, want %s", tt.show, tt.l, got, tt.figure)
		}
	}
}

func TestFeetInches(t *testing.T) {
	l := geom.InFrac(182, 1, 4)
	for _, tt := range []struct {
		show measure.Show
		want string
	}{{feet16, `15'-2 1/4"`}, {inches16, `15'-2 1/4"`}, {inches1, `15'-2"`}, {mm1, "4629"}} {
		if got := tt.show.FeetInches(l); got != tt.want {
			t.Errorf("%v: FeetInches = %s, want %s", tt.show, got, tt.want)
		}
	}
}

func TestUnit(t *testing.T) {
	if feet16.Unit() != "in" || inches16.Unit() != "in" || mm1.Unit() != "mm" {
		t.Error(feet16.Unit(), inches16.Unit(), mm1.Unit())
	}
}

func TestParseShow(t *testing.T) {
	tests := []struct {
		text string
		want measure.Show
		back string
	}{
		{"feet and inches to 1/16", feet16, "feet and inches to 1/16"},
		{"feet and inches", feet16, "feet and inches to 1/16"},
		{"Feet  and inches to 1/8 in", feet8, "feet and inches to 1/8"},
		{"inches to 1/8", measure.Show{Form: measure.InchesOnly, To: geom.Inch / 8}, "inches to 1/8"},
		{"inches", inches16, "inches to 1/16"},
		{"inches to 1", inches1, "inches to 1"},
		{"millimetres", mm1, "millimetres"},
		{"millimeters to 0.1", mmTenth, "millimetres to 0.1"},
		{"mm to 5 mm", mm5, "millimetres to 5"},
	}
	for _, tt := range tests {
		got, err := measure.ParseShow(tt.text)
		if err != nil || got != tt.want || got.String() != tt.back {
			t.Errorf("ParseShow(%q) = %v, %v; want %v", tt.text, got, err, tt.back)
		}
	}
}

func TestParseShowFaults(t *testing.T) {
	tests := []struct {
		text, understood, problem string
		offset                    int
	}{
		{"", "", "empty", 0},
		{"furlongs", "", "not a way to print lengths", 0},
		{"feet", "", "not a way to print lengths", 0},
		{"inches at 1/8", "inches", "not a step after inches", 6},
		{" feet and  inches  to", "feet and inches", "not a step after feet and inches", 17},
		{"inches to 1/3", "inches", "not a step that lengths are printed to", 6},
		{"inches to 1/128", "inches", "not a step that lengths are printed to", 6},
		{"inches to 0", "inches", "not a step that lengths are printed to", 6},
		{"inches to -1/8", "inches", "not a step that lengths are printed to", 6},
		{"millimetres to 3", "millimetres", "not a step that lengths are printed to", 11},
		{"millimetres to 1/2", "millimetres", "not a step that lengths are printed to", 11},
		{"millimetres to 1/16 in", "millimetres", "not a step that lengths are printed to", 11},
	}
	for _, tt := range tests {
		_, err := measure.ParseShow(tt.text)
		var got *measure.ParseError
		if !errors.As(err, &got) {
			t.Errorf("ParseShow(%q): %v; want a fault", tt.text, err)
			continue
		}
		if got.Problem != tt.problem || got.Understood != tt.understood || got.Offset != tt.offset {
			t.Errorf("ParseShow(%q): %+v; want %q after %q at %d", tt.text, *got, tt.problem, tt.understood, tt.offset)
		}
		for _, try := range got.Try {
			if _, err := measure.ParseShow(try); err != nil {
				t.Errorf("ParseShow(%q) offers %q: %v", tt.text, try, err)
			}
		}
	}
}
