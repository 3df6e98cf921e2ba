package roomfile

import (
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// openingText is an opening and what was said of it.
type openingText struct {
	room.Opening
	placed placed
	sizes  []sizeAs
	said   said
	header said
	jacks  said
	casing said
	faces  bool // `faces` was written
}

// openingSection lists the keys of an opening.
func openingSection() section[openingText] {
	at := func(o *openingText) *placed { return &o.placed }
	keys := []key[openingText]{
		{name: "opening", form: "a name", means: "its name", need: needed, read: func(r *reader, o *openingText, e entry) {
			o.At = e.key.at
			if s, ok := r.name(e.value); ok && r.once("door, window or opening", s, e.value.at) {
				o.Name = s
			}
		}},
		{name: "wall", form: "the name of a wall", means: "the wall that is cut", need: needed, read: func(r *reader, o *openingText, e entry) {
			if s, ok := r.word(e.value, "the name of a wall"); ok {
				o.Wall, _ = r.wall(s, e.value.at)
			}
		}},
	}
	keys = append(keys, sizeKeys(func(o *openingText) *[]sizeAs { return &o.sizes },
		room.Rough, room.Clear, room.Sight, room.PaneInHand)...)
	keys = append(keys, spotKeys(at, false)...)
	keys = append(keys, centredKeys(at)...)
	keys = append(keys, kingKeys(at)...)
	keys = append(keys, upKeys(at, false, "bottom from floor", "top from floor", "top from ceiling")...)
	keys = append(keys, []key[openingText]{
		{name: "header", form: "2 of 2x6, flat 2x4, or its keys", need: needed,
			means: "in a bearing wall as the engineer says, it is never chosen here; a flat 2x4 may do in a wall that carries nothing",
			read: func(r *reader, o *openingText, e entry) {
				o.Header.At = e.key.at
				o.header = readMap(r, e.value, headerSection(), o, func(*openingText) string { return "the header" })
			}},
		{name: "jacks", form: "a whole number, or its keys", means: "how many at each side, and how they meet the sill", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				o.jacks = readMap(r, e.value, jacksSection(), o, func(*openingText) string { return "the jacks" })
			}},
		{name: "sill", form: "0, 1 or 2", means: "rough sill members", need: defaulted,
			read: func(r *reader, o *openingText, e entry) { o.Sill, _ = r.whole(e, 0, 2) }},
		{name: "liner", form: "a thickness, or its keys", means: "the boards lining the opening", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				readMap(r, e.value, linerSection(), o, func(*openingText) string { return "the liner" })
			}},
		{name: "shims", form: "a length", means: "gap at each side of the liner", need: defaulted,
			read: func(r *reader, o *openingText, e entry) { o.Shims, _ = r.want(e.value, fromZero) }},
		{name: "casing", form: "a width, or its keys", means: "the trim round the opening", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				o.casing = readMap(r, e.value, casingSection(), o, func(*openingText) string { return "the casing" })
			}},
		{name: "stops", form: "a length", means: "width of the stops that hold the sheet", need: defaulted,
			read: func(r *reader, o *openingText, e entry) { o.Stops, _ = r.want(e.value, positive) }},
		{name: "glazing", form: "3/16 acrylic, none, unknown, or its keys", means: "the sheet in the opening", need: asked,
			read: func(r *reader, o *openingText, e entry) {
				readMap(r, e.value, glazingSection(), o, func(*openingText) string { return "the glazing" })
			}},
		noteKey(func(o *openingText) *string { return &o.Note }),
	}...)
	return section[openingText]{name: "an opening", word: "opening", keys: keys}
}

// headerSection lists the keys of a header.
func headerSection() section[openingText] {
	return section[openingText]{name: "a header", word: "header", keys: []key[openingText]{
		{name: "plies", star: true, form: "2 of 2x6, or flat 2x4", means: "on edge, or one member laid flat", need: needed,
			read: func(r *reader, o *openingText, e entry) {
				s, ok := r.word(e.value, "2 of 2x6, or flat 2x4")
				if !ok || r.hedged(s, e.value) {
					return
				}
				if flat, is := strings.CutPrefix(s, "flat "); is {
					o.Header.Timber, _ = r.timberText(flat, e.value)
					o.Header.Plies, o.Header.Flat = 1, true
					return
				}
				count, what, ok := r.several(e.value, "2 of 2x6, or flat 2x4")
				if ok {
					o.Header.Plies = count
					o.Header.Timber, _ = r.timberText(what, e.value)
				}
			}},
		{name: "filler", form: "a thickness, none", means: "between the plies", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				if s, ok := r.word(e.value, "a thickness, none"); ok && s != "none" {
					o.Header.Filler, _ = r.plain(e.value, positive)
				}
			}},
		{name: "let-in", form: "a length", means: "clearance to get the header in, in length and in height", need: defaulted,
			read: func(r *reader, o *openingText, e entry) { o.Header.LetIn, _ = r.want(e.value, fromZero) }},
		noteKey(func(o *openingText) *string { return &o.Note }),
	}}
}

// jacksSection lists the keys of the jacks.
func jacksSection() section[openingText] {
	return section[openingText]{name: "the jacks", word: "jacks", keys: []key[openingText]{
		{name: "a side", star: true, form: "a whole number", means: "how many at each side", need: defaulted,
			read: func(r *reader, o *openingText, e entry) { o.Jacks, _ = r.whole(e, 1, 4) }},
		{name: "at sill", form: "through, split", means: "through to the plate, or split at the sill, which then runs king to king", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				s, _ := r.choice(e, "", "through", "split")
				o.Split = s == "split"
			}},
		noteKey(func(o *openingText) *string { return &o.Note }),
	}}
}

// linerSection lists the keys of a liner.
func linerSection() section[openingText] {
	return section[openingText]{name: "the liner", word: "liner", keys: []key[openingText]{
		{name: "thickness", star: true, form: "a length", means: "of the boards", need: defaulted,
			read: func(r *reader, o *openingText, e entry) { o.Liner, _ = r.want(e.value, positive) }},
		{name: "over", form: "head and sill, sides", means: "which of them run over the others", need: defaulted,
			read: func(r *reader, o *openingText, e entry) { o.LinerRun, _ = r.choice(e, "", "head and sill", "sides") }},
		noteKey(func(o *openingText) *string { return &o.Note }),
	}}
}

// casingSection lists the keys of a casing.
func casingSection() section[openingText] {
	return section[openingText]{name: "the casing", word: "casing", keys: []key[openingText]{
		{name: "width", star: true, form: "a length, none", means: "of the boards; none: no casing on either face", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				if e.value.kind == word && strings.TrimSpace(e.value.text) == "none" {
					o.faces = true
					return
				}
				o.Casing.Width, _ = r.want(e.value, positive)
			}},
		{name: "reveal", form: "a length", means: "its edge back from the edge of the liner", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				if e.value.kind == mapping {
					r.fail(e.value.at, fault{
						rule: "kind of value", what: "a reveal for each side is not read by this edition", found: "a map", allowed: "one length",
					})
					return
				}
				o.Casing.Reveal, _ = r.want(e.value, fromZero)
			}},
		{name: "faces", form: "both, inside, outside, none", means: "the faces of the wall that have it", need: defaulted,
			read: func(r *reader, o *openingText, e entry) {
				s, ok := r.choice(e, "", "both", "inside", "outside", "none")
				o.faces = ok
				o.Casing.Inside = s == "both" || s == "inside"
				o.Casing.Outside = s == "both" || s == "outside"
			}},
		noteKey(func(o *openingText) *string { return &o.Note }),
	}}
}

// glazingSection lists the keys of the glazing.
func glazingSection() section[openingText] {
	keys := []key[openingText]{
		{name: "sheet", star: true, form: "3/16 acrylic, none, unknown", means: "thickness and material; none: no liner, casing or stops unless they are given", need: asked,
			read: func(r *reader, o *openingText, e entry) {
				o.Glazing.Sheet, o.Glazing.Given = r.material(e.value)
			}},
		noteKey(func(o *openingText) *string { return &o.Note }),
	}
	keys = append(keys, later[openingText]("swing", "cut at", "humidity", "can be struck", "walking surface off")...)
	return section[openingText]{name: "the glazing", word: "glazing", keys: keys}
}

// openingsOf reads the openings.
func (r *reader) openingsOf(f *file, e entry) {
	r.things(e, "opening", func(n *node) {
		o := openingText{}
		o.At, o.Wall = n.at, -1
		o.said = readMap(r, n, openingSection(), &o, func(o *openingText) string {
			if o.Name == "" {
				return "an opening"
			}
			return called("opening", o.Name)
		})
		if n.kind != mapping {
			return
		}
		who, wall := called("opening", o.Name), ""
		if o.Wall >= 0 {
			wall = r.walls[o.Wall]
		}
		o.Kind, o.Size = r.settleSize(o.sizes, o.said, who, "rough, clear, sight, pane in hand", o.At)
		o.Across, o.Up = o.placed.settle(r, who, wall)
		if o.Across.Kind == room.Nowhere && !placedAcross(o.said) {
			r.fail(o.At, fault{
				rule: "key needed", what: who + " has no place across", found: "no edge, no centre, no king",
				allowed: "one of left edge, right edge, centre from left or right; centred on, centred between; left king, right king",
			})
		}
		if o.Up.Kind == room.NoHeight && !anyOf(o.said, "bottom from floor", "top from floor", "top from ceiling") {
			r.fail(o.At, fault{
				rule: "key needed", what: who + " has no height", found: "no bottom, no top",
				allowed: "one of bottom from floor, top from floor, top from ceiling",
			})
		}
		f.things = append(f.things, o)
	})
}

// anyOf reports whether one of the keys was written.
func anyOf(s said, names ...string) bool {
	for _, n := range names {
		if s.has(n) {
			return true
		}
	}
	return false
}

// things checks what the openings are centred on.
func (r *reader) centredOn(f *file) {
	next := map[string]string{}
	for _, o := range f.things {
		if o.Across.Kind != room.CentredOnThing || o.Wall < 0 || o.Wall >= len(f.walls) {
			continue
		}
		var names []string
		for _, p := range f.things {
			if p.Wall == o.Wall && p.Name != o.Name {
				names = append(names, p.Name)
			}
		}
		for _, d := range f.walls[o.Wall].Doors {
			names = append(names, d.Name)
		}
		r.among(o.Across.Thing, names, o.Across.At, f.walls[o.Wall].Name)
		next[o.Name] = o.Across.Thing
	}
	for _, o := range f.things {
		at := o.Name
		for range f.things {
			at = next[at]
			if at == o.Name && at != "" {
				r.fail(o.Across.At, fault{
					rule: "places", what: called("opening", o.Name) + " is centred on itself in the end",
					found: "centred on " + o.Across.Thing, allowed: "a chain that ends at a wall, a stud or an edge",
				})
				break
			}
		}
	}
	for _, b := range f.boards {
		if b.Across.Kind != room.CentredOnThing || b.Wall < 0 || b.Wall >= len(f.walls) {
			continue
		}
		var names []string
		for _, p := range f.things {
			if p.Wall == b.Wall {
				names = append(names, p.Name)
			}
		}
		for _, d := range f.walls[b.Wall].Doors {
			names = append(names, d.Name)
		}
		r.among(b.Across.Thing, names, b.Across.At, f.walls[b.Wall].Name)
	}
}

// among complains when a thing that another is centred on is not on the wall.
func (r *reader) among(name string, names []string, at finding.Place, wall string) {
	for _, n := range names {
		if n == name {
			return
		}
	}
	list := listed(names)
	if list == "" {
		list = "wall, a stud: the wall has no doors or other openings"
	}
	r.fail(at, fault{
		rule: "names", what: "nothing called " + quote(name) + " in wall " + wall, found: quote(name), allowed: list,
		hint: meant(name, names, false),
	})
}
