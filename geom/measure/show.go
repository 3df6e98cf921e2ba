package measure

import (
	"strings"

	"roomwright/geom"
)

// System is what a bare number in a room file means.
type System int

// The two systems.
const (
	Inches System = iota
	Millimetres
)

// String returns the word for s as a room file writes it.
func (s System) String() string {
	if s == Millimetres {
		return "millimetres"
	}
	return "inches"
}

// Form is the way in which lengths are printed.
type Form int

// The forms, as `show` in the room file names them.
const (
	FeetAndInches Form = iota
	InchesOnly
	MillimetresOnly
)

// String returns the words for f as a room file writes them.
func (f Form) String() string {
	switch f {
	case InchesOnly:
		return "inches"
	case MillimetresOnly:
		return "millimetres"
	}
	return "feet and inches"
}

// Show is how lengths are printed: the form, and the step they are rounded to.
// The zero Show prints feet and inches to 1/16.
type Show struct {
	Form Form
	To   geom.Length // zero or less: the step DefaultShow gives
	// Named makes Say write the unit after inches alone and millimetres, for a
	// room file whose bare numbers mean the other system.
	Named bool
}

// DefaultShow returns feet and inches to 1/16 for inches, and whole
// millimetres for millimetres (common practice, no source).
func DefaultShow(s System) Show {
	if s == Millimetres {
		return Show{Form: MillimetresOnly, To: geom.Millimetre}
	}
	return Show{Form: FeetAndInches, To: geom.Inch / 16}
}

// step returns the step of s, the default one when none is set.
func (s Show) step() geom.Length {
	switch {
	case s.To > 0:
		return s.To
	case s.Form == MillimetresOnly:
		return geom.Millimetre
	}
	return geom.Inch / 16
}

// ParseShow reads how lengths are to be printed: "feet and inches", "inches"
// or "millimetres", each with an optional step: "to 1/8", "to 0.5". A step of
// inches is 1, 1/2, 1/4 ... 1/64; a step of millimetres 10, 5, 1, 0.5 or 0.1.
// Its error is a *ParseError.
func ParseShow(s string) (Show, error) {
	words := fields(s)
	show, n := Show{}, 0
	switch {
	case begins(words, "feet", "and", "inches"):
		show, n = DefaultShow(Inches), 3
	case begins(words, "inches"):
		show, n = Show{Form: InchesOnly, To: geom.Inch / 16}, 1
	case begins(words, "millimetres"), begins(words, "millimeters"), begins(words, "mm"):
		show, n = DefaultShow(Millimetres), 1
	}
	try := [2]string{"feet and inches to 1/16", "millimetres"}
	switch {
	case len(words) == 0:
		return Show{}, &ParseError{Text: s, Problem: "empty", Try: try}
	case n == 0:
		return Show{}, &ParseError{Text: s, Problem: "not a way to print lengths", Try: try}
	case len(words) == n:
		return show, nil
	}
	upTo := join(words[:n])
	if words[n] != "to" || len(words) == n+1 {
		return Show{}, &ParseError{Text: s, Understood: upTo, Offset: after(s, upTo),
			Problem: "not a step after " + upTo, Try: stepTry(show.Form)}
	}
	system := Inches
	if show.Form == MillimetresOnly {
		system = Millimetres
	}
	to, err := Parse(join(words[n+1:]), system)
	if err != nil || !printable(show.Form, to) {
		return Show{}, &ParseError{Text: s, Understood: upTo, Offset: after(s, upTo),
			Problem: "not a step that lengths are printed to", Try: stepTry(show.Form)}
	}
	show.To = to
	return show, nil
}

// stepTry returns two ways to print in form f.
func stepTry(f Form) [2]string {
	if f == MillimetresOnly {
		return [2]string{"millimetres", "millimetres to 0.5"}
	}
	return [2]string{f.String() + " to 1/16", f.String() + " to 1/8"}
}

// printable reports whether lengths of form f can be printed to the given step.
func printable(f Form, step geom.Length) bool {
	if f == MillimetresOnly {
		switch step {
		case geom.Centimetre, 5 * geom.Millimetre, geom.Millimetre, geom.Millimetre / 2, geom.Millimetre / 10:
			return true
		}
		return false
	}
	for den := geom.Length(1); den <= 64; den *= 2 {
		if step == geom.Inch/den {
			return true
		}
	}
	return false
}

// fields splits s at blanks, in small letters.
func fields(s string) []string { return strings.Fields(strings.ToLower(s)) }

// begins reports whether words starts with the given ones.
func begins(words []string, with ...string) bool {
	if len(words) < len(with) {
		return false
	}
	for i, w := range with {
		if words[i] != w {
			return false
		}
	}
	return true
}

// join puts one blank between words.
func join(words []string) string { return strings.Join(words, " ") }

// after returns the number of characters of s up to the end of the words that
// part holds, however they are spaced.
func after(s, part string) int {
	left := len(fields(part))
	in := false
	n := 0
	for _, r := range s {
		blank := strings.TrimSpace(string(r)) == ""
		if blank && in {
			left--
			if left == 0 {
				return n
			}
		}
		in = !blank
		n++
	}
	return n
}
