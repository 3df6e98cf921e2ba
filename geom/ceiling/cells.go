package ceiling

import (
	"fmt"
	"strings"

	"roomwright/geom"
	"roomwright/geom/piece"
)

// lines gives the tee lines of the chosen grid.
func (b *builder) lines() {
	g := &b.chosen.grid
	mains := g.square()
	for i, x := range g.lay[across].lines {
		b.out.XLines = append(b.out.XLines, TeeLine{At: x, FromWall: x - b.ground.corner[0].X, Main: mains == across && g.main(i)})
	}
	for i, d := range g.lay[down].lines {
		b.out.YLines = append(b.out.YLines, TeeLine{At: -d, FromWall: d - b.ground.corner[0].Y, Main: mains == down && g.main(i)})
	}
}

// node returns the crossing of line i across and line j down, where the first
// and the last of each are walls.
func (b *builder) node(i, j int) geom.Point {
	x, d := b.chosen.lay[across].lines, b.chosen.lay[down].lines
	wall := func(k int, lines []geom.Length, a axis) int {
		switch k {
		case 0:
			return a.low()
		case len(lines) + 1:
			return a.high()
		}
		return -1
	}
	u, v := wall(i, x, across), wall(j, d, down)
	switch {
	case u >= 0 && v >= 0:
		return b.ground.corner[map[[2]int]int{{3, 0}: 0, {1, 0}: 1, {1, 2}: 2, {3, 2}: 3}[[2]int{u, v}]]
	case u >= 0:
		return geom.Pt(b.ground.face(u, d[j-1]), d[j-1])
	case v >= 0:
		return geom.Pt(x[i-1], b.ground.face(v, x[i-1]))
	}
	return geom.Pt(x[i-1], d[j-1])
}

// cells makes the cells of the grid, and the panels in them.
func (b *builder) cells() {
	x, d := &b.chosen.lay[across], &b.chosen.lay[down]
	lit := map[[2]int]int{}
	for i := range b.out.Lights {
		for _, name := range b.out.Lights[i].Cells {
			col, row, _ := cellOf(name)
			lit[[2]int{col, row}] = i
		}
	}
	panel := b.panelSize()
	for row := range d.cells() {
		for col := range x.cells() {
			p := [4]geom.Point{b.node(col, row), b.node(col+1, row), b.node(col+1, row+1), b.node(col, row+1)}
			c := Cell{Name: cellName(col, row), Row: row, Col: col, Light: -1}
			for _, q := range p {
				c.Shape = append(c.Shape, flip(q))
			}
			top, bottom := p[1].X-p[0].X, p[2].X-p[3].X
			left, right := p[3].Y-p[0].Y, p[2].Y-p[1].Y
			c.Skew = (top-bottom).Abs() > b.step || (left-right).Abs() > b.step
			c.CutW, c.CutH = panel[across], panel[down]
			cut := 0
			if !x.whole(col) {
				cut++
				c.CutW = max(top, bottom) - (x.module - panel[across])
			}
			if !d.whole(row) {
				cut++
				c.CutH = max(left, right) - (d.module - panel[down])
			}
			c.Kind = [...]CellKind{Whole, Border, Corner}[cut]
			if i, ok := lit[[2]int{col, row}]; ok {
				c.Light = i
			}
			b.out.Cells = append(b.out.Cells, c)
		}
	}
	b.markPanels()
}

// markPanels marks the panels: W for whole ones, and one mark for each size of
// cut ones.
func (b *builder) markPanels() {
	x, d := &b.chosen.lay[across], &b.chosen.lay[down]
	var wide, high []*geom.Length
	for i := range b.out.Cells {
		c := &b.out.Cells[i]
		if !c.Skew && !x.whole(c.Col) {
			wide = append(wide, &c.CutW)
		}
		if !c.Skew && !d.whole(c.Row) {
			high = append(high, &c.CutH)
		}
	}
	together(wide, b.alike)
	together(high, b.alike)
	marks := map[string]piece.Mark{}
	for i := range b.out.Cells {
		c := &b.out.Cells[i]
		switch {
		case c.Light >= 0:
			b.out.Panels.Lit++
		case c.Kind == Whole:
			b.out.Panels.Whole++
			c.Mark = "W"
		default:
			b.out.Panels.Cut++
			c.Mark = b.panelMark(c, marks)
		}
	}
}

// panelSize returns the true size of a lay-in panel each way.
func (b *builder) panelSize() [2]geom.Length {
	size := [2]geom.Length{b.panel[0], b.panel[0]}
	size[b.chosen.square()] = b.panel[1]
	return size
}

// panelMark returns the mark of the cut panel in c; marks holds those given.
func (b *builder) panelMark(c *Cell, marks map[string]piece.Mark) piece.Mark {
	key := []string{b.say(c.CutW), b.say(c.CutH)}
	if p := c.Shape; c.Skew {
		for _, side := range []geom.Length{p[1].X - p[0].X, p[1].Y - p[2].Y, p[2].X - p[3].X, p[0].Y - p[3].Y} {
			key = append(key, b.say(side))
		}
	}
	k := strings.Join(key, "|")
	if marks[k] == "" {
		marks[k] = piece.Mark(fmt.Sprintf("N%d", len(marks)+1))
	}
	return marks[k]
}

// angles makes the wall angle along each wall.
func (b *builder) angles() {
	for i, p := range b.outline {
		q := b.outline[(i+1)%len(b.outline)]
		b.out.Angles = append(b.out.Angles, Angle{
			Mark: piece.Mark(fmt.Sprintf("J%d", i+1)), Wall: b.room.Walls[i].Name, From: p, To: q, Length: distance(p, q),
		})
	}
}
