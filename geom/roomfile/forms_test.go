package roomfile

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// base is an invented room; wall A has studs, and more may be said of it and
// of the file.
func base(units, wallA, more string) string {
	return fmt.Sprintf(`title: Smoke house to label printer's room
units: %s
every wall: {made of: block, tape on: masonry, floor to structure: 8 ft 3 in}
walls:
  - wall: A
    length: 14 ft 7.5 in
    made of: studs
    tape on: studs
    lining: {inside: none, outside: none}
    frame: {stud: 2x4, bearing: no, studs: {left edges from left: [0 in, 15-1/4 in, 31-3/8 in, 174 in]}}
%s
  - {wall: B, length: 11 ft 3 in, doors: [{door: entry, clear: 31 x 80 in, right edge from right: 18 in}]}
  - {wall: C, length: 14 ft 7.5 in}
  - {wall: D, length: 11 ft 3 in}
%s
`, units, wallA, more)
}

// TestOpeningPlaces reads every way to place an opening.
func TestOpeningPlaces(t *testing.T) {
	at := func(kind room.AcrossKind, f func(*room.Across)) room.Across {
		a := room.Across{Kind: kind}
		f(&a)
		return a
	}
	stud := func(n int) room.StudRef { return room.StudRef{Number: n} }
	for _, c := range []struct {
		across, up string
		want       room.Across
		wantUp     room.Up
	}{
		{"left edge from left: 42", "bottom from floor: 44",
			at(room.EdgeFromEnd, func(a *room.Across) { a.Value = in(42, 0, 1) }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"left edge from right: 42-1/2 if it fits", "bottom from floor: 0",
			at(room.EdgeFromEnd, func(a *room.Across) { a.From, a.Value, a.Wish = room.Right, in(42, 1, 2), true }), room.Up{Kind: room.BottomFromFloor}},
		{"right edge from left: 42", "top from floor: 80 if it fits",
			at(room.EdgeFromEnd, func(a *room.Across) { a.Edge, a.Value = room.RightEdge, in(42, 0, 1) }), room.Up{Kind: room.TopFromFloor, Value: in(80, 0, 1), Wish: true}},
		{"right edge from right: 3' 6\"", "top from ceiling: 10",
			at(room.EdgeFromEnd, func(a *room.Across) { a.Edge, a.From, a.Value = room.RightEdge, room.Right, in(42, 0, 1) }), room.Up{Kind: room.TopFromCeiling, Value: in(10, 0, 1)}},
		{"center from left: 60", "bottom from floor: 1 m",
			at(room.EdgeFromEnd, func(a *room.Across) { a.Edge, a.Value = room.Centre, in(60, 0, 1) }), room.Up{Kind: room.BottomFromFloor, Value: geom.MM(1000)}},
		{"centre from right: 60", "bottom from floor: 44",
			at(room.EdgeFromEnd, func(a *room.Across) { a.Edge, a.From, a.Value = room.Centre, room.Right, in(60, 0, 1) }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"centred on: wall", "bottom from floor: 44",
			at(room.CentredOnWall, func(*room.Across) {}), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"centered on: wall if it fits", "bottom from floor: 44",
			at(room.CentredOnWall, func(a *room.Across) { a.Wish = true }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"centred on: stud 3", "bottom from floor: 44",
			at(room.CentredOnStud, func(a *room.Across) { a.Stud = stud(3) }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"centred on: stud at 31-3/8", "bottom from floor: 44",
			at(room.CentredOnStud, func(a *room.Across) { a.Stud.Mark = in(31, 3, 8) }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"centred on: opening other one", "bottom from floor: 44",
			at(room.CentredOnThing, func(a *room.Across) { a.Thing = "other one" }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"centred on: door old way", "bottom from floor: 44",
			at(room.CentredOnThing, func(a *room.Across) { a.Thing = "old way" }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"centred between: stud 2 and stud 3", "bottom from floor: 44",
			at(room.CentredBetween, func(a *room.Across) { a.Stud, a.Stud2 = stud(2), stud(3) }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"left king: stud 2", "bottom from floor: 44",
			at(room.KingLeft, func(a *room.Across) { a.Stud = stud(2) }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
		{"right king: stud at 15-1/4", "bottom from floor: 44",
			at(room.KingRight, func(a *room.Across) { a.Stud.Mark = in(15, 1, 4) }), room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)}},
	} {
		t.Run(c.across+", "+c.up, func(t *testing.T) {
			m, _ := good(t, base("inches", "    doors: [{door: old way, clear: 30 x 80, left edge from left: 100}]",
				"openings:\n  - opening: one\n    wall: A\n    rough: 30 x 20\n    "+c.across+"\n    "+c.up+
					"\n    header: flat 2x4\n    glazing: none\n"+
					"  - {opening: other one, wall: A, rough: 10 x 10, left edge from left: 150, bottom from floor: 50, header: flat 2x4, glazing: none}\n"+
					"ceiling: {face from floor: 90, seismic: none, grid: 24x24, panel: 5/8}\nabove: {joists: unknown}\n"))
			if diff := cmp.Diff(c.want, m.Openings[0].Across, places()); diff != "" {
				t.Error(diff)
			}
			if diff := cmp.Diff(c.wantUp, m.Openings[0].Up, places()); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// TestSizesOfOpenings reads each size that an opening can be given by.
func TestSizesOfOpenings(t *testing.T) {
	for name, kind := range map[string]room.SizeKind{"rough": room.Rough, "clear": room.Clear, "sight": room.Sight, "pane in hand": room.PaneInHand} {
		m, _ := good(t, base("millimetres", "", "openings: [{opening: one, wall: A, "+name+": 900 x 60 cm, centred on: wall, bottom from floor: 1100, header: flat 38 x 89, glazing: none}]"))
		o := m.Openings[0]
		// a unit after the second length serves the first: 900 cm
		if o.Kind != kind || o.Size.W != geom.MM(9000) || o.Size.H != geom.MM(600) {
			t.Errorf("%s: %+v", name, o.Size)
		}
		if !o.Header.Flat || o.Header.Plies != 1 || o.Header.Timber.Name != "38 x 89" || o.Header.Timber.Wide != geom.MM(89) {
			t.Errorf("header %+v", o.Header)
		}
		if o.Liner.Given() || o.Stops.Given() || o.Casing.Inside || o.Casing.Outside || o.LinerRun != "" {
			t.Errorf("an opening with no glazing has no liner, casing or stops: %+v", o)
		}
	}
}

// TestWalls reads the ways to say how a wall is made and taped.
func TestWalls(t *testing.T) {
	for _, c := range []struct {
		wall string
		want func(w room.Wall) bool
	}{
		{"length: about 135", func(w room.Wall) bool { return w.Length.About && w.Length.Value == in(135, 0, 1) }},
		{"length: 135 +/- 1/4", func(w room.Wall) bool {
			return w.Length.Within == in(0, 1, 4) && !w.Length.About && w.Length.Value == in(135, 0, 1)
		}},
		{"length: 135 ± 1/4", func(w room.Wall) bool { return w.Length.Within == in(0, 1, 4) }},
		{"length: unknown", func(w room.Wall) bool { return w.Length.Unknown && w.Length.Given() && !w.Length.Known() }},
		// the mean of 135, 135-1/8 and 135-1/4 is 135-1/8
		{"length: [135, 135-1/8, about 135-1/4]", func(w room.Wall) bool {
			return w.Length.Value == in(135, 1, 8) && len(w.Length.All) == 3 && w.Length.About
		}},
		{"length: 6½\"", func(w room.Wall) bool { return w.Length.Value == in(6, 1, 2) }},
		{"length: 3.81 m", func(w room.Wall) bool { return w.Length.Value == geom.MM(3810) }},
		{"length: 010", func(w room.Wall) bool { return w.Length.Value == in(10, 0, 1) }},
		{"length: 20, made of: New Studs, frame: {stud: 2x4, bearing: {answer: no, by: me}, studs: 600 mm from right}", func(w room.Wall) bool {
			return w.MadeOf == room.NewStuds && w.Frame.Studs.Spacing == geom.MM(600) && w.Frame.Studs.From == room.Right &&
				w.Frame.Studs.First == geom.MM(600) && w.Frame.TopPlates == 1 && w.Frame.BottomPlates == 1 && w.Frame.BearingBy == "me"
		}},
		{"length: 20, made of: studs, frame: {stud: 2x4, top plates: 1, bottom plates: 2, studs: {spacing: 16 from left, first centre from left: 0}}", func(w room.Wall) bool {
			return w.Frame.Studs.First == 0 && w.Frame.TopPlates == 1 && w.Frame.BottomPlates == 2
		}},
		{"length: 20, made of: studs, frame: {stud: 1-1/2 x 3-1/2 in, other duty: [braced, party], stud length: 92-5/8, studs: {centres from right: [3/4, 16]}}", func(w room.Wall) bool {
			p := w.Frame.Studs
			return w.Frame.Stud.Name == "1-1/2 x 3-1/2" && len(w.Frame.OtherDuty) == 2 && p.Edge == room.Centre && p.From == room.Right &&
				len(p.Marks) == 2 && w.Frame.StudLength.Value == in(92, 5, 8)
		}},
		{"length: 20, made of: studs, frame: 2x6", func(w room.Wall) bool {
			return w.Frame.Stud.Name == "2x6" && w.Frame.Stud.Wide == in(5, 1, 2) && w.Frame.TopPlates == 2
		}},
		{"length: 20, lining: {inside: 12.5 mm gypsum board, outside: unknown}", func(w room.Wall) bool {
			return w.Inside.Thick == geom.MM(25)/2 && w.Inside.What == "gypsum board" && w.Outside.Unknown
		}},
		{"length: 20, note: keep the shelf", func(w room.Wall) bool { return w.Note == "keep the shelf" }},
	} {
		text := "title: Net loft\nunits: inches\nevery wall: {made of: block, tape on: lining, floor to structure: 99}\nwalls:\n  - {wall: A, " + c.wall +
			"}\n  - {wall: B, length: 20}\n  - {wall: C, length: 20}\n  - {wall: D, length: 20}\n"
		m, _ := good(t, text)
		if !c.want(m.Walls[0]) {
			t.Errorf("%s: %+v", c.wall, m.Walls[0])
		}
	}
}

// TestEveryWall checks that a wall's own key replaces that of all walls whole.
func TestEveryWall(t *testing.T) {
	m, _ := good(t, `title: Net loft
units: inches
every wall: {made of: block, tape on: masonry, floor to structure: 99, lining: {inside: none, outside: none}, note: all}
walls:
  - {wall: A, length: 100, lining: {inside: 1/2 gypsum}, tape on: lining}
  - {wall: B, length: 100, note: own}
  - {wall: C, length: 100}
  - {wall: "010", length: 100}
`)
	a := m.Walls[0]
	if a.Outside.Given() || a.Inside.What != "gypsum" || a.TapeOn != room.FaceLining || a.MadeOf != room.Block || a.Note != "all" {
		t.Errorf("wall A: %+v", a)
	}
	if b := m.Walls[1]; b.Note != "own" || !b.Inside.None {
		t.Errorf("wall B: %+v", b)
	}
	if m.Walls[3].Name != "010" || m.CornerName(0) != "010/A" {
		t.Errorf("a name is taken as written: %q", m.Walls[3].Name)
	}
}

// TestWeights converts weights. 1 lb = 453.59237 g, 1 ft = 0.3048 m exactly
// (international yard and pound).
func TestWeights(t *testing.T) {
	r := &reader{}
	for _, c := range []struct {
		text string
		per  bool
		want int64
	}{
		{"7 lb", false, 3175}, {"1 lbs", false, 454}, {"7-1/2 lb", false, 3402}, {"1/2 lb", false, 227}, {"16 oz", false, 454},
		{"3.4 kg", false, 3400}, {"250 g", false, 250}, {"7lb", false, 3175},
		{"1 lb/ft2", true, 4882}, {"0.6 lb/ft²", true, 2929}, {"3.2 kg/m2", true, 3200}, {"5 kg / m2", true, 5000},
	} {
		got, _, ok := r.weight(&node{kind: word, text: c.text}, c.per)
		if !ok || got != c.want {
			t.Errorf("%s: %d, %v; want %d", c.text, got, ok, c.want)
		}
	}
	for _, text := range []string{"", "lb", "7", "7 stone", "-7 lb", "0 lb", "7 lb/ft2", "1/0 lb", "7 7 lb", "1e9 kg", "99999999 kg", "7 lb 3 oz"} {
		if got, _, ok := r.weight(&node{kind: word, text: text}, false); ok {
			t.Errorf("%q is read as %d g", text, got)
		}
	}
	if _, _, ok := r.weight(&node{kind: word, text: "7 lb"}, true); ok {
		t.Error("a weight of an area without the area is read")
	}
}

// TestScales reads scales of drawings: 1/2 in to 1 ft is 1 to 24.
func TestScales(t *testing.T) {
	r := &reader{units: measure.Inches}
	for text, want := range map[string]int64{
		"1/2 in to 1 ft": 24, "1/4 in to 1 ft": 48, "3/8 in to 1 ft": 32, "3 in to 1 ft": 4, "1:20": 20, "1 : 50": 50, "1:1": 1, "1 cm to 1 m": 100,
		"": 0, "2:1": 0, "1:0": 0, "1:5000": 0, "1 ft to 1/2 in": 0, "0 in to 1 ft": 0, "half": 0, "1:20.5": 0,
	} {
		if got := r.scale(&node{kind: word, text: text}); got != want {
			t.Errorf("%q: %d, want %d", text, got, want)
		}
	}
}

// TestLights reads the ways to place lights, and names of cells.
func TestLights(t *testing.T) {
	m, _ := good(t, base("inches", "", `above: {joists: unknown}
ceiling: {face from floor: 90, seismic: none, grid: 24x24, panel: 5/8}
lights:
  - {light: a, size: 24x24, count: 2, depth: 2, cells: [R3, pp12]}
  - {light: b, size: 24 x 48, count: 1, depth: about 2, centre from A: 60, centre from D: 84 if it fits}
  - {light: c, size: 4 x 2 ft, count: 3, depth: 2, thickness: 1/2, arrange: evenly, weight: 6 lb}
`))
	if c := m.Lights[0].Cells; len(c) != 2 || c[0].Name != "R3" || c[1].Name != "PP12" {
		t.Errorf("cells %+v", c)
	}
	if c := m.Lights[1].Centre; len(c) != 2 || c[0].Wall != 0 || c[1].Wall != 3 || !c[1].Value.IfFits || c[1].Value.Value != in(84, 0, 1) || m.Lights[1].Arrange != "" {
		t.Errorf("centre %+v", c)
	}
	if l := m.Lights[2]; l.Arrange != "evenly" || l.Thick.Value != in(0, 1, 2) || l.Size.W != in(48, 0, 1) {
		t.Errorf("light c: %+v", l)
	}
}

// TestJoists reads the ways to say where joists are.
func TestJoists(t *testing.T) {
	for text, wanted := range map[string]room.Joists{
		"{run: B to D, spacing: 400 mm, first centre from A: 8}":   {RunFrom: 1, RunTo: 3, Spacing: geom.MM(400), From: 0, First: in(8, 0, 1)},
		"{run: A to C, centres from B: [10, 26, 42-1/4]}":          {RunTo: 2, From: 1, Centres: []geom.Length{in(10, 0, 1), in(26, 0, 1), in(42, 1, 4)}},
		"{run: A to C, spacing: 16, first centre from D: unknown}": {RunTo: 2, Spacing: in(16, 0, 1), Unknown: true},
		"unknown": {Unknown: true},
	} {
		m, list := good(t, base("inches", "", "above: {joists: "+text+"}"))
		if diff := cmp.Diff(&wanted, m.Above.Joists, places()); diff != "" {
			t.Errorf("%s: %s", text, diff)
		}
		warned := false
		for _, f := range list {
			warned = warned || f.Rule == "joists unknown"
		}
		if warned != wanted.Unknown {
			t.Errorf("%s: warned %v", text, warned)
		}
	}
}

// TestAssumed checks that each value that is taken is noted, with its value
// and where it is from.
func TestAssumed(t *testing.T) {
	for _, c := range []struct {
		units measure.System
		notes []string // what, then the source
	}{
		{measure.Inches, []string{
			`greatest misfit of the survey taken as 1/2"`, "common practice, no source",
			`top plates of wall A taken as 2`, "common practice, no source",
			`stud length of wall A taken as 7' 9": floor to structure less 3 plates`, "common practice, no source",
			`jacks of opening borrowed light taken as 1 a side`, "older state residential code 602.6.3",
			`shims of opening borrowed light taken as 1/4"`, "home-improvement framing guide",
			`casing reveal of opening borrowed light taken as 3/16"`, "home-improvement guides to trim",
			`gap between the sheets of board seed chart taken as 1/16"`, "from memory",
			`stock length of the main tees taken as 12' 0"`, "US Navy builder training manual 14044",
			`panels taken as 1' 11-3/4" x 1' 11-3/4", the module less 1/4"`, "from memory",
			`spacing of the hangers taken as 4' 0"`, "1998 CBC Standard 25-2",
		}},
		{measure.Millimetres, []string{
			`greatest misfit of the survey taken as 12`, "common practice, no source",
			`shims of opening borrowed light taken as 6`, "common practice, no source",
			`gap between the sheets of board seed chart taken as 2`, "common practice, no source",
			`face of the tees taken as 24`, "grid specification guide",
			`panels taken as 595 x 595, the module less 5`, "from memory",
		}},
	} {
		_, list := good(t, string(Starter(c.units)))
		for i := 0; i < len(c.notes); i += 2 {
			seen := false
			for _, f := range list {
				if f.What == c.notes[i] {
					seen = true
					if f.Kind != finding.Note || !strings.Contains(f.Source, c.notes[i+1]) || f.Place == (finding.Place{}) {
						t.Errorf("%s: %+v, want the source %q", c.notes[i], f, c.notes[i+1])
					}
				}
			}
			if !seen {
				t.Errorf("no note %q", c.notes[i])
			}
		}
	}
}

// TestNothingAssumed checks that what is written is not noted as taken.
func TestNothingAssumed(t *testing.T) {
	_, list := good(t, `title: Net loft
units: inches
show: inches to 1/8
built: 1961
paid work: yes
every wall: {made of: block, tape on: masonry, floor to structure: 99}
walls:
  - {wall: A, length: 100}
  - {wall: B, length: 100}
  - {wall: C, length: 100}
  - {wall: D, length: 100}
survey: {corners: square, tape reads to: 1/8, about means: 2, closes within: 1}
above: {joists: {run: A to C, spacing: 16, first centre from D: 10}}
boards: [{board: b, wall: A, sheets: 1 of 48 x 96, bottom from floor: 4, gap: 0}]
ceiling:
  face from floor: 90
  clear above: 0
  seismic: none
  grid: {module: 24x24, follow: A, least border: 10, tee face: 9/16, tee height: 1-5/8}
  mains: {along: A, spacing: 24, stock: 120, slots: 6 then every 12, duty: heavy}
  hangers: {spacing: 36, first within: 12}
  edge: {gap: 0, angle: 2}
  panel: {thickness: 5/8, size: 23-1/2 x 23-1/2, weight: 1 lb/ft2}
lights: [{light: l, size: 24x24, count: 1, arrange: evenly, depth: 2, thickness: 2, weight: 3 lb}]
drawing: {paper: A3, orientation: portrait}
`)
	if len(list) > 0 {
		t.Errorf("%d findings, the first: %s", len(list), Format(list[0], "room.yaml"))
	}
}

// TestSections checks the tables: no key twice, every key that is read says
// what it is and what may follow it, at most one stands for a lone value.
func TestSections(t *testing.T) {
	words := map[string]bool{}
	for _, s := range Sections() {
		if words[s.Word] || s.Word == "" || s.Name == "" {
			t.Errorf("section %q: no word of its own", s.Name)
		}
		words[s.Word] = true
		seen, lone, noted := map[string]bool{}, 0, false
		for _, k := range s.Keys {
			if seen[k.Name] || k.Name == "" || ownSpelling(k.Name) != k.Name {
				t.Errorf("%s: key %q", s.Name, k.Name)
			}
			seen[k.Name] = true
			if k.Read && (k.Form == "" || k.Means == "") {
				t.Errorf("%s: key %q is not explained", s.Name, k.Name)
			}
			if k.Lone {
				lone++
			}
			noted = noted || k.Name == "note"
		}
		if lone > 1 || !noted {
			t.Errorf("%s: %d keys stand for a lone value; note: %v", s.Name, lone, noted)
		}
	}
	for _, w := range []string{"room", "wall", "frame", "opening", "ceiling", "light", "board", "door", "window"} {
		if !words[w] {
			t.Errorf("no section %q", w)
		}
	}
}
