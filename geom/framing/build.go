package framing

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/rules"
	"roomwright/geom/survey"
)

// builder sets out one wall; it lives for one call of Build.
type builder struct {
	r        *room.Room
	wall     *room.Wall
	plan     survey.Plan
	w        Wall
	t        geom.Length // thickness of a stud and of a plate
	studs    []upright   // as found or as laid out, left to right
	bars     []bar       // what an opening cannot run into
	progress []progress  // of each opening of the room
	waits    []*opening  // openings that are framed but for packing and nails
	framing  bool        // studs are known, openings can be placed
	sticks   []Member
	found    []finding.Finding
}

// Build sets out wall index of the room. A wall that is not framed, or whose
// studs are not known, has no members; its doors, windows and services are
// there all the same.
func Build(r *room.Room, index int, plan survey.Plan) (Wall, []finding.Finding) {
	before := 0
	for i := range index {
		other := build(r, i, plan)
		before += other.removed()
	}
	b := build(r, index, plan)
	b.mark(before)
	return b.w, b.found
}

// build does everything but the marks.
func build(r *room.Room, index int, plan survey.Plan) *builder {
	wall := &r.Walls[index]
	b := &builder{
		r: r, wall: wall, plan: plan,
		w: Wall{
			Name: wall.Name, Index: index, Make: wall.MadeOf, At: wall.At,
			Length: wall.Length.Value, Structure: wall.Structure.Value,
			Bearing: wall.Frame.Bearing,
		},
		progress: make([]progress, len(r.Openings)),
	}
	if index < len(plan.Sides) {
		b.w.Length = plan.Sides[index].Taped
		if s := plan.Sides[index].Structure; s > 0 {
			b.w.Structure = s
		}
	}
	b.holes()
	if b.framed() {
		b.frame()
	}
	b.services()
	b.order()
	return b
}

// framed reports whether there is a frame to set out; where one is wanted and
// cannot be, it says so.
func (b *builder) framed() bool {
	f := &b.wall.Frame
	wanted := b.wall.MadeOf == room.NewStuds
	ready := true
	refuse := func(rule, what, found, allowed, hint string) {
		ready = false
		if b.wall.MadeOf == room.NewStuds {
			b.say(finding.Error, place(f.At, b.wall.At), rule, what, found, allowed, hint, "")
			return
		}
		for i := range b.r.Openings {
			if o := &b.r.Openings[i]; o.Wall == b.w.Index {
				b.say(finding.Error, o.At, rule, "opening "+o.Name+": "+what, found, allowed, hint, "")
			}
		}
	}
	for i := range b.r.Openings {
		wanted = wanted || b.r.Openings[i].Wall == b.w.Index
	}
	name := "wall " + b.w.Name
	switch {
	case !b.wall.MadeOf.Framed():
		made := string(b.wall.MadeOf)
		if b.wall.MadeOf == room.MakeNotSaid {
			made = "not said"
		}
		refuse("opening in a wall without studs", name+" is not made of studs",
			"made of: "+made, "made of: studs, or new studs", "openings are framed into stud walls alone")
		return false
	case !f.Stud.Given() || f.Stud.Thick <= 0:
		refuse("stud section not known", "the section of the studs of "+name+" is not known",
			"no stud in its frame", "stud: a name such as 2x4, or a true size", "measure a stud's thickness and depth")
	case !f.Studs.Given || f.Studs.Unknown || f.Studs.Spacing <= 0 && len(f.Studs.Marks) == 0:
		refuse("studs not known", "where the studs of "+name+" stand is not known",
			"no studs in its frame", "studs: 16 from left, or each as found",
			"find each stud and list its left edge from the left end")
	}
	if !f.Stud.Given() || f.Stud.Thick <= 0 || !f.Studs.Given || b.w.Length <= 0 {
		return false // a wall without a length has its finding from the survey
	}
	b.t = f.Stud.Thick
	b.w.Depth = f.Stud.Wide
	if !b.heights(wanted) {
		return false
	}
	return ready
}

// heights works out the heights of the plates, from the stud length when it
// was given and from the structure otherwise.
func (b *builder) heights(wanted bool) bool {
	f := &b.wall.Frame
	bottom := geom.Length(b.bottomPlates()) * b.t
	top := geom.Length(b.topPlates()) * b.t
	stud := f.StudLength.Value
	if !f.StudLength.Known() {
		if b.w.Structure <= 0 {
			if wanted {
				b.say(finding.Error, place(f.At, b.wall.At), "height of the studs not known",
					"the height of the studs of wall "+b.w.Name+" is not known",
					"neither stud length nor floor to structure", "one of the two",
					"measure from the floor up to the structure, or a stud between the plates", "")
			}
			return false
		}
		stud = b.w.Structure - top - bottom
	}
	if stud <= 0 {
		b.say(finding.Error, place(f.StudLength.At, f.At, b.wall.At), "no room for studs",
			"no stud fits between the plates of wall "+b.w.Name,
			"studs "+b.len(stud)+" long", "more than zero", "check the height and the plates", "")
		return false
	}
	b.w.PlateTop = bottom
	b.w.PlateLow = bottom + stud
	b.w.Top = b.w.PlateLow + top
	if f.StudLength.Known() && b.w.Structure > 0 {
		b.headGap(f.StudLength.At)
	}
	return true
}

// headGap reports a gap between the top plates and the structure.
func (b *builder) headGap(at finding.Place) {
	gap := b.w.Structure - b.w.Top
	found := "plates up to " + b.len(b.w.Top) + ", structure at " + b.len(b.w.Structure)
	allowed := "up to " + b.len(rules.PlateGap) + " between them"
	switch {
	case gap < 0:
		b.say(finding.Warning, at, "studs against structure",
			"studs and plates of wall "+b.w.Name+" come out higher than the structure",
			found+": "+b.len(-gap)+" too high", allowed, "tape both again; the saw cuts are set out from the plates", rules.Habit)
	case gap > rules.PlateGap:
		b.say(finding.Warning, at, "studs against structure",
			"studs and plates of wall "+b.w.Name+" end well under the structure",
			found+": a gap of "+b.len(gap), allowed, "tape both again, or say how many top plates there are", rules.Habit)
	case gap > 0:
		b.say(finding.Note, at, "studs against structure",
			"there is a gap over the top plates of wall "+b.w.Name,
			found+": a gap of "+b.len(gap), allowed, "", rules.Habit)
	}
}

func (b *builder) bottomPlates() int {
	if n := b.wall.Frame.BottomPlates; n > 0 {
		return n
	}
	return rules.BottomPlates
}

func (b *builder) topPlates() int {
	if n := b.wall.Frame.TopPlates; n > 0 {
		return n
	}
	if b.fresh() && !b.carries() {
		return rules.TopPlatesNew
	}
	return rules.TopPlates
}

// fresh reports whether the wall is still to be built.
func (b *builder) fresh() bool { return b.wall.MadeOf == room.NewStuds }

// state is that of whatever belongs to the wall itself.
func (b *builder) state() piece.State {
	if b.fresh() {
		return piece.New
	}
	return piece.Existing
}

// frame sets out studs, openings and plates, in this order: an opening decides
// what becomes of the studs.
func (b *builder) frame() {
	b.standing()
	b.bar()
	b.framing = true
	for i := range b.r.Openings {
		if b.r.Openings[i].Wall == b.w.Index {
			b.open(i)
		}
	}
	for i, p := range b.waits {
		b.packs(p, &b.w.Openings[i])
		b.nails(p, &b.w.Openings[i])
	}
	b.uprights()
	b.overHoles()
	b.plates()
}

// order sorts the members by role and place, and lists the studs.
func (b *builder) order() {
	index := make([]int, len(b.sticks))
	for i := range index {
		index[i] = i
	}
	slices.SortStableFunc(index, func(i, j int) int {
		m, n := &b.sticks[i], &b.sticks[j]
		return cmp.Or(
			cmp.Compare(m.Role, n.Role),
			cmp.Compare(m.Box.Min.X, n.Box.Min.X),
			cmp.Compare(m.Box.Min.Y, n.Box.Min.Y),
			cmp.Compare(m.Depth, n.Depth),
		)
	})
	now := make([]int, len(index))
	for at, i := range index {
		now[i] = at
		b.w.Members = append(b.w.Members, b.sticks[i])
	}
	for i := range b.w.Openings {
		o := &b.w.Openings[i]
		o.LeftKing, o.RightKing = b.king(o, true, now), b.king(o, false, now)
	}
	b.list()
}

// king finds the king at one side of an opening among the members.
func (b *builder) king(o *Opening, left bool, now []int) int {
	for i := range b.sticks {
		m := &b.sticks[i]
		if m.Role != King {
			continue
		}
		if left && m.Box.Max.X == o.Kings.From || !left && m.Box.Min.X == o.Kings.To {
			return now[i]
		}
	}
	return -1
}

// list lists the uprights that meet the bottom plate.
func (b *builder) list() {
	for i := range b.w.Members {
		m := &b.w.Members[i]
		if m.State == piece.Removed || m.Box.Min.Y != b.w.PlateTop {
			continue
		}
		switch m.Role {
		case Stud, King, Jack, LowerJack, CrippleBelow:
			b.w.Studs = append(b.w.Studs, StudAt{
				Left: m.Box.Min.X, Thick: m.Box.W(), State: m.State, Role: m.Role,
				Cut:    m.Role == CrippleBelow && m.State == piece.Existing && m.Opening >= 0,
				StudNo: m.StudNo, Opening: m.Opening,
			})
		}
	}
	slices.SortStableFunc(b.w.Studs, func(s, t StudAt) int { return cmp.Compare(s.Left, t.Left) })
}

// put adds a stick of the section of the studs, unless it has no length.
func (b *builder) put(m Member) {
	if m.Box.Empty() || m.Length <= 0 {
		return
	}
	m.Trade = "framing"
	m.On = "wall " + b.w.Name
	m.Ends = "square"
	if m.Profile.Name == "" {
		s := b.wall.Frame.Stud
		m.Profile = piece.Profile{Name: s.Name, Thick: s.Thick, Wide: s.Wide}
	}
	if m.From == (finding.Place{}) {
		m.From = place(b.wall.Frame.At, b.wall.At)
	}
	b.sticks = append(b.sticks, m)
}

// stand returns a stick that stands.
func (b *builder) stand(role Role, name string, state piece.State, left, from, to geom.Length) Member {
	return Member{
		Piece: piece.Piece{
			Name: name, State: state, Length: to - from,
			Box: geom.RectOf(left, from, left+b.t, to),
		},
		Role: role, Opening: -1,
	}
}

// lie returns a stick that lies flat or on edge.
func (b *builder) lie(role Role, name string, state piece.State, box geom.Rect) Member {
	return Member{
		Piece: piece.Piece{Name: name, State: state, Length: box.W(), Box: box},
		Role:  role, Opening: -1,
	}
}

// say adds a finding about this wall.
func (b *builder) say(kind finding.Kind, at finding.Place, rule, what, found, allowed, hint, source string) {
	b.found = append(b.found, finding.Finding{
		Place: at, Kind: kind, Rule: rule, What: what, Found: found, Allowed: allowed,
		Hint: hint, Source: source, On: "wall " + b.w.Name,
	})
}

// len prints a length as the room file shows lengths.
func (b *builder) len(l geom.Length) string { return b.r.Show.Say(l) }

// size prints a width and a height.
func (b *builder) size(w, h geom.Length) string { return b.len(w) + " x " + b.len(h) }

// closes returns the greatest misfit of a reading that is accepted.
func (b *builder) closes() geom.Length {
	if c := b.r.Survey.ClosesWithin; c > 0 {
		return c
	}
	return rules.PlateGap
}

// place returns the first place that is known.
func place(list ...finding.Place) finding.Place {
	for _, p := range list {
		if p != (finding.Place{}) {
			return p
		}
	}
	return finding.Place{}
}
