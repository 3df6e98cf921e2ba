package roomfile

import (
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// ceilingText is the ceiling and what was said of it.
type ceilingText struct {
	room.Ceiling
	said, panel said
}

// ceilingSection lists the keys of the ceiling.
func ceilingSection() section[ceilingText] {
	face := func(name, means string, into func(*ceilingText) *room.Want) key[ceilingText] {
		return key[ceilingText]{name: name, form: "a length, or a length if it fits", means: means,
			read: func(r *reader, c *ceilingText, e entry) {
				if e.value.kind == word && strings.TrimSpace(e.value.text) == "highest" {
					r.fail(e.value.at, fault{
						rule: "words", what: "`highest` is not read by this edition", found: "highest", allowed: "a length",
						hint: "write the height that is wanted; what is too high is answered with the highest that works",
					})
					return
				}
				*into(c), _ = r.want(e.value, positive)
			}}
	}
	part := func(name, form, means string, n need, sec func() section[ceilingText], who string) key[ceilingText] {
		return key[ceilingText]{name: name, form: form, means: means, need: n,
			read: func(r *reader, c *ceilingText, e entry) {
				switch name {
				case "grid":
					c.Grid.At = e.key.at
				case "mains":
					c.Mains.At = e.key.at
				}
				told := readMap(r, e.value, sec(), c, func(*ceilingText) string { return who })
				if name == "panel" {
					c.panel = told
				}
			}}
	}
	keys := []key[ceilingText]{
		face("face from floor", "finished face, the underside of the flange, from the finished floor", func(c *ceilingText) *room.Want { return &c.FaceFromFloor }),
		face("face below structure", "finished face below the underside of the structure", func(c *ceilingText) *room.Want { return &c.FaceBelowStructure }),
		{name: "clear above", form: "a length", means: "least free height above the tees", need: defaulted,
			read: func(r *reader, c *ceilingText, e entry) { c.Clear, _ = r.want(e.value, fromZero) }},
		{name: "seismic", form: "none, A, B, C, D, E, F, unknown", means: "seismic design category of the place", need: asked,
			read: func(r *reader, c *ceilingText, e entry) {
				c.Seismic, _ = r.choice(e, "", "none", "A", "B", "C", "D", "E", "F", unknownWord)
			}},
		part("grid", "a size such as 24x24, or its keys", "the module and how it is set out", needed, gridSection, "the grid"),
		part("mains", "the wall they run along, or its keys", "the main tees", defaulted, mainsSection, "the mains"),
		part("hangers", "a length, or its keys", "the hanger wires", defaulted, hangersSection, "the hangers"),
		part("edge", "a length, or its keys", "where the tees end at a wall", defaulted, edgeSection, "the edge"),
		part("panel", "a thickness, unknown, or its keys", "the lay-in panels", asked, panelSection, "the panel"),
		noteKey(func(c *ceilingText) *string { return &c.Note }),
	}
	keys = append(keys, later[ceilingText]("boxing")...)
	return section[ceilingText]{name: "the ceiling", word: "ceiling", keys: keys}
}

// wallKey is a key whose value is the name of a wall.
func wallKey(name, means string, star bool, n need, into func(*ceilingText) *int) key[ceilingText] {
	return key[ceilingText]{name: name, star: star, form: "the name of a wall", means: means, need: n,
		read: func(r *reader, c *ceilingText, e entry) {
			if s, ok := r.word(e.value, "the name of a wall"); ok {
				*into(c), _ = r.wall(s, e.value.at)
			}
		}}
}

// lineKey is a key that puts a centre line off a wall, one each way.
func lineKey(means string, into func(*ceilingText) *[]room.GridLine, most int) key[ceilingText] {
	return key[ceilingText]{name: "line from <wall>", form: "a length, or a length if it fits", means: means,
		read: func(r *reader, c *ceilingText, e entry) {
			if line, ok := r.gridLine(e); ok {
				list := into(c)
				*list = append(*list, line)
				r.oneEachWay(*list, most, e)
			}
		}}
}

// gridLine reads a distance off the wall that a key names.
func (r *reader) gridLine(e entry) (room.GridLine, bool) {
	w, ok := r.wall(e.wall, e.key.at)
	v, fine := r.want(e.value, fromZero)
	return room.GridLine{Wall: w, Value: v}, ok && fine
}

// oneEachWay complains when the last line of a list lies the same way as
// another.
func (r *reader) oneEachWay(lines []room.GridLine, most int, e entry) {
	if len(r.walls) != 4 {
		return
	}
	last := lines[len(lines)-1]
	for _, l := range lines[:len(lines)-1] {
		if most > 1 && (l.Wall+last.Wall)%2 != 0 {
			continue
		}
		r.fail(e.key.at, fault{
			rule: "places", what: "two places the same way",
			found:   quote(e.key.text) + "; off wall " + r.walls[l.Wall] + " (" + Where(l.Value.At) + ")",
			allowed: map[bool]string{true: "one along the room, one across", false: "one"}[most > 1],
			hint:    "delete one of the two",
		})
		return
	}
}

// wantKey is a key whose value is a length that is wanted.
func wantKey(name, means string, star bool, n need, b bound, into func(*ceilingText) *room.Want) key[ceilingText] {
	return key[ceilingText]{name: name, star: star, form: "a length", means: means, need: n,
		read: func(r *reader, c *ceilingText, e entry) { *into(c), _ = r.want(e.value, b) }}
}

// gridSection lists the keys of the grid.
func gridSection() section[ceilingText] {
	keys := []key[ceilingText]{
		{name: "module", star: true, form: "a size, such as 24x24 or 600x600", means: "tee centre to tee centre", need: needed,
			read: func(r *reader, c *ceilingText, e entry) { c.Grid.Module, _ = r.size(e.value) }},
		wallKey("follow", "the wall that the grid is parallel to", false, defaulted, func(c *ceilingText) *int { return &c.Grid.Follow }),
		lineKey("a tee's centre line this far off that wall: sets the border there", func(c *ceilingText) *[]room.GridLine { return &c.Grid.Lines }, 2),
		wantKey("least border", "wall face to tee centre", false, defaulted, positive, func(c *ceilingText) *room.Want { return &c.Grid.Least }),
		wantKey("tee face", "width of the face of a tee", false, defaulted, positive, func(c *ceilingText) *room.Want { return &c.Grid.TeeFace }),
		wantKey("tee height", "flange to the top of the bulb", false, defaulted, positive, func(c *ceilingText) *room.Want { return &c.Grid.TeeHeight }),
		noteKey(func(c *ceilingText) *string { return &c.Note }),
	}
	keys = append(keys, later[ceilingText]("long side", "aims")...)
	return section[ceilingText]{name: "the grid", word: "grid", keys: keys}
}

// mainsSection lists the keys of the main tees.
func mainsSection() section[ceilingText] {
	return section[ceilingText]{name: "the mains", word: "mains", keys: []key[ceilingText]{
		wallKey("along", "the wall that they run along", true, defaulted, func(c *ceilingText) *int { return &c.Mains.Along }),
		lineKey("a main on this line", func(c *ceilingText) *[]room.GridLine { return &c.Mains.Line }, 1),
		wantKey("spacing", "centre to centre", false, defaulted, positive, func(c *ceilingText) *room.Want { return &c.Mains.Spacing }),
		wantKey("stock", "length of a stick as bought", false, defaulted, positive, func(c *ceilingText) *room.Want { return &c.Mains.Stock }),
		{name: "slots", form: "3 then every 6", means: "the first slot from the factory end, and the pitch", need: defaulted,
			read: func(r *reader, c *ceilingText, e entry) {
				s, ok := r.word(e.value, "3 then every 6")
				if !ok || r.hedged(s, e.value) {
					return
				}
				first, pitch, both := strings.Cut(s, " then every ")
				if !both {
					r.fail(e.value.at, fault{
						rule: "spacings", what: "slots without a first one or a pitch", found: brief(s), allowed: "3 then every 6",
					})
					return
				}
				a, ok1 := r.figure(first, e.value, positive)
				b, ok2 := r.figure(pitch, e.value, positive)
				if ok1 && ok2 {
					c.Mains.Slot, c.Mains.Pitch = room.Want{Value: a, At: e.value.at}, room.Want{Value: b, At: e.value.at}
				}
			}},
		{name: "duty", form: "light, intermediate, heavy", means: "duty class of the tees; left out, loads are printed, not judged",
			read: func(r *reader, c *ceilingText, e entry) {
				c.Mains.Duty, _ = r.choice(e, "", "light", "intermediate", "heavy")
			}},
		noteKey(func(c *ceilingText) *string { return &c.Note }),
	}}
}

// hangersSection lists the keys of the hangers.
func hangersSection() section[ceilingText] {
	return section[ceilingText]{name: "the hangers", word: "hangers", keys: []key[ceilingText]{
		wantKey("spacing", "along a main", true, defaulted, positive, func(c *ceilingText) *room.Want { return &c.HangerSpacing }),
		wantKey("first within", "the first one, from a wall", false, defaulted, positive, func(c *ceilingText) *room.Want { return &c.HangerFirst }),
		noteKey(func(c *ceilingText) *string { return &c.Note }),
	}}
}

// edgeSection lists the keys of the edge of the ceiling.
func edgeSection() section[ceilingText] {
	keys := []key[ceilingText]{
		wantKey("gap", "tee end to wall", true, defaulted, fromZero, func(c *ceilingText) *room.Want { return &c.EdgeGap }),
		wantKey("angle", "leg of the wall angle", false, defaulted, positive, func(c *ceilingText) *room.Want { return &c.Angle }),
		noteKey(func(c *ceilingText) *string { return &c.Note }),
	}
	keys = append(keys, later[ceilingText]("carrier strip")...)
	return section[ceilingText]{name: "the edge", word: "edge", keys: keys}
}

// panelSection lists the keys of the lay-in panels.
func panelSection() section[ceilingText] {
	return section[ceilingText]{name: "the panel", word: "panel", keys: []key[ceilingText]{
		{name: "thickness", star: true, form: "a length, unknown", means: "of a panel", need: asked,
			read: func(r *reader, c *ceilingText, e entry) {
				if isUnknown(e.value) {
					c.Panel.Unknown = true
					r.warn(e.value.at, "ceiling", fault{
						rule: "panel unknown", what: "the thickness of the panels is not known: the height to tilt them in is not checked", found: unknownWord,
					})
					return
				}
				c.Panel.Thick, _ = r.want(e.value, positive)
			}},
		{name: "size", form: "a size", means: "true size of a panel", need: defaulted,
			read: func(r *reader, c *ceilingText, e entry) { c.Panel.Size, _ = r.size(e.value) }},
		{name: "weight", form: "1 lb/ft2, 5 kg/m2", means: "per area; left out, loads are not checked",
			read: func(r *reader, c *ceilingText, e entry) {
				if isUnknown(e.value) {
					r.warn(e.value.at, "ceiling", fault{
						rule: "weight unknown", what: "the weight of the panels is not known: loads are not checked", found: unknownWord,
					})
					return
				}
				c.Panel.Weight, _ = r.areaMass(e.value)
			}},
		noteKey(func(c *ceilingText) *string { return &c.Note }),
	}}
}

// ceilingOf reads the ceiling.
func (r *reader) ceilingOf(_ *file, e entry) {
	c := ceilingText{}
	c.At, c.Grid.Follow, c.Mains.Along = e.key.at, -1, -1
	c.said = readMap(r, e.value, ceilingSection(), &c, func(*ceilingText) string { return "the ceiling" })
	if e.value.kind != mapping {
		return
	}
	floor, hasFloor := c.said.get("face from floor")
	below, hasBelow := c.said.get("face below structure")
	switch {
	case hasFloor && hasBelow:
		first, second := floor, below
		if before(second.key.at, first.key.at) {
			first, second = second, first
		}
		r.twice("the ceiling has two heights", "one height", second.name+" "+brief(second.value.text), first.name+" "+brief(first.value.text), second.key.at, first.key.at)
	case !hasFloor && !hasBelow:
		r.fail(c.At, fault{
			rule: "key needed", what: "the ceiling has no height", found: "no `face from floor`, no `face below structure`",
			allowed: "one of the two",
		})
	}
	if m := c.Grid.Module; m.Given() && (m.W < 3*geom.Inch || m.H < 3*geom.Inch || m.W > 3*geom.Metre || m.H > 3*geom.Metre) {
		r.fail(m.At, fault{
			rule: "sizes", what: "a module that no grid has", found: r.say(m.W) + " x " + r.say(m.H),
			allowed: "24x24, 24x48, 600x600, 600x1200", hint: "a bare number is never feet",
		})
		c.Grid.Module = room.Size{}
	}
	if !c.panelFits() {
		r.fail(c.Panel.Size.At, fault{
			rule: "sizes", what: "the panels are larger than the module", found: r.say(c.Panel.Size.W) + " x " + r.say(c.Panel.Size.H),
			allowed: "less than " + r.say(c.Grid.Module.W) + " x " + r.say(c.Grid.Module.H),
		})
	}
	r.room.Ceiling = &c.Ceiling
	r.askCeiling(&c)
}

// panelFits reports whether the panels lie within the module.
func (c *ceilingText) panelFits() bool {
	p, m := c.Panel.Size, c.Grid.Module
	return !p.Given() || !m.Given() || p.W < m.W && p.H < m.H
}

// askCeiling asks what a ceiling cannot be hung without.
func (r *reader) askCeiling(c *ceilingText) {
	ask := func(at finding.Place, what, found, allowed, hint string) {
		r.fail(at, fault{rule: "asked", what: what, found: found, allowed: allowed, hint: hint})
	}
	if !c.said.has("seismic") {
		ask(c.At, "what is the seismic design category of the place? asked before a ceiling is hung, and not answered",
			"no `seismic` in the ceiling", "seismic: none, A, B, C, D, E, F or unknown", "add seismic: unknown if you do not know: your building department does")
	} else if c.Seismic == unknownWord {
		e, _ := c.said.get("seismic")
		r.warn(e.value.at, "ceiling", fault{
			rule: "seismic unknown", what: "the seismic design category is not known: ask the building department before the ceiling is hung", found: unknownWord,
		})
	}
	if !c.said.has("panel") || !c.panel.has("thickness") && len(c.panel.all) > 0 {
		ask(c.said.place("panel"), "how thick are the panels? asked for the height to tilt them in, and not answered",
			"no `thickness` of a panel", "panel: 5/8, or unknown", "add panel: unknown if you do not know")
	}
}
