package roomfile

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// TestTrim reads what goes round an opening, each key on its own.
func TestTrim(t *testing.T) {
	standard := room.Opening{
		Name: "one", Size: room.Size{W: in(30, 0, 1), H: in(20, 0, 1)}, Kind: room.Clear,
		Across: room.Across{Kind: room.CentredOnWall}, Up: room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)},
		Header: room.Header{Plies: 2, Timber: room.Timber{Name: "2x6", Thick: in(1, 1, 2), Wide: in(5, 1, 2)}, LetIn: want(in(0, 1, 8))},
		Jacks:  1, Sill: 1, Liner: want(in(0, 3, 4)), LinerRun: "head and sill", Shims: want(in(0, 1, 4)),
		Casing: room.Casing{Width: want(in(2, 1, 4)), Reveal: want(in(0, 3, 16)), Inside: true, Outside: true},
		Stops:  want(in(0, 3, 4)), Glazing: room.Glazing{Sheet: room.Material{Thick: in(0, 1, 4), What: "acrylic"}, Given: true},
	}
	for _, c := range []struct {
		keys   string
		change func(*room.Opening)
	}{
		{"note: x", func(o *room.Opening) { o.Note = "x" }},
		{"jacks: 2", func(o *room.Opening) { o.Jacks = 2 }},
		{"jacks: {at sill: split}", func(o *room.Opening) { o.Split = true }},
		{"jacks: {a side: 2, at sill: through, note: j}", func(o *room.Opening) { o.Jacks, o.Note = 2, "j" }},
		{"sill: 2", func(o *room.Opening) { o.Sill = 2 }},
		{"sill: 0", func(o *room.Opening) { o.Sill = 0 }},
		{"liner: 7/8", func(o *room.Opening) { o.Liner = want(in(0, 7, 8)) }},
		{"liner: {thickness: 1/2 if it fits, over: sides}", func(o *room.Opening) {
			o.Liner, o.LinerRun = room.Want{Value: in(0, 1, 2), IfFits: true}, "sides"
		}},
		{"shims: 0", func(o *room.Opening) { o.Shims = want(0) }},
		{"casing: 3", func(o *room.Opening) { o.Casing.Width = want(in(3, 0, 1)) }},
		{"casing: {reveal: 1/4, faces: inside}", func(o *room.Opening) { o.Casing.Reveal, o.Casing.Outside = want(in(0, 1, 4)), false }},
		{"casing: {faces: outside}", func(o *room.Opening) { o.Casing.Inside = false }},
		{"casing: {faces: none}", func(o *room.Opening) { o.Casing = room.Casing{} }},
		{"casing: none", func(o *room.Opening) { o.Casing = room.Casing{} }},
		{"stops: 20 mm", func(o *room.Opening) { o.Stops = want(geom.MM(20)) }},
	} {
		t.Run(c.keys, func(t *testing.T) {
			m, _ := good(t, base("inches", "", "openings:\n  - opening: one\n    wall: A\n    clear: 30 x 20\n    centred on: wall\n    bottom from floor: 44\n"+
				"    header: 2 of 2x6\n    glazing: 1/4 acrylic\n    "+c.keys+"\n"))
			wanted := standard
			c.change(&wanted)
			if diff := cmp.Diff(wanted, m.Openings[0], places()); diff != "" {
				t.Error(diff)
			}
		})
	}
	// a doorway has no sill; what is given is kept although nothing is glazed
	m, _ := good(t, base("inches", "", "openings: [{opening: one, wall: A, rough: 34 x 82, centred on: wall, bottom from floor: 0, "+
		"header: {plies: 3 of 2x8, filler: none, let-in: 0}, glazing: none, casing: 2-1/2, liner: 11/16}]"))
	o := m.Openings[0]
	if o.Sill != 0 || o.Header.Plies != 3 || o.Header.Filler != 0 || o.Header.LetIn.Value != 0 || o.Stops.Given() ||
		o.Liner.Value != in(0, 11, 16) || o.Shims.Value != in(0, 1, 4) || !o.Casing.Inside || o.Casing.Width.Value != in(2, 1, 2) {
		t.Errorf("%+v", o)
	}
}

// TestSmallest reads the least that makes a room with a ceiling: two walls are
// left to the survey.
func TestSmallest(t *testing.T) {
	m, list := good(t, `title: Linen closet
units: inches
every wall: {made of: studs, tape on: lining, floor to structure: 96}
walls:
  - {wall: A, length: 7' 4"}
  - {wall: B, length: 4' 9"}
  - {wall: C, length: unknown}
  - {wall: D, length: unknown}
above:
  joists: {size: 2x6, run: A to C, spacing: 16, first centre from D: 16}
ceiling: {face from floor: 90, grid: 24x24, panel: 5/8, seismic: unknown}
`)
	if !m.Walls[2].Length.Unknown || m.Walls[0].Length.Value != in(88, 0, 1) || m.Ceiling.Panel.Thick.Value != in(0, 5, 8) ||
		m.Ceiling.Grid.Follow != -1 || m.Ceiling.Grid.Least.Given() {
		t.Errorf("%+v", m)
	}
	for _, f := range list {
		if f.Kind == finding.Warning && f.Rule != "seismic unknown" {
			t.Errorf("%+v", f)
		}
	}
}

// TestNotes keeps every note: of the file and its parts, of a wall and its
// parts.
func TestNotes(t *testing.T) {
	m, _ := good(t, base("inches", "    note: one", `note: file
survey: {note: survey}
above: {note: above, joists: {run: A to C, spacing: 16, first centre from D: 10, note: joists}}
drawing: {note: drawing}
ceiling: {face from floor: 90, seismic: none, note: c, grid: {module: 24x24, note: g}, mains: {note: m}, hangers: {note: h}, edge: {note: e}, panel: {thickness: 1/2, note: p}}
`))
	if got := m.Notes; len(got) != 1 || got[0] != "survey; joists; above; drawing; file" {
		t.Errorf("%q", got)
	}
	if got := m.Ceiling.Note; got != "g; m; h; e; p; c" {
		t.Errorf("%q", got)
	}
	if got := m.Walls[0].Note; got != "one" {
		t.Errorf("%q", got)
	}
	w, _ := good(t, `title: Net loft
units: inches
every wall: {made of: block, tape on: masonry, floor to structure: 99}
walls:
  - {wall: A, length: 9, made of: studs, tape on: studs, lining: {inside: none, note: l}, frame: {stud: 2x4, note: f, bearing: {answer: no, note: b}, studs: {spacing: 16 from left, note: s}}}
  - {wall: B, length: 9}
  - {wall: C, length: 9}
  - {wall: D, length: 9}
`)
	if got := w.Walls[0].Note; got != "l; b; s; f" {
		t.Errorf("%q", got)
	}
}
