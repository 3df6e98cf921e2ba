package roomfile

import (
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// surveySection lists the keys of the survey.
func surveySection() section[file] {
	length := func(name, means string, b bound, into func(*room.Survey) *geom.Length) key[file] {
		return key[file]{name: name, form: "a length", means: means, need: defaulted,
			read: func(r *reader, _ *file, e entry) {
				if l, ok := r.plain(e.value, b); ok {
					*into(&r.room.Survey) = l
				}
			}}
	}
	keys := []key[file]{
		{name: "readings", form: "{A/B to C/D: 18' 5-3/8\"}", means: "corner to corner, any two",
			read: (*reader).readingsOf},
		{name: "corners", form: "square", means: "square for all four",
			read: func(r *reader, _ *file, e entry) {
				if e.value.kind == mapping {
					r.fail(e.value.at, fault{
						rule: "kind of value", what: "corners one by one are not read by this edition",
						found: "a map", allowed: "square for all, or diagonals under `readings`",
					})
					return
				}
				word, _ := r.choice(e, "", "square")
				r.room.Survey.Square = word == "square"
			}},
		length("tape reads to", "accuracy of a plain reading", positive, func(s *room.Survey) *geom.Length { return &s.TapeReadsTo }),
		length("about means", "accuracy of a reading written with about", positive, func(s *room.Survey) *geom.Length { return &s.AboutMeans }),
		length("closes within", "the greatest misfit accepted: a reading less what all others want", positive,
			func(s *room.Survey) *geom.Length { return &s.ClosesWithin }),
		noteKey(func(f *file) *string { return &f.note }),
	}
	keys = append(keys, later[file]("outline")...)
	return section[file]{name: "the survey", word: "survey", keys: keys}
}

// readingsOf reads the readings from corner to corner.
func (r *reader) readingsOf(_ *file, e entry) {
	s := &r.room.Survey
	if e.value.kind != mapping {
		r.fail(e.value.at, fault{
			rule: "kind of value", what: "no map of readings", found: found(e.value), allowed: e.name + ": {A/B to C/D: 18' 5-3/8\"}",
		})
		return
	}
	type ends struct{ from, to int }
	seen := map[ends]finding.Place{}
	for _, p := range e.value.pairs {
		d := room.Diagonal{At: p.key.at}
		one, two, both := strings.Cut(strings.Join(strings.Fields(p.key.text), " "), " to ")
		if !both {
			f := fault{
				rule: "readings", what: "not a reading from corner to corner", found: quote(p.key.text),
				allowed: "two corners, such as A/B to C/D",
			}
			if strings.Contains(p.key.text, " from ") {
				f.hint = "a corner square off a wall is a word of the language, but not read by this edition"
			}
			r.fail(p.key.at, f)
			continue
		}
		var ok1, ok2 bool
		d.From, ok1 = r.corner(one, p.key.at)
		if ok1 {
			d.To, ok2 = r.corner(two, p.key.at)
		}
		reading, ok3 := room.Reading{}, false
		if p.value.kind == nothing {
			r.fail(p.key.at, fault{
				rule: "empty value", what: "nothing after " + quote(p.key.text), found: "no value", allowed: "a length",
				hint: "a value beginning with # is a comment to the reader",
			})
		} else {
			reading, ok3 = r.reading(p.value, positive)
		}
		d.Reading = reading
		if !ok1 || !ok2 || !ok3 {
			continue
		}
		if d.From == d.To {
			r.fail(p.key.at, fault{
				rule: "readings", what: "a reading from a corner to itself", found: quote(p.key.text), allowed: "two corners, such as A/B to C/D",
			})
			continue
		}
		pair := ends{min(d.From, d.To), max(d.From, d.To)}
		if first, twice := seen[pair]; twice {
			r.fail(p.key.at, fault{
				rule: "doubled key", what: "one reading is written twice",
				found: quote(p.key.text) + " again (first at " + Where(first) + ")", allowed: "each reading once",
				hint: "a length that was taped twice is a list: [221-3/8, 221-1/2]",
			})
			continue
		}
		seen[pair] = p.key.at
		s.Readings = append(s.Readings, d)
	}
}

// corner gives the index of the wall whose left end is the corner A/B.
func (r *reader) corner(s string, at finding.Place) (int, bool) {
	a, b, both := strings.Cut(s, "/")
	if !both {
		if !r.known {
			return -1, false
		}
		r.fail(at, fault{
			rule: "readings", what: "no corner " + quote(s), found: quote(s), allowed: r.corners(),
			hint: "a corner is a wall and the next one; a diagonal is A/B to C/D",
		})
		return -1, false
	}
	a, b = strings.TrimSpace(a), strings.TrimSpace(b)
	i, ok := r.wall(a, at)
	if !ok {
		return -1, false
	}
	j, ok := r.wall(b, at)
	if !ok {
		return -1, false
	}
	if n := len(r.walls); (i+1)%n != j {
		hint := "a corner is a wall and the next one; a diagonal is A/B to C/D"
		if (j+1)%n == i {
			r.fail(at, fault{
				rule: "readings", what: "the walls of a corner stand in the order of the file", found: quote(s), allowed: r.corners(),
				hint: "write " + brief(b+"/"+a),
			})
			return -1, false
		}
		r.fail(at, fault{
			rule: "readings", what: "walls " + brief(a) + " and " + brief(b) + " do not meet", found: quote(s), allowed: r.corners(), hint: hint,
		})
		return -1, false
	}
	return j, true
}

// corners lists the corners of the room.
func (r *reader) corners() string {
	var out []string
	for i, w := range r.walls[:min(len(r.walls), 13)] {
		out = append(out, w+"/"+r.walls[(i+1)%len(r.walls)])
	}
	return listed(out)
}
