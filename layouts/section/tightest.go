package section

import (
	"slices"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
)

// gap is the space between what the ceiling reaches up to and what is over it,
// along a stretch of the cut. It is less than zero where the two meet.
type gap struct {
	x         geom.Span
	low, high geom.Length
	under     string // what is below: "tees", "L3"
	over      string // what is above: "joists", "duct"
}

func (g gap) free() geom.Length { return g.high - g.low }

// gaps returns every space on the line of the cut.
func (v *overhead) gaps() []gap {
	overs := []gap{{x: v.span, high: v.c.Structure, over: v.structureWord()}}
	for _, o := range v.c.Obstacles {
		if x := v.spanOf(o.Box).Overlap(v.span); v.crosses(o.Box) && x.Len() > 0 && o.Underside > 0 {
			overs = append(overs, gap{x: x, high: o.Underside, over: thing(o)})
		}
	}
	var out []gap
	for _, o := range overs {
		o.low, o.under = v.c.Face+v.c.TeeHeight, "the tees"
		out = append(out, o)
		for _, l := range v.c.Lights {
			x := v.spanOf(l.Box).Overlap(o.x)
			if v.crosses(l.Box) && l.Depth > v.c.TeeHeight && x.Len() > 0 {
				out = append(out, gap{x: x, low: v.c.Face + l.Depth, high: o.high, under: string(l.Mark), over: o.over})
			}
		}
	}
	return out
}

// tightest puts a solid bar in the least space on the line of the cut, or says
// what runs into what when there is none.
func (v *overhead) tightest() {
	list := v.gaps()
	if !v.known() || len(list) == 0 {
		return
	}
	least := slices.MinFunc(list, func(a, b gap) int { return int(max(-1, min(1, a.free()-b.free()))) })
	at := geom.Pt(least.x.From+least.x.Len()*2/3, least.low)
	if least.free() <= 0 {
		v.tight = least.over + " at " + v.show.Figure(least.high) + ": no space over " + least.under
		v.calls = append(v.calls, marks.Callout{Lines: []string{v.tight}, Target: geom.Pt(at.X, least.high)})
		return
	}
	bar := geom.RectOf(at.X-v.mm(0.5), least.low, at.X+v.mm(0.5), least.high)
	v.add(drawing.Area{Layer: drawing.Symbols, Outline: bar.Polygon(), Fill: drawing.Accent})
	v.tight = v.show.Figure(least.free()) + " free, tightest"
	v.calls = append(v.calls, marks.Callout{Lines: []string{v.tight}, Target: bar.Mid()})
}

// callouts says in a column at the right what is what, the tightest place bold
// and in the accent colour.
func (v *overhead) callouts() {
	list := marks.Callouts(v.calls, v.span.To+v.mm(9), v.s)
	for i, e := range list {
		if t, ok := e.(drawing.Text); ok && t.String == v.tight && v.tight != "" {
			t.Bold, t.Accent = true, true
			list[i] = t
		}
	}
	v.add(list...)
}
