package roomfile

import (
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// aboveSection lists the keys of what is overhead.
func aboveSection() section[file] {
	return section[file]{name: "what is above", word: "above", keys: []key[file]{
		{name: "joists", form: "the keys of the joists, or unknown", means: "the joists overhead", need: asked,
			read: (*reader).joistsOf},
		{name: "in the way", form: "a list of things", means: "what hangs below the structure",
			read: func(r *reader, _ *file, e entry) {
				r.things(e, "thing", func(n *node) { r.obstacleOf(&r.room.Above, n) })
			}},
		noteKey(func(f *file) *string { return &f.note }),
	}}
}

// joistsText is the joists and what was said of them.
type joistsText struct {
	room.Joists
	off  []entry // keys that say where they are
	note string
}

// joistsSection lists the keys of the joists.
func joistsSection() section[joistsText] {
	return section[joistsText]{name: "the joists", word: "joists", keys: []key[joistsText]{
		{name: "size", form: "a section, such as 2x8", means: "their section",
			read: func(r *reader, j *joistsText, e entry) {
				if !isUnknown(e.value) {
					j.Size, _ = r.timber(e.value)
				}
			}},
		{name: "run", form: "A to C, or unknown", means: "they run square to the first wall named, to the other one", need: asked,
			read: func(r *reader, j *joistsText, e entry) {
				s, ok := r.word(e.value, "two walls that face each other, such as A to C")
				if !ok {
					return
				}
				if s == unknownWord {
					j.Unknown = true
					return
				}
				one, two, both := strings.Cut(s, " to ")
				if !both {
					r.fail(e.value.at, fault{
						rule: "joists", what: "one wall where the joists run from one to another", found: brief(s),
						allowed: "two walls that face each other, such as A to C", hint: r.facing(s),
					})
					return
				}
				a, ok1 := r.wall(one, e.value.at)
				b, ok2 := r.wall(two, e.value.at)
				if !ok1 || !ok2 {
					return
				}
				if len(r.walls) == 4 && (a+2)%4 != b {
					r.fail(e.value.at, fault{
						rule: "joists", what: "walls " + brief(one) + " and " + brief(two) + " do not face each other", found: brief(s),
						allowed: "two walls that face each other", hint: r.facing(one),
					})
					return
				}
				j.RunFrom, j.RunTo = a, b
			}},
		{name: "spacing", form: "a length, or unknown", means: "on centre", need: asked,
			read: func(r *reader, j *joistsText, e entry) {
				if isUnknown(e.value) {
					j.Unknown = true
					return
				}
				if v, ok := r.reading(e.value, positive); ok {
					j.Spacing = v.Value
				}
			}},
		{name: "first centre from <wall>", form: "a length, or unknown", need: asked,
			means: "the centre of the first joist, off a wall that they run along",
			read: func(r *reader, j *joistsText, e entry) {
				j.off = append(j.off, e)
				if e.value.kind == mapping {
					r.fail(e.value.at, fault{
						rule: "kind of value", what: "joists that run at a slant are not read by this edition",
						found: "a map", allowed: "one length",
					})
					return
				}
				if isUnknown(e.value) {
					j.Unknown = true
					return
				}
				w, ok := r.wall(e.wall, e.key.at)
				v, fine := r.reading(e.value, fromZero)
				if ok && fine {
					j.From, j.First = w, v.Value
				}
			}},
		{name: "centres from <wall>", form: "[10, 26, 42-1/4], or unknown", need: asked,
			means: "the centre of each joist as found, off a wall that they run along",
			read: func(r *reader, j *joistsText, e entry) {
				j.off = append(j.off, e)
				if isUnknown(e.value) {
					j.Unknown = true
					return
				}
				w, ok := r.wall(e.wall, e.key.at)
				marks, about, fine := r.marks(e.value, "wall "+e.wall)
				if ok && fine {
					j.From, j.Centres = w, marks
					if about {
						r.warn(e.value.at, "ceiling", fault{
							rule: "about marks", what: "joists written as about are used as if they were exact",
							found: "about in a list of marks", hint: "find each joist before a hanger is fixed",
						})
					}
				}
			}},
		noteKey(func(j *joistsText) *string { return &j.note }),
	}}
}

// facing offers the wall that faces another.
func (r *reader) facing(name string) string {
	for i, w := range r.walls {
		if w == name && len(r.walls) == 4 {
			return "write " + w + " to " + r.walls[(i+2)%4]
		}
	}
	return ""
}

// joistsOf reads the joists.
func (r *reader) joistsOf(f *file, e entry) {
	a := &r.room.Above
	if isUnknown(e.value) {
		a.Joists = &room.Joists{Unknown: true, At: e.key.at}
		return
	}
	errors := finding.Errors(r.findings)
	j := joistsText{}
	told := readMap(r, e.value, joistsSection(), &j, func(*joistsText) string { return "the list of joists" })
	j.At = e.key.at
	a.Joists = &j.Joists
	f.note = joined(f.note, j.note)
	if len(j.off) > 1 {
		first, second := j.off[0], j.off[1]
		if before(second.key.at, first.key.at) {
			first, second = second, first
		}
		if len(j.off) > 2 || !j.Unknown {
			r.twice("the joists are placed twice", "a first centre, or each centre, off one wall", second.key.text, first.key.text, second.key.at, first.key.at)
		}
	}
	if finding.Errors(r.findings) > errors || j.Unknown || e.value.kind != mapping || !r.known {
		return
	}
	ask := func(what, key, sample string) {
		r.fail(e.key.at, fault{
			rule: "asked", what: what + "? asked for the hangers, and not answered", found: "no " + quote(key) + " in the joists",
			allowed: key + ": " + sample + ", or unknown", hint: "add " + key + ": unknown if you do not know: no hangers are placed then",
		})
	}
	switch {
	case !told.has("run"):
		ask("which way do the joists run", "run", "A to C")
	case len(j.off) == 0:
		walls := ""
		if n := len(r.walls); n == 4 {
			walls = r.walls[(j.RunFrom+3)%n]
		}
		ask("where are the joists", "first centre from "+walls, "10")
	case j.off[0].name == "first centre from <wall>" && !told.has("spacing"):
		ask("how far apart are the joists", "spacing", "16")
	case j.From == j.RunFrom || j.From == j.RunTo:
		n := len(r.walls)
		r.fail(j.off[0].key.at, fault{
			rule: "joists", what: "joists are measured off a wall that they run along",
			found:   quote(j.off[0].key.text) + ", and they run to wall " + r.walls[j.From],
			allowed: "off wall " + r.walls[(j.RunFrom+1)%n] + " or wall " + r.walls[(j.RunFrom+n-1)%n],
		})
	}
}

// obstacleSection lists the keys of a thing that hangs below the structure.
func obstacleSection() section[room.Obstacle] {
	what := []string{"beam", "duct", "pipe", "valve", "box", "other"}
	return section[room.Obstacle]{name: "a thing in the way", word: "in the way", keys: []key[room.Obstacle]{
		{name: "what", form: strings.Join(what, ", "), means: "what it is", need: needed,
			read: func(r *reader, o *room.Obstacle, e entry) {
				o.At = e.key.at
				o.What, _ = r.choice(e, "", what...)
			}},
		{name: "from <wall>", form: "both edges, such as 0 to 14", need: needed,
			means: "both edges off a wall; a second one across, left out = wall to wall",
			read: func(r *reader, o *room.Obstacle, e entry) {
				w, ok := r.wall(e.wall, e.key.at)
				from, to, about, fine := r.span(e.value, true)
				if !ok || !fine {
					return
				}
				o.Spans = append(o.Spans, room.PlanSpan{Wall: w, From: from, To: to, About: about, At: e.value.at})
				n := len(o.Spans)
				if n > 2 || n == 2 && len(r.walls) == 4 && (o.Spans[0].Wall+o.Spans[1].Wall)%2 == 0 {
					first := o.Spans[0]
					r.fail(e.key.at, fault{
						rule: "places", what: "a thing in the way is placed twice the same way",
						found:   quote(e.key.text) + "; from " + r.walls[first.Wall] + " (" + Where(first.At) + ")",
						allowed: "one span off a wall, and one across it",
					})
					o.Spans = o.Spans[:n-1]
				}
			}},
		{name: "below structure", form: "a length", means: "its lowest point below the structure",
			read: func(r *reader, o *room.Obstacle, e entry) { o.Below, _ = r.reading(e.value, positive) }},
		{name: "underside from floor", form: "a length", means: "its lowest point above the floor",
			read: func(r *reader, o *room.Obstacle, e entry) { o.FromUp, _ = r.reading(e.value, positive) }},
		{name: "access", form: "yes, no", means: "must it stay within reach", need: defaulted,
			read: func(r *reader, o *room.Obstacle, e entry) {
				a, _ := r.answer(e, "", false)
				o.Access = a == room.Yes
			}},
		noteKey(func(o *room.Obstacle) *string { return &o.Note }),
	}}
}

// obstacleOf reads one thing in the way.
func (r *reader) obstacleOf(a *room.Above, n *node) {
	o := room.Obstacle{At: n.at}
	told := readMap(r, n, obstacleSection(), &o, func(o *room.Obstacle) string {
		if o.What == "" {
			return "a thing in the way"
		}
		return "the " + o.What + " in the way"
	})
	if n.kind != mapping {
		return
	}
	who := "the " + o.What + " in the way"
	below, hasBelow := told.get("below structure")
	up, hasUp := told.get("underside from floor")
	switch {
	case hasBelow && hasUp:
		first, second := below, up
		if before(second.key.at, first.key.at) {
			first, second = second, first
		}
		r.twice(who+" has two heights", "one height", second.key.text, first.key.text, second.key.at, first.key.at)
	case !hasBelow && !hasUp && o.What != "":
		r.fail(o.At, fault{
			rule: "key needed", what: who + " has no height", found: "no `below structure`, no `underside from floor`",
			allowed: "one of the two", hint: "its lowest point, insulation and hangers included",
		})
	case o.Below.Unknown || o.FromUp.Unknown:
		at := o.Below.At
		if zero(at) {
			at = o.FromUp.At
		}
		r.warn(at, "ceiling", fault{
			rule: "height unknown", what: "how low " + who + " hangs is not known: it is drawn, and not checked against the ceiling",
			found: "unknown",
		})
	}
	a.InTheWay = append(a.InTheWay, o)
}
