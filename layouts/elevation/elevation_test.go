package elevation

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
)

func half() paper.Scale { return paper.InchScales()[4] } // 1/2" = 1'-0"

// texts returns the strings of all texts for which keep holds.
func texts(elements []drawing.Element, keep func(drawing.Text) bool) []string {
	var out []string
	drawing.Walk(elements, true, func(e drawing.Element) {
		if t, ok := e.(drawing.Text); ok && keep(t) {
			out = append(out, t.String)
		}
	})
	return out
}

// groupOf returns the elements of the group with an id.
func groupOf(t *testing.T, elements []drawing.Element, id string) []drawing.Element {
	t.Helper()
	var out []drawing.Element
	drawing.Walk(elements, false, func(e drawing.Element) {
		if g, ok := e.(drawing.Group); ok && g.ID == id {
			out = g.Elements
		}
	})
	if out == nil {
		t.Fatalf("no group %q", id)
	}
	return out
}

// Worked by hand for this project: the opening is 66 x 34 clear, its liner 3/4
// with 1/4 shims, so rough 68 x 36 with its bottom at 41 (42 - 3/4 - 1/4); the
// right king is the stud at 111-1/4, so the kings stand 71 apart from 40-1/4;
// the header is 7-1/4 deep, from 77 to 84-1/4, let in by 1/8 (cut at 84-3/8);
// the sill is 1-1/2 thick (cut at 39-1/2).
func TestFiguresOfAWallWorkedByHand(t *testing.T) {
	p := drawn(read(t, laundry, ""), 0, half()).plate
	figure := func(x drawing.Text) bool { return x.Anchor == drawing.End && !x.Turned }
	heights := texts(groupOf(t, p.Elements, "heights"), figure)
	slices.Sort(heights)
	want := []string{"0", "39 1/2", "41", "77", "84 3/8", "93 1/4", "96 1/4"}
	if !slices.Equal(heights, want) {
		t.Errorf("heights %q, want %q", heights, want)
	}
	var bold []string
	marks := texts(groupOf(t, p.Elements, "stick"), func(x drawing.Text) bool {
		if x.Turned && x.Bold {
			bold = append(bold, x.String)
		}
		return x.Turned
	})
	wantMarks := []string{"0", "14 3/4", "31", "38 3/4", "40 1/4", "46 7/8", "63", "79 1/8", "95", "109 3/4", "111 1/4",
		"127 1/8", "140 1/2", "142", "176", "177 1/2", "180 3/4", "182 1/4"}
	if !slices.Equal(marks, wantMarks) {
		t.Errorf("running marks %q, want %q", marks, wantMarks)
	}
	if w := []string{"38 3/4", "40 1/4", "109 3/4"}; !slices.Equal(bold, w) {
		t.Errorf("bold marks %q, want those of new pieces, %q", bold, w)
	}
	var chains []string
	drawing.Walk(p.Elements, false, func(e drawing.Element) {
		if d, ok := e.(drawing.Dimension); ok {
			chains = append(chains, d.Figure)
		}
	})
	for _, f := range []string{"68", "40 1/4", "71", "32 1/4", "32 1/2", "6 1/4", "36", "82"} {
		if !slices.Contains(chains, f) {
			t.Errorf("no dimension %s among %q", f, chains)
		}
	}
	words := texts(p.Elements, func(drawing.Text) bool { return true })
	for _, w := range []string{"opening", "clear", "66 × 34", "door", "cable", "cripple", "D", "B", "X", "rough opening", "kings and door", "whole wall"} {
		if !slices.Contains(words, w) {
			t.Errorf("%q is not on the drawing", w)
		}
	}
}

// The lengths follow from the figures above: the king from plate to plate
// 93-1/4 - 1-1/2, the jacks 39-1/2 - 1-1/2 and 36, sill and header 71 - 1/8,
// the middles 84-3/8 - 39-1/2. Worked by hand for this project.
func TestTableOfPieces(t *testing.T) {
	v := drawn(read(t, laundry, ""), 0, half())
	want := [][]string{
		{"A1", "king stud", "2×4", "1", "91 3/4"},
		{"A2", "jack stud, lower", "2×4", "2", "38"},
		{"A3", "jack stud, upper", "2×4", "2", "36"},
		{"A4", "rough sill", "2×4", "1", "70 7/8"},
		{"A5", "header ply", "2×8", "2", "70 7/8"},
		{"A6", "header filler", "15/32 plywood", "1", "70 7/8"},
		{"R1 to R4", "stud middle, taken out", "2×4", "4", "44 7/8"},
	}
	if got := v.plate.Tables[0].Rows; !reflect.DeepEqual(got, want) {
		t.Errorf("pieces\n%q, want\n%q", got, want)
	}
	if len(v.failed) > 0 {
		t.Errorf("no place for %q", v.failed)
	}
}

// TestEveryPieceIsDrawnInItsState counts strong outlines, thin ones and crosses.
func TestEveryPieceIsDrawnInItsState(t *testing.T) {
	for _, text := range []string{laundry, granary, example(t, "bow-makers-room.yaml"), example(t, "glaze-test-room.yaml")} {
		res := read(t, text, "")
		for i, w := range res.Walls {
			count := map[piece.State]int{}
			for _, m := range w.Members {
				if m.Depth == 0 {
					count[m.State]++
				}
			}
			strong, marked := 0, map[string]bool{}
			p := Draw(res, i, half())
			drawing.Walk(p.Elements, false, func(e drawing.Element) {
				switch e := e.(type) {
				case drawing.Polyline:
					if e.Layer == drawing.FrameNew && e.Pen == drawing.P50 {
						strong++
					}
				case drawing.Group:
					marked[e.Title] = true
				}
			})
			if strong != count[piece.New] {
				t.Errorf("wall %s: %d strong outlines, %d new pieces", w.Name, strong, count[piece.New])
			}
			for _, m := range w.Members {
				if m.Depth == 0 && m.State != piece.Existing && !slices.Contains(labelled(marked), string(m.Mark)) {
					t.Errorf("wall %s: piece %s bears no label", w.Name, m.Mark)
				}
			}
		}
	}
}

// labelled returns the words on the labels among titles of groups; one label
// may name several pieces.
func labelled(titles map[string]bool) []string {
	var list []string
	for s := range titles {
		if rest, ok := strings.CutPrefix(s, "label "); ok {
			list = append(list, strings.Fields(rest)...)
		}
	}
	return list
}

func TestLegendShowsOnlyWhatIsThere(t *testing.T) {
	words := func(p drawing.Plate) []string {
		var out []string
		for _, s := range p.Legend {
			out = append(out, s.Words)
			b := drawing.Bounds(s.Swatch, paper.Full())
			if b.Min.X < 0 || b.W().Millimetres() > 13.01 || b.H().Millimetres() > 7 {
				t.Errorf("swatch of %q covers %v", s.Words, b)
			}
		}
		return out
	}
	res := read(t, laundry, "")
	want := []string{"existing, kept", "new", "existing, taken out", "saw line; cut between nibs", "piece mark, as on the cut list", "mark on plate; stud on the ×", "hidden in the wall"}
	if got := words(Draw(res, 0, half())); !slices.Equal(got, want) {
		t.Errorf("legend %q, want %q", got, want)
	}
	if got := words(Draw(res, 1, half())); len(got) != 0 {
		t.Errorf("legend of a plain wall: %q", got)
	}
	if got := words(Draw(read(t, example(t, "glaze-test-room.yaml"), ""), 1, half())); slices.Contains(got, "existing, kept") || slices.Contains(got, "existing, taken out") {
		t.Errorf("legend of a new wall: %q", got)
	}
}

func TestNotesBeginAndEndAsAgreed(t *testing.T) {
	for show, first := range map[string]string{"": "Inches, ", "feet and inches": "Feet and inches, ", "millimetres": "Millimetres, "} {
		for i := range 4 {
			n := Draw(read(t, laundry, show), i, half()).Notes
			if !strings.HasPrefix(n[0], first) || !strings.HasSuffix(n[len(n)-1], "Do not scale.") {
				t.Errorf("notes of wall %d with show %q: %q", i, show, n)
			}
		}
	}
	n := strings.Join(Draw(read(t, granary, ""), 0, half()).Notes, "\n")
	for _, want := range []string{"Cable in this wall, place not known", "hatch: stubs stay", "Pipe in the wall: 178 to 179 1/2 from the left corner"} {
		if !strings.Contains(strings.ToLower(n), strings.ToLower(want)) {
			t.Errorf("%q is not said in\n%s", want, n)
		}
	}
}

func TestSameDrawingTwice(t *testing.T) {
	res := read(t, granary, "")
	if a, b := Draw(res, 0, half()), Draw(res, 0, half()); !reflect.DeepEqual(a, b) {
		t.Error("two drawings of one wall differ")
	}
}

// TestNamedRoomsAreLegible draws known rooms at the usual scales and in every
// form of figures.
func TestNamedRoomsAreLegible(t *testing.T) {
	for name, text := range map[string]string{
		"laundry": laundry, "granary": granary, "bow maker": example(t, "bow-makers-room.yaml"), "glaze test": example(t, "glaze-test-room.yaml"),
	} {
		for _, show := range []string{"feet and inches", "inches", "millimetres"} {
			res := read(t, text, show)
			for _, s := range append(paper.InchScales()[3:7], paper.MetricScales()[3:7]...) {
				for i := range res.Walls {
					for _, f := range legible.Faults(Draw(res, i, s).Elements, s) {
						t.Errorf("%s, %s, wall %d at 1:%d: %s", name, show, i, s.Ratio, f)
					}
				}
			}
		}
	}
}

func BenchmarkDraw(b *testing.B) {
	res := read(b, granary, "")
	for b.Loop() {
		Draw(res, 0, paper.InchScales()[6])
	}
}
