package measure

import (
	"strconv"
	"strings"

	"roomwright/geom"
)

// Round returns l rounded once to the step of s, halves away from zero.
func (s Show) Round(l geom.Length) geom.Length { return l.Round(s.step()) }

// Say prints l for messages, so that it can be typed back into a room file:
// 15' 2-1/4", 9-1/2", 97-1/2 (inches alone), 2640.
func (s Show) Say(l geom.Length) string {
	sign, l := split(s.Round(l))
	switch s.Form {
	case MillimetresOnly:
		return sign + decimal(l) + s.named(" mm")
	case InchesOnly:
		return sign + inches(l, "-") + s.named(" in")
	}
	return sign + feet(l, "' ", "-")
}

// named returns unit when s writes it after bare figures.
func (s Show) named(unit string) string {
	if s.Named {
		return unit
	}
	return ""
}

// Figure prints l for a dimension: 15'-2 1/4" or 9 1/2"; 182 1/4 in inches
// alone; 4830 in millimetres.
func (s Show) Figure(l geom.Length) string {
	sign, l := split(s.Round(l))
	switch s.Form {
	case MillimetresOnly:
		return sign + decimal(l)
	case InchesOnly:
		return sign + inches(l, " ")
	}
	return sign + feet(l, "'-", " ")
}

// FeetInches prints l in feet and inches, 15'-2 1/4", in either inch form; in
// millimetres it is the same as Figure.
func (s Show) FeetInches(l geom.Length) string {
	if s.Form == InchesOnly {
		s.Form = FeetAndInches
	}
	return s.Figure(l)
}

// Unit returns the unit of the figures: "in" for both inch forms, or "mm".
func (s Show) Unit() string {
	if s.Form == MillimetresOnly {
		return "mm"
	}
	return "in"
}

// String returns s as a room file writes it: "feet and inches to 1/16".
func (s Show) String() string {
	step := s.step()
	if s.Form == MillimetresOnly {
		if step == geom.Millimetre {
			return "millimetres"
		}
		return "millimetres to " + decimal(step)
	}
	return s.Form.String() + " to " + inches(step, "-")
}

// split takes the sign off l.
func split(l geom.Length) (string, geom.Length) {
	if l < 0 {
		return "-", -l
	}
	return "", l
}

// feet prints l, which is not negative and already rounded, with the given
// sign after the feet and the given joint before a fraction. Carrying from 16
// sixteenths and from 12 in follows from rounding the whole length first.
func feet(l geom.Length, foot, joint string) string {
	if l < geom.Foot {
		return inches(l, joint) + `"`
	}
	rest := l % geom.Foot
	text := inches(rest, joint)
	if rest > 0 && rest < geom.Inch {
		text = "0" + joint + text
	}
	return strconv.FormatInt(int64(l/geom.Foot), 10) + foot + text + `"`
}

// inches prints l, which is not negative, in whole inches and a reduced
// fraction; it is exact whatever the step was.
func inches(l geom.Length, joint string) string {
	whole, num, den := int64(l/geom.Inch), int64(l%geom.Inch), int64(geom.Inch)
	if num == 0 {
		return strconv.FormatInt(whole, 10)
	}
	for a, b := num, den; ; a, b = b%a, a {
		if b%a == 0 {
			num, den = num/a, den/a
			break
		}
	}
	text := strconv.FormatInt(num, 10) + "/" + strconv.FormatInt(den, 10)
	if whole == 0 {
		return text
	}
	return strconv.FormatInt(whole, 10) + joint + text
}

// decimal prints l, which is not negative, in millimetres with as many
// decimals as it needs; a sixteenth of a micrometre needs seven.
func decimal(l geom.Length) string {
	whole, part := int64(l/geom.Millimetre), int64(l%geom.Millimetre)
	text := strconv.FormatInt(whole, 10)
	if part == 0 {
		return text
	}
	digits := strconv.FormatInt(part*(10_000_000/int64(geom.Millimetre)), 10)
	digits = strings.Repeat("0", 7-len(digits)) + digits
	return text + "." + strings.TrimRight(digits, "0")
}
