package lettering

import (
	"testing"

	"roomwright/layouts/paper"
)

func TestFractionIsSetSmall(t *testing.T) {
	cap := paper.MM(2.8)
	runs := Set("14 3/4", cap, false)
	text := ""
	for _, r := range runs {
		text += r.Text
	}
	if text != "14 3/4" {
		t.Fatalf("runs read %q, want the text itself", text)
	}
	if n := runs[2]; n.Text != "3" || n.Cap != cap*76/100 || n.Raise != cap*27/100 {
		t.Errorf("numerator set as %+v", n)
	}
	if Width("14 3/4", cap, false) >= Width("14 304", cap, false) {
		t.Error("a fraction is not narrower than whole figures")
	}
}

func TestFiguresAreOneWidth(t *testing.T) {
	for _, bold := range []bool{false, true} {
		want := Width("0", paper.MM(2.8), bold)
		for _, r := range "123456789" {
			if got := Width(string(r), paper.MM(2.8), bold); got != want {
				t.Errorf("figure %c is %v wide, 0 is %v", r, got, want)
			}
		}
	}
}

func TestEveryCharacterOfTheSheetsIsThere(t *testing.T) {
	for _, r := range "½¼¾⅛⅜⅝⅞⁄′″⌀℄±×−≤≥→▲●■✓éüçñßžąΩЖ" {
		if !Has(r) {
			t.Errorf("no glyph for %c", r)
		}
	}
}

func TestWrap(t *testing.T) {
	lines := Wrap("It is not known whether wall A carries load.", paper.MM(2.4), false, paper.MM(40))
	if len(lines) < 2 {
		t.Fatalf("not broken: %q", lines)
	}
	for _, l := range lines {
		if Width(l, paper.MM(2.4), false) > paper.MM(40) {
			t.Errorf("line %q is too wide", l)
		}
	}
}

// A figure parted from its fraction is another figure.
func TestWrapKeepsAFigureWhole(t *testing.T) {
	text := "marks at 84 13/16, 108 13/16, 15'-2 1/4\" and 180 13/16, or 3/4 of it"
	for w := paper.MM(8); w < paper.MM(90); w += paper.MM(1) {
		for _, line := range Wrap(text, paper.MM(2.4), false, w) {
			if bare.MatchString(line) && line[:3] != "3/4" {
				t.Errorf("at %v mm a line begins with %q", w.MM(), line)
			}
		}
	}
}
