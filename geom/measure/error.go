package measure

import (
	"strings"

	"roomwright/geom"
)

// Limit is the greatest length that is read, 1 km, either way of zero.
const Limit = 1000 * geom.Metre

// ParseError says how far a text was understood as a length, what stopped it,
// and what would work.
type ParseError struct {
	Text       string    // the whole text
	Understood string    // the leading part that was understood, may be empty
	Offset     int       // in characters, where it stopped
	Problem    string    // short: "not a length after 135"
	Try        [2]string // two forms that work, in the file's own units
	Hint       string    // what was probably meant, may be empty
}

// Error returns the problem, the text, two forms that work and the hint.
func (e *ParseError) Error() string {
	text := e.Problem
	if e.Text != "" {
		text += ": `" + e.Text + "`"
	}
	if e.Try[0] != "" {
		text += "; write " + e.Try[0]
		if e.Try[1] != "" && e.Try[1] != e.Try[0] {
			text += " or " + e.Try[1]
		}
	}
	if e.Hint != "" {
		text += " (" + e.Hint + ")"
	}
	return text
}

// fault begins a ParseError at the place where s stands: understood is what
// was read up to there.
func (s *scanner) fault(from, upTo int, problem string) *ParseError {
	return &ParseError{
		Text:       string(s.text),
		Understood: strings.TrimSpace(string(s.text[from:upTo])),
		Offset:     upTo,
		Problem:    problem,
	}
}

// forms shows l in two ways in the units of a file, or two usual lengths where
// l cannot be shown shortly.
func forms(l geom.Length, in System) [2]string {
	if in == Millimetres {
		if l <= 0 || l%(geom.Millimetre/10) != 0 {
			return [2]string{"3810", "3.81 m"}
		}
		return [2]string{decimal(l), decimal(l) + " mm"}
	}
	if l <= 0 || l%(geom.Inch/64) != 0 {
		return [2]string{"150-1/2", `12' 6-1/2"`}
	}
	return [2]string{inches(l, "-"), feet(l, "' ", "-")}
}
