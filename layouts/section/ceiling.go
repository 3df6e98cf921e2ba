package section

import (
	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/setout"
	"roomwright/layouts/cuts"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// Ceiling draws the section through the ceiling at its tightest place: joists,
// what hangs below them, the light or panel under it, and the clear height
// between. Across is the distance along the cut, up is height from the floor.
func Ceiling(r setout.Result, c cuts.Cut, s paper.Scale) drawing.Plate {
	p := drawing.Plate{Drawing: drawing.Drawing{Name: "section-" + c.Letter, Title: "Section " + c.Letter + ", tightest place", Scale: s}}
	if r.Ceiling == nil {
		return p
	}
	v := overhead{room: r.Room, c: r.Ceiling, cut: c, s: s, show: r.Room.Show}
	v.frame()
	v.structure()
	v.obstacles()
	v.grid()
	v.lights()
	v.tightest()
	v.ladder()
	v.callouts()
	p.Elements = v.out
	return p
}

// joistWords says what the joists are.
func (v *overhead) joistWords() string {
	j := v.room.Above.Joists
	if j == nil {
		return "joist"
	}
	words := "joist " + j.Size.Name
	if j.Spacing > 0 {
		words += " at " + v.show.Figure(j.Spacing)
	}
	return words
}

// overhead is one ceiling section being drawn.
type overhead struct {
	room   *room.Room
	c      *ceiling.Ceiling
	cut    cuts.Cut
	s      paper.Scale
	show   measure.Show
	out    []drawing.Element
	span   geom.Span // what of the cut is shown
	top    geom.Length
	levels []dimension.Height
	calls  []marks.Callout
	tight  string // the words of the tightest place
}

// known reports whether the height of the structure is known.
func (v *overhead) known() bool { return v.c.Structure > v.c.Face }

// structureWord names what the ceiling hangs from.
func (v *overhead) structureWord() string {
	if j := v.room.Above.Joists; j != nil && !j.Unknown {
		return "joists"
	}
	return "structure"
}

func (v *overhead) add(e ...drawing.Element) { v.out = append(v.out, e...) }

func (v *overhead) mm(mm float64) geom.Length { return v.s.Real(paper.MM(mm)) }

// across returns the place of a plan point along the cut, left to right as one
// looks at the section.
func (v *overhead) across(p geom.Point) geom.Length {
	switch {
	case v.cut.AlongX && v.cut.Look == marks.Down:
		return -p.X
	case v.cut.AlongX:
		return p.X
	case v.cut.Look == marks.LeftWay:
		return -p.Y
	}
	return p.Y
}

// spanOf returns the extent of a plan box along the cut.
func (v *overhead) spanOf(b geom.Rect) geom.Span {
	a, z := v.across(b.Min), v.across(b.Max)
	return geom.Span{From: min(a, z), To: max(a, z)}
}

// crosses reports whether the line of the cut runs through a plan box.
func (v *overhead) crosses(b geom.Rect) bool {
	if v.cut.AlongX {
		return b.Min.Y < v.cut.From.Y && v.cut.From.Y < b.Max.Y
	}
	return b.Min.X < v.cut.From.X && v.cut.From.X < b.Max.X
}

// frame takes the stretch between the two pennants.
func (v *overhead) frame() {
	a, z := v.across(v.cut.From), v.across(v.cut.To)
	v.span = geom.Span{From: min(a, z), To: max(a, z)}
	whole := v.spanOf(v.c.Outline.Bounds())
	v.span = v.span.Overlap(whole)
	v.top = v.c.Structure
	if !v.known() {
		v.top = v.c.Face + v.c.TeeHeight + v.mm(12)
	}
	for _, j := range v.c.Joists {
		v.top = max(v.top, v.c.Structure+j.Deep)
	}
}

// structure draws the joists and the deck on them, and walls or break lines at
// the ends.
func (v *overhead) structure() {
	low, high := v.c.Face-v.mm(4), v.top
	if v.known() {
		v.joists()
		high = v.deck()
		v.levels = append(v.levels, dimension.Height{Word: v.structureWord(), At: v.c.Structure})
	}
	ends := []geom.Length{v.span.From, v.span.To}
	for i, wall := range v.wallEnds() {
		if wall {
			v.wallEnd(ends[i], i == 0, low)
		} else {
			v.add(v.breakLine(ends[i], low, high)...)
		}
	}
}

// joists draws the joists that the cut meets, or the one along it.
func (v *overhead) joists() {
	cut := drawing.Style{Layer: drawing.Cut, Pen: drawing.P50}
	thin := drawing.Style{Layer: drawing.Cut, Pen: drawing.P13}
	var last geom.Rect
	for _, j := range v.c.Joists {
		x := v.spanOf(geom.Polygon{j.From, j.To}.Bounds())
		if x.Len() > v.span.Len()/4 {
			continue // it runs along the cut
		}
		at := x.Mid()
		if !v.span.Holds(at-j.Thick/2) || !v.span.Holds(at+j.Thick/2) {
			continue
		}
		box := geom.RectOf(at-j.Thick/2, v.c.Structure, at+j.Thick/2, v.c.Structure+j.Deep)
		if last.Empty() || box.Max.X > last.Max.X {
			last = box
		}
		c := box.Polygon()
		v.add(drawing.Line{Style: thin, A: c[0], B: c[2]}, drawing.Line{Style: thin, A: c[1], B: c[3]},
			drawing.Polyline{Style: cut, Points: c, Closed: true})
	}
	switch {
	case !last.Empty():
		v.calls = append(v.calls, marks.Callout{Lines: []string{v.joistWords()}, Target: last.Mid()})
	case v.top > v.c.Structure:
		v.add(drawing.Line{
			Style: drawing.Style{Layer: drawing.Beyond, Pen: drawing.P25},
			A:     geom.Pt(v.span.From, v.c.Structure), B: geom.Pt(v.span.To, v.c.Structure),
		})
		at := geom.Pt(v.span.To-min(v.mm(8), v.span.Len()/4), v.c.Structure+(v.top-v.c.Structure)/2)
		v.calls = append(v.calls, marks.Callout{Lines: []string{v.joistWords() + ", beyond"}, Target: at})
	}
}

// deck draws what lies on the joists, or the structure whose make is not known,
// and returns its upper edge.
func (v *overhead) deck() geom.Length {
	deck := geom.RectOf(v.span.From, v.top, v.span.To, v.top+v.mm(1.4))
	v.add(drawing.HatchLines(deck.Polygon(), drawing.Style{Layer: drawing.CutPattern, Pen: drawing.P18}, drawing.Rising60, paper.MM(1.2), v.s),
		drawing.Line{Style: drawing.Style{Layer: drawing.Cut, Pen: drawing.P50}, A: deck.Min, B: geom.Pt(deck.Max.X, deck.Min.Y)})
	return deck.Max.Y
}

// wallEnds reports whether each end of the stretch is at a wall.
func (v *overhead) wallEnds() [2]bool {
	whole := v.spanOf(v.c.Outline.Bounds())
	return [2]bool{v.span.From <= whole.From, v.span.To >= whole.To}
}

// wallEnd draws the wall cut at an end, with its wall angle in true size.
func (v *overhead) wallEnd(x geom.Length, left bool, low geom.Length) {
	in, thick := geom.Length(1), -v.mm(3.6)
	if !left {
		in, thick = -1, v.mm(3.6)
	}
	band := geom.RectOf(min(x, x+thick), low, max(x, x+thick), v.top)
	heavy := drawing.Style{Layer: drawing.Cut, Pen: drawing.P50}
	v.add(drawing.HatchLines(band.Polygon(), drawing.Style{Layer: drawing.CutPattern, Pen: drawing.P18}, drawing.Rising45, paper.MM(1.7), v.s),
		drawing.Line{Style: heavy, A: geom.Pt(x, low), B: geom.Pt(x, v.top)})
	leg := v.leg()
	if leg <= 0 {
		return
	}
	v.add(drawing.Polyline{Style: heavy, Points: []geom.Point{
		geom.Pt(x, v.c.Face+leg), geom.Pt(x, v.c.Face), geom.Pt(x+in*leg, v.c.Face)}})
	v.levels = append(v.levels, dimension.Height{Word: "top of angle", At: v.c.Face + leg})
}

// leg returns the leg of the wall angle.
func (v *overhead) leg() geom.Length {
	for _, p := range v.c.Pieces {
		if len(v.c.Angles) > 0 && p.Mark == v.c.Angles[0].Mark {
			return p.Profile.Thick
		}
	}
	return 0
}

// breakLine draws a zig-zag where the view ends short of a wall.
func (v *overhead) breakLine(x, low, high geom.Length) []drawing.Element {
	mid, z := low+(high-low)/2, v.mm(1.2)
	return []drawing.Element{drawing.Polyline{Style: drawing.Style{Layer: drawing.Beyond, Pen: drawing.P18}, Points: []geom.Point{
		geom.Pt(x, low), geom.Pt(x, mid-z), geom.Pt(x-z, mid-z/3), geom.Pt(x+z, mid+z/3), geom.Pt(x, mid+z), geom.Pt(x, high)}}}
}

// thing names what hangs below the structure.
func thing(o ceiling.Obstacle) string {
	if o.What == "other" {
		return "thing"
	}
	return o.What
}

// obstacles draws what hangs below the joists where the cut meets it.
func (v *overhead) obstacles() {
	for _, o := range v.c.Obstacles {
		x := v.spanOf(o.Box).Overlap(v.span)
		if !v.crosses(o.Box) || x.Len() <= 0 {
			continue
		}
		box := geom.RectOf(x.From, o.Underside, x.To, v.c.Structure)
		if box.H() <= 0 || o.Underside <= 0 {
			continue
		}
		v.add(drawing.Polyline{Style: drawing.Style{Layer: drawing.Duct, Pen: drawing.P35}, Points: box.Polygon(), Closed: true})
		v.levels = append(v.levels, dimension.Height{Word: thing(o), At: o.Underside})
		v.calls = append(v.calls, marks.Callout{Lines: []string{thing(o) + ", drawn up to the " + v.structureWord()}, Target: geom.Pt(box.Mid().X, box.Max.Y-box.H()/3)})
	}
}

// grid draws tees, lay-in panels and hanger wires.
func (v *overhead) grid() {
	lines := v.c.XLines
	if !v.cut.AlongX {
		lines = v.c.YLines
	}
	cut := drawing.Style{Layer: drawing.MainTee, Pen: drawing.P50}
	for _, l := range lines {
		p := geom.Pt(l.At, l.At)
		x := v.across(p)
		if v.span.Holds(x) {
			v.add(drawing.Line{Style: cut, A: geom.Pt(x-v.c.TeeFace/2, v.c.Face), B: geom.Pt(x+v.c.TeeFace/2, v.c.Face)},
				drawing.Line{Style: cut, A: geom.Pt(x, v.c.Face), B: geom.Pt(x, v.c.Face+v.c.TeeHeight)})
		}
	}
	tops := v.c.Face + v.c.TeeHeight
	v.add(drawing.Line{Style: drawing.Style{Layer: drawing.Beyond, Pen: drawing.P18}, A: geom.Pt(v.span.From, tops), B: geom.Pt(v.span.To, tops)})
	v.levels = append(v.levels, dimension.Height{Word: "top of tees", At: tops})
	v.panels()
	seen := map[geom.Length]bool{}
	for _, h := range v.c.Hangers {
		x := v.across(h.At)
		if h.Light != "" || seen[x] || !v.span.Holds(x) || !v.nearCut(h.At) {
			continue
		}
		seen[x] = true
		v.add(drawing.Line{Style: drawing.Style{Layer: drawing.HangerWire, Pen: drawing.P18}, A: geom.Pt(x, v.c.Face+v.c.TeeHeight), B: geom.Pt(x, v.c.Structure)})
	}
}

// nearCut reports whether a hanger hangs at the main tee next to the cut.
func (v *overhead) nearCut(p geom.Point) bool {
	best := geom.Length(-1)
	for _, h := range v.c.Hangers {
		if h.Light == "" {
			if d := v.off(h.At); best < 0 || d < best {
				best = d
			}
		}
	}
	return v.off(p) == best
}

// off returns how far a plan point lies from the line of the cut.
func (v *overhead) off(p geom.Point) geom.Length {
	if v.cut.AlongX {
		return (p.Y - v.cut.From.Y).Abs()
	}
	return (p.X - v.cut.From.X).Abs()
}

// panels draws the lay-in panels that the cut runs through.
func (v *overhead) panels() {
	if v.c.PanelThick <= 0 {
		return
	}
	var last geom.Rect
	for _, c := range v.c.Cells {
		b := geom.Polygon(c.Shape).Bounds()
		x := v.spanOf(b)
		if c.Light >= 0 || !v.crosses(b) {
			continue
		}
		x = geom.Span{From: x.From + v.c.TeeFace/4, To: x.To - v.c.TeeFace/4}.Overlap(v.span)
		if x.Len() <= 0 {
			continue
		}
		box := geom.RectOf(x.From, v.c.Face+v.mm(0.25), x.To, v.c.Face+v.mm(0.25)+v.c.PanelThick)
		v.add(drawing.HatchLines(box.Polygon(), drawing.Style{Layer: drawing.CutPattern, Pen: drawing.P13}, drawing.Rising60, paper.MM(0.8), v.s),
			drawing.Polyline{Style: drawing.Style{Layer: drawing.CeilPanel, Pen: drawing.P25}, Points: box.Polygon(), Closed: true})
		if last.Empty() || box.Max.X > last.Max.X {
			last = box
		}
	}
	if !last.Empty() {
		v.calls = append(v.calls, marks.Callout{
			Lines: []string{"panel " + v.show.Figure(v.c.PanelThick) + " thick"}, Target: geom.Pt(last.Max.X-min(v.mm(3), last.W()/3), last.Mid().Y),
		})
	}
}

// lights draws the light panels that the cut runs through.
func (v *overhead) lights() {
	for _, l := range v.c.Lights {
		x := v.spanOf(l.Box).Overlap(v.span)
		if !v.crosses(l.Box) || x.Len() <= 0 || l.Depth <= 0 {
			continue
		}
		box := geom.RectOf(x.From+v.c.TeeFace/4, v.c.Face+v.mm(0.25), x.To-v.c.TeeFace/4, v.c.Face+l.Depth)
		v.add(drawing.Area{Layer: drawing.LightPanel, Outline: box.Polygon()},
			drawing.Polyline{Style: drawing.Style{Layer: drawing.LightPanel, Pen: drawing.P50}, Points: box.Polygon(), Closed: true})
		v.levels = append(v.levels, dimension.Height{Word: "light", At: v.c.Face + l.Depth})
		v.calls = append(v.calls, marks.Callout{Mark: string(l.Mark), Lines: []string{"light, " + v.show.Figure(l.Depth) + " deep"}, Target: geom.Pt(box.Max.X-min(v.mm(3), box.W()/3), box.Mid().Y)})
	}
	v.levels = append(v.levels, dimension.Height{Word: "ceiling", At: v.c.Face})
}

// ladder puts the heights at the left.
func (v *overhead) ladder() {
	words, figures := dimension.LadderWidth(v.levels, v.show)
	spine := v.span.From - v.mm(7)
	l := dimension.Ladder{
		SpineX: spine, FiguresX: spine - v.mm(5.5), WordsX: spine - v.mm(5.5) - v.s.Real(figures+words) - v.mm(4),
		Heights: once(v.levels), Scale: v.s, Show: v.show,
	}
	v.add(l.Draw()...)
}

// once drops heights that are said twice.
func once(list []dimension.Height) []dimension.Height {
	var out []dimension.Height
	seen := map[dimension.Height]bool{}
	for _, h := range list {
		if !seen[h] {
			seen[h] = true
			out = append(out, h)
		}
	}
	return out
}
