package ceilingplan

import (
	"fmt"
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/anyroom"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// setOut takes a room file to its result; false when it has errors or no
// ceiling.
func setOut(text string) (setout.Result, bool) {
	r, found := roomfile.Read([]byte(text))
	if finding.Errors(found) > 0 {
		return setout.Result{}, false
	}
	res := setout.SetOut(r)
	return res, finding.Errors(res.Findings) == 0 && res.Ceiling != nil
}

// example sets out one of the invented rooms that come with the command, its
// figures shown in a form.
func example(t testing.TB, name, show string) setout.Result {
	t.Helper()
	b, err := os.ReadFile("../../cmd/roomwright/examples/" + name)
	if err != nil {
		t.Fatal(err)
	}
	text := string(b)
	if show != "" {
		text = strings.Replace(text, "\nshow: inches to 1/16\n", "\nshow: "+show+"\n", 1)
	}
	res, ok := setOut(text)
	if !ok {
		t.Fatalf("%s has errors", name)
	}
	return res
}

// rooms returns rooms that nobody thought of; the seeds are fixed.
func rooms(t testing.TB, n int) map[string]setout.Result {
	t.Helper()
	out := map[string]setout.Result{}
	for seed := uint64(0); len(out) < n; seed++ {
		if seed == 1000 {
			t.Fatalf("only %d rooms with a ceiling", len(out))
		}
		r := rand.New(rand.NewPCG(seed, 7))
		if res, ok := setOut(anyroom.File(func(_ string, low, high int) int { return low + r.IntN(high-low+1) })); ok {
			out[fmt.Sprint("seed ", seed)] = res
		}
	}
	return out
}

func at(ratio int64) paper.Scale { return paper.Scale{Ratio: ratio, Name: fmt.Sprint("1:", ratio)} }

// label is a tie-on label found on a plan, with the ends of its string and of
// the thread that it is tied to.
type label struct {
	mark string
	box  geom.Rect
	ends []geom.Point
}

// labelsOf finds the labels of a plan.
func labelsOf(p drawing.Plate) []label {
	var out []label
	threads := map[string][]geom.Rect{}
	for _, e := range p.Elements {
		g, ok := e.(drawing.Group)
		if !ok {
			continue
		}
		dots := func() (d []geom.Point) {
			for _, e := range g.Elements {
				if a, ok := e.(drawing.Area); ok && a.Fill == drawing.Black {
					d = append(d, geom.Polygon(a.Outline).Bounds().Mid())
				}
			}
			return d
		}
		switch {
		case strings.HasPrefix(g.ID, "label-"):
			l := label{mark: strings.TrimPrefix(g.Title, "label "), box: labelBox(g), ends: dots()}
			out = append(out, l)
		case strings.HasPrefix(g.ID, "thread-"):
			mark := strings.TrimPrefix(g.ID, "thread-")
			for _, d := range dots() {
				threads[mark] = append(threads[mark], geom.Rect{Min: d, Max: d})
			}
		}
	}
	for i := range out {
		for _, d := range threads[out[i].mark] {
			out[i].ends = append(out[i].ends, d.Min)
		}
	}
	return out
}

// judge checks one plan: nothing unreadable, no label on another, every mark on
// the plan or told of, and every cut cell marked unless the notes say otherwise.
// It returns how many marks have no room.
func judge(t *testing.T, name string, res setout.Result, s paper.Scale) int {
	t.Helper()
	p := Draw(res, s)
	for _, f := range legible.Faults(p.Elements, s) {
		t.Errorf("%s, %s: %s", name, s.Name, f)
	}
	list := labelsOf(p)
	on := map[string]bool{}
	for i, l := range list {
		on[l.mark] = true
		for _, o := range list[:i] {
			if l.box.Overlaps(o.box) {
				t.Errorf("%s, %s: label %s lies on label %s", name, s.Name, l.mark, o.mark)
			}
		}
	}
	told := strings.Join(p.Notes, "\n")
	missing := map[string]bool{}
	for _, piece := range res.Ceiling.Pieces {
		if !on[string(piece.Mark)] {
			missing[string(piece.Mark)] = true
		}
	}
	if len(missing) > 0 && !strings.Contains(told, "No room on the plan for ") {
		t.Errorf("%s, %s: %v are neither on the plan nor told of", name, s.Name, missing)
	}
	for _, c := range res.Ceiling.Cells {
		if c.Mark == "" || c.Kind == ceiling.Whole || marked(c, list) {
			continue
		}
		if !missing[string(c.Mark)] && !strings.Contains(told, "A cell without a mark") {
			t.Errorf("%s, %s: cell %s has no mark, and nothing says so", name, s.Name, c.Name)
		}
	}
	return len(missing)
}

// marked reports whether a label of a cell's panel lies on it or is tied to it.
func marked(c ceiling.Cell, list []label) bool {
	b := c.Shape.Bounds()
	return slices.ContainsFunc(list, func(l label) bool {
		return l.mark == string(c.Mark) && (l.box.Overlaps(b) || slices.ContainsFunc(l.ends, func(p geom.Point) bool {
			return b.X().Holds(p.X) && b.Y().Holds(p.Y)
		}))
	})
}

// TestExamples judges the plans of the examples in each form of figures.
func TestExamples(t *testing.T) {
	for _, show := range []string{"inches to 1/16", "feet and inches to 1/16", "inches to 1/8"} {
		res := example(t, "bow-makers-room.yaml", show)
		for _, n := range []int64{16, 24, 32} {
			if m := judge(t, show, res, at(n)); m > 0 {
				t.Errorf("%s, 1:%d: no room for %d marks", show, n, m)
			}
		}
		judge(t, show, res, at(48))
	}
	res := example(t, "glaze-test-room.yaml", "")
	for _, n := range []int64{20, 25, 50} {
		if m := judge(t, "millimetres", res, at(n)); m > 0 {
			t.Errorf("1:%d: no room for %d marks", n, m)
		}
	}
}

// TestAnyRoom judges the plans of rooms that nobody thought of. Up to 1:25 every
// piece has its mark on the plan.
func TestAnyRoom(t *testing.T) {
	for name, res := range rooms(t, 16) {
		for _, n := range []int64{20, 24, 25} {
			if m := judge(t, name, res, at(n)); m > 0 {
				t.Errorf("%s, 1:%d: no room for %d marks", name, n, m)
			}
		}
		for _, n := range []int64{32, 48, 64, 100} {
			judge(t, name, res, at(n))
		}
	}
}

// TestCellsBearTheirMarks lays marks on all cut cells of the examples at the
// scales at which each is large enough.
func TestCellsBearTheirMarks(t *testing.T) {
	for _, c := range []struct {
		name  string
		ratio int64
	}{{"bow-makers-room.yaml", 24}, {"bow-makers-room.yaml", 32}, {"glaze-test-room.yaml", 20}, {"glaze-test-room.yaml", 25}} {
		cellsBearMarks(t, example(t, c.name, ""), at(c.ratio))
	}
}

func cellsBearMarks(t *testing.T, res setout.Result, s paper.Scale) {
	t.Helper()
	list := labelsOf(Draw(res, s))
	w, h := marks.LabelSize("N1", false)
	n := 0
	for _, c := range res.Ceiling.Cells {
		b := c.Shape.Bounds()
		if c.Mark == "" || c.Kind == ceiling.Whole {
			continue
		}
		if s.OnPaper(b.W()) < w || s.OnPaper(b.H()) < h {
			t.Fatalf("cell %s is too small for this test", c.Name)
		}
		if slices.ContainsFunc(list, func(l label) bool { return l.mark == string(c.Mark) && b.Union(l.box) == b }) {
			n++
		} else {
			t.Errorf("%s: no mark within cell %s", s.Name, c.Name)
		}
	}
	if n != res.Ceiling.Panels.Cut {
		t.Errorf("%s: %d cells marked, %d panels to cut", s.Name, n, res.Ceiling.Panels.Cut)
	}
}

// TestNoCeiling draws nothing where no ceiling is wanted.
func TestNoCeiling(t *testing.T) {
	if p := Draw(setout.Result{}, at(24)); len(p.Elements)+len(p.Notes)+len(p.Tables) > 0 {
		t.Errorf("drew %v", p)
	}
}
