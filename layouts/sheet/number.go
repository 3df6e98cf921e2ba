package sheet

import (
	"fmt"
	"strconv"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// ratioOf returns the ratio of a scale, "1:24".
func ratioOf(s paper.Scale) string { return "1:" + strconv.FormatInt(s.Ratio, 10) }

// Number returns the sheets numbered from 1 in their order, the number and the
// count printed in the corner of each.
func Number(sheets []Sheet) []Sheet {
	out := make([]Sheet, len(sheets))
	for i, s := range sheets {
		s.Number, s.Of = i+1, len(sheets)
		s.Elements = append(s.Elements[:len(s.Elements):len(s.Elements)], s.late.draw(s.Number, s.Of))
		out[i] = s
	}
	return out
}

// draw returns the sheet number, the count and the number of the document.
func (l late) draw(n, of int) drawing.Group {
	put := func(x, y geom.Length, s string, cap paper.Length, bold bool, a drawing.Anchor) drawing.Text {
		return drawing.Text{Layer: drawing.TitleBlock, At: geom.Pt(x, y), String: s, Cap: cap, Bold: bold, Anchor: a}
	}
	left, bottom, right, top := l.corner.Min.X, l.corner.Min.Y, l.corner.Max.X, l.corner.Max.Y
	count := "of " + strconv.Itoa(of)
	figure := strconv.Itoa(n)
	// The largest size that leaves room for the count beside the number, and
	// for the word above it.
	size := capNumber
	room := right - left - width(count, capWords, false) - mm(2)
	for size > capTitle && (width(figure, size, true) > room ||
		geom.Length(size) > top-bottom || width(figure, size, true) > right-left-width("sheet", capWords, false)-mm(1.5)) {
		size -= 5 * tenth
	}
	number := "open"
	if l.number != "" {
		if number = fmt.Sprintf("%s-%02d", l.number, n); width(number, capWords, false) > l.numberW {
			number = l.number
		}
	}
	return drawing.Group{ID: "sheet-number", Title: fmt.Sprintf("Sheet %d of %d", n, of), Elements: []drawing.Element{
		put(left, top, "sheet", capWords, false, drawing.Start),
		put(left, bottom, count, capWords, false, drawing.Start),
		put(right, bottom, figure, size, true, drawing.End),
		put(l.numberAt.X, l.numberAt.Y, shorten(number, capWords, false, l.numberW), capWords, false, drawing.Start),
	}}
}
