package sheet

import (
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

func nails(rows int) table {
	t := table{id: "nails", Table: drawing.Table{Heading: "Nails", Columns: []drawing.Column{{Heading: "joint"}, {Heading: "nails"}}}}
	for range rows {
		t.Rows = append(t.Rows, []string{
			"bottom plate to the stud, jack stud or cripple on it, and to the next one",
			"16d common at 24 in on center, face nailed, not at braced panels of the wall",
		})
	}
	return t
}

// Two columns of words that are alike give way alike.
func TestColumnsGiveWayEvenly(t *testing.T) {
	for _, w := range []geom.Length{mm(60), mm(83), mm(120)} {
		cols := nails(3).columns(w)
		if sum(cols) > w {
			t.Errorf("columns of %v in %v", sum(cols), w)
		}
		if d := (cols[0] - cols[1]).Abs(); d > mm(2) {
			t.Errorf("in %v the columns are %v and %v", w, cols[0], cols[1])
		}
	}
}

// A column of figures keeps its width as long as words can give way.
func TestFiguresAreNotBroken(t *testing.T) {
	long := nails(1)
	long.Columns = append(long.Columns, drawing.Column{Heading: "cut to, in", Right: true, Bold: true})
	long.Rows[0] = append(long.Rows[0], "23 3/4 × 14 1/16")
	natural := long.natural()[2]
	if got := long.columns(mm(90))[2]; got != natural {
		t.Errorf("the figures have %v, want %v", got, natural)
	}
}

func TestPartedTableKeepsEveryRow(t *testing.T) {
	whole := nails(9)
	for h := mm(10); h < mm(200); h += mm(7) {
		head, rest := whole.part(mm(83), h)
		n := 0
		for _, m := range []matter{head, rest} {
			if m != nil {
				n += len(m.(table).Rows)
			}
		}
		if n != 9 {
			t.Errorf("parted at %v there are %d rows, want 9", h, n)
		}
		if head != nil && head.block(mm(83)).h > h {
			t.Errorf("the part for %v is %v high", h, head.block(mm(83)).h)
		}
		if rest != nil && head != nil && !strings.HasSuffix(rest.(table).name(), "continued") {
			t.Errorf("the rest is called %q", rest.(table).name())
		}
	}
}

func TestFoldedTableHasEveryRowOnce(t *testing.T) {
	short := table{id: "pieces", Table: drawing.Table{Heading: "Pieces", Columns: []drawing.Column{{Heading: "mark"}, {Heading: "no.", Right: true}}}}
	for _, r := range []string{"A1", "A2", "A3", "A4", "A5"} {
		short.Rows = append(short.Rows, []string{r, "2"})
	}
	b, one := short.folded(2), short.block(mm(80))
	if b.h >= one.h {
		t.Errorf("folded it is %v high, in one column %v", b.h, one.h)
	}
	if box := drawing.Bounds(b.elements, paper.Full()); box.W() > b.w || -box.Min.Y > b.h {
		t.Errorf("it reaches %v by %v, said %v by %v", box.W(), -box.Min.Y, b.w, b.h)
	}
	count := map[string]int{}
	drawing.Walk(b.elements, true, func(e drawing.Element) {
		if text, ok := e.(drawing.Text); ok {
			count[text.String]++
		}
	})
	for _, r := range short.Rows {
		if count[r[0]] != 1 {
			t.Errorf("row %s stands there %d times", r[0], count[r[0]])
		}
	}
	if count["Pieces"] != 1 {
		t.Errorf("%d headings", count["Pieces"])
	}
}
