package roomfile

import (
	"strconv"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// lightText is a kind of light and what was said of it.
type lightText struct {
	room.Light
	said said
	size string // as written
}

// lightSection lists the keys of a kind of light.
func lightSection() section[lightText] {
	keys := []key[lightText]{
		{name: "light", form: "a name", means: "a name for the kind", need: needed, read: func(r *reader, l *lightText, e entry) {
			l.At = e.key.at
			if s, ok := r.name(e.value); ok && r.once("light", s, e.value.at) {
				l.Name = s
			}
		}},
		{name: "size", form: "a size, such as 24x24", means: "the module that it takes", need: needed,
			read: func(r *reader, l *lightText, e entry) {
				l.Size, _ = r.size(e.value)
				l.size = brief(e.value.text)
			}},
		{name: "count", form: "a whole number", means: "how many", need: needed, read: func(r *reader, l *lightText, e entry) {
			if e.value.kind == word && strings.TrimSpace(e.value.text) == "enough" {
				r.fail(e.value.at, fault{
					rule: "words", what: "`enough` is not read by this edition", found: "enough", allowed: "a whole number",
				})
				return
			}
			l.Count, _ = r.whole(e, 1, 500)
		}},
		{name: "cells", form: "[Q2, Q5]", means: "the cells that they lie in: row letters from P, away from the first wall; columns from its left end",
			read: (*reader).cellsOf},
		{name: "centre from <wall>", form: "a length, or a length if it fits", means: "its centre off a wall, one or two ways",
			read: func(r *reader, l *lightText, e entry) {
				if line, ok := r.gridLine(e); ok {
					l.Centre = append(l.Centre, line)
					r.oneEachWay(l.Centre, 2, e)
				}
			}},
		{name: "arrange", form: "symmetrical, evenly", means: "how they are found a place", need: defaulted,
			read: func(r *reader, l *lightText, e entry) { l.Arrange, _ = r.choice(e, "", "symmetrical", "evenly") }},
		{name: "depth", form: "a length, unknown", means: "panel face to its highest part, driver included", need: asked,
			read: func(r *reader, l *lightText, e entry) {
				l.Depth, _ = r.reading(e.value, positive)
				if l.Depth.Unknown {
					r.warn(e.value.at, "ceiling", fault{
						rule: "depth unknown", what: "the depth of " + called("light", l.Name) + " is not known: the height above it is not checked", found: unknownWord,
					})
				}
			}},
		{name: "thickness", form: "a length", means: "of its flat body, for tilting it in", need: defaulted,
			read: func(r *reader, l *lightText, e entry) { l.Thick, _ = r.reading(e.value, positive) }},
		{name: "weight", form: "7 lb, 3.4 kg", means: "of one; left out, loads are not checked",
			read: func(r *reader, l *lightText, e entry) {
				if isUnknown(e.value) {
					r.warn(e.value.at, "ceiling", fault{
						rule: "weight unknown", what: "the weight of " + called("light", l.Name) + " is not known: loads are not checked", found: unknownWord,
					})
					return
				}
				l.Weight, _ = r.mass(e.value)
			}},
		noteKey(func(l *lightText) *string { return &l.Note }),
	}
	keys = append(keys, later[lightText]("centred between", "within", "rigid", "output", "power", "photometry")...)
	return section[lightText]{name: "a light", word: "light", keys: keys}
}

// cellsOf reads names of cells.
func (r *reader) cellsOf(l *lightText, e entry) {
	allowed := "row letters from P and a column number, such as [Q2, Q5]"
	if e.value.kind != list {
		r.fail(e.value.at, fault{rule: "cells", what: "no list of cells", found: found(e.value), allowed: allowed})
		return
	}
	seen := map[string]finding.Place{}
	for _, n := range e.value.items {
		s, ok := r.word(n, allowed)
		if !ok {
			continue
		}
		s = strings.ToUpper(s)
		letters := strings.TrimRight(s, "0123456789")
		number := s[len(letters):]
		good := letters != "" && len(letters) <= 3 && letters[0] >= 'P' && letters[0] <= 'Z' &&
			strings.Trim(letters, letters[:1]) == "" && number != "" && number[0] != '0' && len(number) <= 3
		if !good {
			r.fail(n.at, fault{
				rule: "cells", what: "not a cell of the grid", found: brief(n.text), allowed: allowed,
				hint: "the row along the first wall is P, the column at its left end is 1",
			})
			continue
		}
		if first, twice := seen[s]; twice {
			r.fail(n.at, fault{
				rule: "cells", what: "a cell is named twice", found: s + " again (first at " + Where(first) + ")", allowed: "each cell once",
			})
			continue
		}
		seen[s] = n.at
		l.Cells = append(l.Cells, room.CellName{Name: s, At: n.at})
	}
}

// lightsOf reads the kinds of light.
func (r *reader) lightsOf(_ *file, e entry) {
	r.things(e, "light", func(n *node) {
		l := lightText{}
		l.At = n.at
		l.said = readMap(r, n, lightSection(), &l, func(l *lightText) string {
			if l.Name == "" {
				return "a light"
			}
			return called("light", l.Name)
		})
		if n.kind != mapping {
			return
		}
		r.settleLight(&l)
		r.room.Lights = append(r.room.Lights, l.Light)
	})
}

// settleLight checks what the keys of a light say together.
func (r *reader) settleLight(l *lightText) {
	who := called("light", l.Name)
	if !l.said.has("depth") {
		r.fail(l.At, fault{
			rule: "asked", what: "how deep is " + who + "? asked for the height above the ceiling, and not answered",
			found: "no `depth`", allowed: "depth: 2-1/2, or unknown", hint: "panel face to its highest part, driver included; add depth: unknown if you do not know",
		})
	}
	var ways []entry
	for _, e := range l.said.all {
		if e.name == "cells" || e.name == "arrange" || e.name == "centre from <wall>" && (len(ways) == 0 || ways[len(ways)-1].name != e.name) {
			ways = append(ways, e)
		}
	}
	if len(ways) > 1 {
		r.fail(ways[1].key.at, fault{
			rule: "places", what: who + " is placed in two ways",
			found:   ways[1].key.text + "; " + ways[0].key.text + " (" + Where(ways[0].key.at) + ")",
			allowed: "one of cells, centre from a wall, arrange", hint: "delete one of the two",
		})
	}
	if n := len(l.Cells); n > 0 && l.Count > 0 && n != l.Count && n%l.Count != 0 {
		r.fail(l.said.place("cells"), fault{
			rule: "cells", what: "the cells are not as many as the lights", found: strconv.Itoa(n) + " cells, count " + strconv.Itoa(l.Count),
			allowed: "a cell for each light",
		})
	}
	if r.room.Ceiling == nil {
		return
	}
	m := r.room.Ceiling.Grid.Module
	if !m.Given() || !l.Size.Given() {
		return
	}
	whole := func(w, h geom.Length) bool { return l.Size.W%w == 0 && l.Size.H%h == 0 }
	if whole(m.W, m.H) || whole(m.H, m.W) {
		return
	}
	f := fault{
		rule: "light size", what: "a light that is not a number of whole modules",
		found:   l.size + " = " + r.bare(l.Size.W) + " x " + r.bare(l.Size.H),
		allowed: r.plainSize(m.W, m.H),
	}
	if m.W == m.H {
		f.allowed += ", " + r.plainSize(m.W, 2*m.H)
	}
	if r.units == measure.Inches && (l.Size.W*12)%m.W == 0 && (l.Size.H*12)%m.H == 0 {
		f.hint = "a bare number is never feet; write " + r.plainSize(l.Size.W*12, l.Size.H*12) + " or " +
			strings.TrimSuffix(r.bare(l.Size.W), " in") + " x " + strings.TrimSuffix(r.bare(l.Size.H), " in") + " ft"
	}
	r.fail(l.Size.At, f)
}

// bareShow prints lengths as bare numbers in the units of the file.
func (r *reader) bareShow() measure.Show {
	if r.units == measure.Millimetres {
		return measure.DefaultShow(measure.Millimetres)
	}
	return measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}
}

// bare prints a length in the units of the file, with the unit.
func (r *reader) bare(l geom.Length) string {
	s := r.bareShow()
	return s.Say(l) + " " + s.Unit()
}

// plainSize prints a size as the file would hold it: 24x48.
func (r *reader) plainSize(w, h geom.Length) string {
	s := r.bareShow()
	if r.units == measure.Inches && (w%geom.Inch != 0 || h%geom.Inch != 0) {
		return s.Say(w) + " x " + s.Say(h)
	}
	return s.Say(w) + "x" + s.Say(h)
}
