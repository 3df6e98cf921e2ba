package sheet

import (
	"cmp"
	"math"
	"slices"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// keySide is the side of the key square: exactly 2 in, on line centres.
const keySide = 2 * geom.Inch

// block returns the key square: the print check and the key plan in one.
func (k Key) block() block {
	style := func(p drawing.Pen) drawing.Style { return drawing.Style{Layer: drawing.Symbols, Pen: p} }
	elements := []drawing.Element{
		drawing.Polyline{Style: style(drawing.P35), Closed: true, Points: geom.RectOf(0, -keySide, keySide, 0).Polygon()},
	}
	// Half-way ticks, one inch from each corner.
	const half, tick = keySide / 2, 16 * geom.Length(tenth)
	for _, t := range [][2]geom.Point{
		{geom.Pt(half, 0), geom.Pt(half, -tick)},
		{geom.Pt(half, -keySide), geom.Pt(half, tick-keySide)},
		{geom.Pt(0, -half), geom.Pt(tick, -half)},
		{geom.Pt(keySide, -half), geom.Pt(keySide-tick, -half)},
	} {
		elements = append(elements, drawing.Line{Style: style(drawing.P25), A: t[0], B: t[1]})
	}
	elements = append(elements, k.plan()...)
	elements = append(elements, anchored(words(half, mm(3.2)-keySide, "print check: 2 in (50.8 mm)", capWords, false), drawing.Middle))
	return block{
		id: "key", title: "Key plan in a square of 2 inches, to check the print",
		elements: elements, w: keySide, h: keySide,
	}
}

// plan returns the room inside the key square.
func (k Key) plan() []drawing.Element {
	bounds := geom.Polygon(k.Room).Bounds()
	if len(k.Room) < 3 || bounds.Empty() {
		return nil
	}
	field := geom.RectOf(mm(6.4), mm(14.2)-keySide, keySide-mm(6.4), -mm(9.1))
	shrink := math.Max(float64(bounds.W())/float64(field.W()), float64(bounds.H())/float64(field.H()))
	put := func(p geom.Point) geom.Point {
		q := p.Sub(bounds.Mid())
		return field.Mid().Add(geom.Pt(
			geom.Length(math.Round(float64(q.X)/shrink)), geom.Length(math.Round(float64(q.Y)/shrink))))
	}
	room := make(geom.Polygon, len(k.Room))
	for i, p := range k.Room {
		room[i] = put(p)
	}
	line := drawing.Style{Layer: drawing.Symbols, Pen: drawing.P25}
	elements := []drawing.Element{drawing.Polyline{Style: line, Points: room, Closed: true}}
	for i, w := range k.Walls {
		a, b := put(w.From), put(w.To)
		this := i == k.This
		if this {
			line.Pen = drawing.P100
			elements = append(elements, drawing.Line{Style: line, A: a, B: b})
		}
		elements = append(elements, wallName(clean(w.Name), a, b, this)...)
	}
	if k.This >= 0 && k.This < len(k.Walls) {
		w := k.Walls[k.This]
		return append(elements, lookAt(put(w.From), put(w.To), room)...)
	}
	box, free := thisSheet(room, room.Bounds().Mid())
	hatch := drawing.Style{Layer: drawing.Symbols, Pen: drawing.P18}
	if !free {
		return append(elements, drawing.HatchLines(room, hatch, drawing.Falling45, paper.MM(1.6), paper.Full()))
	}
	elements = append(elements, drawing.HatchLines(room, hatch, drawing.Falling45, paper.MM(1.6), paper.Full(), box.Inset(-mm(1))))
	return append(elements, inBox("this sheet", box))
}

// outward returns the unit vector out of the room across a wall.
func outward(a, b geom.Point) (x, y float64) {
	dx, dy := float64(b.X-a.X), float64(b.Y-a.Y)
	l := math.Sqrt(float64(dx*dx) + float64(dy*dy))
	if l == 0 {
		return 0, 1
	}
	return -dy / l, dx / l
}

// along returns p moved by d along a unit vector.
func along(p geom.Point, x, y float64, d geom.Length) geom.Point {
	return p.Add(geom.Pt(geom.Length(math.Round(x*float64(d))), geom.Length(math.Round(y*float64(d)))))
}

// wallName writes a wall's name outside of it, turned along an upright wall
// when it is long.
func wallName(name string, a, b geom.Point, this bool) []drawing.Element {
	if name == "" {
		return nil
	}
	cap := capWords
	if this {
		cap = capHeading
	}
	x, y := outward(a, b)
	upright := math.Abs(x) > math.Abs(y)
	room := max((b.X - a.X).Abs(), (b.Y - a.Y).Abs(), mm(5))
	turned := upright && width(name, cap, this) > mm(5)
	if !upright || turned {
		name = shorten(name, cap, this, room)
	}
	w, h := width(name, cap, this), geom.Length(cap)
	if turned {
		w, h = h, w
	}
	reach := geom.Length(math.Round(math.Abs(x)*float64(w/2)+math.Abs(y)*float64(h/2))) + mm(1.4)
	mid := geom.Pt(a.X+(b.X-a.X)/2, a.Y+(b.Y-a.Y)/2)
	mid = along(mid, x, y, reach)
	t := drawing.Text{Layer: drawing.Symbols, String: name, Cap: cap, Bold: this, Anchor: drawing.Middle, Turned: turned}
	t.At = geom.Pt(mid.X, mid.Y-geom.Length(cap)/2)
	if turned {
		t.At = geom.Pt(mid.X+geom.Length(cap)/2, mid.Y)
	}
	return []drawing.Element{t}
}

// lookAt draws the triangle before the wall that the sheet shows.
func lookAt(a, b geom.Point, room geom.Polygon) []drawing.Element {
	x, y := outward(a, b)
	mid := geom.Pt(a.X+(b.X-a.X)/2, a.Y+(b.Y-a.Y)/2)
	tip := along(mid, x, y, -mm(3.1))
	back := along(tip, x, y, -mm(3.8))
	elements := []drawing.Element{drawing.Area{
		Layer: drawing.Symbols, Fill: drawing.Black,
		Outline: []geom.Point{tip, along(back, -y, x, mm(2.2)), along(back, -y, x, -mm(2.2))},
	}}
	w := width("this sheet", capWords, false)
	reach := geom.Length(math.Round(math.Abs(x)*float64(w/2)+math.Abs(y)*float64(capWords/2))) + mm(1.9)
	triangle := drawing.Bounds(elements, paper.Full()).Inset(-mm(0.6))
	if box, ok := thisSheet(room, along(back, x, y, -reach)); ok && !box.Overlaps(triangle) {
		elements = append(elements, inBox("this sheet", box))
	}
	return elements
}

// thisSheet returns the place for the words "this sheet" in the room that is
// nearest to want.
func thisSheet(room geom.Polygon, want geom.Point) (geom.Rect, bool) {
	w, h := width("this sheet", capWords, false)+mm(1.6), geom.Length(capWords)+mm(1.6)
	at := func(p geom.Point) geom.Rect { return geom.RectOf(p.X-w/2, p.Y-h/2, p.X+w/2, p.Y+h/2) }
	places := []geom.Point{want}
	bounds := room.Bounds()
	const steps = 12
	for i := geom.Length(1); i < steps; i++ {
		for j := geom.Length(1); j < steps; j++ {
			places = append(places, geom.Pt(bounds.Min.X+bounds.W()*i/steps, bounds.Min.Y+bounds.H()*j/steps))
		}
	}
	far := func(p geom.Point) geom.Length { return (p.X - want.X).Abs() + (p.Y - want.Y).Abs() }
	slices.SortStableFunc(places, func(p, q geom.Point) int { return cmp.Compare(far(p), far(q)) })
	for _, p := range places {
		if box := at(p); inside(room, box) {
			return box, true
		}
	}
	return geom.Rect{}, false
}

// inside reports whether box lies inside the outline: its middle does, and no
// side of the outline passes through it.
func inside(outline geom.Polygon, box geom.Rect) bool {
	mid, within := box.Mid(), false
	for i, a := range outline {
		b := outline[(i+1)%len(outline)]
		if (a.Y > mid.Y) != (b.Y > mid.Y) {
			x := float64(a.X) + float64(float64(b.X-a.X)*(float64(mid.Y-a.Y)/float64(b.Y-a.Y)))
			if x > float64(mid.X) {
				within = !within
			}
		}
		// Walk along the side; half a millimetre is finer than the box.
		n := max((b.X-a.X).Abs(), (b.Y-a.Y).Abs())/mm(0.5) + 1
		for k := geom.Length(0); k <= n; k++ {
			p := geom.Pt(a.X+(b.X-a.X)*k/n, a.Y+(b.Y-a.Y)*k/n)
			if box.X().Holds(p.X) && box.Y().Holds(p.Y) {
				return false
			}
		}
	}
	return within
}

func inBox(s string, box geom.Rect) drawing.Element {
	t := words(box.Mid().X, box.Mid().Y-geom.Length(capWords)/2, s, capWords, false)
	t.Layer, t.Anchor = drawing.Symbols, drawing.Middle
	return t
}
