package geom

// Point is a place in plan or on a wall.
type Point struct{ X, Y Length }

// Pt returns the point x, y.
func Pt(x, y Length) Point { return Point{X: x, Y: y} }

// Add returns p moved by q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub returns the way from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Span is an interval along a line; it is empty unless From < To.
type Span struct{ From, To Length }

// Len returns the length of s, zero when it is empty.
func (s Span) Len() Length { return max(0, s.To-s.From) }

// Mid returns the middle of s.
func (s Span) Mid() Length { return s.From + (s.To-s.From)/2 }

// Holds reports whether x lies in s, ends included.
func (s Span) Holds(x Length) bool { return s.From <= x && x <= s.To }

// Overlap returns the part that s and t share; it is empty when they only touch.
func (s Span) Overlap(t Span) Span { return Span{max(s.From, t.From), min(s.To, t.To)} }

// Overlaps reports whether s and t share more than a point.
func (s Span) Overlaps(t Span) bool { return s.Overlap(t).Len() > 0 }

// Rect is an upright rectangle; it is empty unless Min lies below and left of Max.
type Rect struct{ Min, Max Point }

// RectOf returns the rectangle with the given left, bottom, right and top.
func RectOf(left, bottom, right, top Length) Rect {
	return Rect{Point{left, bottom}, Point{right, top}}
}

// W returns the width of r.
func (r Rect) W() Length { return r.Max.X - r.Min.X }

// H returns the height of r.
func (r Rect) H() Length { return r.Max.Y - r.Min.Y }

// X returns the span of r across.
func (r Rect) X() Span { return Span{r.Min.X, r.Max.X} }

// Y returns the span of r up.
func (r Rect) Y() Span { return Span{r.Min.Y, r.Max.Y} }

// Mid returns the middle of r.
func (r Rect) Mid() Point { return Point{r.X().Mid(), r.Y().Mid()} }

// Empty reports whether r has no area.
func (r Rect) Empty() bool { return r.W() <= 0 || r.H() <= 0 }

// Overlaps reports whether r and q share an area.
func (r Rect) Overlaps(q Rect) bool { return r.X().Overlaps(q.X()) && r.Y().Overlaps(q.Y()) }

// Inset returns r made smaller by d on every side (larger when d is negative).
func (r Rect) Inset(d Length) Rect {
	return Rect{Point{r.Min.X + d, r.Min.Y + d}, Point{r.Max.X - d, r.Max.Y - d}}
}

// Union returns the least rectangle that holds r and q; an empty zero Rect adds nothing.
func (r Rect) Union(q Rect) Rect {
	if r == (Rect{}) {
		return q
	}
	if q == (Rect{}) {
		return r
	}
	return Rect{
		Point{min(r.Min.X, q.Min.X), min(r.Min.Y, q.Min.Y)},
		Point{max(r.Max.X, q.Max.X), max(r.Max.Y, q.Max.Y)},
	}
}

// Move returns r moved by d.
func (r Rect) Move(d Point) Rect { return Rect{r.Min.Add(d), r.Max.Add(d)} }

// Polygon returns the corners of r, clockwise from the top left.
func (r Rect) Polygon() Polygon {
	return Polygon{{r.Min.X, r.Max.Y}, r.Max, {r.Max.X, r.Min.Y}, r.Min}
}

// Polygon is a closed outline given by its corners; rooms run clockwise.
type Polygon []Point

// Bounds returns the least rectangle that holds p.
func (p Polygon) Bounds() Rect {
	if len(p) == 0 {
		return Rect{}
	}
	r := Rect{p[0], p[0]}
	for _, q := range p[1:] {
		r.Min = Point{min(r.Min.X, q.X), min(r.Min.Y, q.Y)}
		r.Max = Point{max(r.Max.X, q.X), max(r.Max.Y, q.Y)}
	}
	return r
}
