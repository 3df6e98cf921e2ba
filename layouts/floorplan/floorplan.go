package floorplan

import (
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/setout"
	"roomwright/layouts/cuts"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
	"roomwright/layouts/planwalls"
)

// Draw draws the floor plan of a room for a scale.
func Draw(r setout.Result, s paper.Scale) drawing.Plate {
	v := view{r: r, s: s, sides: planwalls.Sides(r, s), show: r.Room.Show, used: map[string]bool{}}
	v.add(planwalls.Draw(v.sides, gaps, geom.In(48), v.s, v.used)...)
	v.doors()
	v.letters()
	v.dimensions()
	pl := v.placer()
	v.sections(pl)
	v.words(pl)
	return drawing.Plate{
		Drawing: drawing.Drawing{Name: "plan", Title: "Floor plan, seen from above", Scale: s, Elements: v.out},
		Notes:   v.notes(),
		Legend:  v.legend(),
		Tables:  v.tables(),
	}
}

// view is one plan being drawn.
type view struct {
	r       setout.Result
	s       paper.Scale
	show    measure.Show
	sides   []planwalls.Side
	out     []drawing.Element
	used    map[string]bool // what the legend has to explain
	clear   []geom.Rect     // where letters of walls went
	swings  []geom.Rect     // the swings of doors, in small pieces
	unnamed []string        // doors, windows and openings for whose words there is no room
}

func (v *view) add(e ...drawing.Element) { v.out = append(v.out, e...) }

// mm returns the real length that prints as so many millimetres.
func (v *view) mm(mm float64) geom.Length { return v.s.Real(paper.MM(mm)) }

// placer knows what is drawn already, and that words stay in the room.
func (v *view) placer() *marks.Placer {
	pl := marks.NewPlacer(v.s)
	pl.BlockElements(v.out)
	for _, r := range v.swings {
		pl.Block(r)
	}
	for _, d := range v.sides {
		pl.Block(geom.Polygon(d.Box(geom.Span{From: 0, To: d.Length}, geom.Span{From: -d.Finished - v.mm(0.8), To: d.Outer + v.mm(0.8)})).Bounds())
	}
	return pl
}

// sections marks where the sections on other sheets are cut, where there is
// room for the marks.
func (v *view) sections(pl *marks.Placer) {
	for _, c := range cuts.Of(v.r) {
		switch c.Kind {
		case cuts.Header:
			v.headerMarks(pl, c)
		case cuts.Ceiling:
			from, to := cuts.Inside(c, v.r.Plan.Finished.Bounds(), v.mm(5))
			v.ceilingMark(pl, c, from)
			v.ceilingMark(pl, c, to)
		}
	}
}

// headerMarks marks a section through a header on both sides of its wall.
func (v *view) headerMarks(pl *marks.Placer, c cuts.Cut) {
	d := v.sides[c.Wall]
	way, off := marks.LeftWay, v.mm(4.5)
	if d.Page == dimension.LeftOf || d.Page == dimension.RightOf {
		way, off = marks.Up, v.mm(7.5)
	}
	wide := d.Wall.Openings[c.Opening].Rough.X()
	for _, x := range []geom.Length{wide.Mid(), wide.From + wide.Len()/4, wide.To - wide.Len()/4} {
		in := marks.Pennant(c.Letter, d.At(x, -d.Finished-off), way, v.s)
		out := marks.Pennant(c.Letter, d.At(x, d.Outer+off), way, v.s)
		if pl.Free(v.around(in)) && pl.Free(v.around(out)) {
			v.mark(pl, in)
			v.mark(pl, out)
			return
		}
	}
}

// ceilingMark marks one end of the section through the ceiling, at the free
// place on its line that is nearest to the end.
func (v *view) ceilingMark(pl *marks.Placer, c cuts.Cut, end geom.Point) {
	step, room := v.mm(1.5), v.r.Plan.Finished.Bounds().Inset(v.mm(1.2))
	for n := range geom.Length(20) {
		for _, k := range []geom.Length{n, -n} {
			at := end.Add(geom.Pt(0, k*step))
			if c.AlongX {
				at = end.Add(geom.Pt(k*step, 0))
			}
			g := marks.Pennant(c.Letter, at, c.Look, v.s)
			if box := v.around(g); room.Union(box) == room && pl.Free(box) {
				v.mark(pl, g)
				return
			}
		}
	}
}

// around returns the box of a mark with a little air.
func (v *view) around(g drawing.Group) geom.Rect {
	return drawing.Bounds([]drawing.Element{g}, v.s).Inset(-v.mm(0.4))
}

// mark adds a section mark where there is room for it.
func (v *view) mark(pl *marks.Placer, g drawing.Group) {
	if !pl.Free(v.around(g)) {
		return
	}
	v.used["section"] = true
	v.add(g)
	pl.BlockElements([]drawing.Element{g})
	pl.Block(v.around(g))
}

// letters puts the letter of each wall inside the room, with the triangle of
// its elevation before it.
func (v *view) letters() {
	room := v.r.Plan.Finished.Bounds()
	for _, d := range v.sides {
		places := []geom.Length{v.letterPlace(d)}
		for off := geom.Length(0); off < d.Length/2; off += v.mm(3) {
			places = append(places, d.Length/2+off, d.Length/2-off)
		}
		for _, x := range places {
			g := v.letter(d, x)
			box := v.around(g)
			if slices.ContainsFunc(v.clear, box.Overlaps) || slices.ContainsFunc(v.swings, box.Overlaps) || room.Union(box) != room {
				continue
			}
			v.clear = append(v.clear, box)
			v.add(g.Elements...)
			break
		}
	}
}

// letter returns the letter of a wall and the triangle before it.
func (v *view) letter(d planwalls.Side, x geom.Length) drawing.Group {
	in := -d.Finished
	box := drawing.Bounds([]drawing.Element{marks.WallLetter(d.Wall.Name, geom.Point{}, d.Page, v.s)}, v.s)
	deep := box.H()
	if d.Page == dimension.LeftOf || d.Page == dimension.RightOf {
		deep = box.W()
	}
	tip := in - v.mm(3) - deep
	return drawing.Group{Elements: []drawing.Element{
		marks.WallLetter(d.Wall.Name, d.At(x, in-v.mm(1.6)-deep/2), d.Page, v.s),
		drawing.Area{Layer: drawing.Symbols, Fill: drawing.Black, Outline: []geom.Point{
			d.At(x, tip), d.At(x-v.mm(1.6), tip-v.mm(2.8)), d.At(x+v.mm(1.6), tip-v.mm(2.8)),
		}},
	}}
}

// letterPlace returns a place along the wall for its letter, clear of doors,
// openings and section marks.
func (v *view) letterPlace(d planwalls.Side) geom.Length {
	half := v.mm(8)
	taken := gaps(d)
	for _, c := range cuts.Of(v.r) {
		if c.Kind == cuts.Header && v.sides[c.Wall].Wall.Name == d.Wall.Name {
			mid := d.Wall.Openings[c.Opening].Rough.X().Mid()
			taken = append(taken, geom.Span{From: mid - half, To: mid + half})
		}
		if c.Kind != cuts.Ceiling {
			continue
		}
		from, to := cuts.Inside(c, v.r.Plan.Finished.Bounds(), v.mm(5))
		for _, p := range []geom.Point{from, to} {
			if x, in := d.Foot(p); in < v.mm(20) {
				taken = append(taken, geom.Span{From: x - half, To: x + half})
			}
		}
	}
	best, most := d.Length/2, geom.Length(-1)
	for _, part := range planwalls.Between(geom.Span{From: v.mm(12), To: d.Length - v.mm(12)}, taken) {
		if part.Len() > most {
			best, most = part.Mid(), part.Len()
		}
	}
	if free := planwalls.Between(geom.Span{From: d.Length/2 - half, To: d.Length/2 + half}, taken); len(free) == 1 && free[0].Len() == 2*half {
		return d.Length / 2
	}
	return best
}

// words says in the middle of the room what it is, and names doors and openings.
func (v *view) words(pl *marks.Placer) {
	for _, d := range v.sides {
		for _, h := range d.Wall.Doors {
			if !h.Clear.Empty() {
				v.name(pl, d, h.Clear.X(), []string{h.Name, v.size(h.Clear)})
			}
		}
		for _, o := range d.Wall.Openings {
			v.name(pl, d, o.Rough.X(), []string{o.Name, "clear " + v.size(o.Clear)})
		}
	}
	lines := []string{v.r.Room.Title}
	if c := v.r.Ceiling; c != nil {
		lines = append(lines, "ceiling at "+v.show.Figure(c.Face))
	}
	mid := v.r.Plan.Finished.Bounds().Mid()
	var places []geom.Point
	for _, up := range []float64{0, 10, -10, 20, -20, 30, -30} {
		places = append(places, mid.Add(geom.Pt(0, v.mm(up))))
	}
	if e, ok := v.fit(pl, lines, paper.MM(2.8), places); ok {
		v.add(e...)
	}
}

// fit sets words at the first of the places in the room that is free.
func (v *view) fit(pl *marks.Placer, lines []string, cap paper.Length, places []geom.Point) ([]drawing.Element, bool) {
	room := v.r.Plan.Finished.Bounds()
	for _, at := range places {
		e, ok := pl.Words(lines, cap, false, drawing.Words, at)
		if ok && room.Union(drawing.Bounds(e, v.s)) == room {
			return e, true
		}
	}
	return nil, false
}

// size writes the width and height of an opening.
func (v *view) size(r geom.Rect) string {
	return v.show.Figure(r.W()) + " × " + v.show.Figure(r.H())
}

// name writes words inside the room before a door or opening.
func (v *view) name(pl *marks.Placer, d planwalls.Side, x geom.Span, lines []string) {
	var places []geom.Point
	for _, in := range []float64{6, 9, 12, 16, 20, 26, 32} {
		for _, off := range []geom.Length{0, -x.Len() / 3, x.Len() / 3, -x.Len(), x.Len()} {
			places = append(places, d.At(x.Mid()+off, -d.Finished-v.mm(in)))
		}
	}
	e, ok := v.fit(pl, lines, paper.MM(2.4), places)
	if !ok {
		v.unnamed = append(v.unnamed, strings.Join(lines, " ")+" in wall "+d.Wall.Name)
		return
	}
	v.add(e...)
	pl.BlockElements(e)
}

// faces returns what each wall was taped to, in words.
func (v *view) faces() string {
	groups := map[string][]string{}
	var order []string
	for _, w := range v.r.Room.Walls {
		word := "the face there now"
		switch w.TapeOn {
		case room.FaceStuds:
			word = "studs"
		case room.FaceLining:
			word = "lining"
		case room.FaceMasonry:
			word = "masonry"
		}
		if groups[word] == nil {
			order = append(order, word)
		}
		groups[word] = append(groups[word], w.Name)
	}
	var parts []string
	for _, word := range order {
		parts = append(parts, "to "+word+" of "+strings.Join(groups[word], ", "))
	}
	return strings.Join(parts, "; ")
}

// gaps returns the spans of a wall that are not there at the height of the
// cut: doors, windows and openings.
func gaps(d planwalls.Side) []geom.Span {
	var out []geom.Span
	for _, h := range d.Wall.Doors {
		if !h.Clear.Empty() {
			out = append(out, h.Clear.X())
		}
	}
	for _, o := range d.Wall.Openings {
		out = append(out, o.Rough.X())
	}
	return out
}
