package cuts

import (
	"fmt"
	"math/rand/v2"
	"os"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/internal/anyroom"
)

// TestLetters: X, Y and Z, then doubled, so that no section shares its letter
// with a wall named A to W.
func TestLetters(t *testing.T) {
	for n, want := range []string{"X", "Y", "Z", "XX", "YY", "ZZ", "XXX"} {
		if got := letter(n); got != want {
			t.Errorf("letter %d is %s, want %s", n, got, want)
		}
	}
}

// TestOf: the invented bow maker's room has one opening, and a duct whose
// underside is lower over the tees than any other thing: 94 1/2 over 91 1/2.
func TestOf(t *testing.T) {
	b, err := os.ReadFile("../../cmd/roomwright/examples/bow-makers-room.yaml")
	if err != nil {
		t.Fatal(err)
	}
	r, found := roomfile.Read(b)
	if finding.Errors(found) > 0 {
		t.Fatal("the example has errors")
	}
	res := setout.SetOut(r)
	list := Of(res)
	if len(list) != 2 || list[0].Kind != Header || list[0].Letter != "X" || list[1].Kind != Ceiling || list[1].Letter != "Y" {
		t.Fatalf("cuts %+v", list)
	}
	duct := res.Ceiling.Obstacles[0]
	if c := list[1]; !c.AlongX || c.From.X > duct.Box.Min.X || c.To.X < duct.Box.Max.X || c.From.Y != c.To.Y {
		t.Errorf("the cut %+v does not cross the duct %+v", c, duct.Box)
	}
}

// TestAnyRoom holds cuts through rooms that nobody thought of: within the room,
// off the tees that run along them, through the least space that was set out.
func TestAnyRoom(t *testing.T) {
	drawn := 0
	for seed := uint64(0); drawn < 20; seed++ {
		if seed == 1500 {
			t.Fatalf("only %d rooms with a ceiling", drawn)
		}
		rnd := rand.New(rand.NewPCG(seed, 13))
		r, found := roomfile.Read([]byte(anyroom.File(func(_ string, low, high int) int { return low + rnd.IntN(high-low+1) })))
		if finding.Errors(found) > 0 {
			continue
		}
		res := setout.SetOut(r)
		if finding.Errors(res.Findings) > 0 || res.Ceiling == nil {
			continue
		}
		drawn++
		judge(t, fmt.Sprint("seed ", seed), res)
	}
}

func judge(t *testing.T, name string, res setout.Result) {
	t.Helper()
	c := res.Ceiling
	list := Of(res)
	last := list[len(list)-1]
	if last.Kind != Ceiling {
		t.Fatalf("%s: no cut through the ceiling", name)
	}
	room := c.Outline.Bounds()
	for _, p := range []geom.Point{last.From, last.To} {
		if !room.X().Holds(p.X) || !room.Y().Holds(p.Y) {
			t.Errorf("%s: the cut ends outside the room", name)
		}
	}
	lines, at := c.YLines, last.From.Y
	if !last.AlongX {
		lines, at = c.XLines, last.From.X
	}
	for _, l := range lines {
		if (l.At - at).Abs() < c.TeeFace {
			t.Errorf("%s: the cut runs along a tee", name)
		}
	}
	least := func(box geom.Rect) bool {
		if last.AlongX {
			return box.Y().Holds(at) && box.X().Overlaps(geom.Span{From: last.From.X, To: last.To.X})
		}
		return box.X().Holds(at) && box.Y().Overlaps(geom.Span{From: last.To.Y, To: last.From.Y}) ||
			box.X().Holds(at) && box.Y().Overlaps(geom.Span{From: last.From.Y, To: last.To.Y})
	}
	if free, met := leastOf(c, least); !met {
		t.Errorf("%s: the cut %+v misses the least space, %s", name, last, res.Room.Show.Say(free))
	}
}

// leastOf returns the least space set out anywhere, and whether what has it is
// met by the cut.
func leastOf(c *ceiling.Ceiling, hit func(geom.Rect) bool) (geom.Length, bool) {
	free, met := geom.Length(1)<<60, false
	try := func(v geom.Length, box geom.Rect) {
		if v < free {
			free, met = v, false
		}
		if v == free {
			met = met || hit(box)
		}
	}
	for _, l := range c.Lights {
		try(l.Above, l.Box)
	}
	for _, o := range c.Obstacles {
		if o.Box.Overlaps(c.Outline.Bounds()) && o.Underside > 0 {
			try(o.Clear, o.Box)
		}
	}
	return free, met || free == geom.Length(1)<<60
}

// TestInside keeps marks of a cut off the walls.
func TestInside(t *testing.T) {
	in := func(x, y int64) geom.Point { return geom.Pt(geom.In(x), geom.In(y)) }
	room := geom.Rect{Min: in(0, -100), Max: in(100, 0)}
	for _, c := range []struct{ from, to, wantFrom, wantTo geom.Point }{
		{in(0, -50), in(40, -50), in(5, -50), in(40, -50)},
		{in(20, -100), in(20, 0), in(20, -95), in(20, -5)},
	} {
		from, to := Inside(Cut{From: c.from, To: c.to}, room, geom.In(5))
		if from != c.wantFrom || to != c.wantTo {
			t.Errorf("%v to %v, want %v to %v", from, to, c.wantFrom, c.wantTo)
		}
	}
	if got := Of(setout.Result{}); len(got) != 0 {
		t.Errorf("cuts of nothing: %v", got)
	}
}
