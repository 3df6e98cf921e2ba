package roomfile

import (
	"strings"

	"roomwright/geom/room"
)

// frameSection lists the keys of a wall's frame.
func frameSection() section[wallText] {
	keys := []key[wallText]{
		{name: "stud", star: true, form: "a section, such as 2x4 or 38 x 89", means: "the section of its studs", need: asked,
			read: func(r *reader, w *wallText, e entry) { w.Frame.Stud, _ = r.timber(e.value) }},
		{name: "bearing", form: "yes, no, unknown", need: asked,
			means: "does it carry anything but itself; unknown is presumed yes",
			read: func(r *reader, w *wallText, e entry) {
				w.Frame.BearingAt = e.key.at
				readMap(r, e.value, bearingSection(), w, func(*wallText) string { return "`bearing`" })
			}},
		{name: "other duty", form: "none, or any of braced, fire-rated, party, exterior", need: defaulted,
			means: "what else the wall does", read: (*reader).otherDuty},
		{name: "bottom plates", form: "a whole number", means: "how many, of the stud's section laid flat", need: defaulted,
			read: func(r *reader, w *wallText, e entry) { w.Frame.BottomPlates, _ = r.whole(e, 1, 3) }},
		{name: "top plates", form: "a whole number", means: "how many, of the stud's section laid flat", need: defaulted,
			read: func(r *reader, w *wallText, e entry) { w.Frame.TopPlates, _ = r.whole(e, 1, 3) }},
		{name: "stud length", form: "a length", means: "between the plates", need: defaulted,
			read: func(r *reader, w *wallText, e entry) { w.Frame.StudLength, _ = r.reading(e.value, positive) }},
		{name: "studs", form: "16 from left, or {left edges from left: [0, 15-1/4, 31-3/8]}, or unknown", need: asked,
			means: "where they stand: at a spacing, or each as found",
			read: func(r *reader, w *wallText, e entry) {
				if isUnknown(e.value) {
					w.Frame.Studs = room.StudPlan{Given: true, Unknown: true, At: e.value.at}
					return
				}
				t := studsText{}
				told := readMap(r, e.value, studsSection(), &t, func(*studsText) string { return "the list of studs" })
				t.plan.At = e.value.at
				r.settleStuds(&t, told)
				w.Frame.Studs, w.firstCentre = t.plan, len(t.firsts) > 0
				w.Note = joined(w.Note, t.note)
			}},
		noteKey(func(w *wallText) *string { return &w.Note }),
	}
	keys = append(keys, later[wallText]("foot below floor", "top from floor")...)
	return section[wallText]{name: "a frame", word: "frame", keys: keys}
}

// bearingSection lists the keys of the answer to whether a wall carries load.
func bearingSection() section[wallText] {
	return section[wallText]{name: "the answer to `bearing`", word: "bearing", keys: []key[wallText]{
		{name: "answer", star: true, form: "yes, no, unknown", means: "does it carry anything but itself", need: asked,
			read: func(r *reader, w *wallText, e entry) {
				e.name = "bearing"
				w.Frame.Bearing, _ = r.answer(e, "unknown is a good answer: it prints the signs to look for", true)
			}},
		{name: "by", form: "text", means: "on whose word", read: func(r *reader, w *wallText, e entry) {
			w.Frame.BearingBy, _ = r.text(e.value)
		}},
		noteKey(func(w *wallText) *string { return &w.Note }),
	}}
}

// otherDuty reads one duty or a list of them.
func (r *reader) otherDuty(w *wallText, e entry) {
	words := []string{"none", "braced", "fire-rated", "party", "exterior"}
	items := []*node{e.value}
	if e.value.kind == list {
		items, words = e.value.items, words[1:]
	}
	for _, n := range items {
		if n.kind == word && isUnknown(n) && e.value.kind == word {
			return
		}
		if s, ok := r.choice(entry{name: e.name, value: n}, "", words...); ok {
			w.Frame.OtherDuty = append(w.Frame.OtherDuty, s)
		}
	}
}

// studsText is where the studs are, each way as often as it was written.
type studsText struct {
	plan   room.StudPlan
	ways   []entry
	firsts []entry
	note   string
}

// studsSection lists the keys of a list of studs.
func studsSection() section[studsText] {
	keys := []key[studsText]{
		{name: "spacing", star: true, form: "16 from left", need: asked,
			means: "centres at the spacing, from that end of the plate; the end studs are extra",
			read: func(r *reader, t *studsText, e entry) {
				t.ways = append(t.ways, e)
				s, ok := r.word(e.value, "a spacing and the end it runs from, such as 16 from left")
				if !ok || r.hedged(s, e.value) {
					return
				}
				head, end, both := strings.Cut(s, " from ")
				if !both || end != "left" && end != "right" {
					r.fail(e.value.at, fault{
						rule: "studs", what: "a spacing without the end it runs from", found: brief(s),
						allowed: "a spacing and an end, such as 16 from left",
						hint:    "write " + brief(head) + " from left, or from right",
					})
					return
				}
				l, ok := r.figure(strings.TrimSpace(strings.TrimSuffix(head, " centres")), e.value, positive)
				if ok {
					t.plan.Given, t.plan.Spacing = true, l
					if end == "right" {
						t.plan.From = room.Right
					}
				}
			}},
	}
	for _, end := range [...]struct {
		name string
		end  room.End
	}{{"left", room.Left}, {"right", room.Right}} {
		keys = append(keys, key[studsText]{name: "first centre from " + end.name, form: "a length", need: defaulted,
			means: "the first centre of the spacing, from the " + end.name + " end of the plate",
			read: func(r *reader, t *studsText, e entry) {
				t.firsts = append(t.firsts, e)
				reading, ok := r.reading(e.value, fromZero)
				if ok && reading.Known() {
					t.plan.First = reading.Value
				}
			}})
	}
	for _, edge := range [...]struct {
		name string
		edge room.Edge
	}{{"left edges", room.LeftEdge}, {"right edges", room.RightEdge}, {"centres", room.Centre}} {
		for _, end := range [...]struct {
			name string
			end  room.End
		}{{"left", room.Left}, {"right", room.Right}} {
			keys = append(keys, key[studsText]{name: edge.name + " from " + end.name, form: "[0, 15-1/4, 31-3/8]",
				means: "each stud as found, doubled ones twice: the " + edge.name + ", from the corner as taped",
				read: func(r *reader, t *studsText, e entry) {
					t.ways = append(t.ways, e)
					marks, about, ok := r.marks(e.value, "the "+end.name+" end")
					if !ok {
						return
					}
					t.plan.Given, t.plan.Edge, t.plan.From, t.plan.Marks = true, edge.edge, end.end, marks
					if about {
						r.warn(e.value.at, "", fault{
							rule: "about marks", what: "studs written as about are set out as if they were exact",
							found: "about in a list of marks", hint: "find their edges with a fine nail before anything is cut",
						})
					}
				}})
		}
	}
	keys = append(keys, noteKey(func(t *studsText) *string { return &t.note }))
	return section[studsText]{name: "the studs of a frame", word: "studs", keys: keys}
}

// settleStuds checks that the studs were given one way.
func (r *reader) settleStuds(t *studsText, told said) {
	for i, e := range t.ways {
		if i > 0 {
			first := t.ways[0]
			if before(e.key.at, first.key.at) {
				e, first = first, e
			}
			r.twice("the studs are given twice", "a spacing, or marks from one end", e.name, first.name, e.key.at, first.key.at)
		}
	}
	if len(t.ways) == 0 && len(told.all) > 0 {
		r.fail(told.at, fault{
			rule: "studs", what: "no studs in the list of studs", found: "no marks and no spacing",
			allowed: "spacing: 16 from left, or left edges from left: [0, 15-1/4]",
		})
	}
	for _, e := range t.firsts {
		end := strings.TrimPrefix(e.name, "first centre from ")
		from := map[room.End]string{room.Left: "left", room.Right: "right"}[t.plan.From]
		switch {
		case t.plan.Spacing == 0:
			if len(t.ways) > 0 && t.ways[0].name != "spacing" {
				r.fail(e.key.at, fault{
					rule: "studs", what: "a first centre without a spacing", found: e.name, allowed: "spacing: 16 from " + end,
				})
			}
		case end != from:
			r.fail(e.key.at, fault{
				rule: "studs", what: "the spacing and the first centre run from two ends",
				found: e.name + "; spacing from " + from, allowed: "both from one end",
			})
		}
	}
}
