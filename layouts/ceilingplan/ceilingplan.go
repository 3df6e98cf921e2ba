package ceilingplan

import (
	"fmt"
	"slices"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/measure"
	"roomwright/geom/setout"
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
	v := drawn(r, s, near)
	if len(v.missing) > 0 {
		// Labels may stand between the walls and the rows, where those leave room.
		if w := drawn(r, s, far); len(w.missing) < len(v.missing) {
			v = w
		}
	}
	p.Elements = append(v.under, v.out...)
	p.Subtitle = v.subtitle()
	p.Notes = v.notes()
	p.Legend = v.legend()
	p.Tables = v.tables()
	p.Unplaced = len(v.missing)
	return p
}

// The distances of the first rows of dimensions from the walls, in millimetres
// of paper.
const (
	near = 10
	far  = 22
)

// drawn draws a ceiling plan with its rows of dimensions so far from the walls.
func drawn(r setout.Result, s paper.Scale, nearest float64) view {
	v := view{r: r, c: r.Ceiling, s: s, sides: planwalls.Sides(r, s), show: r.Room.Show, used: map[string]bool{}, nearest: nearest}
	v.joists()
	v.grid()
	v.add(planwalls.Draw(v.sides, func(d planwalls.Side) []geom.Span { return gaps(d, v.c.Face) }, v.c.Face, s, v.used)...)
	walls := len(v.out)
	v.lights()
	v.ducts()
	v.metal()
	v.over = slices.Clone(v.out[walls:])
	within := len(v.out)
	v.dimensions()
	v.outside = slices.Clone(v.out[within:])
	v.labels()
	return v
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
	over     []drawing.Element // what lies within the walls and is not a tee
	outside  []drawing.Element // dimensions, strings and names round the room
	used     map[string]bool
	keep     []geom.Rect // where no label may go: hangers, splices, section marks
	mains    []geom.Rect // main tees, on which only their own labels lie
	pennants []geom.Rect // the marks of sections
	labelled []geom.Rect // where labels, letters and words went
	pl       *marks.Placer
	tiny     []ceiling.Cell     // cut cells too small for their mark
	nearest  float64            // first rows of dimensions from the walls, mm of paper
	missing  []string           // marks for which the plan has no room
	unnamed  []ceiling.Obstacle // things above for whose names it has none
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

// ducts draws the edges of ducts and pipes over the ceiling, but for those at
// the walls.
func (v *view) ducts() {
	g := drawing.Group{ID: "ducts", Title: "Ducts and pipes above the ceiling"}
	room := v.c.Outline.Bounds()
	for _, o := range v.things() {
		v.used["over"] = true
		b := o.Box.Polygon()
		for i := range b {
			p, q := b[i], b[(i+1)%4]
			if p.X == q.X && (p.X == room.Min.X || p.X == room.Max.X) || p.Y == q.Y && (p.Y == room.Min.Y || p.Y == room.Max.Y) {
				continue
			}
			g.Elements = append(g.Elements, drawing.Line{Style: overPen(), A: p, B: q})
		}
	}
	v.add(g)
}

// things returns what hangs over the ceiling, within the walls.
func (v *view) things() []ceiling.Obstacle {
	room := v.c.Outline.Bounds()
	var out []ceiling.Obstacle
	for _, o := range v.c.Obstacles {
		x, y := o.Box.X().Overlap(room.X()), o.Box.Y().Overlap(room.Y())
		if x.Len() > 0 && y.Len() > 0 {
			o.Box = geom.RectOf(x.From, y.From, x.To, y.To)
			out = append(out, o)
		}
	}
	return out
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
		v.mains = append(v.mains, geom.Polygon{t.From, t.To}.Bounds().Inset(-v.mm(0.9)))
	}
	angle := drawing.Group{ID: "wall-angle", Title: "Wall angle"}
	leg := v.leg()
	for _, d := range v.sides {
		angle.Elements = append(angle.Elements, drawing.Line{Style: anglePen(), A: d.At(leg+d.Finished, -d.Finished-leg), B: d.At(d.Length-leg-d.Finished, -d.Finished-leg)})
	}
	v.under = append(v.under, cross, angle, mains)
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
		v.keep = append(v.keep, geom.Rect{Min: h.At, Max: h.At}.Inset(-v.mm(1.65)))
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
