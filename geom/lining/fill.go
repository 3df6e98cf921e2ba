package lining

import (
	"slices"
	"strconv"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/geom/rules"
)

// fill completes row from its place and reports on it.
func (j *job) fill(row *Row, p placed, marks *marks) {
	row.Box = geom.RectOf(p.from, p.y.From, p.to, p.y.To)
	row.Seams = p.seams(p.spot)
	spans := p.sheets(p.spot)
	for _, x := range spans {
		row.Sheets = append(row.Sheets, j.sheet(x, p.y, marks))
	}
	switch {
	case j.wall.Solid:
		row.Bearer = "masonry"
		row.Fixing = anchorRows(spans, p.y)
	case p.judge:
		row.Bearer = "studs"
		row.Fixing = screwRows(spans, p.y, p.bars)
	default:
		row.Bearer = "unknown"
	}
	j.report(row, p)
}

// sheet returns the piece that fills x by y.
func (j *job) sheet(x, y geom.Span, marks *marks) Sheet {
	b := j.board
	s := Sheet{CutW: x.Len() < b.Size.W, CutH: y.Len() < b.Size.H}
	s.Name, s.Trade, s.State = "board", "boards", piece.New
	s.On, s.From = "wall "+j.wallName(), b.At
	s.Profile = piece.Profile{Name: j.profile(), Thick: b.Sheet.Thick, Wide: x.Len()}
	s.Length = y.Len()
	s.Box = geom.RectOf(x.From, y.From, x.To, y.To)
	switch {
	case s.CutW && s.CutH:
		s.Ends = "cut in width and height"
	case s.CutW:
		s.Ends = "cut in width"
	case s.CutH:
		s.Ends = "cut in height"
	default:
		s.Ends = "as bought"
	}
	s.Mark = marks.of(s)
	return s
}

// profile returns what to ask for: "1/4 hardboard", or "board" when the sheet
// is not known.
func (j *job) profile() string {
	m := &j.board.Sheet
	if m.None || m.Unknown || m.Thick <= 0 {
		return "board"
	}
	show := measure.Show{Form: measure.InchesOnly, To: geom.Inch / 64}
	if j.room.Units == measure.Millimetres {
		show = measure.Show{Form: measure.MillimetresOnly, To: geom.Millimetre / 10}
	}
	if m.What == "" {
		return show.Say(m.Thick) + " board"
	}
	return show.Say(m.Thick) + " " + m.What
}

// marks hands out the marks of boards: F1, F2 ... with one for equal sheets.
type marks struct {
	given map[sheetKind]piece.Mark
}

// sheetKind is what equal sheets have in common.
type sheetKind struct {
	profile piece.Profile
	length  geom.Length
	ends    string
}

func newMarks() *marks { return &marks{given: map[sheetKind]piece.Mark{}} }

// of returns the mark of s.
func (m *marks) of(s Sheet) piece.Mark {
	kind := sheetKind{s.Profile, s.Length, s.Ends}
	mark, ok := m.given[kind]
	if !ok {
		mark = piece.Mark("F" + strconv.Itoa(len(m.given)+1))
		m.given[kind] = mark
	}
	return mark
}

// screwRows returns the upright lines of screws of each sheet: along the edges
// that bear, and along every upright between.
func screwRows(sheets []geom.Span, y geom.Span, on bars) []FixRow {
	var out []FixRow
	in := rules.BoardBearing
	for i, s := range sheets {
		left, right := s.From, s.To // what the edges' lines reach to
		var lines []FixRow
		if on.rightOf(s.From) >= in && s.Len() >= 2*in {
			left = s.From + in
			lines = append(lines, fixRow(left, true, i, y, in, rules.BoardEdgePitch))
		}
		if on.leftOf(s.To) >= in && s.To-in > left {
			right = s.To - in
			lines = append(lines, fixRow(right, true, i, y, in, rules.BoardEdgePitch))
		}
		for _, run := range on.runs {
			if run.Holds(left) && left != s.From || run.Holds(right) && right != s.To {
				continue
			}
			x, ok := fieldLine(on, run, geom.Span{From: s.From + in, To: s.To - in})
			if ok {
				lines = append(lines, fixRow(x, false, i, y, in, rules.BoardFieldPitch))
			}
		}
		out = append(out, sorted(lines)...)
	}
	return out
}

// fieldLine returns where a line of screws goes into run: the middle of its
// first upright, or as near to it as within allows.
func fieldLine(on bars, run, within geom.Span) (geom.Length, bool) {
	for _, b := range on.parts {
		if !run.Holds(b.x.Mid()) {
			continue
		}
		if part := b.x.Overlap(within); part.Len() > 0 {
			return min(max(b.x.Mid(), part.From), part.To), true
		}
	}
	return 0, false
}

// anchorRows returns the upright lines of anchors of each sheet on masonry.
func anchorRows(sheets []geom.Span, y geom.Span) []FixRow {
	var out []FixRow
	for i, s := range sheets {
		in := min(rules.BoardAnchorEdge, s.Len()/4)
		from, to := s.From+in, s.To-in
		bays := max(1, (to-from+rules.BoardAnchorPitch-1)/rules.BoardAnchorPitch)
		for k := geom.Length(0); k <= bays; k++ {
			edge := k == 0 || k == bays
			out = append(out, fixRow(from+(to-from)*k/bays, edge, i, y, in, rules.BoardAnchorPitch))
		}
	}
	return out
}

// fixRow returns a line of fixings at x that stands in from the ends of y and
// is nowhere wider than pitch.
func fixRow(x geom.Length, edge bool, sheet int, y geom.Span, in, pitch geom.Length) FixRow {
	run := max(0, y.Len()-2*in)
	return FixRow{X: x, Edge: edge, Sheet: sheet, Count: int((run+pitch-1)/pitch) + 1, Pitch: pitch}
}

// sorted returns lines left to right.
func sorted(lines []FixRow) []FixRow {
	slices.SortStableFunc(lines, func(a, b FixRow) int { return int(max(-1, min(1, a.X-b.X))) })
	return lines
}
