package roomfile

import (
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// wallText is a wall and what was said of it.
type wallText struct {
	room.Wall
	said        said
	frame       said          // what its frame said
	frameAt     finding.Place // of the key `frame`
	firstCentre bool          // of its studs was written
}

// serviceText is a thing in a wall and how it was placed.
type serviceText struct {
	room.Service
	placed placed
}

// existingText is a door or window and how it was placed.
type existingText struct {
	room.Existing
	placed placed
	sizes  []sizeAs
}

// sizeAs is a size given by one of the keys for it.
type sizeAs struct {
	kind room.SizeKind
	size room.Size
	key  finding.Place
	say  string
}

// wallSection lists the keys of a wall.
func wallSection() section[wallText] {
	keys := []key[wallText]{
		{name: "wall", form: "a name", means: "its name", need: needed, read: func(r *reader, w *wallText, e entry) {
			if s, ok := r.name(e.value); ok && r.once("wall", s, e.value.at) {
				w.Name = s
			}
		}},
		{name: "length", form: "a length, two readings as a list, or unknown", need: needed,
			means: "corner to corner between the faces touched; unknown is worked out from the rest",
			read: func(r *reader, w *wallText, e entry) {
				w.Length, _ = r.reading(e.value, positive)
			}},
		{name: "tape on", form: "studs, lining, masonry, unknown", need: asked,
			means: "the face of this wall that the tape touched, both laid along it and where it ends against it",
			read: func(r *reader, w *wallText, e entry) {
				s, _ := r.choice(e, "", "studs", "lining", "masonry", unknownWord)
				w.TapeOn = map[string]room.Face{
					"studs": room.FaceStuds, "lining": room.FaceLining, "masonry": room.FaceMasonry, unknownWord: room.FaceUnknown,
				}[s]
			}},
		{name: "made of", form: "studs, new studs, block, brick, stone, concrete, masonry, unknown", need: asked,
			means: "what holds a screw; new studs are to be built",
			read: func(r *reader, w *wallText, e entry) {
				s, _ := r.choice(e, "", "studs", "new studs", "block", "brick", "stone", "concrete", "masonry", unknownWord)
				w.MadeOf = room.Make(s)
			}},
		{name: "floor to structure", form: "a length", need: asked,
			means: "floor up to the underside of what is overhead, at this wall",
			read: func(r *reader, w *wallText, e entry) {
				if e.value.kind == mapping {
					r.fail(e.value.at, fault{
						rule: "kind of value", what: "two heights of one wall are not read by this edition",
						found: "a map", allowed: "one length, the lesser of the two",
					})
					return
				}
				w.Structure, _ = r.reading(e.value, positive)
			}},
		{name: "lining", form: "{inside: 1/2 gypsum, outside: none}", need: asked,
			means: "what is on it now, by face", read: func(r *reader, w *wallText, e entry) {
				readMap(r, e.value, liningSection(), w, func(w *wallText) string { return "the lining of wall " + w.Name })
			}},
		{name: "in wall", form: "a list of things", means: "cables, boxes, pipes and the like in the wall",
			read: func(r *reader, w *wallText, e entry) { r.servicesOf(w, e, false) }},
		{name: "on wall", form: "a list of things", means: "what is fixed on the wall's face",
			read: func(r *reader, w *wallText, e entry) { r.servicesOf(w, e, true) }},
		{name: "doors", form: "a list of doors", means: "the doors that are there",
			read: func(r *reader, w *wallText, e entry) { r.existingOf(w, e, "door") }},
		{name: "windows", form: "a list of windows", means: "the windows that are there",
			read: func(r *reader, w *wallText, e entry) { r.existingOf(w, e, "window") }},
		{name: "frame", form: "a section such as 2x4, or its keys", need: asked, means: "how a stud wall is framed",
			read: func(r *reader, w *wallText, e entry) {
				w.frameAt, w.Frame.At = e.key.at, e.key.at
				w.frame = readMap(r, e.value, frameSection(), w, func(w *wallText) string { return "the frame of wall " + w.Name })
			}},
		noteKey(func(w *wallText) *string { return &w.Note }),
	}
	keys = append(keys, later[wallText]("starts at", "then")...)
	return section[wallText]{name: "a wall", word: "wall", keys: keys}
}

// liningSection lists the keys of a wall's lining.
func liningSection() section[wallText] {
	return section[wallText]{name: "the lining of a wall", word: "lining", keys: []key[wallText]{
		{name: "inside", form: "1/2 gypsum, none, unknown", means: "this room's face", need: asked,
			read: func(r *reader, w *wallText, e entry) { w.Inside, _ = r.material(e.value) }},
		{name: "outside", form: "1/2 gypsum, none, unknown", means: "the other face, also of a partition", need: asked,
			read: func(r *reader, w *wallText, e entry) { w.Outside, _ = r.material(e.value) }},
		noteKey(func(w *wallText) *string { return &w.Note }),
	}}
}

// serviceSection lists the keys of a thing in a wall.
func serviceSection() section[serviceText] {
	at := func(s *serviceText) *placed { return &s.placed }
	what := []string{"cable", "box", "switch", "outlet", "pipe", "gas", "duct", "blocking", "heater", "post", "other"}
	keys := []key[serviceText]{
		{name: "what", form: strings.Join(what, ", "), means: "what it is", need: needed,
			read: func(r *reader, s *serviceText, e entry) { s.What, _ = r.choice(e, "", what...) }},
		positionKey(at),
	}
	keys = append(keys, spotKeys(at, true)...)
	keys = append(keys, spanKeys(at)...)
	keys = append(keys, centredKeys(at)...)
	keys = append(keys, upKeys(at, true, "bottom from floor", "top from floor", "centre from floor")...)
	keys = append(keys, heightSpanKey(at),
		key[serviceText]{name: "size", form: "a size", means: "width x height; left out, it is a line",
			read: func(r *reader, s *serviceText, e entry) { s.Size, _ = r.size(e.value) }},
		noteKey(func(s *serviceText) *string { return &s.Note }))
	keys = append(keys, later[serviceText]("behind inside")...)
	return section[serviceText]{name: "a thing in a wall", word: "in wall", keys: keys}
}

// servicesOf reads the things in a wall or on it.
func (r *reader) servicesOf(w *wallText, e entry, onFace bool) {
	r.things(e, "thing", func(n *node) {
		s := serviceText{}
		s.At, s.OnFace = n.at, onFace
		told := readMap(r, n, serviceSection(), &s, func(*serviceText) string { return "a thing in wall " + w.Name })
		if told.has("what") {
			s.At = told.place("what")
		}
		who := "the " + s.What + " in wall " + w.Name
		if s.What == "" {
			who = "a thing in wall " + w.Name
		}
		s.Across, s.Up = s.placed.settle(r, who, w.Name)
		if n.kind == mapping && s.What != "" {
			r.whereIs(&s, who, w.Name, told)
		}
		w.Services = append(w.Services, s.Service)
	})
}

// whereIs asks for the place of a thing in a wall, and says what it costs not
// to know it.
func (r *reader) whereIs(s *serviceText, who, wall string, told said) {
	switch {
	case s.Across.Kind == room.UnknownPlace:
		r.warn(s.Across.At, on(wall), fault{
			rule: "position unknown", what: "the place of " + who + " is not known: it is taken to be everywhere in that wall",
			found: "position: unknown", hint: "open the wall by hand and look before any saw",
		})
	case told.has("position"):
	case s.Across.Kind == room.Nowhere && !placedAcross(told):
		r.fail(s.At, fault{
			rule: "asked", what: "where is " + who + "? asked, and not answered", found: "no place across",
			allowed: "such as centre from left: 16, from left: 16 to 18", hint: "write position: unknown if you do not know",
		})
	case s.Up.Kind == room.NoHeight && !anyOf(told, "bottom from floor", "top from floor", "centre from floor", "from floor"):
		r.fail(s.At, fault{
			rule: "asked", what: "how high is " + who + "? asked, and not answered", found: "no height",
			allowed: "such as centre from floor: 48, from floor: 0 to 48", hint: "write position: unknown if you do not know",
		})
	}
	if s.Size.Given() && s.Across.Kind == room.SpanFromEnd {
		r.fail(s.Size.At, fault{
			rule: "places", what: who + " has a size and both edges", found: "a width, and a span across",
			allowed: "both edges, or one edge and the size",
		})
	}
	if s.Size.Given() && s.Up.Kind == room.SpanFromFloor {
		r.fail(s.Size.At, fault{
			rule: "places", what: who + " has a size and both edges", found: "a height, and a span up",
			allowed: "both edges, or one edge and the size",
		})
	}
}

// existingSection lists the keys of a door or window that is there.
func existingSection(what string) section[existingText] {
	at := func(x *existingText) *placed { return &x.placed }
	keys := []key[existingText]{
		{name: what, form: "a name", means: "its name", need: needed, read: func(r *reader, x *existingText, e entry) {
			x.At = e.key.at
			if s, ok := r.name(e.value); ok && r.once("door, window or opening", s, e.value.at) {
				x.Name = s
			}
		}},
		positionKey(at),
	}
	keys = append(keys, sizeKeys(func(x *existingText) *[]sizeAs { return &x.sizes }, room.Rough, room.Clear, room.Leaf)...)
	keys = append(keys, spotKeys(at, true)...)
	keys = append(keys, centredKeys(at)...)
	keys = append(keys,
		key[existingText]{name: "bottom from floor", form: "a length", means: "its bottom, of the size given; zero for a door", need: defaulted,
			read: func(r *reader, x *existingText, e entry) {
				x.Bottom, _ = r.reading(e.value, fromZero)
			}},
		key[existingText]{name: "hinge", form: "left, right", means: "the side of the hinges as seen from this room", need: asked,
			read: func(r *reader, x *existingText, e entry) {
				s, ok := r.choice(e, "", "left", "right")
				x.Hinged = ok
				if s == "right" {
					x.Hinge = room.Right
				}
			}},
		key[existingText]{name: "opens", form: "in, out", means: "into this room or out of it", need: asked,
			read: func(r *reader, x *existingText, e entry) {
				s, _ := r.choice(e, "", "in", "out")
				x.OpensIn, x.OpensOut = s == "in", s == "out"
			}},
		key[existingText]{name: "casing", form: "a length", means: "width of its casing",
			read: func(r *reader, x *existingText, e entry) { x.Casing, _ = r.plain(e.value, positive) }},
		noteKey(func(x *existingText) *string { return &x.Note }))
	keys = append(keys, later[existingText]("way in")...)
	return section[existingText]{name: "a " + what, word: what, keys: keys}
}

// sizeKeys are the keys that give a size of one of the kinds.
func sizeKeys[T any](get func(*T) *[]sizeAs, kinds ...room.SizeKind) []key[T] {
	var out []key[T]
	for _, k := range kinds {
		name, means := sizeWords(k)
		out = append(out, key[T]{name: name, form: "a size", means: means, need: needed,
			read: func(r *reader, t *T, e entry) {
				if s, ok := r.size(e.value); ok {
					list := get(t)
					*list = append(*list, sizeAs{k, s, e.key.at, e.name + " " + brief(e.value.text)})
				}
			}})
	}
	for i := range out {
		out[i].need = optional // one of them is needed, which settleSize sees to
	}
	return out
}

// sizeWords names a kind of size and says what it is.
func sizeWords(k room.SizeKind) (name, means string) {
	switch k {
	case room.Rough:
		return "rough", "the hole in the framing, width x height"
	case room.Clear:
		return "clear", "inside the liners, width x height"
	case room.Sight:
		return "sight", "inside the stops, width x height"
	case room.PaneInHand:
		return "pane in hand", "a sheet that you own, not to be cut, width x height"
	}
	return "leaf", "the door leaf, width x height"
}

// settleSize gives the one size of a thing, and complains of none or more.
func (r *reader) settleSize(sizes []sizeAs, told said, who, allowed string, at finding.Place) (room.SizeKind, room.Size) {
	if len(sizes) == 0 {
		for _, name := range strings.Split(allowed, ", ") {
			if told.has(name) {
				return 0, room.Size{} // it was written, and complained of
			}
		}
		r.fail(at, fault{rule: "key needed", what: who + " has no size", found: "no size", allowed: "one of " + allowed})
		return 0, room.Size{}
	}
	first := sizes[0]
	for _, s := range sizes[1:] {
		if before(s.key, first.key) {
			first = s
		}
	}
	for _, s := range sizes {
		if s.key != first.key {
			r.fail(s.key, fault{
				rule: "sizes", what: "two sizes for " + who,
				found:   s.say + "; " + first.say + " (" + Where(first.key) + ")",
				allowed: "one of " + allowed,
				hint:    "keep the one you must have; the other follows from liner and shims",
			})
		}
	}
	return first.kind, first.size
}

// existingOf reads the doors or windows of a wall.
func (r *reader) existingOf(w *wallText, e entry, what string) {
	r.things(e, what, func(n *node) {
		x := existingText{}
		x.At, x.Window = n.at, what == "window"
		told := readMap(r, n, existingSection(what), &x, func(*existingText) string { return "a " + what + " in wall " + w.Name })
		if n.kind != mapping {
			return
		}
		who := called(what, x.Name)
		x.Kind, x.Size = r.settleSize(x.sizes, told, who, "rough, clear, leaf", x.At)
		x.Across, _ = x.placed.settle(r, who, w.Name)
		switch {
		case x.Across.Kind == room.UnknownPlace:
			r.warn(x.Across.At, on(w.Name), fault{
				rule: "position unknown", what: "the place of " + who + " is not known: it is listed, not drawn", found: "position: unknown",
			})
		case x.Across.Kind == room.Nowhere && !placedAcross(told):
			r.fail(x.At, fault{
				rule: "asked", what: "where is " + who + " in wall " + w.Name + "? asked, and not answered", found: "no place across",
				allowed: "such as left edge from left: 16", hint: "write position: unknown if you do not know",
			})
		}
		if x.Window && x.Across.Kind != room.UnknownPlace && !told.has("bottom from floor") {
			r.fail(x.At, fault{
				rule: "asked", what: "how high is " + who + "? asked, and not answered", found: "no height",
				allowed: "bottom from floor: 40", hint: "write position: unknown if you do not know",
			})
		}
		if x.Window {
			w.Windows = append(w.Windows, x.Existing)
		} else {
			w.Doors = append(w.Doors, x.Existing)
		}
	})
}

// placedAcross reports whether some place across was written, even one that
// could not be read.
func placedAcross(told said) bool {
	for _, e := range told.all {
		if strings.HasSuffix(e.name, "from left") || strings.HasSuffix(e.name, "from right") ||
			strings.HasPrefix(e.name, "centred ") || strings.HasSuffix(e.name, " king") || e.name == "position" {
			return true
		}
	}
	return false
}
