package framing

import (
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/room"
)

// oldWall is a wall with studs as found, a door, a cable, and an opening with
// split jacks whose right king is a stud that stands. All of it is invented;
// the wanted figures were worked out by hand for a drawing of it (worked
// example computed for this project, framing elevation).
func oldWall() *room.Room {
	r := job(room.Opening{
		Name: "borrowed light", Kind: room.Clear,
		Size:   room.Size{W: geom.In(66), H: geom.In(34), At: at(12)},
		Across: room.Across{Kind: room.KingRight, Stud: room.StudRef{Number: 8, At: at(13)}, At: at(13)},
		Up:     room.Up{Kind: room.BottomFromFloor, Value: geom.In(42), At: at(14)},
		Header: room.Header{Plies: 2, Timber: timber("2x8"), Filler: inch(15.0 / 32), LetIn: want(0.125), At: at(15)},
		Jacks:  1, Split: true, Sill: 1, Liner: want(0.75), Shims: want(0.25), At: at(11),
	})
	w := &r.Walls[0]
	w.Length = reading(inch(182.25), 6)
	w.Structure = reading(inch(96.25), 7)
	w.Frame.StudLength = room.Reading{}
	w.Frame.Bearing = room.Unknown
	w.Frame.Studs = room.StudPlan{Given: true, Edge: room.LeftEdge, From: room.Left, At: at(9), Marks: inches(
		0, 14.75, 31, 46.875, 63, 79.125, 95, 111.25, 127.125, 140.5, 142, 176, 177.5, 180.75)}
	w.Doors = []room.Existing{{
		Name: "entry", Kind: room.Clear, Size: room.Size{W: inch(32.5), H: geom.In(82), At: at(16)}, At: at(16),
		Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, Value: inch(143.5), At: at(16)},
	}}
	w.Services = []room.Service{{
		What: "cable", At: at(17),
		Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, Value: geom.In(132), At: at(17)},
		Up:     room.Up{Kind: room.SpanFromFloor, To: geom.In(48), At: at(17)},
	}}
	return r
}

func TestOldWall(t *testing.T) {
	w, found := set(t, oldWall())
	o := w.Openings[0]
	same(t, "under plates", w.PlateLow, inch(93.25))
	same(t, "rough width", o.Rough.W(), geom.In(68))
	same(t, "rough height", o.Rough.H(), geom.In(36))
	same(t, "kings, left", o.Kings.From, inch(40.25))
	same(t, "kings, right", o.Kings.To, inch(111.25))
	same(t, "upper saw cut", o.UpperCut, inch(84.375))
	same(t, "lower saw cut", o.LowerCut, inch(39.5))
	same(t, "under header", o.Header.Min.Y, geom.In(77))
	same(t, "on rough sill", o.Sill.Max.Y, geom.In(41))
	for _, row := range []struct {
		mark, name, profile string
		count               int
		length              float64
	}{
		{"A1", "king stud", "2x4", 1, 91.75},
		{"A2", "jack stud, lower", "2x4", 2, 38},
		{"A3", "jack stud, upper", "2x4", 2, 36},
		{"A4", "rough sill", "2x4", 1, 70.875},
		{"A5", "header ply", "2x8", 2, 70.875},
		{"A6", "header filler", "15/32 plywood", 1, 70.875},
	} {
		n := 0
		for _, m := range w.Members {
			if m.Mark != piece.Mark(row.mark) {
				continue
			}
			n++
			if m.Name != row.name || m.Profile.Name != row.profile || m.Length != inch(row.length) || m.State != piece.New {
				t.Errorf("%s is %s, %s, %v in, %s", m.Mark, m.Name, m.Profile.Name, m.Length.Inches(), m.State)
			}
		}
		if n != row.count {
			t.Errorf("%d of %s, want %d", n, row.mark, row.count)
		}
	}
	gone := w.of(Cutout, piece.Removed)
	if len(gone) != 4 {
		t.Fatalf("%d middles taken out, want 4", len(gone))
	}
	for _, m := range gone {
		same(t, "middle "+string(m.Mark), m.Length, inch(44.875))
	}
	depths := []int{w.of(HeaderPly, piece.New)[0].Depth, w.of(HeaderFiller, piece.New)[0].Depth, w.of(HeaderPly, piece.New)[1].Depth}
	if depths[0] != 0 || depths[1] != 1 || depths[2] != 2 {
		t.Errorf("plies and filler lie at %v from the room side, want 0, 1, 2", depths)
	}
	plates := w.of(BottomPlate, piece.Existing)
	if len(plates) != 2 || plates[0].Box.Max.X != inch(143.5) || plates[1].Box.Min.X != inch(176) {
		t.Errorf("bottom plate %+v, want a gap from 143-1/2 to 176", plates)
	}
	if n := len(w.of(Stud, piece.Existing)); n != 9 {
		t.Errorf("%d whole studs besides the king, want 9 (14, less 4 cut and a king)", n)
	}
	if has(found, "something in the way of an opening") != 0 {
		t.Error("a caution about a cable that is a bay away")
	}
	if has(found, "header not flush") != 1 || has(found, "header bears too little") != 1 {
		t.Errorf("findings %+v", found)
	}
	stub := map[int]geom.Length{}
	for _, m := range w.Members {
		if m.StudNo >= 4 && m.StudNo <= 7 {
			stub[m.StudNo] += m.Length
		}
	}
	for no, sum := range stub {
		if sum != inch(91.75) {
			t.Errorf("stud %d: stubs and middle sum to %v", no, sum.Inches())
		}
	}
}

func TestMarksFromEitherEnd(t *testing.T) {
	lefts := inches(0, 14.75, 31, 46.875, 63)
	l, x := geom.In(100), inch(1.5)
	for _, c := range []struct {
		name string
		edge room.Edge
		from room.End
		mark func(geom.Length) geom.Length
	}{
		{"left edges from left", room.LeftEdge, room.Left, func(v geom.Length) geom.Length { return v }},
		{"right edges from left", room.RightEdge, room.Left, func(v geom.Length) geom.Length { return v + x }},
		{"centres from left", room.Centre, room.Left, func(v geom.Length) geom.Length { return v + x/2 }},
		{"left edges from right", room.LeftEdge, room.Right, func(v geom.Length) geom.Length { return l - v }},
		{"right edges from right", room.RightEdge, room.Right, func(v geom.Length) geom.Length { return l - v - x }},
		{"centres from right", room.Centre, room.Right, func(v geom.Length) geom.Length { return l - v - x/2 }},
	} {
		r := job()
		r.Walls[0].Length = reading(l, 6)
		p := room.StudPlan{Given: true, Edge: c.edge, From: c.from, At: at(9)}
		for _, v := range lefts {
			p.Marks = append(p.Marks, c.mark(v))
		}
		r.Walls[0].Frame.Studs = p
		w, _ := set(t, r)
		if len(w.Studs) != len(lefts) {
			t.Errorf("%s: %d studs, want %d and no end stud invented", c.name, len(w.Studs), len(lefts))
			continue
		}
		for i, s := range w.Studs {
			if s.Left != lefts[i] || s.StudNo != i+1 {
				t.Errorf("%s: stud %d at %v", c.name, s.StudNo, s.Left.Inches())
			}
		}
	}
}

// TestFindings makes one mistake at a time in the old wall or the worked window.
func TestFindings(t *testing.T) {
	edge := func(x float64) room.Across {
		return room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, Value: inch(x), At: at(13)}
	}
	one := func(r *room.Room) *room.Opening { return &r.Openings[0] }
	for _, c := range []struct {
		name   string
		make   func(r *room.Room)
		rule   string
		kind   finding.Kind
		line   int
		has    []string // in What, Found, Allowed or Hint
		framed bool     // the opening is set out all the same
	}{
		{"wider than the wall", func(r *room.Room) { one(r).Size.W = geom.In(178) }, "opening wider than wall", finding.Error, 12,
			[]string{"clear 178, rough 180", "rough 176-1/4 at most between the end studs of wall A", "clear 174-1/4 x 34 fits"}, false},
		{"taller than the wall", func(r *room.Room) { one(r).Size.H = geom.In(88) }, "opening taller than wall", finding.Error, 12,
			[]string{"clear 88, rough 90 and a header of 7-1/4", "rough 83 at most", "clear 66 x 80-7/8 fits"}, false},
		{"header into the plate", func(r *room.Room) { one(r).Up.Value = geom.In(60) }, "no room for the header", finding.Error, 14,
			[]string{"top of the header 102-1/4", "93-1/4 at most", "bottom from floor: 50-7/8 fits"}, false},
		{"header tight", func(r *room.Room) { one(r).Up.Value = geom.In(51) }, "header tight under the plate", finding.Warning, 14,
			[]string{"bottom from floor: 50-7/8 leaves it"}, true},
		{"too low", func(r *room.Room) { one(r).Up.Value = geom.In(3) }, "opening too low", finding.Error, 14,
			[]string{"top of the rough sill 2", "3 at least", "bottom from floor: 4 fits"}, false},
		{"a wish too high", func(r *room.Room) { one(r).Up.Value, one(r).Up.Wish = geom.In(60), true }, "opening moved", finding.Warning, 14,
			[]string{"bottom from floor: 60", "set out with bottom from floor: 50-7/8"}, true},
		{"across the door", func(r *room.Room) { one(r).Across = edge(100) }, "opening across a door", finding.Error, 13,
			[]string{"jacks and kings included 96 to 170 from left", "clear of 140-1/2 to 179"}, false},
		{"at the end", func(r *room.Room) { one(r).Across = edge(2) }, "no room for jack and king", finding.Error, 13,
			[]string{"the left end of wall A", "from 1-1/2", "left edge from left: 4 fits"}, false},
		{"no such stud", func(r *room.Room) { one(r).Across.Stud.Number = 15 }, "no such stud", finding.Error, 13,
			[]string{"stud 15", "stud 1 to stud 14, at 0, 14-3/4, 31,"}, false},
		{"no such mark", func(r *room.Room) { one(r).Across.Stud = room.StudRef{Mark: geom.In(50), At: at(13)} }, "no such stud", finding.Error, 13,
			[]string{"stud at 50", "the nearest is stud at 46-7/8"}, false},
		{"masonry", func(r *room.Room) { r.Walls[0].MadeOf = room.Block }, "opening in a wall without studs", finding.Error, 11,
			[]string{"made of: block"}, false},
		{"studs unknown", func(r *room.Room) { r.Walls[0].Frame.Studs = room.StudPlan{Given: true, Unknown: true} }, "studs not known", finding.Error, 11,
			nil, false},
		{"stud in the door", func(r *room.Room) { r.Walls[0].Frame.Studs.Marks[11] = geom.In(170) }, "stud in a doorway", finding.Error, 9,
			[]string{"stud 12", "170 to 171-1/2", "143-1/2 to 176"}, true},
		{"studs run into each other", func(r *room.Room) { r.Walls[0].Frame.Studs.Marks[1] = geom.In(1) }, "studs run into each other", finding.Error, 9,
			[]string{"left edges 0 and 1"}, true},
		{"stud past the end", func(r *room.Room) { r.Walls[0].Frame.Studs.Marks[13] = geom.In(182) }, "stud past the end of its wall", finding.Error, 9,
			[]string{"182 to 183-1/2", "0 to 182-1/4"}, true},
		{"stud displaced", func(r *room.Room) { one(r).Across = edge(36) }, "stud where a king or jack must stand", finding.Warning, 13,
			[]string{"stud 3", "31 to 32-1/2", "king and jacks 32 to 35"}, true},
		{"a wish displaced", func(r *room.Room) { one(r).Across = edge(36); one(r).Across.Wish = true }, "opening moved", finding.Warning, 13,
			[]string{"left edge from left: 36: stud 3 (31 to 32-1/2)", "set out at left edge from left: 36-1/2"}, true},
		{"cable cut", func(r *room.Room) { r.Walls[0].Services[0].Across.Value = geom.In(70) }, "something in the way of an opening", finding.Caution, 17,
			[]string{"a cable is where opening borrowed light is cut", "cable 70 from left, 0 to 48 from floor", "licensed electrician"}, true},
		{"cable anywhere", func(r *room.Room) { r.Walls[0].Services[0].Across.Kind = room.UnknownPlace }, "something in the way of an opening", finding.Caution, 17,
			[]string{"not known where a cable is"}, true},
		{"outlet in the bay", func(r *room.Room) {
			s := &r.Walls[0].Services[0]
			s.What, s.Across.Value, s.Up.To = "outlet", geom.In(70), geom.In(14)
		}, "something in the way of an opening", finding.Caution, 17, []string{"cable runs up or down"}, true},
		{"pipe at the king", func(r *room.Room) {
			s := &r.Walls[0].Services[0]
			s.What, s.Across.Value = "pipe", geom.In(39)
		}, "something in the way of an opening", finding.Caution, 17, []string{"jacks and kings", "licensed plumber"}, true},
		{"wide, one jack", func(r *room.Room) { one(r).Size.W = inch(70.5) }, "one jack under a wide header", finding.Warning, 15,
			[]string{"72-1/2 wide", "up to 72"}, true},
		{"no filler", func(r *room.Room) { one(r).Header.Filler = 0 }, "header not flush", finding.Warning, 15,
			[]string{"2 plies of 1-1/2: 3; studs 3-1/2 deep", "within 1/16", "a filler of 1/2"}, true},
		{"plates too high", func(r *room.Room) { r.Walls[0].Frame.StudLength = reading(geom.In(93), 8) }, "studs against structure", finding.Warning, 8,
			[]string{"1-1/4 too high"}, true},
		{"plates too low", func(r *room.Room) { r.Walls[0].Frame.StudLength = reading(geom.In(91), 8) }, "studs against structure", finding.Warning, 8,
			[]string{"a gap of 3/4"}, true},
		{"plates a little low", func(r *room.Room) { r.Walls[0].Frame.StudLength = reading(inch(91.5), 8) }, "studs against structure", finding.Note, 8,
			[]string{"a gap of 1/4"}, true},
		{"given twice", func(r *room.Room) {
			one(r).Across = room.Across{Kind: room.SpanFromEnd, Value: geom.In(40), To: geom.In(100), At: at(13)}
		}, "two widths for an opening", finding.Error, 13, []string{"66 as its size; 60 from 40 to 100"}, false},
		{"on itself", func(r *room.Room) {
			one(r).Across = room.Across{Kind: room.CentredOnThing, Thing: "borrowed light", At: at(13)}
		}, "openings placed on each other", finding.Error, 13, nil, false},
		{"on nothing", func(r *room.Room) {
			one(r).Across = room.Across{Kind: room.CentredOnThing, Thing: "hatch", At: at(13)}
		}, "no such thing on the wall", finding.Error, 13, []string{"hatch"}, false},
		{"no header", func(r *room.Room) { one(r).Header = room.Header{At: at(15)} }, "no header", finding.Error, 15, nil, false},
		{"no jacks", func(r *room.Room) { one(r).Jacks = 0 }, "no jacks", finding.Error, 11, nil, false},
		{"door nowhere", func(r *room.Room) { r.Walls[0].Doors[0].Across.Kind = room.UnknownPlace }, "place of a door not known", finding.Warning, 16, nil, true},
	} {
		r := oldWall()
		c.make(r)
		w, found := Build(r, 0, plan(r))
		var hit *finding.Finding
		for i := range found {
			if found[i].Rule == c.rule && found[i].Kind == c.kind {
				hit = &found[i]
			}
			if found[i].Kind == finding.Error && found[i].Rule != c.rule {
				t.Errorf("%s: also %+v", c.name, found[i])
			}
		}
		if hit == nil {
			t.Errorf("%s: no finding %q in %+v", c.name, c.rule, found)
			continue
		}
		if hit.Place.Line != c.line || hit.On != "wall A" {
			t.Errorf("%s: at line %d on %s, want line %d", c.name, hit.Place.Line, hit.On, c.line)
		}
		all := strings.Join([]string{hit.What, hit.Found, hit.Allowed, hit.Hint}, " | ")
		for _, s := range c.has {
			if !strings.Contains(all, s) {
				t.Errorf("%s: no %q in %s", c.name, s, all)
			}
		}
		if strings.HasSuffix(hit.What, ".") || strings.ToLower(hit.What[:1]) != hit.What[:1] {
			t.Errorf("%s: %q", c.name, hit.What)
		}
		if (len(w.Openings) == 1) != c.framed {
			t.Errorf("%s: %d openings set out", c.name, len(w.Openings))
		}
	}
}
