package measure

import (
	"strings"
	"unicode"

	"roomwright/geom"
)

// unit is a unit of length as written, or none.
type unit int

const (
	noUnit unit = iota
	inch
	foot
	millimetre
	centimetre
	metre
)

// length returns one of u.
func (u unit) length() geom.Length {
	switch u {
	case foot:
		return geom.Foot
	case millimetre:
		return geom.Millimetre
	case centimetre:
		return geom.Centimetre
	case metre:
		return geom.Metre
	}
	return geom.Inch
}

// bareUnit returns the unit of a bare number in a file of system s.
func bareUnit(s System) unit {
	if s == Millimetres {
		return millimetre
	}
	return inch
}

// unit reads a unit where one stands, after blanks, and returns noUnit with
// nothing read where none does.
func (s *scanner) unit() unit {
	start := s.at
	s.spaces()
	if u := s.mark(); u != noUnit {
		return u
	}
	from := s.at
	for s.at < s.end && unicode.IsLetter(s.text[s.at]) {
		s.at++
	}
	u := unitWord(strings.ToLower(string(s.text[from:s.at])))
	if u == noUnit {
		s.at = start
		return noUnit
	}
	// The full stop of an abbreviation; before a digit it would be a point.
	if s.peek(0) == '.' && plainDigit(s.peek(1)) < 0 && (u == inch || u == foot) {
		s.at++
	}
	return u
}

// mark reads a foot mark or an inch mark; two foot marks are an inch mark.
func (s *scanner) mark() unit {
	switch r := s.peek(0); r {
	case '\'', '\u2032', '\u2018', '\u2019', '\u00b4':
		s.at++
		if s.peek(0) == r {
			s.at++
			return inch
		}
		return foot
	case '"', '\u2033', '\u201c', '\u201d':
		s.at++
		return inch
	}
	return noUnit
}

// unitWord returns the unit that a word in small letters stands for.
func unitWord(w string) unit {
	switch w {
	case "in", "inch", "inches":
		return inch
	case "ft", "foot", "feet":
		return foot
	case "mm", "millimetre", "millimetres", "millimeter", "millimeters":
		return millimetre
	case "cm", "centimetre", "centimetres", "centimeter", "centimeters":
		return centimetre
	case "m", "metre", "metres", "meter", "meters":
		return metre
	}
	return noUnit
}
