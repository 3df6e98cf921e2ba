package svg

import (
	"fmt"
	"math"
	"strings"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// class returns the class attribute of a line.
func class(s drawing.Style) string {
	if s.Accent {
		return fmt.Sprintf(`class="p%d x"`, int(s.Pen))
	}
	return fmt.Sprintf(`class="p%d"`, int(s.Pen))
}

// dashes returns the dash attribute of a line of a printed length.
func dashes(d drawing.Dash, length float64) []string {
	pattern := d.Fit(paper.Length(math.Round(length)))
	if pattern == nil {
		return nil
	}
	parts := make([]string, len(pattern))
	for i, v := range pattern {
		parts[i] = trim(float64(v) / float64(unit))
	}
	return []string{`stroke-dasharray="` + strings.Join(parts, " ") + `"`}
}

// trim prints a number with at most two decimals.
func trim(v float64) string {
	text := fmt.Sprintf("%.2f", v)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}

// distance returns the length from a to b.
func distance(a, b geom.Point) float64 {
	x, y := float64(b.X-a.X), float64(b.Y-a.Y)
	return math.Sqrt(float64(x*x) + float64(y*y))
}

// line draws a straight line.
func (w writer) line(s drawing.Style, a, b geom.Point) {
	if w.same(a, b) {
		return
	}
	attr := append([]string{class(s)}, dashes(s.Dash, distance(a, b))...)
	w.canvas.Line(w.x(a.X), w.y(a.Y), w.x(b.X), w.y(b.Y), attr...)
}

// polyline draws a run of lines; a dashed one side by side, so that each side
// begins and ends with a dash.
func (w writer) polyline(e drawing.Polyline) {
	if len(e.Points) < 2 {
		return
	}
	if e.Dash != drawing.Solid {
		for i := 1; i < len(e.Points); i++ {
			w.line(e.Style, e.Points[i-1], e.Points[i])
		}
		if e.Closed && len(e.Points) > 2 {
			w.line(e.Style, e.Points[len(e.Points)-1], e.Points[0])
		}
		return
	}
	w.canvas.Path(w.outline(e.Points, e.Closed), class(e.Style))
}

// outline returns points as path data.
func (w writer) outline(points []geom.Point, closed bool) string {
	var d strings.Builder
	for i, p := range points {
		if i == 0 {
			d.WriteString("M")
		} else {
			d.WriteString("L")
		}
		d.WriteString(w.pt(p))
	}
	if closed {
		d.WriteString("Z")
	}
	return d.String()
}

// arc draws a circle or a part of one.
func (w writer) arc(e drawing.Arc) {
	turn := e.To - e.From
	for turn < 0 {
		turn += 360
	}
	if e.Radius < unit/2 || turn == 0 {
		return
	}
	length := float64(e.Radius) * float64(min(turn, 360)) * (math.Pi / 180)
	attr := append([]string{class(e.Style)}, dashes(e.Dash, length)...)
	if turn >= 360 {
		w.canvas.Circle(w.x(e.Center.X), w.y(e.Center.Y), units(e.Radius), attr...)
		return
	}
	large := 0
	if turn > 180 {
		large = 1
	}
	r := units(e.Radius)
	// Counter-clockwise stays so on paper; the file's y runs down, so the
	// sweep flag is 0.
	w.canvas.Path(fmt.Sprintf("M%sA%d %d 0 %d 0 %s", w.pt(onArc(e, e.From)), r, r, large, w.pt(onArc(e, e.To))), attr...)
}

// onArc returns the point of an arc at an angle.
func onArc(e drawing.Arc, degrees int) geom.Point {
	sin, cos := math.Sincos(float64(degrees) * (math.Pi / 180))
	r := float64(e.Radius)
	return e.Center.Add(geom.Pt(geom.Length(math.Round(float64(r*cos))), geom.Length(math.Round(float64(r*sin)))))
}

// area fills an outline.
func (w writer) area(e drawing.Area) {
	if len(e.Outline) < 3 {
		return
	}
	fill := map[drawing.Fill]string{drawing.White: "w", drawing.Black: "k", drawing.Accent: "a"}[e.Fill]
	w.canvas.Path(w.outline(e.Outline, true), `class="`+fill+`"`)
}

// hatch draws all lines of a hatch as one path.
func (w writer) hatch(e drawing.Hatch) {
	var d strings.Builder
	for _, l := range e.Lines {
		if !w.same(l[0], l[1]) {
			d.WriteString("M" + w.pt(l[0]) + "L" + w.pt(l[1]))
		}
	}
	if d.Len() > 0 {
		w.canvas.Path(d.String(), class(e.Style))
	}
}
