package ceiling

import (
	"strconv"
	"strings"

	"roomwright/geom"
)

// grid is one set-out: tee lines both ways, and which of them are main tees.
type grid struct {
	lay   [2]lay
	run   axis // main tees run along it
	every int  // lines from one main to the next, 1 or 2
	first int  // the first line that is a main
}

// square returns the direction square to the mains.
func (g *grid) square() axis { return g.run.other() }

// main reports whether line i of those along the mains is a main.
func (g *grid) main(i int) bool {
	return i >= g.first && i < len(g.lay[g.square()].lines) && (i-g.first)%g.every == 0
}

// mains returns the lines that are mains.
func (g *grid) mains() []int {
	var list []int
	for i := g.first; i < len(g.lay[g.square()].lines); i += g.every {
		list = append(list, i)
	}
	return list
}

// block is whole cells side by side: its first cell, and how many each way.
type block struct{ cell, size [2]int }

// span returns the tee lines that bound b along a.
func (g *grid) span(b block, a axis) geom.Span {
	lines := g.lay[a].lines
	return geom.Span{From: lines[b.cell[a]-1], To: lines[b.cell[a]-1+b.size[a]]}
}

// twice returns twice the middle of b along a.
func (g *grid) twice(b block, a axis) geom.Length {
	s := g.span(b, a)
	return s.From + s.To
}

// box returns b on the page.
func (g *grid) box(b block) geom.Rect {
	x, d := g.span(b, across), g.span(b, down)
	return geom.RectOf(x.From, -d.To, x.To, -d.From)
}

// fits reports whether tees go all round b and no main crosses it.
func (g *grid) fits(b block) bool { return g.fitsAlong(b, across) && g.fitsAlong(b, down) }

// fitsAlong is fits in one direction.
func (g *grid) fitsAlong(b block, a axis) bool {
	first, last := b.cell[a], b.cell[a]+b.size[a]-1
	if !g.lay[a].inner(first) || !g.lay[a].inner(last) {
		return false
	}
	if a != g.square() {
		return true
	}
	for i := first; i < last; i++ {
		if g.main(i) {
			return false
		}
	}
	return true
}

// rowLetters are the letters of the rows: from P on, without I and O.
const rowLetters = "PQRSTUVWXYZ"

// rowName returns the name of a row: P, Q ... Z, then PP, QQ.
func rowName(row int) string {
	return strings.Repeat(rowLetters[row%len(rowLetters):row%len(rowLetters)+1], 1+row/len(rowLetters))
}

// cellName returns the name of a cell, such as "Q2".
func cellName(col, row int) string { return rowName(row) + strconv.Itoa(col+1) }

// cellOf reads the name of a cell.
func cellOf(name string) (col, row int, ok bool) {
	digits := strings.TrimLeft(name, rowLetters)
	letters := name[:len(name)-len(digits)]
	n, err := strconv.Atoi(digits)
	if err != nil || n < 1 || letters == "" || strings.Trim(letters, letters[:1]) != "" {
		return 0, 0, false
	}
	row = strings.Index(rowLetters, letters[:1]) + len(rowLetters)*(len(letters)-1)
	return n - 1, row, true
}

// names returns the names of the cells of b, row by row.
func (b block) names() []string {
	var list []string
	for row := range b.size[down] {
		for col := range b.size[across] {
			list = append(list, cellName(b.cell[across]+col, b.cell[down]+row))
		}
	}
	return list
}
