package check

import (
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

func in(whole, sixteenths int64) geom.Length { return geom.InFrac(whole, sixteenths, 16) }

// site is a room of four stud walls, the first with an opening of the given
// sight rectangle.
type site struct {
	r     *room.Room
	walls []framing.Wall
	c     *ceiling.Ceiling
	rows  []lining.Row
}

func newSite(sight geom.Rect) *site {
	s := &site{r: &room.Room{
		Built: 1995,
		Show:  measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16},
	}}
	for _, name := range []string{"A", "B", "C", "D"} {
		s.r.Walls = append(s.r.Walls, room.Wall{Name: name, MadeOf: room.Studs, At: finding.Place{Line: 5, Column: 5},
			Frame: room.Frame{Bearing: room.No, BearingBy: "drawing", OtherDuty: []string{"none"}}})
		s.walls = append(s.walls, framing.Wall{Name: name, Index: len(s.walls), Length: geom.In(144), Structure: geom.In(97)})
	}
	s.r.Openings = []room.Opening{{Name: "pass", Wall: 0, At: finding.Place{Line: 20, Column: 3},
		Glazing: room.Glazing{Given: true, Sheet: room.Material{What: "acrylic", Thick: in(0, 3), At: finding.Place{Line: 25, Column: 9}}}}}
	s.walls[0].Openings = []framing.Opening{{Name: "pass", Sight: sight, Clear: sight.Inset(-in(0, 12)), Rough: sight.Inset(-in(1, 12)), At: s.r.Openings[0].At}}
	return s
}

func (s *site) check() []finding.Finding { return Check(s.r, s.walls, s.rows, s.c) }

// door puts a door into wall i.
func (s *site) door(i int, left, right geom.Length, thing room.Existing) {
	thing.Name = "entry"
	thing.At = finding.Place{Line: 8, Column: 7}
	box := geom.RectOf(left, 0, right, geom.In(80))
	s.walls[i].Doors = append(s.walls[i].Doors, framing.Hole{Name: "entry", Clear: box, Rough: box, Thing: thing})
}

func find(list []finding.Finding, rule string) (finding.Finding, bool) {
	for _, f := range list {
		if f.Rule == rule {
			return f, true
		}
	}
	return finding.Finding{}, false
}

// Worked example computed for this project, glazing E15, from IRC R308.4.3
// (2015), reprint: hazardous only when all four hold.
func TestWindowTests(t *testing.T) {
	pane := func(w, h, bottom geom.Length) geom.Rect {
		return geom.RectOf(geom.In(36), bottom, geom.In(36)+w, bottom+h)
	}
	cases := []struct {
		name  string
		sight geom.Rect
		kind  finding.Kind
		want  []string
	}{
		{"E15a", pane(geom.In(70), in(33, 12), geom.In(36)), finding.Note, []string{"16.41 ft2, more than 9 ft2: yes", "bottom edge 36 in above the floor, less than 18 in: no"}},
		{"E15b", pane(geom.In(70), in(33, 12), geom.In(16)), finding.Caution, []string{"bottom edge 16 in above the floor, less than 18 in: yes", "top edge 49-3/4 in, more than 36 in: yes", "within 36 in: yes"}},
		{"E15d", pane(geom.In(36), in(35, 4), geom.In(16)), finding.Note, []string{"8.81 ft2, more than 9 ft2: no"}},
		{"exactly nine", pane(geom.In(36), geom.In(36), geom.In(16)), finding.Note, []string{"9.00 ft2, more than 9 ft2: no"}},
		{"low", pane(geom.In(72), geom.In(20), geom.In(16)), finding.Note, []string{"top edge 36 in, more than 36 in: no"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			f, ok := find(newSite(c.sight).check(), "safety glazing, window")
			if !ok || f.Kind != c.kind || f.On != "wall A" || f.Place.Line != 25 {
				t.Fatalf("finding %+v, want a %v", f, c.kind)
			}
			for _, want := range c.want {
				if !strings.Contains(f.Found, want) {
					t.Errorf("found %q, want %q in it", f.Found, want)
				}
			}
		})
	}
}

// Worked example computed for this project, glazing E15c, from IRC R308.4.2
// (2015), reprint.
func TestPaneBesideDoor(t *testing.T) {
	low := geom.RectOf(geom.In(60), geom.In(36), geom.In(130), in(69, 12))
	high := geom.RectOf(geom.In(60), geom.In(60), geom.In(130), geom.In(84))
	cases := []struct {
		name        string
		sight       geom.Rect
		wall        int
		left, right int64
		thing       room.Existing
		want        string // nearest edge, empty for none
	}{
		{"E15c, 20 in away in the same wall", low, 0, 10, 40, room.Existing{}, "20"},
		{"24 in away", low, 0, 6, 36, room.Existing{}, "24"},
		{"more than 24 in away", low, 0, 5, 35, room.Existing{}, ""},
		{"high", high, 0, 10, 40, room.Existing{}, ""},
		{"round the corner, hinged there, opens in", low, 1, 10, 40, room.Existing{Hinged: true, Hinge: room.Left, OpensIn: true}, "17-3/16"},
		{"round the corner, hinged at the far side", low, 1, 10, 40, room.Existing{Hinged: true, Hinge: room.Right, OpensIn: true}, ""},
		{"round the corner, opens out", low, 1, 10, 40, room.Existing{Hinged: true, Hinge: room.Left, OpensOut: true}, ""},
		{"round the corner, nothing said", low, 1, 10, 40, room.Existing{}, "17-3/16"},
		{"round the corner, too far", low, 1, 20, 50, room.Existing{}, ""},
		{"the other corner", geom.RectOf(geom.In(10), geom.In(36), geom.In(80), geom.In(70)), 3, 100, 132, room.Existing{Hinged: true, Hinge: room.Right, OpensIn: true}, "15-5/8"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			s := newSite(c.sight)
			s.door(c.wall, geom.In(c.left), geom.In(c.right), c.thing)
			f, ok := find(s.check(), "safety glazing, door")
			if ok != (c.want != "") {
				t.Fatalf("found %v %+v, want %q", ok, f, c.want)
			}
			if ok && (!strings.HasPrefix(f.Found, "nearest edge "+c.want+" in from the door") || f.Kind != finding.Caution) {
				t.Errorf("finding %+v, want %q", f, c.want)
			}
		})
	}
}

func TestLoad(t *testing.T) {
	pane := geom.RectOf(geom.In(36), geom.In(36), geom.In(100), geom.In(70))
	cases := []struct {
		answer room.Answer
		make   room.Make
		rule   string
		kind   finding.Kind
		says   string
	}{
		{room.NotSaid, room.Studs, "load-bearing not answered", finding.Error, "is wall A load-bearing? asked before it is cut, and not answered"},
		{room.Unknown, room.Studs, "load not known", finding.Caution, "lapped or ending on it"},
		{room.Yes, room.Studs, "wall carries load", finding.Caution, "this drawing sizes neither"},
		{room.No, room.Studs, "taken to carry nothing", finding.Caution, "Stop and ask an engineer"},
		{room.NotSaid, room.NewStuds, "load-bearing not answered", finding.Error, "asked before it is built"},
		{room.Yes, room.NewStuds, "new wall that may carry load", finding.Caution, "this drawing sizes none"},
	}
	for _, c := range cases {
		s := newSite(pane)
		s.r.Walls[0].MadeOf = c.make
		s.r.Walls[0].Frame.Bearing = c.answer
		f, ok := find(s.check(), c.rule)
		if !ok || f.Kind != c.kind || !strings.Contains(f.What, c.says) || f.Source == "" || f.On != "wall A" {
			t.Errorf("answer %v: %+v, want %v %q", c.answer, f, c.kind, c.says)
		}
	}
}

// A new wall is not cut: no cables, no old paint.
func TestNewWallIsNotCut(t *testing.T) {
	s := newSite(geom.RectOf(geom.In(36), geom.In(36), geom.In(100), geom.In(70)))
	s.r.Walls[0].MadeOf, s.r.Built = room.NewStuds, 0
	for _, rule := range []string{"live cables", "lead paint", "asbestos", "dust", "permit", "pipes and ducts"} {
		if f, ok := find(s.check(), rule); ok {
			t.Errorf("%+v on a wall that is to be built", f)
		}
	}
}

// Worked example computed for this project, lead E24: a rough opening of
// 73-1/2 x 37-1/4 is 19.0 ft2 a face, above the 6 ft2 of 40 CFR 745.83.
func TestLeadAndAsbestos(t *testing.T) {
	s := newSite(geom.RectOf(geom.In(36), geom.In(36), geom.In(100), geom.In(70)))
	s.walls[0].Openings[0].Rough = geom.RectOf(0, 0, in(73, 8), in(37, 4))
	for built, want := range map[int][2]bool{0: {true, true}, 1958: {true, true}, 1977: {true, true}, 1978: {false, true}, 1985: {false, true}, 1986: {false, false}} {
		s.r.Built = built
		list := s.check()
		f, lead := find(list, "lead paint")
		_, asbestos := find(list, "asbestos")
		if [2]bool{lead, asbestos} != want {
			t.Errorf("built %d: lead %v, asbestos %v, want %v", built, lead, asbestos, want)
		}
		if lead && !strings.Contains(f.Found, "19.01 ft2 a face") {
			t.Errorf("found %q, want 19.01 ft2 a face", f.Found)
		}
	}
	s.r.Built, s.r.PaidWork = 1958, room.No
	if f, _ := find(s.check(), "lead paint"); !strings.Contains(f.What, "do it themselves") {
		t.Errorf("%q does not say that the hazard is the same", f.What)
	}
}

func TestDuty(t *testing.T) {
	pane := geom.RectOf(geom.In(36), geom.In(36), geom.In(100), geom.In(70))
	for _, c := range []struct {
		duty []string
		want string
	}{
		{nil, "It is not known whether wall A braces the building"},
		{[]string{"unknown"}, "It is not known"},
		{[]string{"fire-rated", "party"}, "Glazing in it needs their approval too."},
		{[]string{"braced"}, "Wall A has another duty: braced."},
		{[]string{"none"}, ""},
	} {
		s := newSite(pane)
		s.r.Walls[0].Frame.OtherDuty = c.duty
		f, ok := find(s.check(), "other duty of a wall")
		if ok != (c.want != "") || !strings.Contains(f.What, c.want) {
			t.Errorf("%v: %+v, want %q", c.duty, f, c.want)
		}
	}
}

func TestUnderTheCeiling(t *testing.T) {
	s := newSite(geom.RectOf(geom.In(36), geom.In(44), geom.In(100), geom.In(78)))
	s.r.Openings[0].Casing = room.Casing{Width: room.Want{Value: in(2, 4)}, Reveal: room.Want{Value: in(0, 3)}, Inside: true}
	s.r.Ceiling, s.c = &room.Ceiling{At: finding.Place{Line: 30, Column: 1}}, &ceiling.Ceiling{Face: in(82, 0)}
	s.door(1, geom.In(20), geom.In(50), room.Existing{Casing: in(2, 4)})
	s.rows = []lining.Row{{Name: "b", Box: geom.RectOf(0, 0, geom.In(48), geom.In(96)), Sheets: make([]lining.Sheet, 1), At: finding.Place{Line: 40, Column: 3}}}
	cases := []struct {
		face  geom.Length
		rule  string
		wants string // empty when the rule must be silent
	}{
		// clear top 78-3/4, casing top 78-3/4 + 3/16 + 2-1/4 = 81-3/16
		{in(81, 3), "opening above the ceiling", ""},
		{in(81, 2), "opening above the ceiling", "lower it by 1/16"},
		{in(82, 4), "door above the ceiling", ""},
		{in(82, 3), "door above the ceiling", "casing at 82-1/4"},
		{in(79, 0), "door above the ceiling", "the door would not open under it"},
		{in(96, 0), "board above the ceiling", ""},
		{in(95, 0), "board above the ceiling", "cut to: 95 in"},
		{in(84, 0), "headroom", ""},
		{in(83, 0), "headroom", "ceiling face 83"},
	}
	for _, c := range cases {
		s.c.Face = c.face
		f, ok := find(s.check(), c.rule)
		if ok != (c.wants != "") || !strings.Contains(f.What+f.Found+f.Hint, c.wants) {
			t.Errorf("face %v, %s: %v %+v, want %q", c.face, c.rule, ok, f, c.wants)
		}
	}
}

// Every caution is made of sentences, has a sheet, a place and a source.
func TestCautionsAreSentences(t *testing.T) {
	s := newSite(geom.RectOf(geom.In(36), geom.In(16), geom.In(100), geom.In(70)))
	s.r.Built = 0
	s.r.Walls[0].Frame.OtherDuty = nil
	s.r.Walls[0].Frame.Bearing = room.Unknown
	s.r.Lights = []room.Light{{Name: "panel"}}
	s.r.Ceiling, s.c = &room.Ceiling{At: finding.Place{Line: 30, Column: 1}}, &ceiling.Ceiling{Face: geom.In(80)}
	s.door(0, geom.In(10), geom.In(20), room.Existing{})
	n := 0
	for _, f := range s.check() {
		if f.Kind != finding.Caution {
			continue
		}
		n++
		if f.On == "" || f.Place.Line == 0 || f.Source == "" || !strings.HasSuffix(f.What, ".") || f.What[:1] != strings.ToUpper(f.What[:1]) || len(f.What) > 420 {
			t.Errorf("%d letters: %+v", len(f.What), f)
		}
	}
	if n < 11 {
		t.Errorf("%d cautions, want each of the eleven and more", n)
	}
}
