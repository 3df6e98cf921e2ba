package ceilingplan

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/measure"
	"roomwright/geom/setout"
	"roomwright/layouts/cuts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
	"roomwright/layouts/planwalls"
)

// Draw draws the reflected ceiling plan of a room for a scale.
func Draw(r setout.Result, s paper.Scale) drawing.Plate {
	p := drawing.Plate{Drawing: drawing.Drawing{Name: "ceiling", Title: "Ceiling, as in a mirror on the floor", Scale: s}}
	if r.Ceiling == nil {
		return p
	}
	v := view{r: r, c: r.Ceiling, s: s, sides: planwalls.Sides(r, s), show: r.Room.Show, used: map[string]bool{}}
	v.joists()
	v.grid()
	v.add(planwalls.Draw(v.sides, func(d planwalls.Side) []geom.Span { return gaps(d, v.c.Face) }, v.c.Face, s, v.used)...)
	v.lights()
	v.ducts()
	v.metal()
	v.sections()
	v.dimensions()
	v.labels()
	p.Elements = append(v.under, v.out...)
	p.Subtitle = v.subtitle()
	p.Notes = v.notes()
	p.Legend = v.legend()
	p.Tables = v.tables()
	return p
}

// view is one ceiling plan being drawn.
type view struct {
	r        setout.Result
	c        *ceiling.Ceiling
	s        paper.Scale
	show     measure.Show
	sides    []planwalls.Side
	out      []drawing.Element
	under    []drawing.Element // drawn first; labels may lie on it
	used     map[string]bool
	keep     []geom.Rect // where no label may go: main tees, hangers
	pennants []geom.Rect // the marks of sections
	labelled []geom.Rect // where labels and letters went
}

func (v *view) add(e ...drawing.Element) { v.out = append(v.out, e...) }

// mm returns the real length that prints as so many millimetres.
func (v *view) mm(mm float64) geom.Length { return v.s.Real(paper.MM(mm)) }

// gaps returns the doors and windows that reach above the ceiling; all others
// have wall over them where the plan cuts.
func gaps(d planwalls.Side, level geom.Length) []geom.Span {
	var out []geom.Span
	for _, h := range d.Wall.Doors {
		if h.Clear.Y().Holds(level) {
			out = append(out, h.Clear.X())
		}
	}
	return out
}

// joists draws the joist centres over the ceiling. Labels may lie on them.
func (v *view) joists() {
	g := drawing.Group{ID: "joists", Title: "Joists above the ceiling"}
	for _, j := range v.c.Joists {
		v.used["joist"] = true
		g.Elements = append(g.Elements, drawing.Line{Style: joistPen(), A: j.From, B: j.To})
	}
	v.under = append(v.under, g)
}

// ducts draws the edges of ducts and pipes over the ceiling.
func (v *view) ducts() {
	g := drawing.Group{ID: "ducts", Title: "Ducts and pipes above the ceiling"}
	for _, o := range v.c.Obstacles {
		if o.Box.Empty() {
			continue
		}
		v.used["over"] = true
		b := o.Box.Polygon()
		for i := range b {
			g.Elements = append(g.Elements, drawing.Line{Style: overPen(), A: b[i], B: b[(i+1)%4]})
		}
	}
	v.add(g)
}

func joistPen() drawing.Style {
	return drawing.Style{Layer: drawing.JoistLine, Pen: drawing.P18, Dash: drawing.Joist}
}

func overPen() drawing.Style {
	return drawing.Style{Layer: drawing.Duct, Pen: drawing.P35, Dash: drawing.Overhead}
}

func mainPen() drawing.Style  { return drawing.Style{Layer: drawing.MainTee, Pen: drawing.P100} }
func crossPen() drawing.Style { return drawing.Style{Layer: drawing.Grid, Pen: drawing.P25} }
func anglePen() drawing.Style { return drawing.Style{Layer: drawing.WallAngle, Pen: drawing.P18} }

// grid draws cross tees, main tees and the wall angle.
func (v *view) grid() {
	cross := drawing.Group{ID: "cross-tees", Title: "Cross tees"}
	for _, t := range v.c.Crosses {
		cross.Elements = append(cross.Elements, drawing.Line{Style: crossPen(), A: t.From, B: t.To})
	}
	mains := drawing.Group{ID: "main-tees", Title: "Main tees"}
	for _, t := range v.c.Mains {
		mains.Elements = append(mains.Elements, drawing.Line{Style: mainPen(), A: t.From, B: t.To})
		v.keep = append(v.keep, geom.Polygon{t.From, t.To}.Bounds().Inset(-v.mm(0.9)))
	}
	angle := drawing.Group{ID: "wall-angle", Title: "Wall angle"}
	leg := v.leg()
	for _, d := range v.sides {
		angle.Elements = append(angle.Elements, drawing.Line{Style: anglePen(), A: d.At(leg+d.Finished, -d.Finished-leg), B: d.At(d.Length-leg-d.Finished, -d.Finished-leg)})
	}
	v.add(cross, angle, mains)
}

// leg returns how far in the edge of the wall angle is drawn.
func (v *view) leg() geom.Length {
	if a := v.r.Room.Ceiling.Angle.Value; a > 0 {
		return max(a, v.mm(0.7))
	}
	return v.mm(0.9)
}

// lights draws the light panels.
func (v *view) lights() {
	g := drawing.Group{ID: "lights", Title: "Light panels"}
	for _, l := range v.c.Lights {
		v.used["light"] = true
		g.Elements = append(g.Elements, marks.LightPanel(l.Box.Inset(v.c.TeeFace/2), v.s)...)
	}
	v.add(g)
}

// metal draws hangers and splices.
func (v *view) metal() {
	g := drawing.Group{ID: "hangers", Title: "Hanger wires and splices"}
	for _, h := range v.c.Hangers {
		v.used["hanger"] = true
		g.Elements = append(g.Elements, marks.Hanger(h.At, v.s)...)
		v.keep = append(v.keep, geom.Rect{Min: h.At, Max: h.At}.Inset(-v.mm(1.9)))
	}
	for _, m := range v.c.Mains {
		for _, p := range m.Splices {
			v.used["splice"] = true
			g.Elements = append(g.Elements, marks.Splice(p, v.c.MainsAlongX, v.s)...)
			v.keep = append(v.keep, geom.Rect{Min: p, Max: p}.Inset(-v.mm(1.6)))
		}
	}
	v.add(g)
}

// sections marks the section through the tightest place, on a white ground and
// clear of main tees, hangers and lights.
func (v *view) sections() {
	for _, c := range cuts.Of(v.r) {
		if c.Kind != cuts.Ceiling {
			continue
		}
		v.used["section"] = true
		from, to := cuts.Inside(c, v.c.Outline.Bounds(), v.mm(6))
		for _, at := range []geom.Point{from, to} {
			g, ok := v.pennant(c, at, geom.Pt((from.X+to.X)/2, (from.Y+to.Y)/2))
			if !ok {
				continue
			}
			b := drawing.Bounds([]drawing.Element{g}, v.s).Inset(-v.mm(0.7))
			v.keep, v.pennants = append(v.keep, b), append(v.pennants, b)
			v.add(drawing.Area{Layer: drawing.Symbols, Outline: b.Polygon()}, g)
		}
	}
}

// pennant returns a section mark at the first clear place on the line of the
// cut, looked for from its end towards the middle.
func (v *view) pennant(c cuts.Cut, end, middle geom.Point) (drawing.Group, bool) {
	step := v.mm(1.5)
	way := geom.Pt(0, step)
	if c.AlongX {
		way = geom.Pt(step, 0)
	}
	if end.X > middle.X || end.Y > middle.Y {
		way = geom.Pt(-way.X, -way.Y)
	}
	for _, clear := range []func(geom.Rect) bool{v.apart, v.overTees} {
		at := end
		for (at.X-middle.X).Abs()+(at.Y-middle.Y).Abs() >= step {
			g := marks.Pennant(c.Letter, at, c.Look, v.s)
			if clear(drawing.Bounds([]drawing.Element{g}, v.s).Inset(-v.mm(0.7))) {
				return g, true
			}
			if at = at.Add(way); (at.X-end.X).Abs()+(at.Y-end.Y).Abs() > v.mm(60) {
				break
			}
		}
	}
	return drawing.Group{}, false
}

// subtitle says in a few words what ceiling it is.
func (v *view) subtitle() string {
	words := fmt.Sprintf("%s × %s grid", v.show.Figure(v.c.ModuleX), v.show.Figure(v.c.ModuleY))
	switch n := len(v.c.Lights); n {
	case 0:
		return words
	case 1:
		return words + ", one light panel"
	default:
		return fmt.Sprintf("%s, %d light panels", words, n)
	}
}
