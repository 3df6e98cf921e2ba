package lining

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
	"roomwright/geom/survey"
)

// job is one row of boards while it is set out.
type job struct {
	room     *room.Room
	board    *room.Board
	wall     Wall
	made     room.Make
	findings []finding.Finding
}

// placed is a row with its place, and how the place came about.
type placed struct {
	strip
	spot
	free     geom.Span // in which the place was searched
	y        geom.Span
	searched bool
	moved    bool // away from a place across that was a wish
}

// Build sets out the boards of the room, one Row for each in its order. A row
// that cannot be placed has no sheets, and a finding says why.
func Build(r *room.Room, plan survey.Plan, walls []Wall) ([]Row, []finding.Finding) {
	rows := make([]Row, 0, len(r.Boards))
	var findings []finding.Finding
	marks := newMarks()
	for i := range r.Boards {
		j := job{room: r, board: &r.Boards[i]}
		row := Row{Name: j.board.Name, Index: i, Wall: j.board.Wall, At: j.board.At, Gap: j.gap()}
		for _, w := range walls {
			if w.Index == j.board.Wall {
				j.wall, j.made = w, r.Walls[w.Index].MadeOf
			}
		}
		if j.wall.Ceiling == 0 && j.board.Wall < len(plan.Sides) {
			j.wall.Ceiling = plan.Sides[j.board.Wall].Structure
		}
		if p, ok := j.place(); ok {
			j.fill(&row, p, marks)
		}
		rows = append(rows, row)
		findings = append(findings, j.findings...)
	}
	return rows, findings
}

// gap returns the gap at the seams.
func (j *job) gap() geom.Length {
	if j.board.Gap.Given() {
		return j.board.Gap.Value
	}
	if j.room.Units == measure.Millimetres {
		return rules.BoardGapMillimetres
	}
	return rules.BoardGap
}

// height returns the height of the sheets as hung.
func (j *job) height() geom.Length {
	b := j.board
	if !b.CutTo.Given() {
		return b.Size.H
	}
	if b.CutTo.Value > b.Size.H {
		j.errorCutTo()
	}
	return min(b.CutTo.Value, b.Size.H)
}

// place finds the row's place up and across.
func (j *job) place() (placed, bool) {
	b := j.board
	if b.Count < 1 || b.Size.W <= 0 || b.Size.H <= 0 || b.CutTo.Given() && b.CutTo.Value <= 0 {
		j.errorSize()
		return placed{}, false
	}
	switch b.Up.Kind {
	case room.BottomFromFloor, room.TopFromFloor, room.CentreFromFloor:
	case room.TopFromCeiling:
		if j.room.Ceiling == nil || j.wall.Ceiling == 0 {
			j.errorHeight()
			return placed{}, false
		}
	default:
		j.errorHeight()
		return placed{}, false
	}
	if geom.Length(b.Count)-2 > j.wall.Finished.Len()/b.Size.W {
		j.errorLonger(j.strip(geom.Span{}))
		return placed{}, false
	}
	h := j.height()
	list, asked := j.bottoms(h)
	if left := j.wall.Ceiling - asked; b.CutTo.IfFits && left > 0 && h > left && !b.Up.Wish {
		j.warnCutLess(h, left)
		h = left
	}
	list = j.standing(list, asked, h)
	if len(list) == 0 {
		j.errorTall(asked, h)
		return placed{}, false
	}
	var first []finding.Finding
	before := len(j.findings)
	for i, bottom := range list {
		p, ok := j.across(geom.Span{From: bottom, To: bottom + h})
		if ok {
			if bottom != asked {
				j.warnRaised(asked, bottom, h)
			}
			return p, true
		}
		if i == 0 {
			first = slices.Clone(j.findings[before:])
		}
		j.findings = j.findings[:before]
	}
	j.findings = append(j.findings, first...)
	return placed{}, false
}

// standing keeps of list, the nearest to asked first, the bottoms at which a
// row h high stands between the floor and the ceiling.
func (j *job) standing(list []geom.Length, asked, h geom.Length) []geom.Length {
	var out []geom.Length
	for _, y := range list {
		if y >= 0 && (j.wall.Ceiling == 0 || y+h <= j.wall.Ceiling) {
			out = append(out, y)
		}
	}
	slices.SortStableFunc(out, func(a, b geom.Length) int {
		return cmp.Or(cmp.Compare((a-asked).Abs(), (b-asked).Abs()), cmp.Compare(a, b))
	})
	return slices.Compact(out)
}

// strip returns the row's sheets for heights y, and what they bear on.
func (j *job) strip(y geom.Span) strip {
	s := strip{n: j.board.Count, w: j.board.Size.W, gap: j.gap()}
	if !j.wall.Solid {
		s.bars = barsAt(j.wall.Backing, y)
		s.judge = len(j.wall.Backing) > 0
	}
	return s
}

// across finds the place across for a row at heights y.
func (j *job) across(y geom.Span) (placed, bool) {
	s := j.strip(y)
	whole := s.whole()
	p := placed{strip: s, y: y, free: j.wall.Finished}
	start, asked, trouble := j.start(whole)
	if trouble != "" {
		j.errorPlace(trouble)
		return p, false
	}
	if !asked {
		var ok bool
		p.searched = true
		p.spot, p.free, ok = j.search(s, y)
		if !ok {
			j.errorLonger(s)
		}
		return p, ok
	}
	var fits bool
	p.spot, fits = s.put(start, j.wall.Finished)
	over := j.over(p.spot, y, true)
	if j.board.Across.Wish {
		trouble := !fits || len(over) > 0 || s.cuts(p.spot) > 0 || len(j.over(p.spot, y, false)) > 0
		if trouble || s.score(p.spot).seams > 0 {
			if q, ok := j.wish(s, y, start); ok && q != p.spot {
				p.spot, p.moved = q, true
				j.warnMoved(p, start)
				return p, true
			}
		}
	}
	if !fits {
		j.errorLonger(s)
	}
	for _, i := range over {
		j.errorOver(p, i, start)
	}
	return p, fits && len(over) == 0
}

// search finds a place across when none is given: clear of everything when
// that can be, else over boxes only.
func (j *job) search(s strip, y geom.Span) (best spot, free geom.Span, ok bool) {
	for _, all := range []bool{true, false} {
		spans := freeSpans(j.wall.Finished, y, j.keep(all))
		if best, free, ok = s.search(spans, nil); ok {
			return j.roundStart(s, best, free), free, true
		}
	}
	return spot{}, geom.Span{}, false
}

// wish finds the place across nearest to start that works.
func (j *job) wish(s strip, y geom.Span, start geom.Length) (spot, bool) {
	for _, all := range []bool{true, false} {
		spans := freeSpans(j.wall.Finished, y, j.keep(all))
		if p, free, ok := s.search(spans, &start); ok {
			return j.roundStart(s, p, free), true
		}
	}
	return spot{}, false
}

// roundStart moves a searched place to the nearest one that the printed
// figures can give, where it is as good there.
func (j *job) roundStart(s strip, p spot, free geom.Span) spot {
	if p.start < free.From {
		return p
	}
	start := j.wall.Finished.From + j.room.Show.Round(p.start-j.wall.Finished.From)
	q, ok := s.put(start, free)
	if ok && s.score(q).same(s.score(p)) {
		return q
	}
	return p
}

// keep returns what on the wall the row should not hang over: doors, windows
// and openings, and the boxes too when all is set.
func (j *job) keep(all bool) []geom.Rect {
	var out []geom.Rect
	for i, k := range j.wall.Keep {
		if all || hard(j.wall.Names[i]) {
			out = append(out, k)
		}
	}
	return out
}

// over returns which of the wall's things a row at p and y hangs over: the
// doors, windows and openings, or the boxes.
func (j *job) over(p spot, y geom.Span, hardOnes bool) []int {
	var out []int
	box := geom.RectOf(p.from, y.From, p.to, y.To)
	for i, k := range j.wall.Keep {
		if hard(j.wall.Names[i]) == hardOnes && k.Overlaps(box) {
			out = append(out, i)
		}
	}
	return out
}
