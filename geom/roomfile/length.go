package roomfile

import (
	"errors"
	"math/big"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// longest is the greatest length that a room file may hold; it keeps products
// of lengths within 64 bits.
const longest = 100 * geom.Metre

// bound says what a length may be.
type bound int

// The bounds.
const (
	positive bound = iota // a size
	fromZero              // a place, a mark
)

const (
	fitsMark    = " if it fits"
	aboutMark   = "about "
	unknownWord = "unknown"
)

// figure reads one length out of text that stands at a place.
func (r *reader) figure(text string, n *node, b bound) (geom.Length, bool) {
	l, decimalFeet, err := measure.ParseNoted(text, r.units)
	if err != nil {
		r.fail(n.at, r.notALength(text, n, err))
		return 0, false
	}
	if !r.inBounds(text, n, l, b) {
		return 0, false
	}
	if decimalFeet {
		r.decimalFeet(text, n, l)
	}
	return l, true
}

// inBounds reports whether a length is one that can be, and says so when not.
func (r *reader) inBounds(text string, n *node, l geom.Length, b bound) bool {
	f := fault{rule: "lengths", found: brief(text)}
	switch {
	case l < 0:
		f.what, f.allowed = "a length below zero", "zero or more"
		if b == positive {
			f.allowed = "more than zero"
		}
		f.hint = "places are taped from the end that the key names"
	case l == 0 && b == positive:
		f.what, f.allowed = "a length of zero", "more than zero"
	case l > longest && r.unitsKnown:
		f.what, f.allowed = "a length that no room has", "at most 100 m"
	default:
		return true
	}
	r.fail(n.at, f)
	return false
}

// notALength is the answer to a text that is no length.
func (r *reader) notALength(text string, n *node, err error) fault {
	f := fault{rule: "lengths", what: "not a length", found: brief(text), allowed: "a length"}
	var e *measure.ParseError
	if !errors.As(err, &e) {
		return f
	}
	f.what, f.hint = clean(e.Problem), clean(e.Hint)
	if e.Try[0] != "" {
		f.allowed = "a length, such as " + e.Try[0] + " or " + e.Try[1]
	}
	switch {
	case e.Problem == "empty":
		f.what = "nothing where a length is wanted"
	case f.hint == "" && strings.HasPrefix(e.Problem, "not a length after"):
		f.hint = "units are mm, cm, m, in and ft; a note goes behind a space and #"
	case strings.Contains(e.Problem, "fraction without a unit"):
		f.allowed = "whole or decimal millimetres, or a unit"
		if !n.quoted {
			f.hint = "write " + brief(text) + " in"
		}
	}
	return f
}

// decimalFeet warns of feet written with a point.
func (r *reader) decimalFeet(text string, n *node, l geom.Length) {
	feet := l / geom.Foot
	inches := new(big.Rat).SetFrac64(int64(l%geom.Foot), int64(geom.Inch))
	said := strings.TrimRight(strings.TrimRight(inches.FloatString(3), "0"), ".")
	f := fault{
		rule: "decimal feet", what: "decimal feet", allowed: "feet and inches",
		found: brief(text) + " = " + r.count(int64(feet)) + "' " + said + `"`,
		hint:  "write feet and inches",
	}
	if _, behind, ok := strings.Cut(text, "."); ok {
		behind = strings.TrimRight(behind, " '′ft")
		if behind == "10" || behind == "11" || len(behind) == 1 {
			f.hint = "if the tape said " + r.count(int64(feet)) + " feet " + behind +
				", write " + r.count(int64(feet)) + "' " + behind + `"`
		}
	}
	r.warn(n.at, "", f)
}

// plain reads a length that is neither a reading nor a wish: a size in stock,
// a spacing.
func (r *reader) plain(n *node, b bound) (geom.Length, bool) {
	s, ok := r.word(n, "a length")
	if !ok || r.hedged(s, n) {
		return 0, false
	}
	return r.figure(s, n, b)
}

// want reads a length that is wanted.
func (r *reader) want(n *node, b bound) (room.Want, bool) {
	s, ok := r.word(n, "a length, or a length if it fits")
	if !ok {
		return room.Want{}, false
	}
	s, wish := strings.CutSuffix(s, fitsMark)
	if r.hedged(s, n) {
		return room.Want{}, false
	}
	l, ok := r.figure(s, n, b)
	return room.Want{Value: l, IfFits: wish, At: n.at}, ok
}

// hedged complains of a value wanted that is written like a reading.
func (r *reader) hedged(s string, n *node) bool {
	f := fault{rule: "measured or wanted", found: brief(s), allowed: "a length, or a length if it fits"}
	switch {
	case strings.HasPrefix(s, aboutMark):
		s = s[len(aboutMark):]
		f.what = "`about` on something to be built"
	case strings.Contains(s, "+/-"), strings.Contains(s, "±"):
		s = strings.TrimSpace(s[:strings.IndexAny(s, "+±")])
		f.what = "`+/-` on something to be built"
	case s == unknownWord:
		f.what, f.hint = "`unknown` on something to be built", "write the length that is wanted"
	case strings.HasSuffix(s, fitsMark):
		f.what, f.allowed = "`if it fits` on a length that nothing can move", "a length"
	default:
		return false
	}
	switch bare := brief(strings.TrimSuffix(s, fitsMark)); {
	case f.hint != "" || bare == "":
	case f.allowed == "a length":
		f.hint = "write " + bare
	default:
		f.hint = "write " + bare + " if it fits, if it may move"
	}
	r.fail(n.at, f)
	return true
}

// reading reads a length that was taped: once, twice or more, about, within a
// tolerance, or not known.
func (r *reader) reading(n *node, b bound) (room.Reading, bool) {
	out := room.Reading{At: n.at}
	if n.kind == list {
		return r.readings(n, b)
	}
	s, ok := r.word(n, "a length, or unknown")
	if !ok {
		return out, false
	}
	if s == unknownWord {
		out.Unknown = true
		return out, true
	}
	l, about, within, ok := r.taped(s, n, b)
	if ok {
		out.Value, out.All, out.About, out.Within = l, []geom.Length{l}, about, within
	}
	return out, ok
}

// readings reads a length that was taped more than once; the mean is used.
func (r *reader) readings(n *node, b bound) (room.Reading, bool) {
	out := room.Reading{At: n.at}
	good := len(n.items) > 0
	if !good {
		r.fail(n.at, fault{rule: "empty value", what: "an empty list of readings", found: "no value", allowed: "[135, 135-1/8]"})
	}
	var sum geom.Length
	for _, c := range n.items {
		s, ok := r.word(c, "a length")
		if !ok {
			good = false
			continue
		}
		l, about, within, ok := r.taped(s, c, b)
		good = good && ok
		sum += l
		out.All = append(out.All, l)
		out.About = out.About || about
		out.Within = max(out.Within, within)
	}
	if !good || len(out.All) > 1000 {
		return out, false
	}
	count := geom.Length(len(out.All))
	out.Value = (sum + count/2) / count
	return out, true
}

// taped reads one reading: `X`, `about X` or `X +/- T`.
func (r *reader) taped(s string, n *node, b bound) (l geom.Length, about bool, within geom.Length, ok bool) {
	if bare, wish := strings.CutSuffix(s, fitsMark); wish {
		r.fail(n.at, fault{
			rule: "measured or wanted", what: "`if it fits` on something that is there",
			found: brief(s), allowed: "a length, about a length, or unknown", hint: "write " + brief(bare),
		})
		return 0, false, 0, false
	}
	s, about = strings.CutPrefix(s, aboutMark)
	s, tolerance, given := strings.Cut(strings.ReplaceAll(s, "±", "+/-"), "+/-")
	l, ok = r.figure(strings.TrimSpace(s), n, b)
	if given {
		t, good := r.figure(strings.TrimSpace(tolerance), n, positive)
		within, ok = t, ok && good
	}
	return l, about, within, ok
}

// size reads a width and a height.
func (r *reader) size(n *node) (room.Size, bool) {
	s, ok := r.word(n, "a size, such as "+r.sampleSize())
	if !ok {
		return room.Size{}, false
	}
	return r.sizeText(s, n)
}

// sizeText reads a width and a height out of text that stands at a place.
func (r *reader) sizeText(s string, n *node) (room.Size, bool) {
	if r.hedgedSize(s, n) {
		return room.Size{}, false
	}
	w, h, err := measure.ParseSize(s, r.units)
	if err != nil {
		f := r.notALength(s, n, err)
		f.allowed = strings.Replace(f.allowed, "a length, such as", "a size, such as", 1)
		if f.allowed == "a length" {
			f.allowed = "a size, such as " + r.sampleSize()
		}
		if strings.Contains(s, " by ") {
			f.hint = "write " + brief(strings.Replace(s, " by ", " x ", 1))
		}
		r.fail(n.at, f)
		return room.Size{}, false
	}
	if !r.inBounds(s, n, w, positive) || !r.inBounds(s, n, h, positive) {
		return room.Size{}, false
	}
	return room.Size{W: w, H: h, At: n.at}, true
}

// hedgedSize complains of a size that is written like a reading or a wish.
func (r *reader) hedgedSize(s string, n *node) bool {
	f := fault{rule: "measured or wanted", found: brief(s), allowed: "a size, such as " + r.sampleSize()}
	switch {
	case strings.HasPrefix(s, aboutMark), strings.Contains(s, "+/-"), strings.Contains(s, "±"):
		f.what = "a size cannot be about"
	case strings.HasSuffix(s, fitsMark):
		f.what, f.hint = "`if it fits` on a size", "a place may move, a size may not; write "+brief(strings.TrimSuffix(s, fitsMark))
	case strings.HasPrefix(s, "widest"):
		f.what, f.hint = "`widest` is not read by this edition", "write the width that is wanted"
	default:
		return false
	}
	r.fail(n.at, f)
	return true
}

// sampleSize shows a size in the units of the file.
func (r *reader) sampleSize() string {
	if r.units == measure.Millimetres {
		return "1460 x 810"
	}
	return "57-1/2 x 32"
}

// count prints a whole number.
func (r *reader) count(n int64) string { return big.NewInt(n).String() }

// say prints a length as the room file asks.
func (r *reader) say(l geom.Length) string { return r.show.Say(l) }

// zero is no place.
func zero(p finding.Place) bool { return p == finding.Place{} }
