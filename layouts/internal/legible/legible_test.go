package legible

import (
	"testing"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

func TestFaults(t *testing.T) {
	mm := func(x, y int64) geom.Point { return geom.Pt(geom.MM(x), geom.MM(y)) }
	word := func(x, y int64) drawing.Element {
		return drawing.Text{At: mm(x, y), String: "word", Cap: paper.MM(2.4)}
	}
	line := func(x1, y1, x2, y2 int64) drawing.Element {
		return drawing.Line{Style: drawing.Style{Pen: drawing.P18}, A: mm(x1, y1), B: mm(x2, y2)}
	}
	white := drawing.Area{Fill: drawing.White, Outline: geom.RectOf(geom.MM(-1), geom.MM(-2), geom.MM(20), geom.MM(5)).Polygon()}
	for _, c := range []struct {
		name string
		e    []drawing.Element
		want int
	}{
		{"nothing", nil, 0},
		{"apart", []drawing.Element{word(0, 0), word(0, 10), line(0, 5, 20, 5)}, 0},
		{"text on text", []drawing.Element{word(0, 0), word(1, 1)}, 1},
		{"line through text", []drawing.Element{word(0, 0), line(-5, 1, 20, 1)}, 1},
		{"slanting line through text", []drawing.Element{word(0, 0), line(2, -5, 3, 8)}, 1},
		{"line hidden before the text", []drawing.Element{line(-5, 1, 20, 1), white, word(0, 0)}, 0},
		{"line drawn after the white", []drawing.Element{white, line(-5, 1, 20, 1), word(0, 0)}, 1},
		{"text covered", []drawing.Element{word(0, 0), white}, 1},
		{"dimension line covered", []drawing.Element{drawing.Line{Style: drawing.Style{Layer: drawing.Dims, Pen: drawing.P18}, A: mm(-5, 0), B: mm(30, 0)}, white}, 1},
		{"a label's own line", []drawing.Element{drawing.Group{ID: "label-a1", Elements: []drawing.Element{word(0, 0), line(-5, 1, 20, 1)}}}, 0},
		{"another's label", []drawing.Element{drawing.Group{ID: "label-a1", Elements: []drawing.Element{word(0, 0)}}, line(-5, 1, 20, 1)}, 1},
	} {
		if got := Faults(c.e, paper.Full()); len(got) != c.want {
			t.Errorf("%s: %d faults %v, want %d", c.name, len(got), got, c.want)
		}
	}
}
