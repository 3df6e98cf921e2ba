package roomfile

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// places are left out of a comparison.
func places() cmp.Option { return cmpopts.IgnoreTypes(finding.Place{}) }

// good reads a text that must be free of errors.
func good(t testing.TB, text string) (*room.Room, []finding.Finding) {
	t.Helper()
	m, list := Read([]byte(text))
	for _, f := range list {
		if f.Kind == finding.Error {
			t.Fatalf("%s\nin\n%s", Format(f, "room.yaml"), text)
		}
	}
	return m, list
}

func in(whole, num, den int64) geom.Length { return geom.InFrac(whole, num, den) }

// plain is a reading taped once.
func plain(l geom.Length) room.Reading { return room.Reading{Value: l, All: []geom.Length{l}} }

// want is a length that is a must.
func want(l geom.Length) room.Want { return room.Want{Value: l} }

// TestStarter compares the starter file in inches with the room it stands for.
func TestStarter(t *testing.T) {
	got, _ := good(t, string(Starter(measure.Inches)))
	masonry := func(w room.Wall) room.Wall {
		w.TapeOn, w.MadeOf, w.Structure = room.FaceMasonry, room.Block, plain(in(97, 1, 2))
		return w
	}
	seen := func(marks ...geom.Length) []geom.Length { return marks }
	wanted := &room.Room{
		Title: "Potato cellar to seed merchant's office", DrawnBy: "I. N. Vented", PaidWork: room.No,
		Units: measure.Inches, Show: measure.Show{Form: measure.FeetAndInches, To: geom.Inch / 16},
		Survey: room.Survey{
			Readings: []room.Diagonal{
				{From: 1, To: 3, Reading: plain(in(185, 1, 4))},
				{From: 0, To: 2, Reading: plain(in(185, 1, 8))},
			},
			TapeReadsTo: in(0, 1, 16), AboutMeans: in(1, 0, 1), ClosesWithin: in(0, 1, 2),
		},
		Walls: []room.Wall{
			{
				Name: "A", Length: plain(in(147, 1, 2)), TapeOn: room.FaceStuds, MadeOf: room.Studs, Structure: plain(in(97, 1, 2)),
				Inside: room.Material{None: true}, Outside: room.Material{Thick: in(0, 1, 2), What: "gypsum"},
				Services: []room.Service{
					{
						What:   "cable",
						Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, Value: in(120, 0, 1)},
						Up:     room.Up{Kind: room.SpanFromFloor, To: in(48, 0, 1)},
					},
					{
						What:   "outlet",
						Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.Centre, Value: in(120, 0, 1)},
						Up:     room.Up{Kind: room.CentreFromFloor, Value: in(48, 0, 1)},
						Size:   room.Size{W: in(2, 0, 1), H: in(3, 0, 1)},
					},
				},
				Frame: room.Frame{
					Stud:    room.Timber{Name: "2x4", Thick: in(1, 1, 2), Wide: in(3, 1, 2)},
					Bearing: room.No, BearingBy: "the builder of the house", OtherDuty: []string{"none"},
					BottomPlates: 1, TopPlates: 2,
					Studs: room.StudPlan{Given: true, Edge: room.LeftEdge, Marks: seen(
						0, in(15, 1, 4), in(31, 3, 8), in(47, 1, 8), in(63, 1, 4), in(79, 3, 8), in(95, 1, 4), in(111, 1, 8), in(127, 1, 4), in(146, 0, 1))},
				},
			},
			masonry(room.Wall{Name: "B", Length: plain(in(112, 0, 1)), Doors: []room.Existing{{
				Name: "entry", Kind: room.Clear, Size: room.Size{W: in(30, 0, 1), H: in(80, 0, 1)},
				Across: room.Across{Kind: room.EdgeFromEnd, Edge: room.RightEdge, From: room.Right, Value: in(10, 0, 1)},
				Hinge:  room.Right, Hinged: true, OpensIn: true,
			}}}),
			masonry(room.Wall{Name: "C", Length: plain(in(147, 3, 8))}),
			masonry(room.Wall{Name: "D", Length: room.Reading{Value: in(112, 1, 16), All: seen(in(112, 0, 1), in(112, 1, 8))}}),
		},
		Above: room.Above{
			Joists: &room.Joists{
				Size:    room.Timber{Name: "2x8", Thick: in(1, 1, 2), Wide: in(7, 1, 4)},
				RunFrom: 0, RunTo: 2, Spacing: in(16, 0, 1), From: 3, First: in(10, 0, 1),
			},
			InTheWay: []room.Obstacle{{
				What: "pipe", Spans: []room.PlanSpan{{Wall: 1, From: in(4, 0, 1), To: in(6, 0, 1)}}, Below: plain(in(2, 1, 4)),
			}},
		},
		Openings: []room.Opening{{
			Name: "borrowed light", Wall: 0, Kind: room.Clear, Size: room.Size{W: in(38, 0, 1), H: in(30, 0, 1)},
			Across: room.Across{Kind: room.KingLeft, Stud: room.StudRef{Number: 3}},
			Up:     room.Up{Kind: room.BottomFromFloor, Value: in(44, 0, 1)},
			Header: room.Header{
				Plies: 2, Timber: room.Timber{Name: "2x6", Thick: in(1, 1, 2), Wide: in(5, 1, 2)},
				Filler: in(0, 15, 32), LetIn: want(in(0, 1, 8)),
			},
			Jacks: 1, Sill: 1, Liner: want(in(0, 3, 4)), LinerRun: "head and sill", Shims: want(in(0, 1, 4)),
			Casing: room.Casing{Width: want(in(2, 1, 4)), Reveal: want(in(0, 3, 16)), Inside: true, Outside: true},
			Stops:  want(in(0, 3, 4)), Glazing: room.Glazing{Sheet: room.Material{Thick: in(0, 3, 16), What: "acrylic"}, Given: true},
		}},
		Boards: []room.Board{{
			Name: "seed chart", Wall: 2, Count: 2, Size: room.Size{W: in(48, 0, 1), H: in(96, 0, 1)},
			Sheet:  room.Material{Thick: in(0, 1, 4), What: "hardboard"},
			Across: room.Across{Kind: room.CentredOnWall}, Up: room.Up{Kind: room.BottomFromFloor, Value: in(6, 0, 1)},
			CutTo: want(in(76, 0, 1)), Gap: want(in(0, 1, 16)),
		}},
		Ceiling: &room.Ceiling{
			FaceFromFloor: want(in(86, 0, 1)), Clear: want(in(3, 0, 1)), Seismic: "unknown",
			Grid: room.Grid{
				Module: room.Size{W: in(24, 0, 1), H: in(24, 0, 1)}, Follow: -1,
				TeeFace: want(in(0, 15, 16)), TeeHeight: want(in(1, 1, 2)),
			},
			Mains: room.Mains{
				Along: -1, Spacing: want(in(48, 0, 1)), Stock: want(in(144, 0, 1)), Slot: want(in(3, 0, 1)), Pitch: want(in(6, 0, 1)),
			},
			HangerSpacing: want(in(48, 0, 1)), HangerFirst: want(in(48, 0, 1)), EdgeGap: want(in(0, 1, 8)), Angle: want(in(0, 7, 8)),
			Panel: room.Panel{
				Thick: want(in(0, 5, 8)), Size: room.Size{W: in(23, 3, 4), H: in(23, 3, 4)},
				// 1 lb = 453.59237 g and 1 ft = 0.3048 m exactly: 4882.43 g/m2
				Weight: room.AreaMass{GramsPerM2: 4882, Text: "1 lb/ft2"},
			},
		},
		Lights: []room.Light{{
			Name: "panel", Size: room.Size{W: in(24, 0, 1), H: in(24, 0, 1)}, Count: 2, Arrange: "symmetrical",
			Depth: plain(in(2, 1, 2)), Thick: plain(in(0, 1, 2)), Weight: room.Mass{Grams: 3175, Text: "7 lb"},
		}},
		Drawing: room.Drawing{Paper: "letter"},
	}
	if diff := cmp.Diff(wanted, got, places()); diff != "" {
		t.Error(diff)
	}
}

// TestStarters reads both starter files; neither has an error, and both are
// marked as invented.
func TestStarters(t *testing.T) {
	for _, units := range []measure.System{measure.Inches, measure.Millimetres} {
		text := string(Starter(units))
		m, _ := good(t, text)
		if m.Units != units || len(m.Walls) != 4 || len(m.Openings) != 1 || len(m.Boards) != 1 || m.Ceiling == nil || len(m.Lights) != 1 {
			t.Errorf("the starter in units %d lacks a part: %+v", units, m)
		}
		if !strings.Contains(text, "invented") || strings.Contains(text, "\t") {
			t.Error("a starter that is not marked as invented, or has tabs")
		}
		for i, line := range strings.Split(text, "\n") {
			if n := len(line); n > 130 {
				t.Errorf("line %d is %d long", i+1, n)
			}
		}
	}
	m, _ := good(t, string(Starter(measure.Millimetres)))
	if got := m.Walls[0].Frame.Stud; got.Name != "38 x 89" || got.Thick != geom.MM(38) || got.Wide != geom.MM(89) {
		t.Errorf("stud %+v", got)
	}
	if got := m.Ceiling.Panel.Size; got.W != geom.MM(595) || m.Ceiling.Grid.TeeFace.Value != geom.MM(24) || m.Ceiling.Mains.Stock.Value != geom.MM(3600) {
		t.Errorf("metric parts: %+v", m.Ceiling)
	}
	if got := m.Ceiling.Panel.Weight.GramsPerM2; got != 3200 {
		t.Errorf("weight %d g/m2, want 3200", got)
	}
}

// TestLineEnds reads one file with all line ends and a byte-order mark: the
// same room, the same findings.
func TestLineEnds(t *testing.T) {
	text := string(Starter(measure.Inches)) + "plce: here\n"
	m, list := Read([]byte(text))
	for _, other := range []string{
		"\ufeff" + text, strings.ReplaceAll(text, "\n", "\r\n"), strings.ReplaceAll(text, "\n", "\r"), strings.TrimSuffix(text, "\n"),
	} {
		m2, list2 := Read([]byte(other))
		if diff := cmp.Diff(m, m2); diff != "" {
			t.Error(diff)
		}
		if diff := cmp.Diff(list, list2); diff != "" {
			t.Error(diff)
		}
	}
}

// TestOrder shuffles the sections of a file: order among them means nothing.
func TestOrder(t *testing.T) {
	text := string(Starter(measure.Inches))
	var parts []string
	for _, line := range strings.SplitAfter(text, "\n") {
		if heads([]rune(strings.TrimSuffix(line, "\n"))) || len(parts) == 0 {
			parts = append(parts, "")
		}
		parts[len(parts)-1] += line
	}
	if len(parts) < 12 {
		t.Fatalf("%d sections", len(parts))
	}
	wanted, _ := good(t, text)
	rapid.Check(t, func(rt *rapid.T) {
		shuffled := strings.Join(rapid.Permutation(parts).Draw(rt, "parts"), "")
		got, list := Read([]byte(shuffled))
		if finding.Errors(list) > 0 {
			rt.Fatalf("%v", list)
		}
		if diff := cmp.Diff(wanted, got, places()); diff != "" {
			rt.Fatal(diff)
		}
	})
}
