package section

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/cuts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/anyroom"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
)

// closet is an invented room that is narrower than the section is long: walls
// at both ends. Its %s are what is above.
const closet = `title: Closet, invented
units: inches
show: inches to 1/16
every wall: {made of: block, tape on: masonry, floor to structure: 98}
walls:
  - {wall: A, length: 62}
  - {wall: B, length: 70}
  - {wall: C, length: 62}
  - {wall: D, length: 70}
survey: {corners: square}
%s
ceiling: {face from floor: 88, seismic: none, grid: 24x24, panel: 5/8}
lights: [{light: panel, size: 24x24, count: 1, depth: 4, weight: 7 lb}]
`

// ceilingOf sets out a room and returns the cut through its ceiling; false when
// the file has errors or no ceiling.
func ceilingOf(text string) (setout.Result, cuts.Cut, bool) {
	r, found := roomfile.Read([]byte(text))
	if finding.Errors(found) > 0 {
		return setout.Result{}, cuts.Cut{}, false
	}
	res := setout.SetOut(r)
	if finding.Errors(res.Findings) > 0 {
		return res, cuts.Cut{}, false
	}
	for _, c := range cuts.Of(res) {
		if c.Kind == cuts.Ceiling {
			return res, c, true
		}
	}
	return res, cuts.Cut{}, false
}

// words returns all texts of a drawing.
func words(p drawing.Plate) []string {
	var out []string
	drawing.Walk(p.Elements, true, func(e drawing.Element) {
		if t, ok := e.(drawing.Text); ok {
			out = append(out, t.String)
		}
	})
	return out
}

// judge checks that a section can be read, and that no two callouts cross.
func judge(t *testing.T, name string, p drawing.Plate, s paper.Scale) {
	t.Helper()
	for _, f := range legible.Faults(p.Elements, s) {
		t.Errorf("%s, 1:%d: %s", name, s.Ratio, f)
	}
	var lines []drawing.Line
	drawing.Walk(p.Elements, false, func(e drawing.Element) {
		if l, ok := e.(drawing.Line); ok && l.Layer == drawing.Words {
			lines = append(lines, l)
		}
	})
	side := func(o, u, v geom.Point) int64 {
		return int64((u.X-o.X)/1000)*int64((v.Y-o.Y)/1000) - int64((u.Y-o.Y)/1000)*int64((v.X-o.X)/1000)
	}
	for i, a := range lines {
		for _, b := range lines[:i] {
			if side(a.A, a.B, b.A)*side(a.A, a.B, b.B) < 0 && side(b.A, b.B, a.A)*side(b.A, b.B, a.B) < 0 {
				t.Errorf("%s, 1:%d: two callouts cross", name, s.Ratio)
			}
		}
	}
}

// tightestOf finds the least space along a cut the slow way: at many places, the
// lowest thing over the highest.
func tightestOf(res setout.Result, c cuts.Cut) geom.Length {
	v := res.Ceiling
	const n = 4000
	least := geom.Length(1) << 60
	for i := int64(0); i <= n; i++ {
		p := geom.Pt(c.From.X+(c.To.X-c.From.X)*geom.Length(i)/n, c.From.Y+(c.To.Y-c.From.Y)*geom.Length(i)/n)
		in := func(b geom.Rect) bool {
			return b.Min.X < p.X && p.X < b.Max.X && b.Min.Y < p.Y && p.Y < b.Max.Y
		}
		low, high := v.Face+v.TeeHeight, v.Structure
		for _, l := range v.Lights {
			if in(l.Box) {
				low = max(low, v.Face+l.Depth)
			}
		}
		for _, o := range v.Obstacles {
			if in(o.Box) && o.Underside > 0 {
				high = min(high, o.Underside)
			}
		}
		least = min(least, high-low)
	}
	return least
}

// TestCeilingOfAnyRoom draws sections of rooms that nobody thought of; the
// seeds are fixed. The space said to be the tightest is.
func TestCeilingOfAnyRoom(t *testing.T) {
	drawn, none := 0, 0
	for seed := uint64(0); drawn < 24; seed++ {
		if seed == 1500 {
			t.Fatalf("only %d rooms with a ceiling", drawn)
		}
		r := rand.New(rand.NewPCG(seed, 11))
		res, c, ok := ceilingOf(anyroom.File(func(_ string, low, high int) int { return low + r.IntN(high-low+1) }))
		if !ok {
			continue
		}
		drawn++
		name := fmt.Sprint("seed ", seed)
		for _, n := range []int64{8, 10, 12, 16, 20, 25} {
			s := paper.Scale{Ratio: n}
			judge(t, name, Ceiling(res, c, s), s)
		}
		all := strings.Join(words(Ceiling(res, c, paper.Scale{Ratio: 16})), "\n")
		free := tightestOf(res, c)
		want := res.Room.Show.Figure(free) + " free, tightest"
		if free <= 0 {
			want = ": no space over "
			none++
		}
		if !strings.Contains(all, want) {
			t.Errorf("%s: no word of %q in %q", name, want, all)
		}
	}
	if none == 0 {
		t.Error("no room in which something runs into the ceiling was drawn")
	}
}

// TestCeilingSections checks what stands above in rooms of several kinds.
// Figures by hand: the light is 4 deep, its top at 92; the structure is at 98.
func TestCeilingSections(t *testing.T) {
	for _, c := range []struct {
		name, above string
		want, not   []string
	}{
		{"nothing known above", "above: {joists: unknown}", []string{"structure", "98", "6 free, tightest", "top of angle", "88 7/8"}, []string{"joist"}},
		{"joists cut", "above: {joists: {size: 2x8, run: A to C, spacing: 16, first centre from D: 10}}",
			[]string{"joists", "joist 2x8 at 16", "6 free, tightest"}, []string{"beyond"}},
		{"joists along the cut", "above:\n  joists: {size: 2x8, run: B to D, spacing: 16, first centre from A: 10}\n  in the way: [{what: duct, from D: 20 to 34, below structure: 2}]",
			[]string{"joist 2x8 at 16, beyond", "duct", "96", "4 free, tightest", "duct, drawn up to the joists"}, nil},
		{"a duct in the grid", "above: {joists: unknown, in the way: [{what: duct, from D: 0 to 60, below structure: 9}]}",
			[]string{"duct at 89: no space over"}, []string{"free, tightest"}},
	} {
		res, cut, ok := ceilingOf(fmt.Sprintf(closet, c.above))
		if !ok {
			t.Fatalf("%s: has errors: %v", c.name, res.Findings)
		}
		for _, n := range []int64{8, 16} {
			s := paper.Scale{Ratio: n}
			p := Ceiling(res, cut, s)
			judge(t, c.name, p, s)
			all := strings.Join(words(p), "\n")
			for _, w := range c.want {
				if !strings.Contains(all, w) {
					t.Errorf("%s, 1:%d: no word of %q in %q", c.name, n, w, all)
				}
			}
			for _, w := range c.not {
				if strings.Contains(all, w) {
					t.Errorf("%s, 1:%d: %q in %q", c.name, n, w, all)
				}
			}
		}
	}
}

// TestCeilingOfUnknownHeight draws the ceiling alone when nothing is known of
// the structure, and nothing at all without a ceiling.
func TestCeilingOfUnknownHeight(t *testing.T) {
	res, c, ok := ceilingOf(fmt.Sprintf(closet, "above: {joists: unknown}"))
	if !ok {
		t.Fatal("has errors")
	}
	res.Ceiling.Structure = 0
	s := paper.Scale{Ratio: 16}
	p := Ceiling(res, c, s)
	judge(t, "unknown", p, s)
	if all := strings.Join(words(p), "\n"); strings.Contains(all, "tightest") || strings.Contains(all, "structure") || !strings.Contains(all, "ceiling") {
		t.Errorf("words %q", all)
	}
	if b := p.Bounds(); b.Min.Y < geom.In(60) || b.Max.Y > geom.In(110) {
		t.Errorf("drawn from %v to %v", b.Min.Y.Inches(), b.Max.Y.Inches())
	}
	if p := Ceiling(setout.Result{}, c, s); len(p.Elements) > 0 {
		t.Error("drew a ceiling that is not there")
	}
}
