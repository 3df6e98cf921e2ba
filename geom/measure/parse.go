package measure

import (
	"math/big"
	"strings"

	"roomwright/geom"
)

// Parse reads one length as people write it; a bare number takes the unit of
// bare. A leading minus and zero are read: the caller decides what is allowed.
// Its error is a *ParseError.
func Parse(s string, bare System) (geom.Length, error) {
	l, _, err := ParseNoted(s, bare)
	return l, err
}

// ParseNoted is like Parse and reports feet written as a decimal, 12.6', which
// are read but were perhaps meant as 12' 6".
func ParseNoted(s string, bare System) (l geom.Length, decimalFeet bool, err error) {
	text := []rune(s)
	sc := &scanner{text: text, end: len(text)}
	w, fault := sc.written()
	if fault != nil {
		fault.Try = w.forms(sc, bare)
		return 0, false, fault
	}
	l, fault = w.length(sc, bareUnit(bare), bare)
	if fault != nil {
		return 0, false, fault
	}
	return l, w.decimalFeet(), nil
}

// written is a length as written: a number with a unit or without, and inches
// after feet.
type written struct {
	from, upTo int // characters that were read
	negative   bool
	first      number
	unit       unit // of first
	inches     number
	then       bool // inches follow
}

// decimalFeet reports whether w is feet with a point.
func (w written) decimalFeet() bool { return w.unit == foot && w.first.decimal }

// written reads one length up to the end of s. On a fault it returns the part
// that was understood.
func (s *scanner) written() (written, *ParseError) {
	s.spaces()
	w := written{from: s.at, upTo: s.at}
	if s.at == s.end {
		return w, s.fault(s.at, s.at, "empty")
	}
	switch s.peek(0) {
	case '-', '\u2212':
		s.at++
		w.negative = true
	}
	start := s.at
	n, ok, problem, hint := s.number(true)
	switch {
	case problem != "":
		return w, s.numberFault(w, start, problem, hint)
	case !ok:
		return w, s.fault(w.from, w.from, "not a length")
	}
	w.first, w.upTo = n, s.at
	w.unit = s.unit()
	if w.unit != noUnit {
		w.upTo = s.at
	}
	if w.unit == foot {
		if fault := s.inchesAfterFeet(&w); fault != nil {
			return w, fault
		}
	}
	s.at = w.upTo
	s.spaces()
	if s.at < s.end {
		fault := s.fault(w.from, w.upTo, "")
		fault.Problem = "not a length after " + fault.Understood
		fault.Offset = s.at
		if s.peek(0) == '#' {
			fault.Hint = "a comment needs a space before #"
		}
		return w, fault
	}
	return w, nil
}

// numberFault is a fault in the number that begins at start; it is told as the
// whole number, and what was understood ends before it.
func (s *scanner) numberFault(w written, start int, problem, hint string) *ParseError {
	f := s.fault(w.from, w.upTo, problem)
	f.Offset, f.Hint = start, hint
	return f
}

// inchesAfterFeet reads the inches of 12' 6 1/2", 12'-6" or 12 ft 6, if any.
func (s *scanner) inchesAfterFeet(w *written) *ParseError {
	blank := s.spaces()
	if s.hyphen() {
		blank = true
		s.spaces()
	}
	start := s.at
	n, ok, problem, hint := s.number(blank)
	switch {
	case problem != "":
		return s.numberFault(*w, start, problem, hint)
	case !ok:
		return nil
	}
	end := s.at
	switch u := s.unit(); {
	case u != noUnit && u != inch:
		return s.numberFault(*w, start, "not inches after feet", "")
	case u == inch:
		end = s.at
	}
	switch {
	case w.first.decimal:
		return s.numberFault(*w, start, "inches after decimal feet", "")
	case w.first.fraction:
		return s.numberFault(*w, start, "inches after a fraction of a foot", "")
	case n.value.Cmp(big.NewRat(12, 1)) >= 0:
		return s.numberFault(*w, start, "12 inches or more after feet", "")
	}
	w.inches, w.then, w.upTo = n, true, end
	return nil
}

// length works w out with bare for a number without a unit; in is the system
// of the file, for what it says.
func (w written) length(s *scanner, bare unit, in System) (geom.Length, *ParseError) {
	if w.unit == noUnit && w.first.fraction && bare == millimetre {
		text := strings.TrimSpace(string(s.text[w.from:w.upTo]))
		f := s.fault(w.from, w.from, "a fraction without a unit in a millimetre file")
		f.Try = [2]string{text + " in", forms(geom.Inch, in)[0]}
		if l, fault := w.length(s, inch, in); fault == nil {
			f.Try[1] = decimal(l.Abs().Round(geom.Millimetre / 10))
		}
		f.Hint = "quotes round a whole value swallow the inch mark; write " + text + " in"
		return 0, f
	}
	u := w.unit
	if u == noUnit {
		u = bare
	}
	total := new(big.Rat).Mul(w.first.value, big.NewRat(int64(u.length()), 1))
	if w.then {
		total.Add(total, new(big.Rat).Mul(w.inches.value, big.NewRat(int64(geom.Inch), 1)))
	}
	l, ok := nearest(total)
	if !ok {
		f := s.fault(w.from, w.upTo, "longer than 1 km, the most that is read")
		f.Offset, f.Try = w.from, forms(0, in)
		return 0, f
	}
	if w.negative {
		l = -l
	}
	return l, nil
}

// nearest returns the whole number nearest to v, which is not negative, halves
// up; ok is false past Limit.
func nearest(v *big.Rat) (l geom.Length, ok bool) {
	if v.Cmp(big.NewRat(int64(Limit), 1)) > 0 {
		return 0, false
	}
	twice := new(big.Int).Mul(v.Num(), big.NewInt(2))
	twice.Add(twice, v.Denom())
	twice.Quo(twice, new(big.Int).Mul(v.Denom(), big.NewInt(2)))
	return geom.Length(twice.Int64()), true
}

// forms shows two ways to write the part of w that was understood.
func (w written) forms(s *scanner, in System) [2]string {
	if w.first.value == nil || w.unit == noUnit && w.first.fraction && in == Millimetres {
		return forms(0, in)
	}
	l, fault := w.length(s, bareUnit(in), in)
	if fault != nil {
		return forms(0, in)
	}
	return forms(l, in)
}
