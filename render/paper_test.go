package render_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
	"roomwright/render"
)

// word is one text of a written sheet, the runs of its fractions joined.
type word struct {
	text   string
	at     geom.Point // start of the baseline
	box    geom.Rect  // as wide as the fonts say
	in     []string   // ids of the groups round it, outermost first
	cap    paper.Length
	bold   bool
	turned bool
}

// inside reports whether the text stands in a group whose id holds name: ids
// are words joined by hyphens.
func (w word) inside(name string) bool { return within(w.in, name) }

func within(ids []string, name string) bool {
	for _, id := range ids {
		if strings.Contains("-"+id+"-", "-"+name+"-") {
			return true
		}
	}
	return false
}

// stroke is what a line, path or circle of a written sheet covers.
type stroke struct {
	box geom.Rect // with half the pen
	mid geom.Rect // without
	in  []string
	pen int // hundredths of a millimetre, 0 for an area
}

// written is a sheet as another program would read it, in paper lengths with
// the origin at the bottom left.
type written struct {
	name    string
	w, h    geom.Length
	title   string
	desc    string
	words   []word
	strokes []stroke
	groups  map[string]string // id to title
}

// hundredth is the unit of the view box.
const hundredth = geom.Millimetre / 100

// svgReader reads one file.
type svgReader struct {
	out *written
	in  []string
	now *word
}

// sheetOf reads a written sheet back, from nothing but its bytes.
func sheetOf(f render.File) (*written, error) {
	r := svgReader{out: &written{name: f.Name, groups: map[string]string{}}}
	d := xml.NewDecoder(bytes.NewReader(f.Bytes))
	var path []string
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return r.out, nil
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", f.Name, err)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			path = append(path, tok.Name.Local)
			if err := r.start(tok); err != nil {
				return nil, fmt.Errorf("%s: %s: %w", f.Name, tok.Name.Local, err)
			}
		case xml.CharData:
			r.chars(path, string(tok))
		case xml.EndElement:
			path = path[:len(path)-1]
			r.end(tok.Name.Local)
		}
	}
}

// attrs returns the attributes of an element, and a reader of its numbers.
func attrs(e xml.StartElement) (map[string]string, func(string) float64) {
	m := map[string]string{}
	for _, a := range e.Attr {
		m[a.Name.Local] = a.Value
	}
	return m, func(name string) float64 {
		v, err := strconv.ParseFloat(m[name], 64)
		if err != nil {
			return math.NaN()
		}
		return v
	}
}

func (r *svgReader) pt(x, y float64) geom.Point {
	return geom.Pt(geom.Length(math.Round(x*float64(hundredth))), r.out.h-geom.Length(math.Round(y*float64(hundredth))))
}

func (r *svgReader) start(e xml.StartElement) error {
	a, num := attrs(e)
	switch e.Name.Local {
	case "svg":
		return r.size(a)
	case "g":
		r.in = append(r.in, a["id"])
	case "text":
		w := word{at: r.pt(num("x"), num("y")), in: append([]string(nil), r.in...), bold: strings.Contains(a["class"], "b")}
		w.turned = strings.HasPrefix(a["transform"], "rotate(-90 ")
		if a["transform"] != "" && a["transform"] != fmt.Sprintf("rotate(-90 %s %s)", a["x"], a["y"]) {
			return fmt.Errorf("transform %q", a["transform"])
		}
		w.cap = paper.Length(math.Round(num("font-size") * lettering.CapShare / 1000 * float64(hundredth)))
		r.now = &w
	case "line":
		r.stroke(a, r.pt(num("x1"), num("y1")), r.pt(num("x2"), num("y2")))
	case "circle":
		m, rad := r.pt(num("cx"), num("cy")), geom.Length(math.Round(num("r")*float64(hundredth)))
		r.stroke(a, m.Sub(geom.Pt(rad, rad)), m.Add(geom.Pt(rad, rad)))
	case "path":
		points, err := r.path(a["d"])
		if err != nil {
			return err
		}
		r.stroke(a, points...)
	case "rect", "title", "desc", "style", "tspan":
	default:
		return errors.New("an element that sheets do not have")
	}
	return nil
}

// size reads width, height and view box, which have to agree.
func (r *svgReader) size(a map[string]string) error {
	var w, h int64
	if _, err := fmt.Sscanf(a["viewBox"], "0 0 %d %d", &w, &h); err != nil {
		return fmt.Errorf("view box %q", a["viewBox"])
	}
	r.out.w, r.out.h = geom.Length(w)*hundredth, geom.Length(h)*hundredth
	for _, side := range []struct {
		said string
		want float64
	}{{a["width"], float64(w) / 100}, {a["height"], float64(h) / 100}} {
		mm, ok := strings.CutSuffix(side.said, "mm")
		v, err := strconv.ParseFloat(mm, 64)
		if !ok || err != nil || math.Abs(v-side.want) > 1e-9 {
			return fmt.Errorf("size %q against a view box of %v mm", side.said, side.want)
		}
	}
	return nil
}

// path returns the points of path data; an arc counts by its ends.
func (r *svgReader) path(d string) ([]geom.Point, error) {
	var out []geom.Point
	for _, part := range strings.FieldsFunc(strings.TrimSuffix(d, "Z"), func(c rune) bool { return c == 'M' || c == 'L' || c == 'A' }) {
		f := strings.Fields(part)
		if len(f) != 2 && len(f) != 7 {
			return nil, fmt.Errorf("path data %q", part)
		}
		x, err1 := strconv.ParseFloat(f[len(f)-2], 64)
		y, err2 := strconv.ParseFloat(f[len(f)-1], 64)
		if err := errors.Join(err1, err2); err != nil {
			return nil, err
		}
		out = append(out, r.pt(x, y))
	}
	return out, nil
}

func (r *svgReader) stroke(a map[string]string, points ...geom.Point) {
	pen := 0
	for _, c := range strings.Fields(a["class"]) {
		if n, err := strconv.Atoi(strings.TrimPrefix(c, "p")); err == nil {
			pen = n
		}
	}
	b := geom.Polygon(points).Bounds()
	r.out.strokes = append(r.out.strokes, stroke{
		box: b.Inset(-geom.Length(pen) * hundredth / 2), mid: b, in: append([]string(nil), r.in...), pen: pen,
	})
}

func (r *svgReader) chars(path []string, s string) {
	switch path := strings.Join(path, "/"); {
	case r.now != nil:
		r.now.text += s
	case path == "svg/title":
		r.out.title += s
	case path == "svg/desc":
		r.out.desc += s
	case strings.HasSuffix(path, "g/title") && len(r.in) > 0:
		r.out.groups[r.in[len(r.in)-1]] += s
	}
}

func (r *svgReader) end(name string) {
	switch {
	case name == "g":
		r.in = r.in[:len(r.in)-1]
	case name == "text" && r.now != nil:
		w := r.now
		w.box = drawing.TextBox(drawing.Text{At: w.at, String: w.text, Cap: w.cap, Bold: w.bold, Turned: w.turned}, paper.Full())
		r.out.words = append(r.out.words, *w)
		r.now = nil
	}
}
