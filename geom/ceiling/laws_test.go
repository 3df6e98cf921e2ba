package ceiling_test

import (
	"fmt"
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/survey"

	"pgregory.net/rapid"
)

// drawRoom draws a room up to 22 ft each way, its far corners up to 3 in out
// of square, with joists, lights and a duct or without.
func drawRoom(t *rapid.T) (*room.Room, survey.Plan) {
	step := geom.Inch / 16
	length := func(low, high int64, name string) geom.Length {
		return geom.Length(rapid.Int64Range(low*16, high*16).Draw(t, name)) * step
	}
	w, h := length(20, 264, "wide"), length(20, 264, "deep")
	d := [4]geom.Length{}
	if rapid.Bool().Draw(t, "out of square") {
		for i := range d {
			d[i] = length(-3, 3, "slant")
		}
	}
	r, plan := quad(geom.Pt(0, 0), geom.Pt(w, 0), geom.Pt(w+d[0], -h+d[1]), geom.Pt(d[2], -h+d[3]))
	r.Ceiling.EdgeGap = given(step * geom.Length(rapid.Int64Range(0, 6).Draw(t, "gap")))
	if rapid.Bool().Draw(t, "long panels") {
		r.Ceiling.Grid.Module.H = geom.In(48)
	}
	if rapid.Bool().Draw(t, "joists") {
		run := rapid.IntRange(0, 1).Draw(t, "run")
		r.Above.Joists = &room.Joists{
			RunFrom: run, RunTo: run + 2, From: (run + 1) % 4,
			Spacing: length(12, 24, "spacing"), First: length(1, 20, "first"),
		}
	}
	r.Ceiling.Mains.Along = rapid.IntRange(-1, 3).Draw(t, "along")
	if n := rapid.IntRange(0, 5).Draw(t, "lights"); n > 0 {
		l := light(r, r.Ceiling.Grid.Module.W, r.Ceiling.Grid.Module.H, n)
		l.Arrange = rapid.SampledFrom([]string{"", "evenly", "symmetrical"}).Draw(t, "arrange")
		r.Ceiling.Seismic = rapid.SampledFrom([]string{"none", "B", "C", "unknown"}).Draw(t, "seismic")
	}
	if rapid.Bool().Draw(t, "duct") {
		from := length(0, 200, "duct")
		r.Above.InTheWay = []room.Obstacle{{
			What: "duct", Below: taped(length(1, 11, "below")),
			Spans: []room.PlanSpan{{Wall: 3, From: from, To: from + geom.In(14)}},
		}}
	}
	return r, plan
}

// area returns twice the area of p.
func area(p geom.Polygon) int64 {
	var sum int64
	for i, a := range p {
		b := p[(i+1)%len(p)]
		sum += int64(b.X)*int64(a.Y) - int64(a.X)*int64(b.Y)
	}
	return sum
}

// TestLaws holds rooms of all kinds to what must always be so.
func TestLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, plan := drawRoom(t)
		c, list := ceiling.Build(r, plan)
		if c == nil {
			if finding.Errors(list) == 0 {
				t.Fatal("no ceiling, and nothing says why")
			}
			return
		}
		checkCells(t, c)
		checkBorders(t, c)
		checkMains(t, c)
		checkTees(t, r, c)
		checkHangers(t, r, c)
		checkLights(t, r, c, list)
		again, _ := ceiling.Build(r, plan)
		if fmt.Sprintf("%+v", again) != fmt.Sprintf("%+v", c) {
			t.Fatal("the same room gives two ceilings")
		}
	})
}

// checkCells: the cells tile the outline, whichever way it is cut; the sum is
// exact where walls are square, and within a unit along the cut where not.
func checkCells(t *rapid.T, c *ceiling.Ceiling) {
	var sum int64
	for _, cell := range c.Cells {
		a := area(cell.Shape)
		if a <= 0 {
			t.Fatalf("cell %s has no area", cell.Name)
		}
		sum += a
	}
	b := c.Outline.Bounds()
	slack := int64(0)
	if area(c.Outline) != 2*int64(b.W())*int64(b.H()) {
		slack = 4 * int64(b.W()+b.H())
	}
	if d := sum - area(c.Outline); d > slack || -d > slack {
		t.Fatalf("cells cover %d more than the room, twice the area", d)
	}
	if got := c.Panels.Whole + c.Panels.Cut + c.Panels.Lit; got != len(c.Cells) {
		t.Fatalf("%d cells, %d counted", len(c.Cells), got)
	}
}

// checkBorders: two borders and the whole modules make the room's length, and
// no cell is over a module.
func checkBorders(t *rapid.T, c *ceiling.Ceiling) {
	p := c.Outline
	s := c.Strategy[0]
	for _, a := range []struct {
		lines     []ceiling.TeeLine
		low, high geom.Length
		module    geom.Length
		narrow    geom.Length
	}{
		{c.XLines, s.LeftBorder, s.RightBorder, c.ModuleX, min(p[1].X, p[2].X) - max(p[0].X, p[3].X)},
		{c.YLines, s.TopBorder, s.BottomBorder, c.ModuleY, min(p[0].Y, p[1].Y) - max(p[2].Y, p[3].Y)},
	} {
		if len(a.lines) == 0 {
			if a.low != a.narrow || a.high != a.narrow {
				t.Fatalf("one cell of %d in %d", a.low, a.narrow)
			}
			continue
		}
		if got := a.low + a.high + geom.Length(len(a.lines)-1)*a.module; got != a.narrow {
			t.Fatalf("borders and modules make %d of %d", got, a.narrow)
		}
		for i := 1; i < len(a.lines); i++ {
			if (a.lines[i].At - a.lines[i-1].At).Abs() != a.module {
				t.Fatal("lines are not a module apart")
			}
		}
	}
	for _, cell := range c.Cells {
		if b := cell.Shape.Bounds(); b.W() > c.ModuleX+geom.In(3) || b.H() > c.ModuleY+geom.In(3) {
			t.Fatalf("cell %s is over a module", cell.Name)
		}
		if cell.CutW > c.ModuleX || cell.CutH > c.ModuleY {
			t.Fatalf("panel of %s does not come from one", cell.Name)
		}
	}
}

// along returns places along the mains and square to them.
func along(c *ceiling.Ceiling, p geom.Point) (u, v geom.Length) {
	if c.MainsAlongX {
		return p.X, p.Y
	}
	return -p.Y, p.X
}

// checkMains: sticks fill each run less the gaps, none longer than its stock
// nor a stock used for more than two, and every cross line meets a slot.
func checkMains(t *rapid.T, c *ceiling.Ceiling) {
	used := map[int]geom.Length{}
	times := map[int]int{}
	cross := c.XLines
	if !c.MainsAlongX {
		cross = c.YLines
	}
	for _, m := range c.Mains {
		from, _ := along(c, m.From)
		to, _ := along(c, m.To)
		pos := m.Sticks[0].From
		gap := pos
		for i, s := range m.Sticks {
			if s.From != pos || s.To-s.From != s.Length || s.Length <= 0 || s.Length > c.MainStock {
				t.Fatalf("%s: stick %+v after %d", m.Mark, s, pos)
			}
			pos = s.To
			used[s.Stock] += s.Length
			times[s.Stock]++
			lead := c.MainStock - s.Length // cut off the near end
			if i > 0 {
				lead = 0
			} else if len(m.Sticks) == 1 {
				lead = m.StartCut
			}
			if i == 0 && len(m.Sticks) > 1 && lead != m.StartCut {
				t.Fatalf("%s: cut %d, stick %d", m.Mark, m.StartCut, s.Length)
			}
			for _, l := range cross {
				u := l.At
				if !c.MainsAlongX {
					u = -u
				}
				in := u - from - s.From
				if in < 0 || in > s.Length {
					continue
				}
				if slot := lead + in - geom.In(3); slot < 0 || slot%geom.In(6) != 0 {
					t.Fatalf("%s: a cross line misses the slots by %s", m.Mark, places(slot%geom.In(6)))
				}
			}
		}
		if pos != to-from-gap {
			t.Fatalf("%s: sticks end at %d of %d", m.Mark, pos, to-from)
		}
	}
	for n, l := range used {
		if l > c.MainStock || times[n] > 2 || n < 1 || n > c.MainSticks {
			t.Fatalf("stock %d: %d out of %d, %d times", n, l, c.MainStock, times[n])
		}
	}
}

// checkTees: cross tees run between centre lines or to a wall less the gap,
// none longer than its stock, and alike tees share a mark.
func checkTees(t *rapid.T, r *room.Room, c *ceiling.Ceiling) {
	gap := r.Ceiling.EdgeGap.Value
	marks := map[string]string{}
	for _, x := range c.Crosses {
		run := max((x.To.X - x.From.X).Abs(), (x.To.Y - x.From.Y).Abs())
		if x.Length > x.Stock || x.Length <= 0 {
			t.Fatalf("%s: %s from %s", x.Mark, places(x.Length), places(x.Stock))
		}
		// Cut lengths within 1/8 in of each other are cut alike.
		cut := geom.Length(x.Cuts)
		if d := run - x.Length - cut*gap; d < 0 || cut == 0 && d != 0 || d > geom.Inch/8 {
			t.Fatalf("%s: %s in a run of %s", x.Mark, places(x.Length), places(run))
		}
		key := places(x.Length, x.Stock) + fmt.Sprint(x.Whole)
		if old, ok := marks[string(x.Mark)]; ok && old != key {
			t.Fatalf("%s is both %s and %s", x.Mark, old, key)
		}
		marks[string(x.Mark)] = key
	}
}

// checkHangers: where mains cross joists, every hanger of a main is on a joist
// and on its main, and every splice has a joist with a hanger at each side
// where there is a joist.
func checkHangers(t *rapid.T, r *room.Room, c *ceiling.Ceiling) {
	for _, h := range c.Hangers {
		if h.Main == "" {
			if h.Light == "" {
				t.Fatal("a hanger of nothing")
			}
			continue
		}
		m := c.Mains[slices.IndexFunc(c.Mains, func(m ceiling.Main) bool { return m.Mark == h.Main })]
		u, v := along(c, h.At)
		from, at := along(c, m.From)
		to, _ := along(c, m.To)
		if v != at || u <= from || u >= to {
			t.Fatalf("hanger %+v is off its main %+v", h, m)
		}
		if h.Joist >= 0 {
			j := c.Joists[h.Joist]
			ju, jv := along(c, j.From)
			ku, _ := along(c, j.To)
			crosses := ju == ku
			if crosses && ju != u {
				t.Fatalf("hanger %+v is off its joist %+v", h, j)
			}
			if !crosses && 6*(jv-v).Abs() > h.Drop {
				t.Fatalf("hanger %+v leans too far from joist %+v", h, j)
			}
		}
		if h.Wire <= h.Drop {
			t.Fatalf("wire %d for a drop of %d", h.Wire, h.Drop)
		}
	}
}

// checkLights: every light takes whole cells of its own, clear of the walls,
// and no tee crosses it.
func checkLights(t *rapid.T, r *room.Room, c *ceiling.Ceiling, list []finding.Finding) {
	want := 0
	for _, l := range r.Lights {
		want += l.Count
	}
	if len(c.Lights) < want && finding.Errors(list) == 0 {
		t.Fatalf("%d lights of %d, and no error", len(c.Lights), want)
	}
	seen := map[string]bool{}
	for _, l := range c.Lights {
		for _, name := range l.Cells {
			i := slices.IndexFunc(c.Cells, func(x ceiling.Cell) bool { return x.Name == name })
			cell := c.Cells[i]
			if seen[name] || cell.Kind != ceiling.Whole || cell.Mark != "" {
				t.Fatalf("light %s in %+v", l.Mark, cell)
			}
			seen[name] = true
			if cell.Col == 0 || cell.Row == 0 || cell.Col == len(c.XLines) || cell.Row == len(c.YLines) {
				t.Fatalf("light %s at a wall, in %s", l.Mark, name)
			}
		}
		for _, x := range c.Crosses {
			if l.Box.Inset(geom.Inch / 16).Overlaps(geom.RectOf(
				min(x.From.X, x.To.X)-1, min(x.From.Y, x.To.Y)-1, max(x.From.X, x.To.X)+1, max(x.From.Y, x.To.Y)+1)) {
				t.Fatalf("tee %+v crosses light %+v", x, l)
			}
		}
	}
}

// TestMirror: a room seen in a mirror has its grid mirrored.
func TestMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, plan := drawRoom(t)
		r.Lights, r.Above = nil, room.Above{}
		r.Ceiling.Mains.Along = 0
		p := plan.Finished
		m := func(q geom.Point) geom.Point { return geom.Pt(-q.X, q.Y) }
		q, mirrored := quad(m(p[1]), m(p[0]), m(p[3]), m(p[2]))
		q.Ceiling = r.Ceiling
		c, list := ceiling.Build(r, plan)
		d, other := ceiling.Build(q, mirrored)
		if (c == nil) != (d == nil) {
			t.Fatalf("%+v, mirrored %+v", list, other)
		}
		if c == nil {
			return
		}
		s, u := c.Strategy[0], d.Strategy[0]
		near := func(a, b geom.Length) bool { return (a - b).Abs() <= 4 }
		if !near(s.LeftBorder, u.RightBorder) || !near(s.RightBorder, u.LeftBorder) ||
			!near(s.TopBorder, u.TopBorder) || !near(s.BottomBorder, u.BottomBorder) {
			t.Fatalf("%+v, mirrored %+v", s, u)
		}
	})
}
