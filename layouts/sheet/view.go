package sheet

import (
	"strconv"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// view is a plate at one scale, ready to be put on paper.
type view struct {
	plate drawing.Plate
	scale paper.Scale
	// placed are the elements on paper, the view's origin at 0, 0.
	placed []drawing.Element
	bounds geom.Rect
}

// The places of a view, down from the top of its title.
const (
	titleDown = geom.Length(capTitle)             // baseline of the title
	scaleDown = titleDown + 62*geom.Length(tenth) // baseline of the scale
	viewDown  = scaleDown + 50*geom.Length(tenth) // top of the drawing
	barDown   = titleDown + 6*geom.Length(tenth)  // lower edge of the scale bar
	barAside  = 60 * geom.Length(tenth)           // least space between title and bar
)

// viewAt makes a view at a scale.
func viewAt(draw Draw, s paper.Scale) view {
	p := draw(s)
	placed := drawing.Place(p.Elements, s, geom.Point{})
	return view{plate: p, scale: s, placed: placed, bounds: drawing.Bounds(placed, paper.Full())}
}

// h returns the height of the view with its title.
func (v view) h() geom.Length { return viewDown + v.bounds.H() }

// head is how the title, the scale and the scale bar of a view stand.
type head struct {
	title, scale, bar geom.Length  // widths
	cap               paper.Length // of the title
	beside            bool         // the bar on the title's line, else on the scale's
}

// headIn returns the head of a view within a width.
func (v view) headIn(w geom.Length, metric bool) head {
	h := head{
		scale: width("scale "+written(v.scale), capWords, false),
		bar:   drawing.Bounds([]drawing.Element{marks.ScaleBar(geom.Point{}, v.scale, metric)}, paper.Full()).W(),
	}
	// A smaller title that leaves the bar its place comes before a large one
	// that does not.
	for _, cap := range []paper.Length{capTitle, capKey, capHeading} {
		h.title, h.cap = width(clean(v.plate.Title), cap, true), cap
		if h.beside = h.title+barAside+h.bar <= w; h.beside {
			return h
		}
	}
	h.title, h.cap = width(clean(v.plate.Title), capTitle, true), capTitle
	return h
}

// wide returns the least width of a view with its title and scale bar.
func (v view) wide(metric bool) geom.Length {
	h := v.headIn(0, metric)
	return max(v.bounds.W(), h.title, h.scale+barAside+h.bar)
}

// put returns the view with its title, scale and scale bar, its left edge and
// top at left, top. The bar ends at the drawing's right edge or, where title or
// scale reach further, past it; never beyond right.
func (v view) put(left, top, right geom.Length, toRight, metric bool, id func(string) string) drawing.Group {
	h := v.headIn(right-left, metric)
	least, down := h.title, barDown
	if !h.beside {
		least, down = h.scale, scaleDown
	}
	end := left + v.bounds.W()
	if toRight {
		end = right
	}
	end = min(right, max(end, left+least+barAside+h.bar))
	title := clean(v.plate.Title)
	lines, cap := []string{title}, h.cap
	if !h.beside {
		lines, cap = fit(title, true, right-left, 1, capTitle, capKey, capHeading)
	}
	prefix := id(v.plate.Name)
	elements := []drawing.Element{
		words(left, top-titleDown, lines[0], cap, true),
		words(left, top-scaleDown, "scale "+written(v.scale), capWords, false),
		renamed(marks.ScaleBar(geom.Pt(end, top-down), v.scale, metric), prefix, id),
	}
	at := geom.Pt(left-v.bounds.Min.X, top-viewDown-v.bounds.Max.Y)
	for _, e := range drawing.Place(v.placed, paper.Full(), at) {
		elements = append(elements, renamed(e, prefix, id))
	}
	return drawing.Group{ID: prefix, Title: title, Elements: elements}
}

// renamed gives the groups of a view names that are unique on the sheet.
func renamed(e drawing.Element, prefix string, id func(string) string) drawing.Element {
	g, ok := e.(drawing.Group)
	if !ok {
		return e
	}
	if g.ID != "" {
		g.ID = id(prefix + "-" + g.ID)
	}
	inner := make([]drawing.Element, len(g.Elements))
	for i, e := range g.Elements {
		inner[i] = renamed(e, prefix, id)
	}
	g.Elements = inner
	return g
}

// names gives out names, each once.
func names() func(string) string {
	used := map[string]bool{}
	return func(want string) string {
		if want == "" {
			want = "view"
		}
		name := want
		for n := 2; used[name]; n++ {
			name = want + "-" + strconv.Itoa(n)
		}
		used[name] = true
		return name
	}
}
