package section

import (
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/piece"
	"roomwright/geom/room"
	"roomwright/geom/setout"
	"roomwright/layouts/cuts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/lettering"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// header is the section through one header while it is drawn.
type header struct {
	face.Face
	opening  framing.Opening
	members  []framing.Member // plies and fillers, from the room side
	across   []geom.Span      // where each of them lies, from the room side
	core     geom.Length      // depth of the wall's core
	mirror   bool             // the room is at the right
	inside   geom.Length      // thickness of the lining on the room side, zero when none is drawn
	outside  geom.Length
	top, low geom.Length // what is drawn, up and down
	capped   bool        // the plates above are shown
	callouts []marks.Callout
}

// Header returns the section through the header of an opening at scale s.
func Header(r setout.Result, c cuts.Cut, s paper.Scale) drawing.Plate {
	h := header{Face: face.Of(r, c.Wall, s), mirror: c.Look == marks.RightWay}
	found := false
	if c.Opening >= 0 && c.Opening < len(h.Wall.Openings) {
		h.opening, found = h.Wall.Openings[c.Opening], true
	}
	d := drawing.Drawing{Name: "section-" + strings.ToLower(c.Letter), Title: "Section " + c.Letter + ", header", Scale: s}
	if !found {
		return drawing.Plate{Drawing: d}
	}
	h.measure()
	d.Elements = h.draw()
	plate := drawing.Plate{Drawing: d}
	if len(h.Wall.Openings) > 1 {
		plate.Subtitle = "wall " + h.Wall.Name + ", " + h.opening.Name
	}
	return plate
}

// measure finds what lies where across the wall.
func (h *header) measure() {
	o := h.opening
	for _, m := range h.Wall.Members {
		if m.Opening == o.Index && (m.Role == framing.HeaderPly || m.Role == framing.HeaderFiller) {
			h.members = append(h.members, m)
		}
	}
	slices.SortStableFunc(h.members, func(a, b framing.Member) int { return a.Depth - b.Depth })
	at := geom.Length(0)
	for _, m := range h.members {
		t := m.Profile.Thick
		if m.Role == framing.HeaderPly && (m.Profile.Thick-o.Header.H()).Abs() < (m.Profile.Wide-o.Header.H()).Abs() {
			t = m.Profile.Wide // laid flat
		}
		h.across = append(h.across, geom.Span{From: at, To: at + t})
		at += t
	}
	h.core = max(h.Wall.Depth, at)
	h.inside, h.outside = thick(h.Room.Inside), thick(h.Room.Outside)
	h.low = o.Header.Min.Y - h.MM(21.6)
	h.top = h.above() + h.MM(25)
	if p := h.Wall.PlateLow; p > 0 && h.Wall.Top > 0 && h.Wall.Top-h.above() < h.MM(34) {
		h.capped = true
		h.top = h.Wall.Top
	}
}

func thick(m room.Material) geom.Length {
	if m.None || m.Unknown {
		return 0
	}
	return m.Thick
}

// above returns the height at which what stands on the header begins.
func (h *header) above() geom.Length {
	return max(h.opening.Header.Max.Y, h.opening.UpperCut)
}

// x returns where a depth from the room side lies on the drawing.
func (h *header) x(depth geom.Length) geom.Length {
	if h.mirror {
		return h.core - depth
	}
	return depth
}

// box returns the rectangle between two depths and two heights.
func (h *header) box(from, to, low, high geom.Length) geom.Rect {
	a, b := h.x(from), h.x(to)
	return geom.RectOf(min(a, b), low, max(a, b), high)
}

// left returns the left edge of all that is cut, right its right edge.
func (h *header) left() geom.Length {
	return min(h.x(-h.inside), h.x(h.core+h.outside))
}

func (h *header) right() geom.Length {
	return max(h.x(-h.inside), h.x(h.core+h.outside))
}

func (h *header) draw() []drawing.Element {
	var parts []drawing.Element
	parts = append(parts, h.beyond()...)
	parts = append(parts, h.linings()...)
	parts = append(parts, h.plates()...)
	parts = append(parts, h.plies()...)
	parts = append(parts, h.breaks()...)
	parts = append(parts, h.saw()...)
	e := []drawing.Element{drawing.Group{ID: "header", Title: "Header, cut", Elements: parts}}
	dims := h.dimensions()
	e = append(e, drawing.Group{ID: "header-dimensions", Title: "Dimensions of the header", Elements: dims})
	column := max(h.right()+h.MM(9), drawing.Bounds(dims, h.Scale).Max.X+h.MM(6.5))
	return append(e, drawing.Group{ID: "callouts", Title: "Names of the parts", Elements: marks.Callouts(h.callouts, column, h.Scale)})
}

// say adds a callout.
func (h *header) say(mark, words string, at geom.Point) {
	wide := paper.MM(52)
	if mark != "" {
		w, _ := marks.LabelSize(mark, true)
		wide -= w
	}
	h.callouts = append(h.callouts, marks.Callout{Lines: lettering.Wrap(words, paper.MM(2.4), false, wide), Mark: mark, Target: at})
}

// beyond draws the stub or cripple above and the jack below, seen beyond.
func (h *header) beyond() []drawing.Element {
	thin := drawing.Style{Layer: drawing.Beyond, Pen: drawing.P25}
	var e []drawing.Element
	over := h.top
	if h.capped {
		over = h.Wall.PlateLow
	}
	if m, ok := h.member(framing.CrippleAbove); ok && over > h.above() {
		b := h.box(0, h.core, h.above(), over)
		if m.State == piece.New {
			b.Min.Y = m.Box.Min.Y
		}
		e = append(e, face.Outline(b, thin))
		words := "stub of the old stud, kept"
		mark := ""
		if m.State == piece.New {
			words, mark = "cripple, beyond", string(m.Mark)
		}
		h.say(mark, words, geom.Pt(h.x(h.core*36/100), b.Max.Y-b.H()*47/100))
	}
	if m, ok := h.jack(); ok {
		b := h.box(0, h.core, h.low, h.opening.Header.Min.Y)
		for _, x := range []geom.Length{b.Min.X, b.Max.X} {
			e = append(e, drawing.Line{Style: thin, A: geom.Pt(x, b.Min.Y), B: geom.Pt(x, b.Max.Y)})
		}
		mark := ""
		if m.State == piece.New {
			mark = string(m.Mark)
		}
		name := "jack stud, beyond"
		if m.Role == framing.UpperJack {
			name = "upper jack stud, beyond"
		}
		h.say(mark, name, geom.Pt(b.Min.X+b.W()*80/100, h.opening.Header.Min.Y-h.MM(15.5)))
	}
	return e
}

// member returns a member of the opening with the given role.
func (h *header) member(role framing.Role) (framing.Member, bool) {
	for _, m := range h.Wall.Members {
		if m.Opening == h.opening.Index && m.Role == role {
			return m, true
		}
	}
	return framing.Member{}, false
}

// jack returns the jack that is seen under the header: the one at the end
// towards which the section looks.
func (h *header) jack() (framing.Member, bool) {
	var best framing.Member
	found := false
	for _, m := range h.Wall.Members {
		if m.Opening != h.opening.Index || m.Role != framing.Jack && m.Role != framing.UpperJack {
			continue
		}
		if !found || h.mirror == (m.Box.Min.X > best.Box.Min.X) {
			best, found = m, true
		}
	}
	return best, found
}

// linings draws what lines the wall on both sides, cut flush under the header.
func (h *header) linings() []drawing.Element {
	var e []drawing.Element
	low := h.opening.Header.Min.Y
	add := func(box geom.Rect, what string, m room.Material) {
		if box.Empty() {
			return
		}
		hatch := drawing.Style{Layer: drawing.CutPattern, Pen: drawing.P13}
		e = append(e, drawing.HatchLines(box.Polygon(), hatch, drawing.Falling60, paper.MM(0.8), h.Scale),
			face.Outline(box, drawing.Style{Layer: drawing.Cut, Pen: drawing.P35}))
		h.say("", "lining, "+what+", "+strings.TrimSpace(h.Show.Figure(m.Thick)+" "+m.What)+", cut flush under the header",
			geom.Pt(box.Mid().X, h.opening.Header.Max.Y-h.opening.Header.H()*28/100))
	}
	if h.inside > 0 {
		add(h.box(-h.inside, 0, low, h.top), "room side", h.Room.Inside)
	}
	if h.outside > 0 {
		add(h.box(h.core, h.core+h.outside, low, h.top), "far side", h.Room.Outside)
	}
	return e
}

// crossed draws a stick that is cut across: a strong outline and diagonals.
func crossed(box geom.Rect) []drawing.Element {
	thin := drawing.Style{Layer: drawing.CutPattern, Pen: drawing.P18}
	return []drawing.Element{
		drawing.Area{Layer: drawing.Cut, Outline: box.Polygon(), Fill: drawing.White},
		drawing.Line{Style: thin, A: box.Min, B: box.Max},
		drawing.Line{Style: thin, A: geom.Pt(box.Min.X, box.Max.Y), B: geom.Pt(box.Max.X, box.Min.Y)},
		face.Outline(box, drawing.Style{Layer: drawing.Cut, Pen: drawing.P50}),
	}
}

// plates draws the top plates where the header is close under them, and the
// structure on them.
func (h *header) plates() []drawing.Element {
	if !h.capped {
		return nil
	}
	var e []drawing.Element
	n := 0
	for _, m := range h.Wall.Members {
		if m.Role != framing.TopPlate || m.Depth > 0 || m.Box.X().Overlap(h.opening.Rough.X()).Len() <= 0 {
			continue
		}
		e = append(e, crossed(h.box(0, h.core, m.Box.Min.Y, m.Box.Max.Y))...)
		if n == 0 {
			mark := ""
			if m.State == piece.New {
				mark = string(m.Mark)
			}
			h.say(mark, "top plate", geom.Pt(h.x(h.core/2), m.Box.Mid().Y))
		}
		n++
	}
	if h.Capped && h.Wall.Top == h.Top {
		strip := geom.RectOf(h.left(), h.Top, h.right(), h.Top+h.MM(3))
		e = append(e, drawing.HatchLines(strip.Polygon(), drawing.Style{Layer: drawing.WallPattern, Pen: drawing.P18}, drawing.Falling45, paper.MM(1.8), h.Scale),
			drawing.Line{Style: drawing.Style{Layer: drawing.Outline, Pen: drawing.P50}, A: strip.Min, B: geom.Pt(strip.Max.X, strip.Min.Y)})
	}
	return e
}

// plies draws the header's plies, crossed, and its fillers, hatched along
// their own plies.
func (h *header) plies() []drawing.Element {
	var e []drawing.Element
	o := h.opening.Header
	plies, first, last := 0, -1, -1
	filler := -1
	for i, m := range h.members {
		box := h.box(h.across[i].From, h.across[i].To, o.Min.Y, o.Max.Y)
		if m.Role == framing.HeaderFiller {
			filler = i
			hatch := drawing.Style{Layer: drawing.CutPattern, Pen: drawing.P13}
			e = append(e, drawing.Area{Layer: drawing.Cut, Outline: box.Polygon(), Fill: drawing.White},
				drawing.HatchLines(box.Polygon(), hatch, drawing.Level, paper.MM(0.7), h.Scale),
				face.Outline(box, drawing.Style{Layer: drawing.Cut, Pen: drawing.P35}))
			continue
		}
		plies++
		if first < 0 {
			first = i
		}
		last = i
		e = append(e, crossed(box)...)
	}
	if filler >= 0 {
		m := h.members[filler]
		h.say(string(m.Mark), "filler "+face.Times(m.Profile.Name), geom.Pt(h.x(h.across[filler].Mid()), o.Min.Y+o.H()*36/100))
	}
	if plies > 0 {
		i := last // the one nearest the callouts
		if h.mirror {
			i = first
		}
		m := h.members[i]
		words := "header, " + count(plies, "ply", "plies") + " " + face.Times(m.Profile.Name)
		if !h.wideEnough() {
			words += ", " + h.Show.Figure(h.across[i].Len()) + " thick"
			if plies > 1 {
				words += " each"
			}
		}
		h.say(string(m.Mark), words, geom.Pt(h.x(h.across[i].From+h.across[i].To-h.across[i].Mid()), o.Min.Y+o.H()*17/100))
	}
	return e
}

func count(n int, one, many string) string {
	words := []string{"no", "one", "2", "3", "4", "5", "6"}
	if n == 1 {
		return "one " + one
	}
	if n < len(words) {
		return words[n] + " " + many
	}
	return "several " + many
}

// breaks draws the broken edges above and below.
func (h *header) breaks() []drawing.Element {
	line := func(y geom.Length) drawing.Element {
		l, r := h.left()-h.MM(1.5), h.right()+h.MM(1.5)
		c := (l + r) / 2
		return drawing.Polyline{Style: drawing.Style{Layer: drawing.Beyond, Pen: drawing.P18}, Points: []geom.Point{
			{X: l, Y: y}, {X: c - h.MM(1.6), Y: y}, {X: c - h.MM(0.6), Y: y + h.MM(2)}, {X: c + h.MM(0.6), Y: y - h.MM(2)},
			{X: c + h.MM(1.6), Y: y}, {X: r, Y: y},
		}}
	}
	e := []drawing.Element{line(h.low)}
	if !h.capped {
		e = append(e, line(h.top))
	}
	return e
}

// saw draws the upper saw cut.
func (h *header) saw() []drawing.Element {
	y := h.opening.UpperCut
	if y <= 0 {
		return nil
	}
	x, tall := h.left(), h.MM(1.3)
	if gap := y - h.opening.Header.Max.Y; gap > 0 {
		h.say("", "gap "+h.Show.Figure(gap)+", packed tight", geom.Pt(h.x(h.core*82/100), y-gap/2))
	}
	return []drawing.Element{
		drawing.Line{Style: drawing.Style{Layer: drawing.SawLine, Pen: drawing.P70, Accent: true}, A: geom.Pt(0, y), B: geom.Pt(h.core, y)},
		drawing.Area{Layer: drawing.SawLine, Fill: drawing.Accent, Outline: []geom.Point{
			{X: x, Y: y}, {X: x - h.MM(2.4), Y: y - tall}, {X: x - h.MM(2.4), Y: y + tall}}},
	}
}
