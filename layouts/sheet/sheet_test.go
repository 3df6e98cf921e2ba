package sheet

import (
	"fmt"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// sizes are the papers of the room file.
var sizes = []struct {
	name     string
	portrait bool
}{{"tabloid", false}, {"A3", false}, {"letter", false}, {"A4", false}, {"letter", true}, {"A4", true}, {"A3", true}, {"tabloid", true}}

// texts returns all that is written on sheets, in order.
func texts(sheets []Sheet) string {
	var b strings.Builder
	for _, s := range sheets {
		drawing.Walk(s.Elements, true, func(e drawing.Element) {
			if t, ok := e.(drawing.Text); ok {
				b.WriteString(t.String + " ")
			}
		})
	}
	return b.String()
}

// sound checks what must hold of every sheet: everything at least 6.35 mm from
// the edges, no two groups on top of each other, no name twice.
func sound(t *testing.T, s Sheet) {
	t.Helper()
	edge := geom.RectOf(0, 0, geom.Length(s.Size.W), geom.Length(s.Size.H)).Inset(mm(6.35))
	boxes, titles := []geom.Rect{}, []string{}
	ids := map[string]bool{}
	for _, e := range s.Elements {
		box := drawing.Bounds([]drawing.Element{e}, paper.Full())
		if box.Min.X < edge.Min.X || box.Max.X > edge.Max.X || box.Min.Y < edge.Min.Y || box.Max.Y > edge.Max.Y {
			g, _ := e.(drawing.Group)
			t.Errorf("sheet %s: %T %q reaches %v, outside %v", s.ID, e, g.Title, box, edge)
		}
		g, ok := e.(drawing.Group)
		if !ok || g.ID == "sheet-number" {
			continue // the number stands in the free corner of the band
		}
		for i, other := range boxes {
			if other.Overlaps(box) {
				t.Errorf("sheet %s: %q lies over %q: %v, %v", s.ID, g.Title, titles[i], box, other)
			}
		}
		boxes, titles = append(boxes, box), append(titles, g.Title)
	}
	drawing.Walk(s.Elements, false, func(e drawing.Element) {
		if g, ok := e.(drawing.Group); ok && g.ID != "" {
			if ids[g.ID] {
				t.Errorf("sheet %s: two groups are called %q", s.ID, g.ID)
			}
			ids[g.ID] = true
		}
	})
}

func TestNothingOverlapsAndNothingIsLost(t *testing.T) {
	for _, size := range sizes {
		for _, n := range []int{0, 3, 12, 60} {
			t.Run(fmt.Sprintf("%s portrait %v, %d notes and rows", size.name, size.portrait, n), func(t *testing.T) {
				s := spec(size.name, size.portrait)
				s.Main = wall(geom.In(182), geom.In(96), n, n)
				s.Sections = []Draw{post("section-x"), post("section-y")}
				sheets, said := Compose(s)
				if len(said) > 0 {
					t.Errorf("said %q", said)
				}
				sheets = Number(sheets)
				for _, one := range sheets {
					sound(t, one)
				}
				all := texts(sheets) + strings.Join(sheets[0].Assumed, " ")
				for i := range n {
					if want := fmt.Sprintf("Fact %d: ", i+1); !strings.Contains(all, want) {
						t.Errorf("no %q on any sheet", want)
					}
					if want := fmt.Sprintf("A%d header", i+1); !strings.Contains(all, want) {
						t.Errorf("no row %q on any sheet", want)
					}
				}
				for _, want := range []string{"jacks a side 1", "the bare border", "hidden in the wall", "cut by the section", "seen from the right"} {
					if !strings.Contains(strings.ReplaceAll(all, "  ", " "), want) {
						t.Errorf("no %q on any sheet", want)
					}
				}
				if got := strings.Count(all, "Section X, header"); got != 2 {
					t.Errorf("%d sections on the sheets, want 2", got)
				}
			})
		}
	}
}

func TestCautionsStandInFullOnEverySheetWithAView(t *testing.T) {
	for _, size := range sizes {
		sheets, _ := Compose(spec(size.name, size.portrait))
		got := texts(sheets[:1])
		for _, want := range []string{"carries load", "inspector decide.", "driving screws."} {
			words := strings.Fields(want)
			if !strings.Contains(got, words[len(words)-1]) {
				t.Errorf("%s portrait %v: the first sheet lacks %q", size.name, size.portrait, want)
			}
		}
	}
}

// The key square is the print check: 2 in are 50.8 mm exactly (1 in = 25.4 mm).
func TestKeySquareIsTwoInches(t *testing.T) {
	for _, size := range sizes {
		sheets, _ := Compose(spec(size.name, size.portrait))
		for _, s := range sheets {
			n := 0
			for _, e := range s.Elements {
				g, ok := e.(drawing.Group)
				if !ok || g.ID != "key" {
					continue
				}
				n++
				square, ok := g.Elements[0].(drawing.Polyline)
				if !ok {
					t.Fatalf("the key begins with %T", g.Elements[0])
				}
				box := geom.Polygon(square.Points).Bounds()
				if want := geom.MM(508) / 10; box.W() != want || box.H() != want {
					t.Errorf("%s: the square is %v by %v", s.ID, box.W(), box.H())
				}
			}
			if n != 1 {
				t.Errorf("%s portrait %v, sheet %s: %d key squares, want 1", size.name, size.portrait, s.ID, n)
			}
		}
	}
}

// On Tabloid the wall of the look sheet, 182 in by 96 in with 48 mm of words
// at its left, fits at 1/2 in to the foot: 182*25.4/24 + 48 = 240.6 mm of 262,
// and not at 3/4: 182*25.4/16 + 48 = 336.9 mm.
func TestLargestScaleIsTaken(t *testing.T) {
	sheets, _ := Compose(spec("tabloid", false))
	if got := sheets[0].Scale.Ratio; got != 24 {
		t.Errorf("drawn at 1:%d, want 1:24", got)
	}
}

func TestFixedScale(t *testing.T) {
	s := spec("tabloid", false)
	s.Fixed = &paper.Scale{Ratio: 48, Name: `1/4" = 1'-0"`}
	sheets, said := Compose(s)
	if sheets[0].Scale.Ratio != 48 || len(said) > 0 {
		t.Errorf("asked for 1:48, got 1:%d, said %q", sheets[0].Scale.Ratio, said)
	}
	s.Fixed = &paper.Scale{Ratio: 12, Name: `1" = 1'-0"`}
	sheets, said = Compose(s)
	if sheets[0].Scale.Ratio != 24 || len(said) != 1 {
		t.Errorf("asked for 1:12, which does not fit: got 1:%d, said %q", sheets[0].Scale.Ratio, said)
	}
}

func TestLongNamesStayInTheBand(t *testing.T) {
	long := strings.Repeat("Quiet reading room of the old rope walk ", 6)
	for _, size := range sizes {
		s := spec(size.name, size.portrait)
		s.Band = Band{Big: "Wall north gable by the lane", Title: long, Subtitle: long, Project: long, Room: long, Units: long,
			DatumWord: long, Datum: long, MeasuredTo: long, Kind: long, DrawnBy: long, Approved: long, Owner: long,
			Status: long, Date: long, Revision: long, Number: long, File: long}
		for i := range s.Key.Walls {
			s.Key.Walls[i].Name = "north gable by the lane"
		}
		sheets, _ := Compose(s)
		for _, one := range Number(sheets) {
			sound(t, one)
			band(t, one)
		}
	}
}

// band checks that no two texts of the title band touch.
func band(t *testing.T, s Sheet) {
	t.Helper()
	var boxes []geom.Rect
	var said []string
	for _, e := range s.Elements {
		g, ok := e.(drawing.Group)
		if !ok || (g.ID != "title-block" && g.ID != "sheet-number") {
			continue
		}
		for _, e := range g.Elements {
			text, ok := e.(drawing.Text)
			if !ok {
				continue
			}
			box := drawing.TextBox(text, paper.Full()).Inset(geom.Length(tenth))
			for i, other := range boxes {
				if box.Overlaps(other) {
					t.Errorf("%s on %s: %q over %q", s.ID, s.Size.Name, text.String, said[i])
				}
			}
			boxes, said = append(boxes, box), append(said, text.String)
		}
	}
}

func TestSheetNumbers(t *testing.T) {
	one, _ := Compose(spec("letter", false))
	for _, n := range []int{1, 9, 10, 99, 120} {
		list := make([]Sheet, n)
		for i := range list {
			list[i] = one[0]
		}
		list = Number(list)
		last := list[n-1]
		if last.Number != n || last.Of != n {
			t.Errorf("the last of %d sheets is %d of %d", n, last.Number, last.Of)
		}
		if got := texts(list[n-1:]); !strings.Contains(got, fmt.Sprintf("of %d", n)) || !strings.Contains(got, fmt.Sprintf("OLB-%02d", n)) {
			t.Errorf("sheet %d of %d does not say so: %s", n, n, got)
		}
		sound(t, last)
		band(t, last)
	}
}

func TestNoControlCharacters(t *testing.T) {
	s := spec("A4", false)
	s.Cautions = append(s.Cautions, "red \x1b[31malert\x07 and\ta tab\r\nand a line")
	s.Band.Project = "\u202eright to left\u0000"
	s.Key.Walls[0].Name = "A\n\x1b"
	sheets, _ := Compose(s)
	for _, r := range texts(sheets) {
		if r < ' ' || r == 0x7f || r == '\u202e' {
			t.Fatalf("a control character %q reached a sheet", r)
		}
	}
}

func TestTooLargeForAnyScaleIsSaid(t *testing.T) {
	s := spec("A4", false)
	s.Main = wall(500*geom.Metre, geom.In(96), 1, 1)
	sheets, said := Compose(s)
	if len(sheets) == 0 || len(said) == 0 && sheets[0].Scale.Ratio < 1000 {
		t.Errorf("a wall of 500 m: %d sheets, said %q", len(sheets), said)
	}
}

// A note as long as a book is broken, not lost, and a list under a name of its
// own stays one.
func TestLongAndManyLists(t *testing.T) {
	for _, size := range sizes {
		s := spec(size.name, size.portrait)
		s.Main = nil
		s.Lists = []List{{"Wall A", []string{strings.Repeat("one two three ", 600) + "the end"}}, {"Ceiling", []string{"of tin"}}}
		sheets, said := Compose(s)
		if len(said) > 0 {
			t.Errorf("said %q", said)
		}
		for _, one := range Number(sheets) {
			sound(t, one)
		}
		all := texts(sheets)
		if n := strings.Count(all, "three"); n < 600-12 { // a break may fall inside a name
			t.Errorf("%d of 600 are left", n)
		}
		for _, want := range []string{"the end", "Wall A", "Ceiling", "of tin"} {
			if !strings.Contains(all, want) {
				t.Errorf("no %q", want)
			}
		}
	}
}

// Cautions are in full on the sheet of their view, where that costs no more
// than half as much again in scale; where they are not, the sheet says so.
func TestManyCautions(t *testing.T) {
	for _, size := range sizes {
		for n := 1; n <= 40; n += 13 {
			s := spec(size.name, size.portrait)
			s.Cautions = nil
			for i := range n {
				s.Cautions = append(s.Cautions, fmt.Sprintf("Number %d: mind what stands, hangs and lies here, and have a licensed person look at it before anything is cut.", i+1))
			}
			sheets, said := Compose(s)
			if len(said) > 0 {
				t.Errorf("said %q", said)
			}
			if r := sheets[0].Scale.Ratio; r > 96 {
				t.Errorf("%s portrait %v, %d cautions: the view at 1:%d", size.name, size.portrait, n, r)
			}
			for _, one := range Number(sheets) {
				sound(t, one)
			}
			first, all := texts(sheets[:1]), texts(sheets)
			for i := range n {
				want := fmt.Sprintf("Number %d:", i+1)
				if !strings.Contains(all, want) {
					t.Errorf("%s portrait %v: %d cautions, and none is %q", size.name, size.portrait, n, want)
				}
				if !strings.Contains(first, want) && !strings.Contains(first, "More cautions follow") {
					t.Errorf("%s portrait %v: the first sheet is silent about %q", size.name, size.portrait, want)
				}
			}
		}
	}
}
