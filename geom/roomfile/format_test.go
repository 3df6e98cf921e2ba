package roomfile

import (
	"testing"

	"roomwright/geom/finding"
)

func TestFormat(t *testing.T) {
	for _, c := range []struct {
		name string
		f    finding.Finding
		want string
	}{
		{"all parts", finding.Finding{
			Place: finding.Place{Line: 14, Column: 11}, Kind: finding.Error, What: "what", Found: "f", Allowed: "a", Hint: "h", Source: "s",
		}, "room.yaml:14:11: error: what\n  found:   f\n  allowed: a\n  hint:    h\n  source:  s\n"},
		{"empty parts are left out", finding.Finding{
			Place: finding.Place{Line: 1, Column: 2}, Kind: finding.Warning, What: "what", Hint: "h",
		}, "room.yaml:1:2: warning: what\n  hint:    h\n"},
		{"no place", finding.Finding{Kind: finding.Note, What: "what"}, "room.yaml: note: what\n"},
		{"escape codes are stripped", finding.Finding{
			Kind: finding.Caution, What: "a \x1b[31mred\x1b[0m word", Found: "\x1b]0;title\x07x", Hint: "\u009b1mbold\x00\x07",
			Allowed: "\x1bPsecret\x1b\\y", Source: "\x1b",
		}, "room.yaml: caution: a red word\n  found:   x\n  allowed: y\n  hint:    bold\n"},
		{"a line end is a blank, a turned direction is nothing", finding.Finding{
			Kind: finding.Note, What: "one\ntwo\tthree\u202efour\u2028",
		}, "room.yaml: note: one two threefour\n"},
		{"letters of all kinds stay", finding.Finding{
			Kind: finding.Note, What: "½″ Größe ⌀38 Ω", Found: "\xff",
		}, "room.yaml: note: ½″ Größe ⌀38 Ω\n  found:   ?\n"},
	} {
		if got := Format(c.f, "room.yaml"); got != c.want {
			t.Errorf("%s:\n%q\nwant\n%q", c.name, got, c.want)
		}
	}
}

func TestNearest(t *testing.T) {
	keys := []string{"length", "lining", "made of", "tape on", "A", "B"}
	for _, c := range []struct{ s, want string }{
		{"lenght", "length"}, {"lengh", "length"}, {"Length", "length"}, {"lininng", "lining"},
		{"taped on", "tape on"}, {"colour", ""}, {"a", "A"}, {"C", ""}, {"", ""},
	} {
		if got := nearest(c.s, keys); got != c.want {
			t.Errorf("%q: %q, want %q", c.s, got, c.want)
		}
	}
	for _, c := range []struct {
		a, b string
		want int
	}{{"", "", 0}, {"abc", "", 3}, {"abc", "abd", 1}, {"abc", "acb", 1}, {"ca", "abc", 3}, {"kitten", "sitting", 3}} {
		if got := distance(c.a, c.b); got != c.want {
			t.Errorf("%q to %q: %d, want %d", c.a, c.b, got, c.want)
		}
	}
}
