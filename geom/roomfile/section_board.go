package roomfile

import "roomwright/geom/room"

// boardText is a row of boards and what was said of it.
type boardText struct {
	room.Board
	placed placed
	said   said
}

// boardSection lists the keys of a row of boards.
func boardSection() section[boardText] {
	at := func(b *boardText) *placed { return &b.placed }
	keys := []key[boardText]{
		{name: "board", form: "a name", means: "its name", need: needed, read: func(r *reader, b *boardText, e entry) {
			b.At = e.key.at
			if s, ok := r.name(e.value); ok && r.once("board", s, e.value.at) {
				b.Name = s
			}
		}},
		{name: "wall", form: "the name of a wall", means: "the wall that it hangs on", need: needed, read: func(r *reader, b *boardText, e entry) {
			if s, ok := r.word(e.value, "the name of a wall"); ok {
				b.Wall, _ = r.wall(s, e.value.at)
			}
		}},
		{name: "sheets", form: "3 of 48 x 96", means: "how many, and each as bought: width x height as hung", need: needed,
			read: func(r *reader, b *boardText, e entry) {
				sample := "3 of 48 x 96"
				count, what, ok := r.several(e.value, sample)
				if ok {
					b.Count = count
					b.Size, _ = r.sizeText(what, e.value)
				}
			}},
		{name: "sheet", form: "1/4 hardboard", means: "thickness and material",
			read: func(r *reader, b *boardText, e entry) { b.Sheet, _ = r.material(e.value) }},
	}
	keys = append(keys, spotKeys(at, false)...)
	keys = append(keys, centredKeys(at)...)
	keys = append(keys, upKeys(at, false, "bottom from floor", "top from floor", "centre from floor")...)
	keys = append(keys, []key[boardText]{
		{name: "cut to", form: "a length", means: "height left after cutting", need: defaulted,
			read: func(r *reader, b *boardText, e entry) { b.CutTo, _ = r.want(e.value, positive) }},
		{name: "gap", form: "a length", means: "between two sheets", need: defaulted,
			read: func(r *reader, b *boardText, e entry) { b.Gap, _ = r.want(e.value, fromZero) }},
		noteKey(func(b *boardText) *string { return &b.Note }),
	}...)
	keys = append(keys, later[boardText]("ledge", "finish", "strapping")...)
	return section[boardText]{name: "a row of boards", word: "board", keys: keys}
}

// boardsOf reads the rows of boards.
func (r *reader) boardsOf(f *file, e entry) {
	r.things(e, "board", func(n *node) {
		b := boardText{}
		b.At, b.Wall = n.at, -1
		b.said = readMap(r, n, boardSection(), &b, func(b *boardText) string {
			if b.Name == "" {
				return "a row of boards"
			}
			return called("board", b.Name)
		})
		if n.kind != mapping {
			return
		}
		who, wall := called("board", b.Name), ""
		if b.Wall >= 0 {
			wall = r.walls[b.Wall]
		}
		b.Across, b.Up = b.placed.settle(r, who, wall)
		if b.Up.Kind == room.NoHeight && !anyOf(b.said, "bottom from floor", "top from floor", "centre from floor") {
			r.fail(b.At, fault{
				rule: "key needed", what: who + " has no height", found: "no bottom, no top, no centre",
				allowed: "one of bottom from floor, top from floor, centre from floor",
			})
		}
		if b.CutTo.Given() && b.Size.Given() && b.CutTo.Value > b.Size.H {
			r.fail(b.CutTo.At, fault{
				rule: "sizes", what: who + " is to be cut higher than its sheets are", found: "cut to " + r.say(b.CutTo.Value),
				allowed: "at most " + r.say(b.Size.H), hint: "sheets are width x height as hung",
			})
		}
		f.boards = append(f.boards, b)
	})
}
