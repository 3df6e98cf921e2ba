package framing

import (
	"fmt"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/piece"
	"roomwright/geom/room"
)

// A doorway cut into a wall that stands: the studs go from the plate up, the
// plate goes between the jacks.
func TestDoorwayInOldWall(t *testing.T) {
	o := window()
	o.Kind, o.Size, o.Up.Value = room.Clear, room.Size{W: inch(32), H: inch(80), At: at(12)}, 0
	w, found := set(t, job(o))
	p := w.Openings[0]
	same(t, "rough width", p.Rough.W(), inch(34))
	same(t, "rough height, liner and gap at the head alone", p.Rough.H(), inch(81))
	same(t, "clear, bottom", p.Clear.Min.Y, 0)
	gone := w.of(BottomPlate, piece.Removed)
	if len(gone) != 1 || gone[0].Box.X() != p.Rough.X() || gone[0].Length != inch(34) {
		t.Errorf("plate cut out %+v, want between the jacks", gone)
	}
	if stays := w.of(BottomPlate, piece.Existing); len(stays) != 2 || stays[0].Box.Max.X != p.Rough.Min.X || stays[1].Box.Min.X != p.Rough.Max.X {
		t.Errorf("plate that stays %+v", stays)
	}
	for _, m := range w.of(Cutout, piece.Removed) {
		if m.Box.Min.Y != w.PlateTop {
			t.Errorf("%s begins at %v, want the plate", m.Mark, m.Box.Min.Y)
		}
	}
	for _, c := range p.Cuts {
		if !c.Upper {
			t.Errorf("a lower saw cut %+v in a doorway", c)
		}
	}
	if len(w.of(CrippleBelow, piece.Existing)) != 0 || p.LowerCut != 0 || !p.Sill.Empty() {
		t.Errorf("lower cut %v, sill %v", p.LowerCut, p.Sill)
	}
	for _, s := range w.Studs {
		if s.Left > p.Kings.From && s.Left < p.Kings.To && s.Role != Jack {
			t.Errorf("%+v on the plate of a doorway", s)
		}
	}
	if n := has(found, "header not flush"); n != 0 {
		t.Errorf("%d findings about a header that is flush", n)
	}
}

// E8 with 1/8 to get the header in (F17a, common practice, no source): the
// header and what is beside it are 1/8 shorter, the upper cut 1/8 higher.
func TestLetIn(t *testing.T) {
	o := window()
	o.Header.LetIn = want(0.125)
	w, _ := set(t, job(o))
	p := w.Openings[0]
	same(t, "header ply", w.of(HeaderPly, piece.New)[0].Length, inch(76.375))
	same(t, "filler", w.of(HeaderFiller, piece.New)[0].Length, inch(76.375))
	same(t, "sill between jacks", w.of(Sill, piece.New)[0].Length, inch(73.5))
	same(t, "upper cut", p.UpperCut, inch(78.875))
	same(t, "cripple above", w.of(CrippleAbove, piece.Existing)[0].Length, inch(15.25))
	same(t, "removed", w.of(Cutout, piece.Removed)[0].Length, inch(44.375))
	same(t, "header, left", p.Header.Min.X-p.Kings.From, inch(1.0/16))
	same(t, "header, right", p.Kings.To-p.Header.Max.X, inch(1.0/16))
	o.Split = true
	w, _ = set(t, job(o))
	same(t, "sill king to king", w.of(Sill, piece.New)[0].Length, inch(76.375))
	same(t, "upper jack", w.of(UpperJack, piece.New)[0].Length, inch(37.25))
	same(t, "lower jack", w.of(LowerJack, piece.New)[0].Length, inch(33))
}

func TestOpeningsBesideEachOther(t *testing.T) {
	first, second := window(), window()
	for _, o := range []*room.Opening{&first, &second} {
		o.Kind, o.Liner, o.Shims = room.Rough, room.Want{}, room.Want{}
		o.Size = room.Size{W: inch(20), H: inch(30), At: at(12)}
	}
	second.Name = "second"
	edge := func(x float64) room.Across {
		return room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, Value: inch(x), At: at(23)}
	}
	first.Across = edge(36) // kings' inner faces 34-1/2 to 57-1/2, king to 59
	// The new king between them serves both: 59 + 1-1/2 = 60-1/2.
	second.Across = edge(60.5)
	w, found := set(t, job(first, second))
	if w.Openings[0].RightKing != w.Openings[1].LeftKing {
		t.Errorf("kings %d and %d, want one between them", w.Openings[0].RightKing, w.Openings[1].LeftKing)
	}
	if has(found, "gap beside a king") > 1 {
		t.Errorf("findings %+v", found)
	}
	// A gap of an inch between two new kings is packed once.
	second.Across = edge(63)
	w, found = set(t, job(first, second))
	packs := append(w.Openings[0].Packs, w.Openings[1].Packs...)
	between := 0
	for _, p := range packs {
		if p.X.From == inch(59) && p.X.To == inch(60) && p.StudNo == 0 {
			between++
		}
	}
	if between != 1 {
		t.Errorf("packs %+v, want one from 59 to 60; %+v", packs, found)
	}
	// They run into each other.
	second.Across = edge(58)
	_, found = Build(job(first, second), 0, plan(job(first, second)))
	if has(found, "openings run into each other") != 1 {
		t.Errorf("findings %+v", found)
	}
	// One is centred on the other, which comes later in the file.
	first.Across = room.Across{Kind: room.CentredOnThing, Thing: "second", At: at(13)}
	second.Across = edge(60)
	_, found = Build(job(first, second), 0, plan(job(first, second)))
	if has(found, "openings run into each other") != 1 || has(found, "no such thing on the wall") != 0 {
		t.Errorf("findings %+v", found)
	}
}

// Packing: 1/2 in is plywood, 1-1/2 in one 2x, more is both.
func TestPacking(t *testing.T) {
	for _, c := range []struct {
		gap  float64
		want []float64 // from the king outwards
		hint string
	}{
		{0.0625, nil, ""},
		{0.5, []float64{0.5}, "1/2 of plywood"},
		{1.5, []float64{1.5}, "1 of 2x4"},
		{1.5625, []float64{1.5}, "1 of 2x4"},
		{2, []float64{1.5, 0.5}, "1 of 2x4 and 1/2 of plywood"},
		{3, []float64{1.5, 1.5}, "2 of 2x4"},
		{3.5, nil, ""},
	} {
		o := window()
		o.Kind, o.Liner, o.Shims = room.Rough, room.Want{}, room.Want{}
		// The stud at 112 begins at 111-1/4; the new king ends the gap before it.
		o.Across = room.Across{Kind: room.EdgeFromEnd, Edge: room.RightEdge, Value: inch(111.25 - 3 - c.gap), At: at(13)}
		o.Size.W = inch(108.25 - c.gap - 34.25)
		w, found := set(t, job(o))
		var got []float64
		for _, m := range w.of(Packing, piece.New) {
			got = append(got, m.Box.W().Inches())
			same(t, "packing", m.Length, inch(92.625))
		}
		if len(got) != len(c.want) {
			t.Errorf("gap %v: packing %v, want %v", c.gap, got, c.want)
			continue
		}
		for i := range got {
			if got[i] != c.want[i] {
				t.Errorf("gap %v: packing %v, want %v", c.gap, got, c.want)
			}
		}
		for _, f := range found {
			if f.Rule == "gap beside a king" && f.Hint != "pack it with "+c.hint {
				t.Errorf("gap %v: %s", c.gap, f.Hint)
			}
		}
	}
}

// Doors and windows that are there, in a wall whose studs are at a spacing.
func TestSpacedWallWithDoorAndWindow(t *testing.T) {
	r := job()
	spot := func(x float64) room.Across {
		return room.Across{Kind: room.EdgeFromEnd, Value: inch(x), At: at(16)}
	}
	r.Walls[0].Doors = []room.Existing{{Name: "entry", Kind: room.Rough, Size: room.Size{W: inch(34), H: inch(82)}, Across: spot(18), At: at(16)}}
	r.Walls[0].Windows = []room.Existing{{Name: "old", Window: true, Kind: room.Rough, Size: room.Size{W: inch(30), H: inch(40)},
		Across: spot(90), Bottom: reading(inch(36), 17), At: at(17)}}
	w, found := set(t, r)
	var full, below []float64
	for _, s := range w.Studs {
		if s.Role == Stud {
			full = append(full, s.Left.Inches())
		} else {
			below = append(below, s.Left.Inches())
		}
	}
	// Layout 15-1/4, 31-1/4, 47-1/4, 63-1/4 ...; the door from 18 to 52 has a
	// stud at 16-1/2 and at 52, the window from 90 to 120 at 88-1/2 and 120.
	if want := "[0 16.5 52 63.25 79.25 88.5 120 127.25 142.5]"; sprint(full) != want {
		t.Errorf("studs at %v, want %s", full, want)
	}
	if want := "[95.25 111.25]"; sprint(below) != want {
		t.Errorf("cripples at %v, want %s", below, want)
	}
	var over []float64
	for _, m := range w.of(CrippleAbove, piece.Existing) {
		over = append(over, m.Box.Min.X.Inches())
	}
	if want := "[31.25 47.25 95.25 111.25]"; sprint(over) != want {
		t.Errorf("cripples above at %v, want %s", over, want)
	}
	if len(w.of(DoorHeader, piece.Existing)) != 2 || len(w.of(Sill, piece.Existing)) != 1 || len(w.of(BottomPlate, piece.Existing)) != 2 {
		t.Errorf("members %+v", w.Members)
	}
	if has(found, "framing round a door not known") != 2 {
		t.Errorf("findings %+v", found)
	}
}

func sprint(list []float64) string { return fmt.Sprint(list) }

func TestMarksOfTheRoom(t *testing.T) {
	// Two walls are cut: what is taken out is numbered through the room.
	o, p := window(), window()
	p.Name, p.Wall = "second", 1
	r := job(o, p)
	second := r.Walls[0]
	second.Name = "B"
	r.Walls = append(r.Walls, second)
	seen := map[piece.Mark]string{}
	for i := range r.Walls {
		w, _ := Build(r, i, plan(r))
		for _, m := range w.Members {
			if on, ok := seen[m.Mark]; ok && on != w.Name {
				t.Errorf("%s on walls %s and %s", m.Mark, on, w.Name)
			}
			seen[m.Mark] = w.Name
		}
	}
	for _, m := range []piece.Mark{"R1", "R4", "R5", "R8", "A1", "B1", "A.3", "A.5t", "A.5b", "B.p1"} {
		if seen[m] == "" {
			t.Errorf("no %s", m)
		}
	}
	if seen["R5"] != "B" || seen["R9"] != "" {
		t.Errorf("R5 on wall %s", seen["R5"])
	}
}

// Marks of new pieces cannot be read as those of a wall with another name, of
// what is removed, of lights and mains, or of the cells of a ceiling.
func TestPrefix(t *testing.T) {
	for name, want := range map[string]string{
		"A": "A", "north": "north", "PQ": "PQ", "N2": "N2-", "long wall": "long wall-",
		"R": "R-", "r": "r-", "L": "L-", "M": "M-", "P": "P-", "PP": "PP-", "S": "S-", "Ö": "Ö-", "O": "O",
	} {
		b := builder{w: Wall{Name: name}}
		if got := b.prefix(); got != want {
			t.Errorf("wall %s: %q, want %q", name, got, want)
		}
	}
}

func TestServices(t *testing.T) {
	across := func(x float64) room.Across {
		return room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, Value: inch(x), At: at(17)}
	}
	for _, c := range []struct {
		name, what string
		up         room.Up
		size       room.Size
		box        geom.Rect
		kind       finding.Kind
		says       string
	}{
		{"a box on the studs", "box", room.Up{Kind: room.CentreFromFloor, Value: inch(40)}, room.Size{W: inch(2), H: inch(3)},
			geom.RectOf(inch(69), inch(38.5), inch(71), inch(41.5)), finding.Caution, "a box is where opening light is cut"},
		{"gas", "gas", room.Up{Kind: room.BottomFromFloor, Value: inch(30)}, room.Size{W: inch(1), H: inch(20)},
			geom.RectOf(inch(69.5), inch(30), inch(70.5), inch(50)), finding.Caution, "a gas pipe is where opening light is cut"},
		{"a duct", "duct", room.Up{Kind: room.TopFromFloor, Value: inch(90)}, room.Size{W: inch(10), H: inch(30)},
			geom.RectOf(inch(65), inch(60), inch(75), inch(90)), finding.Caution, "a duct is where opening light is cut"},
		{"something", "other", room.Up{Kind: room.UnknownHeight}, room.Size{},
			geom.RectOf(inch(70), 0, inch(70), inch(97.125)), finding.Caution, "it is not known where something is"},
		{"blocking", "blocking", room.Up{Kind: room.SpanFromFloor, Value: inch(48), To: inch(49.5)}, room.Size{W: inch(14.5)},
			geom.RectOf(inch(62.75), inch(48), inch(77.25), inch(49.5)), finding.Note, "blocking is where opening light is cut"},
		{"a post", "post", room.Up{Kind: room.SpanFromFloor, To: inch(96)}, room.Size{W: inch(3.5)},
			geom.RectOf(inch(68.25), 0, inch(71.75), inch(96)), finding.Caution, "a post is where opening light is cut"},
	} {
		r := job(window())
		r.Walls[0].Services = []room.Service{{What: c.what, Across: across(70), Up: c.up, Size: c.size, At: at(17)}}
		w, found := set(t, r)
		if w.Services[0].Box != c.box {
			t.Errorf("%s: in %v, want %v", c.name, w.Services[0].Box, c.box)
		}
		ok := false
		for _, f := range found {
			if f.Kind == c.kind && strings.HasPrefix(f.What, c.says) && f.On == "wall A" && f.Source != "" && f.Place == at(17) {
				ok = true
			}
		}
		if !ok {
			t.Errorf("%s: no %q in %+v", c.name, c.says, found)
		}
		r.Walls[0].Services[0].Across = across(5)
		_, found = set(t, r)
		for _, f := range found {
			if f.Place == at(17) {
				t.Errorf("%s far away: %+v", c.name, f)
			}
		}
	}
}

// Nothing is set out in a wall that is not framed, but what is there is listed.
func TestMasonryWall(t *testing.T) {
	r := oldWall()
	r.Openings = nil
	r.Walls[0].MadeOf = room.Block
	w, found := set(t, r)
	if len(w.Members) != 0 || len(w.Doors) != 1 || len(w.Services) != 1 || w.Structure != inch(96.25) || len(found) != 0 {
		t.Errorf("%+v, %+v", w, found)
	}
}

func TestOtherWallIsOffered(t *testing.T) {
	o := window()
	o.Size.W = geom.In(170)
	r := job(o)
	longer := r.Walls[0]
	longer.Name, longer.Length = "C", reading(geom.In(240), 6)
	r.Walls = append(r.Walls, longer)
	_, found := Build(r, 0, plan(r))
	if len(found) == 0 {
		t.Fatal("nothing found")
	}
	for _, f := range found {
		if f.Rule == "opening wider than wall" && !strings.HasSuffix(f.Hint, "; or give the opening on wall C (240)") {
			t.Errorf("hint %q", f.Hint)
		}
	}
}

// E10 and the thickness of headers: within 1/16 it is a note.
func TestHeaderThickness(t *testing.T) {
	for _, c := range []struct {
		plies  int
		filler float64
		stud   string
		kind   finding.Kind // Error: nothing is to be said
	}{
		{2, 0.5, "2x4", finding.Error},
		{2, 15.0 / 32, "2x4", finding.Note},
		{2, 7.0 / 16, "2x4", finding.Note}, // 3-7/16: the least that 15/32 may be
		{2, 0.375, "2x4", finding.Warning},
		{2, 0, "2x4", finding.Warning},
		{3, 0.5, "2x6", finding.Error},
		{3, 0, "2x4", finding.Warning},
		{3, 15.0 / 32, "2x6", finding.Note},
	} {
		o := window()
		o.Header.Plies, o.Header.Filler = c.plies, inch(c.filler)
		r := job(o)
		r.Walls[0].Frame.Stud = timber(c.stud)
		_, found := set(t, r)
		got := finding.Error
		for _, f := range found {
			if f.Rule == "header not flush" {
				got = f.Kind
			}
		}
		if got != c.kind {
			t.Errorf("%d plies, filler %v, %s studs: %v, want %v", c.plies, c.filler, c.stud, got, c.kind)
		}
	}
}

// A stud that stands in the place of a jack keeps its stub over the header;
// one in the place of a king goes whole.
func TestStudInTheWay(t *testing.T) {
	o := window()
	o.Kind, o.Liner, o.Shims = room.Rough, room.Want{}, room.Want{}
	o.Size.W = inch(20)
	for _, c := range []struct {
		name         string
		left         float64 // of the rough opening; stud 5 is at 63-1/4 to 64-3/4
		whole, stubs int
		says         string
	}{
		{"in the jack", 64.5, 0, 1, "from the plate up to the upper saw cut"},
		{"half in the king", 66, 1, 0, "taken out whole"},
	} {
		o.Across = room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, Value: inch(c.left), At: at(13)}
		w, found := set(t, job(o))
		if has(found, "stud where a king or jack must stand") != 1 {
			t.Fatalf("%s: findings %+v", c.name, found)
		}
		for _, f := range found {
			if f.Rule == "stud where a king or jack must stand" && !strings.Contains(f.What, c.says) {
				t.Errorf("%s: %s", c.name, f.What)
			}
		}
		if n := len(w.of(Stud, piece.Removed)); n != c.whole {
			t.Errorf("%s: %d studs taken out whole, want %d", c.name, n, c.whole)
		}
		stubs := 0
		for _, m := range w.Members {
			if m.StudNo == 5 && m.Role == CrippleAbove {
				stubs++
			}
			if m.StudNo == 5 && m.Role == CrippleBelow {
				t.Errorf("%s: a stub under the sill where a jack stands", c.name)
			}
		}
		if stubs != c.stubs {
			t.Errorf("%s: %d stubs over the header, want %d", c.name, stubs, c.stubs)
		}
	}
}
