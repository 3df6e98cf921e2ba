package svg

import (
	"bytes"
	"errors"
	"fmt"
	"strings"

	svgo "github.com/ajstarks/svgo"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
	"roomwright/layouts/sheet"
)

// unit is a hundredth of a paper millimetre.
const unit = geom.Millimetre / 100

// accent is the one colour beside black and white: oxide red.
const accent = "#9c2a1c"

// page is what a file is made of.
type page struct {
	title, desc string
	size        paper.Size
	elements    []drawing.Element
	plain       bool // accent in black
}

// Write returns a sheet as an SVG file; plain draws the accent in black.
func Write(s sheet.Sheet, plain bool) ([]byte, error) {
	return page{title: s.Title, desc: s.Desc, size: s.Size, elements: s.Elements, plain: plain}.write()
}

// writer draws onto a canvas.
type writer struct {
	canvas *svgo.SVG
	high   geom.Length    // of the sheet, where y is turned over
	ids    map[string]int // how often an id was used
}

func (p page) write() ([]byte, error) {
	w, h := units(geom.Length(p.size.W)), units(geom.Length(p.size.H))
	if w <= 0 || h <= 0 {
		return nil, errors.New("svg: a sheet without size")
	}
	var buf bytes.Buffer
	out := writer{canvas: svgo.New(&buf), high: geom.Length(p.size.H), ids: map[string]int{"sheet-title": 1, "sheet-desc": 1}}
	out.canvas.Startraw(
		fmt.Sprintf(`width="%smm" height="%smm" viewBox="0 0 %d %d"`, hundredths(w), hundredths(h), w, h),
		`role="img" aria-labelledby="sheet-title sheet-desc"`)
	out.words("title", "sheet-title", p.title)
	out.words("desc", "sheet-desc", p.desc)
	out.canvas.Style("text/css", p.css(w, h))
	out.canvas.Rect(0, 0, w, h, `fill="#fff"`)
	out.all(p.elements)
	out.canvas.End()
	return buf.Bytes(), nil
}

// words writes a title or description that the file refers to by id.
func (w writer) words(tag, id, text string) {
	fmt.Fprintf(w.canvas.Writer, `<%s id="%s">`, tag, id)
	w.canvas.Span(oneLine(text)) // escaped
	fmt.Fprintf(w.canvas.Writer, "</%s>\n", tag)
}

// oneLine returns a text without line breaks and tabs, and without the
// characters that turn the direction of writing, so that figures cannot be
// shown backwards.
func oneLine(text string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case strings.ContainsRune("\n\r\t\v\f\u0085\u2028\u2029", r):
			return ' '
		case r >= '\u202a' && r <= '\u202e', r >= '\u2066' && r <= '\u2069', r == '\u200e', r == '\u200f':
			return -1
		}
		return r
	}, text)
}

// units returns a paper length in hundredths of a millimetre.
func units(l geom.Length) int { return int(l.Round(unit) / unit) }

// hundredths prints hundredths as a decimal without trailing zeros.
func hundredths(n int) string {
	text := fmt.Sprintf("%d.%02d", n/100, n%100)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}

// x and y return the coordinates of the file.
func (w writer) x(l geom.Length) int { return units(l) }
func (w writer) y(l geom.Length) int { return units(w.high - l) }

// pt prints a point.
func (w writer) pt(p geom.Point) string { return fmt.Sprintf("%d %d", w.x(p.X), w.y(p.Y)) }

// same reports whether two points fall on one place of the file.
func (w writer) same(a, b geom.Point) bool { return w.x(a.X) == w.x(b.X) && w.y(a.Y) == w.y(b.Y) }

// all draws elements in their order.
func (w writer) all(elements []drawing.Element) {
	for _, e := range elements {
		switch e := e.(type) {
		case drawing.Line:
			w.line(e.Style, e.A, e.B)
		case drawing.Polyline:
			w.polyline(e)
		case drawing.Arc:
			w.arc(e)
		case drawing.Area:
			w.area(e)
		case drawing.Hatch:
			w.hatch(e)
		case drawing.Text:
			w.text(e)
		case drawing.Dimension:
			w.all(e.Picture)
		case drawing.Group:
			w.group(e)
		}
	}
}

// group draws a group with its title.
func (w writer) group(g drawing.Group) {
	if len(g.Elements) == 0 {
		return
	}
	w.canvas.Gid(w.id(g.ID))
	if g.Title != "" {
		w.canvas.Title(oneLine(g.Title))
	}
	w.all(g.Elements)
	w.canvas.Gend()
}

// id returns an id that is used once: lower case letters, digits and hyphens.
func (w writer) id(wanted string) string {
	id := strings.Map(func(r rune) rune {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '-' {
			return r
		}
		return -1
	}, wanted)
	if id == "" || id[0] < 'a' || id[0] > 'z' {
		id = "g" + id
	}
	for {
		w.ids[id]++
		if n := w.ids[id]; n > 1 {
			id = fmt.Sprintf("%s-%d", id, n)
			continue
		}
		return id
	}
}
