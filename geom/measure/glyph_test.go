package measure_test

import (
	"fmt"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
)

// The fractions that are one character (Unicode, blocks Latin-1 Supplement and
// Number Forms) mean what their names say.
func TestFractionCharacters(t *testing.T) {
	for glyph, plain := range map[string]string{
		"¼": "1/4", "½": "1/2", "¾": "3/4",
		"⅐": "1/7", "⅑": "1/9", "⅒": "1/10",
		"⅓": "1/3", "⅔": "2/3",
		"⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5",
		"⅙": "1/6", "⅚": "5/6",
		"⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
	} {
		for _, before := range []string{"", "12", "12 ", "12-", "3' ", "3' 7"} {
			text, want := before+glyph+" in", strings.TrimRight(before, " -")+" "+plain+" in"
			got, err := measure.Parse(text, measure.Inches)
			same, err2 := measure.Parse(want, measure.Inches)
			if err != nil || err2 != nil || got != same {
				t.Errorf("Parse(%q) = %d, %v; Parse(%q) = %d, %v", text, got, err, want, same, err2)
			}
		}
	}
}

// Raised and lowered digits with a fraction slash are ordinary fractions.
func TestRaisedFractions(t *testing.T) {
	raised, lowered := []rune("⁰¹²³⁴⁵⁶⁷⁸⁹"), []rune("₀₁₂₃₄₅₆₇₈₉")
	write := func(n int, digits []rune) string {
		return strings.Map(func(r rune) rune { return digits[r-'0'] }, fmt.Sprint(n))
	}
	for den := 2; den <= 100; den++ {
		for num := 1; num < den; num++ {
			text := "7" + write(num, raised) + "⁄" + write(den, lowered)
			got, err := measure.Parse(text, measure.Inches)
			want, err2 := measure.Parse(fmt.Sprintf("7-%d/%d", num, den), measure.Inches)
			if err != nil || err2 != nil || got != want {
				t.Fatalf("Parse(%q) = %d, %v; want %d, %v", text, got, err, want, err2)
			}
		}
	}
}

func TestSystemWords(t *testing.T) {
	if measure.Inches.String() != "inches" || measure.Millimetres.String() != "millimetres" {
		t.Error(measure.Inches, measure.Millimetres)
	}
	if got := measure.DefaultShow(measure.Millimetres).Say(geom.Inch); got != "25" {
		t.Errorf("an inch is said as %s in whole millimetres", got)
	}
}
