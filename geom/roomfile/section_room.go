package roomfile

import (
	"strconv"
	"strings"

	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// roomWord is what the file as a whole is called when it is explained.
const roomWord = "room"

// file gathers what is needed while the sections of a file are read.
type file struct {
	note    string
	every   *node
	walls   []wallText
	things  []openingText
	boards  []boardText
	topSaid said
}

// roomSection lists the keys of the room file itself. What others refer to
// comes before them.
func roomSection() section[file] {
	text := func(name, means string, n need, into func(*room.Room) *string) key[file] {
		return key[file]{name: name, form: "text", means: means, need: n, read: func(r *reader, _ *file, e entry) {
			if s, ok := r.text(e.value); ok {
				*into(r.room) = s
			}
		}}
	}
	keys := []key[file]{
		text("title", "what the job is called, in the title block", needed, func(m *room.Room) *string { return &m.Title }),
		text("place", "where it is", optional, func(m *room.Room) *string { return &m.Place }),
		text("drawn by", "for the title block", optional, func(m *room.Room) *string { return &m.DrawnBy }),
		text("checked by", "for the title block", optional, func(m *room.Room) *string { return &m.CheckedBy }),
		text("number", "of the drawing, for the title block", optional, func(m *room.Room) *string { return &m.Number }),
		text("revision", "for the title block", optional, func(m *room.Room) *string { return &m.Revision }),
		{name: "date", form: "year, month and day, such as 2026-03-14", means: "for the title block; never taken from the clock",
			read: func(r *reader, _ *file, e entry) {
				if s, ok := r.date(e); ok {
					r.room.Date = s
				}
			}},
		{name: "built", form: "a year, or unknown", means: "year of the building, for the lead and asbestos cautions", need: defaulted,
			read: func(r *reader, _ *file, e entry) {
				if !isUnknown(e.value) {
					r.room.Built, _ = r.whole(e, 1000, 2999)
				}
			}},
		{name: "paid work", form: "yes, no", means: "is somebody paid for the work, for the lead caution", need: defaulted,
			read: func(r *reader, _ *file, e entry) {
				r.room.PaidWork, _ = r.answer(e, "", true)
			}},
		{name: "units", form: "inches, millimetres", means: "what a bare number means", need: needed,
			read: func(*reader, *file, entry) {}}, // read before all others
		{name: "show", form: "feet and inches to 1/16, inches to 1/8, millimetres", means: "how figures are printed", need: defaulted,
			read: func(*reader, *file, entry) {}}, // read before all others
		{name: "every wall", form: "keys of a wall", means: "keys for all walls; a wall's own key replaces it whole",
			read: func(*reader, *file, entry) {}}, // read before all others
		{name: "walls", form: "a list of walls", means: "clockwise as seen from above; left and right as you face the wall from inside", need: needed,
			read: (*reader).wallsOf},
		{name: "survey", form: "the keys of the survey", means: "readings besides the walls, and how far the tape is trusted",
			read: func(r *reader, f *file, e entry) {
				readMap(r, e.value, surveySection(), f, func(*file) string { return "the survey" })
				r.room.Survey.At = e.key.at
			}},
		{name: "above", form: "the keys of what is above", means: "the structure overhead and what hangs below it",
			read: func(r *reader, f *file, e entry) {
				readMap(r, e.value, aboveSection(), f, func(*file) string { return "what is above" })
			}},
		{name: "openings", form: "a list of openings", means: "openings wanted in stud walls; a doorway in a new wall is one",
			read: (*reader).openingsOf},
		{name: "boards", form: "a list of rows of boards", means: "rows of full or cut sheets fixed on a wall",
			read: (*reader).boardsOf},
		{name: "ceiling", form: "the keys of the ceiling", means: "the suspended ceiling wanted",
			read: (*reader).ceilingOf},
		{name: "lights", form: "a list of lights", means: "light panels that lie in the grid of the ceiling",
			read: (*reader).lightsOf},
		{name: "drawing", form: "a paper, or the keys of the drawing", means: "the sheets",
			read: func(r *reader, f *file, e entry) {
				readMap(r, e.value, drawingSection(), f, func(*file) string { return "the drawing" })
			}},
		noteKey(func(f *file) *string { return &f.note }),
	}
	keys = append(keys, later[file]("north wall", "floor", "columns", "linings", "insulation", "light wanted", "keep clear",
		"surfaces", "fittings", "stock", "on hand", "saw", "noise", "as built", "finish")...)
	return section[file]{name: "a room file", word: roomWord, keys: keys}
}

// roomOf reads the whole tree.
func (r *reader) roomOf(top *node) {
	if top.kind != mapping {
		if top.kind != refused {
			r.findings = nil // what else was said takes it for a room file
			r.fail(top.at, fault{
				rule: "not a room file", what: "no room file", found: found(top),
				allowed: "keys and values, such as title: Linen closet", hint: "a starter file: roomwright new",
			})
		}
		return
	}
	r.room = &room.Room{}
	f := &file{}
	r.firstThings(top, f)
	f.topSaid = readMap(r, top, roomSection(), f, func(*file) string { return "the room file" })
	if f.note != "" {
		r.room.Notes = append(r.room.Notes, f.note)
	}
	r.finish(f)
}

// firstThings reads the units, the way of showing and the names of the walls,
// which all the rest refers to.
func (r *reader) firstThings(top *node, f *file) {
	r.units, r.show = measure.Inches, measure.DefaultShow(measure.Inches)
	var units, show, walls *node
	for _, p := range top.pairs {
		into := map[string]**node{"units": &units, "show": &show, "walls": &walls, "every wall": &f.every}[ownSpelling(p.key.text)]
		if into != nil && *into == nil {
			*into = p.value
		}
	}
	if units != nil && units.kind != nothing {
		s, ok := r.choice(entry{name: "units", value: units}, "", "inches", "millimetres", "millimeters", "inch", "in", "mm")
		r.unitsKnown = ok
		if ok && strings.HasPrefix(s, "m") {
			r.units = measure.Millimetres
		}
	}
	r.show = measure.DefaultShow(r.units)
	if show != nil && show.kind != nothing {
		if s, ok := r.word(show, "feet and inches to 1/16, inches to 1/8, millimetres"); ok {
			if v, err := measure.ParseShow(s); err == nil {
				r.show = v
			} else {
				r.fail(show.at, fault{
					rule: "words", what: "not an answer to `show`", found: brief(s),
					allowed: "feet and inches to 1/16, inches to 1/8, millimetres",
				})
			}
		}
	}
	r.room.Units, r.room.Show = r.units, r.show
	if walls == nil || walls.kind != list {
		return
	}
	for _, n := range walls.items {
		if n.kind == nothing {
			continue
		}
		name := ""
		for _, p := range n.pairs {
			text := p.value.text
			if tail, tied := strings.CutPrefix(p.key.text, "wall:"); tied && p.value.kind == nothing {
				text = tail
			} else if p.key.text != "wall" || p.value.kind != word {
				continue
			}
			if name == "" {
				name = strings.Join(strings.Fields(text), " ")
			}
		}
		r.walls = append(r.walls, name)
		r.known = r.known || name != ""
	}
}

// wallsOf reads the walls.
func (r *reader) wallsOf(f *file, e entry) {
	r.everyWall(f.every)
	r.things(e, "wall", func(n *node) {
		w := wallText{}
		own := n
		if n.kind == mapping && f.every != nil && f.every.kind == mapping {
			own = merged(n, f.every)
		}
		w.said = readMap(r, own, wallSection(), &w, func(w *wallText) string {
			if w.Name == "" {
				return "a wall"
			}
			return "wall " + w.Name
		})
		w.At = w.said.place("wall")
		if i := len(f.walls); w.Name == "" && i < len(r.walls) {
			w.Name = r.walls[i] // as written, for messages
		}
		f.walls = append(f.walls, w)
	})
	if n := len(f.walls); n != 4 && e.value.kind == list {
		r.fail(e.key.at, fault{
			rule: "number of walls", what: "this edition sets out rooms of four walls, each turning right",
			found:   strings.TrimSuffix(strconv.Itoa(n)+" walls: "+brief(r.wallNames()), ": "),
			allowed: "four walls, clockwise as seen from above",
			hint:    "a room of another shape can be done a part at a time, where the part is four-sided",
		})
	}
	for _, w := range f.walls {
		r.room.Walls = append(r.room.Walls, w.Wall)
	}
}

// everyWall looks over the keys for all walls; they are read with each wall.
func (r *reader) everyWall(every *node) {
	if every == nil || every.kind == nothing || every.kind == refused {
		return
	}
	if every.kind != mapping {
		r.fail(every.at, fault{
			rule: "kind of value", what: "no map after `every wall`", found: found(every),
			allowed: "keys of a wall, such as {made of: block, tape on: masonry}",
		})
		return
	}
	for _, p := range every.pairs {
		switch name := ownSpelling(p.key.text); name {
		case "wall", "length", "starts at":
			r.fail(p.key.at, fault{
				rule: "unknown key", what: "no key " + quote(name) + " in every wall", found: quote(name),
				allowed: "the other keys of a wall (roomwright explain wall)", hint: "each wall has its own",
			})
		}
	}
}

// merged gives the map of a wall with the keys of `every wall` that it does
// not have itself.
func merged(own, every *node) *node {
	out := *own
	out.pairs = append([]pair(nil), own.pairs...)
	for _, p := range every.pairs {
		name := ownSpelling(p.key.text)
		if name == "wall" || name == "length" || name == "starts at" {
			continue
		}
		has := false
		for _, q := range own.pairs {
			has = has || ownSpelling(q.key.text) == name
		}
		if !has {
			out.pairs = append(out.pairs, p)
		}
	}
	return &out
}

// on is the sheet of a wall.
func on(name string) string { return "wall " + name }
