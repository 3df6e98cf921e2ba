package roomfile

import (
	"math/big"
	"strings"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// timber reads the section of a stick: a name of the table of dressed sizes,
// or a true size.
func (r *reader) timber(n *node) (room.Timber, bool) {
	s, ok := r.word(n, "a section, such as 2x4 or 38 x 89")
	if !ok {
		return room.Timber{}, false
	}
	return r.timberText(s, n)
}

// timberText reads a section out of text that stands at a place.
func (r *reader) timberText(s string, n *node) (room.Timber, bool) {
	name := strings.ToLower(strings.ReplaceAll(strings.ReplaceAll(s, " ", ""), "×", "x"))
	if thick, wide, ok := rules.Dressed(name); ok {
		return room.Timber{Name: name, Thick: thick, Wide: wide, At: n.at}, true
	}
	if strings.Contains(s, unknownWord) {
		r.fail(n.at, fault{
			rule: "sections", what: "a section that is partly unknown is not read by this edition",
			found: brief(s), allowed: "a name such as 2x4, or a true size such as 38 x 89",
			hint: "take a switch plate off and measure at the edge of the hole",
		})
		return room.Timber{}, false
	}
	if r.hedgedSize(s, n) {
		return room.Timber{}, false
	}
	w, h, err := measure.ParseSize(s, r.units)
	if err != nil {
		f := r.notALength(s, n, err)
		if f.allowed != "whole or decimal millimetres, or a unit" {
			f.what, f.allowed = "not a section", "a name such as 2x4, or a true size such as 38 x 89 mm"
		}
		r.fail(n.at, f)
		return room.Timber{}, false
	}
	if !r.inBounds(s, n, w, positive) || !r.inBounds(s, n, h, positive) {
		return room.Timber{}, false
	}
	if max(w, h) > rules.TimberWidest {
		r.fail(n.at, fault{
			rule: "sizes", what: "no timber is that large", found: s, allowed: "up to " + r.say(rules.TimberWidest) + " wide",
			hint: "a name such as 2x4, or a true size such as 1-1/2 x 3-1/2",
		})
		return room.Timber{}, false
	}
	size := room.Size{W: w, H: h}
	t := room.Timber{Thick: min(size.W, size.H), Wide: max(size.W, size.H), At: n.at}
	bare := measure.DefaultShow(r.units)
	if r.units == measure.Inches {
		bare = measure.Show{Form: measure.InchesOnly, To: geom.Inch / 64}
	}
	t.Name = bare.Say(t.Thick) + " x " + bare.Say(t.Wide)
	return t, true
}

// several reads `2 of 2x6`: how many, and what stands behind `of`.
func (r *reader) several(n *node, sample string) (count int, what string, ok bool) {
	s, ok := r.word(n, "how many and what, such as "+sample)
	if !ok {
		return 0, "", false
	}
	head, what, both := strings.Cut(s, " of ")
	e := entry{name: "how many", value: &node{kind: word, text: head, at: n.at}}
	if !both || !digits(strings.TrimSpace(head)) {
		r.fail(n.at, fault{
			rule: "several", what: "how many is not said", found: brief(s), allowed: "how many and what, such as " + sample,
		})
		return 0, "", false
	}
	count, ok = r.whole(e, 1, 50)
	return count, strings.TrimSpace(what), ok
}

// material reads a thickness and what the sheet is; none and unknown are read
// too.
func (r *reader) material(n *node) (room.Material, bool) {
	out := room.Material{At: n.at}
	allowed := "a thickness and what it is, such as 1/2 gypsum; none; unknown"
	if r.units == measure.Millimetres {
		allowed = "a thickness and what it is, such as 12.5 gypsum; none; unknown"
	}
	s, ok := r.word(n, allowed)
	if !ok {
		return out, false
	}
	switch s {
	case "none":
		out.None = true
		return out, true
	case unknownWord:
		out.Unknown = true
		return out, true
	}
	s = strings.TrimPrefix(s, aboutMark)
	words := strings.Fields(s)
	for k := len(words) - 1; k > 0; k-- {
		head := strings.Join(words[:k], " ")
		if _, err := measure.Parse(head, r.units); err != nil {
			continue
		}
		what, good := r.text(&node{kind: word, text: strings.Join(words[k:], " "), at: n.at})
		l, fine := r.figure(head, n, positive)
		out.Thick, out.What = l, what
		return out, good && fine
	}
	if len(words) > 1 {
		if _, err := measure.Parse(words[0], r.units); err != nil && strings.ContainsAny(words[0][:1], "0123456789") {
			_, ok := r.figure(words[0], n, positive)
			return out, ok
		}
	}
	f := fault{rule: "materials", what: "a material without its thickness", found: brief(s), allowed: allowed}
	if _, err := measure.Parse(s, r.units); err == nil {
		f.what = "a thickness without what it is"
	}
	r.fail(n.at, f)
	return out, false
}

// Weights in grams, exact by definition of the avoirdupois pound.
const (
	poundGrams   = 45359237 // of 1/100000 g
	poundParts   = 100000
	footSquareM2 = 9290304 // of 1/100000000 m2, from 1 ft = 0.3048 m
	footParts    = 100000000
)

// weight reads the number of a weight and gives it in grams; per reports a
// weight per area, in grams for a square metre.
func (r *reader) weight(n *node, per bool) (grams int64, text string, ok bool) {
	sample := "7 lb or 7 kg"
	if per {
		sample = "1 lb/ft2 or 5 kg/m2"
	}
	s, ok := r.word(n, "a weight, such as "+sample)
	if !ok {
		return 0, "", false
	}
	s = strings.TrimPrefix(s, aboutMark)
	end := strings.LastIndexAny(s, "0123456789½¼¾")
	if i := strings.IndexFunc(s, func(c rune) bool { return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' }); i >= 0 {
		end = i - 1
	}
	if end < 0 || end >= len(s) {
		r.fail(n.at, fault{rule: "weights", what: "not a weight", found: brief(s), allowed: sample})
		return 0, "", false
	}
	number, unit := strings.TrimSpace(s[:end+1]), strings.ToLower(strings.ReplaceAll(s[end+1:], " ", ""))
	if unit == "" {
		allowed := sample
		if v, good := amount(number); good && v.Sign() > 0 {
			allowed = brief(number) + " lb or " + brief(number) + " kg"
			if per {
				allowed = brief(number) + " lb/ft2 or " + brief(number) + " kg/m2"
			}
		}
		r.fail(n.at, fault{rule: "weights", what: "a weight without a unit", found: brief(s), allowed: allowed})
		return 0, "", false
	}
	mass, area, isArea := strings.Cut(strings.ReplaceAll(unit, "²", "2"), "/")
	v, good := amount(number)
	one := massUnit(mass)
	if isArea {
		switch area {
		case "ft2", "sqft", "sf":
			if one != nil {
				one.Mul(one, big.NewRat(footParts, footSquareM2))
			}
		case "m2":
		default:
			one = nil
		}
	}
	if !good || one == nil || v.Sign() <= 0 || isArea != per {
		f := fault{rule: "weights", what: "not a weight", found: brief(s), allowed: sample}
		if per && !isArea {
			f.what = "a weight that does not say of what area"
		}
		if !per && isArea {
			f.what = "a weight of an area where the weight of one is wanted"
		}
		r.fail(n.at, f)
		return 0, "", false
	}
	v.Mul(v, one)
	v.Add(v, big.NewRat(1, 2))
	whole := new(big.Int).Quo(v.Num(), v.Denom())
	if !whole.IsInt64() || whole.Int64() > 10_000_000 {
		r.fail(n.at, fault{rule: "weights", what: "a weight that no ceiling has", found: brief(s), allowed: "less than 10000 kg"})
		return 0, "", false
	}
	return whole.Int64(), s, true
}

// massUnit gives a unit of weight in grams, nil when it is none.
func massUnit(name string) *big.Rat {
	switch name {
	case "lb", "lbs":
		return big.NewRat(poundGrams, poundParts)
	case "oz":
		return big.NewRat(poundGrams, 16*poundParts)
	case "kg":
		return big.NewRat(1000, 1)
	case "g":
		return big.NewRat(1, 1)
	}
	return nil
}

// amount reads a number: whole, decimal, a fraction or a whole and a fraction.
func amount(s string) (*big.Rat, bool) {
	if len(s) == 0 || len(s) > 20 || strings.Trim(s, "0123456789./- ") != "" {
		return nil, false
	}
	whole, part, mixed := strings.Cut(strings.ReplaceAll(s, "-", " "), " ")
	if mixed {
		a, ok1 := amount(whole)
		b, ok2 := amount(strings.TrimSpace(part))
		if !ok1 || !ok2 || !strings.Contains(part, "/") || strings.ContainsAny(whole, "./") {
			return nil, false
		}
		return a.Add(a, b), true
	}
	v, ok := new(big.Rat).SetString(s)
	return v, ok
}

// mass reads a weight of one thing.
func (r *reader) mass(n *node) (room.Mass, bool) {
	g, text, ok := r.weight(n, false)
	return room.Mass{Grams: g, Text: text, At: n.at}, ok
}

// areaMass reads a weight per area.
func (r *reader) areaMass(n *node) (room.AreaMass, bool) {
	g, text, ok := r.weight(n, true)
	return room.AreaMass{GramsPerM2: g, Text: text, At: n.at}, ok
}

// isUnknown reports whether a node is the answer unknown.
func isUnknown(n *node) bool { return n.kind == word && strings.TrimSpace(n.text) == unknownWord }
