package framing

import (
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/geom/room"
)

// newWall is a wall to be built in millimetres, 3600 long under 2600, studs at
// 600 from the left (worked example computed for this project, framing E3),
// with a doorway in its middle.
func newWall() *room.Room {
	x := room.Timber{Name: "38 x 89", Thick: geom.MM(38), Wide: geom.MM(89), At: at(20)}
	return &room.Room{
		Title: "invented", Units: measure.Millimetres,
		Show: measure.Show{Form: measure.MillimetresOnly, To: geom.Millimetre},
		Walls: []room.Wall{{
			Name: "B", Length: reading(geom.MM(3600), 6), Structure: reading(geom.MM(2600), 7), MadeOf: room.NewStuds, At: at(5),
			Frame: room.Frame{Stud: x, Bearing: room.No, BottomPlates: 1, TopPlates: 1, At: at(7),
				Studs: room.StudPlan{Given: true, Spacing: geom.MM(600), At: at(9)}},
		}},
		Openings: []room.Opening{{
			Name: "way in", Kind: room.Rough, Size: room.Size{W: geom.MM(864), H: geom.MM(2080), At: at(12)},
			Across: room.Across{Kind: room.CentredOnWall, At: at(13)},
			Up:     room.Up{Kind: room.BottomFromFloor, At: at(14)},
			Header: room.Header{Plies: 1, Timber: x, Flat: true, LetIn: room.Want{Value: geom.MM(3)}, At: at(15)},
			Jacks:  1, At: at(11),
		}},
	}
}

// Figures by hand: 3600/2 - 864/2 = 1368; king to king 864 + 2*38 = 940;
// 2600 - 38 - 38 = 2524.
func TestNewWallWithDoorway(t *testing.T) {
	w, found := set(t, newWall())
	o := w.Openings[0]
	if o.Rough != geom.RectOf(geom.MM(1368), 0, geom.MM(2232), geom.MM(2080)) {
		t.Errorf("rough %v", o.Rough)
	}
	for _, row := range []struct {
		mark, name string
		count      int
		length     int64
	}{
		{"B1", "bottom plate", 2, 1368},
		{"B2", "top plate", 1, 3600},
		{"B3", "stud", 6, 2524},
		{"B4", "king stud", 2, 2524},
		{"B5", "jack stud", 2, 2042},
		{"B6", "flat header", 1, 940},
		{"B7", "cripple", 1, 444},
	} {
		n := 0
		for _, m := range w.Members {
			if m.Mark == piece.Mark(row.mark) && m.Name == row.name && m.Length == geom.MM(row.length) && m.State == piece.New {
				n++
			}
		}
		if n != row.count {
			t.Errorf("%d of %s, %s, %d long, want %d", n, row.mark, row.name, row.length, row.count)
		}
	}
	if !o.Sill.Empty() || len(o.Cuts) != 0 || o.UpperCut != 0 {
		t.Errorf("sill %v, cuts %v", o.Sill, o.Cuts)
	}
	if has(found, "no clearance in new work") != 1 || o.LetIn != 0 {
		t.Errorf("let-in %v, findings %+v", o.LetIn, found)
	}
	for _, m := range w.Members {
		if m.StudNo != 0 {
			t.Errorf("%s has the number of an existing stud", m.Mark)
		}
	}
	var at []int64
	for _, s := range w.Studs {
		if s.State != piece.New {
			t.Errorf("%+v stands already", s)
		}
		at = append(at, int64(s.Left/geom.Millimetre))
	}
	want := []int64{0, 581, 1181, 1292, 1330, 2232, 2270, 2381, 2981, 3562}
	if len(at) != len(want) {
		t.Fatalf("uprights at %v, want %v", at, want)
	}
	for i := range at {
		if at[i] != want[i] {
			t.Fatalf("uprights at %v, want %v", at, want)
		}
	}
}

// F18, common practice, no source: cripples on the layout and one under each
// end of a rough sill between jacks.
func TestNewWallWithWindow(t *testing.T) {
	r := newWall()
	o := &r.Openings[0]
	o.Size.H, o.Up.Value, o.Sill = geom.MM(900), geom.MM(1000), 2
	w, _ := set(t, r)
	var below, above []int64
	for _, m := range w.of(CrippleBelow, piece.New) {
		below = append(below, int64(m.Box.Min.X/geom.Millimetre))
		same(t, "cripple below", m.Length, geom.MM(1000-2*38-38))
	}
	for _, m := range w.of(CrippleAbove, piece.New) {
		above = append(above, int64(m.Box.Min.X/geom.Millimetre))
		same(t, "cripple above", m.Length, geom.MM(2562-1938))
	}
	if len(below) != 3 || below[0] != 1368 || below[1] != 1781 || below[2] != 2194 {
		t.Errorf("cripples below at %v, want one at each end of the sill and one on the layout", below)
	}
	if len(above) != 1 || above[0] != 1781 {
		t.Errorf("cripples above at %v", above)
	}
	if s := w.of(Sill, piece.New); len(s) != 2 || s[0].Length != geom.MM(864) {
		t.Errorf("sills %+v", s)
	}
	// Split jacks: the sill runs king to king, and needs no cripple at its ends.
	o.Split = true
	w, _ = set(t, r)
	if c := w.of(CrippleBelow, piece.New); len(c) != 1 {
		t.Errorf("%d cripples below, want 1", len(c))
	}
	if s := w.of(Sill, piece.New); s[0].Length != geom.MM(940) {
		t.Errorf("sill %v, want 940", s[0].Length)
	}
}

func TestNewWallRefusals(t *testing.T) {
	for _, c := range []struct {
		name string
		make func(r *room.Room)
		rule string
	}{
		{"no stud section", func(r *room.Room) { r.Walls[0].Frame.Stud = room.Timber{} }, "stud section not known"},
		{"no spacing", func(r *room.Room) { r.Walls[0].Frame.Studs = room.StudPlan{} }, "studs not known"},
		{"no height", func(r *room.Room) { r.Walls[0].Structure = room.Reading{} }, "height of the studs not known"},
		{"too low", func(r *room.Room) { r.Walls[0].Structure = reading(geom.MM(70), 7) }, "no room for studs"},
		{"a door", func(r *room.Room) {
			r.Openings = nil
			r.Walls[0].Doors = []room.Existing{{Name: "old", Size: room.Size{W: geom.MM(800), H: geom.MM(2000)}, At: at(16),
				Across: room.Across{Kind: room.EdgeFromEnd, Value: geom.MM(200)}}}
		}, "existing door in a new wall"},
	} {
		r := newWall()
		c.make(r)
		_, found := Build(r, 0, plan(r))
		if has(found, c.rule) != 1 || finding.Errors(found) != 1 {
			t.Errorf("%s: %+v", c.name, found)
		}
	}
}

// A gap beside a king is spoken of in new work, and nothing is packed.
func TestNewWallNarrowGap(t *testing.T) {
	r := newWall()
	r.Openings[0].Across = room.Across{Kind: room.EdgeFromEnd, Edge: room.LeftEdge, Value: geom.MM(1300), At: at(13)}
	w, found := set(t, r) // left king 1224 to 1262, stud 1181 to 1219: 5 between
	if has(found, "gap beside a king") != 1 || len(w.Openings[0].Packs) != 0 || len(w.of(Packing, piece.New)) != 0 {
		t.Errorf("packs %v, findings %+v", w.Openings[0].Packs, found)
	}
	for _, f := range found {
		if f.Rule == "gap beside a king" && !strings.HasPrefix(f.Found, "5") {
			t.Errorf("gap %s, want 5", f.Found)
		}
	}
}
