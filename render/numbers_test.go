package render_test

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	model "roomwright/geom/room"
)

// about returns the sheets of one thing, "wall-a" or "ceiling", continuation
// sheets included.
func (s subject) about(id string) []*written {
	var out []*written
	for i, w := range s.paper {
		if got := s.set.Sheets[i].ID; got == id || strings.HasPrefix(got, id+"-notes") {
			out = append(out, w)
		}
	}
	return out
}

// bare is what a figure without a unit means on the sheets of a room.
func (s subject) bare() measure.System {
	if s.result.Room.Show.Form == measure.MillimetresOnly {
		return measure.Millimetres
	}
	return measure.Inches
}

// rows returns the words of a group row by row: those that stand within half a
// millimetre of one height, left to right.
func (w *written) rows(in func(word) bool) [][]word {
	var list []word
	for _, x := range w.words {
		if in(x) && !x.turned {
			list = append(list, x)
		}
	}
	slices.SortStableFunc(list, func(a, b word) int {
		return cmp.Or(cmp.Compare(b.at.Y, a.at.Y), cmp.Compare(a.at.X, b.at.X))
	})
	var out [][]word
	for _, x := range list {
		if n := len(out); n > 0 && (out[n-1][0].at.Y-x.at.Y).Abs() < geom.Millimetre/2 {
			out[n-1] = append(out[n-1], x)
			continue
		}
		out = append(out, []word{x})
	}
	for _, r := range out {
		slices.SortStableFunc(r, func(a, b word) int { return cmp.Compare(a.at.X, b.at.X) })
	}
	return out
}

// table returns the rows of the tables with a heading, as text.
func table(sheets []*written, heading string) [][]string {
	var out [][]string
	for _, w := range sheets {
		for _, id := range slices.Sorted(maps.Keys(w.groups)) {
			if !strings.HasPrefix(w.groups[id], heading) {
				continue
			}
			rows := w.rows(func(x word) bool { return slices.Contains(x.in, id) })
			apart := abreast(rows)
			for _, row := range rows {
				var cells []string
				for i, x := range row {
					if i > 0 && (x.at.X-rows[0][0].at.X+tick)/apart != (row[i-1].at.X-rows[0][0].at.X+tick)/apart {
						out, cells = append(out, cells), nil
					}
					cells = append(cells, x.text)
				}
				out = append(out, cells)
			}
		}
	}
	return out
}

// tick is as near as two places in a file are taken for one.
const tick = 2 * hundredth

// abreast returns how far apart the parts of a table stand that is set in
// several parts beside each other, each under the same headings; else more
// than any sheet is wide.
func abreast(rows [][]word) geom.Length {
	var counts []geom.Length // where the heading of the count stands
	for _, row := range rows {
		for _, x := range row {
			if x.text == "no." {
				counts = append(counts, x.at.X)
			}
		}
	}
	if len(counts) < 2 {
		return geom.Metre
	}
	slices.Sort(counts)
	return counts[1] - counts[0]
}

// labelled reports whether a mark stands on the drawing itself, on a label.
func labelled(sheets []*written, mark piece.Mark) bool {
	for _, w := range sheets {
		for _, x := range w.words {
			if x.text == string(mark) && x.inside("label") && !x.inside("legend") {
				return true
			}
		}
	}
	return false
}

// cut is what a cut list has to say of one mark.
type cut struct {
	where string // id of its sheets
	head  string // of the table
	mark  piece.Mark
	name  string
	count int
	to    string
	label piece.Mark // on the drawing; empty for what lies behind another piece or is told by its wall
}

// cuts returns what is to be cut in a room, told by the result alone.
func (s subject) cuts() []cut {
	show := s.result.Room.Show
	by := func(w, h geom.Length) string { return show.Figure(w) + " × " + show.Figure(h) }
	var out []cut
	add := func(c cut) {
		for i := range out {
			if out[i].where == c.where && out[i].mark == c.mark {
				out[i].count++
				if out[i].to != c.to || out[i].name != c.name {
					out[i].to += ", " + c.to // two pieces that differ share a mark: no list can say it
				}
				return
			}
		}
		c.count = 1
		out = append(out, c)
	}
	for _, w := range s.result.Walls {
		for _, m := range w.Members {
			label := m.Mark
			if m.Depth > 0 {
				label = ""
			}
			if m.State == piece.New {
				add(cut{"wall-" + strings.ToLower(w.Name), "Pieces on this sheet", m.Mark, m.Name, 0, show.Figure(m.Length), label})
			}
		}
	}
	for _, b := range s.result.Boards {
		for _, sh := range b.Sheets {
			to := "whole"
			if sh.CutW || sh.CutH {
				to = by(sh.Box.W(), sh.Box.H())
			}
			add(cut{"boards-" + strings.ToLower(s.result.Room.Walls[b.Wall].Name), "Boards on this sheet", sh.Mark, "", 0, to, sh.Mark})
		}
	}
	if c := s.result.Ceiling; c != nil {
		for _, p := range c.Pieces {
			to, label := show.Figure(p.Length), p.Mark
			if run, _, stick := strings.Cut(string(p.Mark), "-"); stick {
				label = piece.Mark(run) // a stick of a main tee: it or its run bears the label
			}
			if slices.ContainsFunc(c.Angles, func(a ceiling.Angle) bool { return a.Mark == p.Mark }) {
				label = ""
			}
			for _, cell := range c.Cells {
				if cell.Mark == p.Mark {
					to = by(cell.CutW, cell.CutH)
				}
			}
			for _, l := range c.Lights {
				if l.Mark == p.Mark {
					to = by(l.Box.W(), l.Box.H())
				}
			}
			add(cut{"ceiling", "Pieces on this sheet", p.Mark, p.Name, 0, to, label})
		}
	}
	return out
}

// TestEveryNewPieceIsOnItsSheet finds every mark to be cut on a label of the
// drawing of its wall or ceiling, and its count and length in the table of one
// of the sheets of that wall or ceiling.
func TestEveryNewPieceIsOnItsSheet(t *testing.T) {
	n := 0
	for _, s := range rooms(t) {
		for _, c := range s.cuts() {
			n += c.count
			sheets := s.about(c.where)
			if c.label != "" && !labelled(sheets, c.label) && !labelled(sheets, c.mark) {
				t.Errorf("%s, %s: no label %s (%s)", s.name, c.where, c.label, c.name)
			}
			var rows [][]string
			for _, row := range table(sheets, c.head) {
				if row[0] == string(c.mark) {
					rows = append(rows, row)
				}
			}
			if len(rows) != 1 || len(rows[0]) < 4 {
				t.Errorf("%s, %s: the lists have %q for %s (%s)", s.name, c.where, rows, c.mark, c.name)
				continue
			}
			row := rows[0]
			if got := row[len(row)-1]; got != c.to {
				t.Errorf("%s, %s: the list cuts %s (%s) to %q, the result to %q", s.name, c.where, c.mark, c.name, got, c.to)
			}
			if !slices.Contains(row[2:len(row)-1], fmt.Sprint(c.count)) {
				t.Errorf("%s, %s: the list says %q of %s (%s), there are %d", s.name, c.where, row, c.mark, c.name, c.count)
			}
			if !strings.HasPrefix(row[1], c.name) && !strings.HasPrefix(c.name, row[1]) {
				t.Errorf("%s, %s: the list calls %s %q, the result %q", s.name, c.where, c.mark, row[1], c.name)
			}
		}
	}
	if want := least(400); n < want {
		t.Errorf("%d new pieces looked for, want at least %d", n, want)
	}
}

// rung is one line of a height ladder as it stands on a sheet.
type rung struct {
	word, figure string
	y            geom.Length // of its dot, on paper
}

// ladder reads the height ladder of a sheet, from the floor up.
func (w *written) ladder() (out []rung, err error) {
	for _, row := range w.rows(func(x word) bool { return x.inside("heights") }) {
		if len(row) != 2 {
			return nil, fmt.Errorf("a height without figure or without word: %v", row)
		}
		out = append([]rung{{word: row[0].text, figure: row[1].text}}, out...)
	}
	var dots []geom.Length
	for _, k := range w.strokes {
		// Dots are 1 mm across and the ring at the floor 1.9; nothing else is as high as wide.
		if h := k.mid.H(); within(k.in, "heights") && h == k.mid.W() && h >= geom.Millimetre/2 && h <= 2*geom.Millimetre {
			dots = append(dots, k.mid.Mid().Y)
		}
	}
	slices.Sort(dots)
	if len(dots) != len(out) {
		return nil, fmt.Errorf("%d heights and %d dots", len(out), len(dots))
	}
	for i := range out {
		out[i].y = dots[i]
	}
	return out, nil
}

// wallOf returns the index of the wall whose sheet with the given prefix has
// the id, -1 when it is no such sheet.
func (s subject) wallOf(prefix, id string) int {
	return slices.IndexFunc(s.result.Room.Walls, func(w model.Wall) bool { return id == prefix+strings.ToLower(w.Name) })
}

// TestHeightsAreTrue reads the ladder of every elevation and board layout: the
// heights of saw cuts, headers, sills and boards are those of the result, and
// every dot stands at its figure's height on paper.
func TestHeightsAreTrue(t *testing.T) {
	n := 0
	for _, s := range rooms(t) {
		show := s.result.Room.Show
		for i, sh := range s.set.Sheets {
			elevation, boards := s.wallOf("wall-", sh.ID), s.wallOf("boards-", sh.ID)
			if elevation < 0 && boards < 0 {
				continue
			}
			rungs, err := s.paper[i].ladder()
			if err != nil || len(rungs) < 2 {
				t.Errorf("%s, %s: a ladder of %d: %v", s.name, sh.ID, len(rungs), err)
				continue
			}
			for _, r := range rungs {
				h, err := measure.Parse(r.figure, s.bare())
				if err != nil {
					t.Errorf("%s, %s: height %q: %v", s.name, sh.ID, r.figure, err)
					continue
				}
				n++
				off := (r.y-rungs[0].y)*geom.Length(sh.Scale.Ratio) - h
				if most := 3*hundredth*geom.Length(sh.Scale.Ratio) + show.To/2; off.Abs() > most {
					t.Errorf("%s, %s: %s at %s stands %v mm off", s.name, sh.ID, r.word, r.figure, off.Millimetres())
				}
			}
			has := func(what string, h geom.Length) {
				if !slices.ContainsFunc(rungs, func(r rung) bool { return strings.Contains(r.word, what) && r.figure == show.Figure(h) }) {
					t.Errorf("%s, %s: no height %q of %s", s.name, sh.ID, what, show.Figure(h))
				}
			}
			if elevation >= 0 {
				for _, o := range s.result.Walls[elevation].Openings {
					has("under header", o.Header.Min.Y)
					if !o.Sill.Empty() {
						has("on rough sill", o.Sill.Max.Y)
					}
					for _, c := range o.Cuts {
						if c.Upper {
							has("upper saw cut", c.Height)
						} else {
							has("lower saw cut", c.Height)
						}
					}
				}
				continue
			}
			for _, b := range s.result.Boards {
				if b.Wall == boards {
					has("board top", b.Box.Max.Y)
					has("board bottom", b.Box.Min.Y)
				}
			}
		}
	}
	if want := least(150); n < want {
		t.Errorf("%d heights read, want at least %d", n, want)
	}
}

// TestRunningMarksAreTrue finds every upright of a stud wall, and every edge
// and seam of a row of boards, on the strip under its drawing.
func TestRunningMarksAreTrue(t *testing.T) {
	n := 0
	for _, s := range rooms(t) {
		show := s.result.Room.Show
		strip := func(id string) map[string]bool {
			out := map[string]bool{}
			for _, w := range s.about(id) {
				for _, x := range w.words {
					if x.turned && x.inside("stick") {
						out[x.text] = true
					}
				}
			}
			return out
		}
		for _, w := range s.result.Walls {
			figures := strip("wall-" + strings.ToLower(w.Name))
			for _, u := range w.Studs {
				n++
				if !figures[show.Figure(u.Left)] {
					t.Errorf("%s, wall %s: no running mark %s for the upright there", s.name, w.Name, show.Figure(u.Left))
				}
			}
		}
		for _, b := range s.result.Boards {
			side := s.result.Plan.Sides[b.Wall]
			figures := strip("boards-" + strings.ToLower(side.Wall))
			for _, m := range b.Seams {
				n++
				if at := show.Figure(m.X - side.LeftOff); !figures[at] {
					t.Errorf("%s, boards %s: no running mark %s for the seam or end there", s.name, b.Name, at)
				}
			}
		}
	}
	if want := least(300); n < want {
		t.Errorf("%d running marks looked for, want at least %d", n, want)
	}
}

// TestSheetsAreNumbered finds the number of every sheet, and how many there are.
func TestSheetsAreNumbered(t *testing.T) {
	for _, s := range rooms(t) {
		for i, w := range s.paper {
			var said []string
			for _, x := range w.words {
				if x.inside("sheet-number") {
					said = append(said, x.text)
				}
			}
			if !slices.Contains(said, fmt.Sprint(i+1)) || !slices.Contains(said, fmt.Sprintf("of %d", len(s.paper))) {
				t.Errorf("%s, %s: sheet %d of %d says %q", s.name, w.name, i+1, len(s.paper), said)
			}
		}
	}
}
