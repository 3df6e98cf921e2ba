package svg

import (
	"encoding/base64"
	"fmt"
	"strings"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// css returns the style sheet: pens, fills and fonts.
func (p page) css(w, h int) string {
	ink := accent
	if p.plain {
		ink = "#000"
	}
	var b strings.Builder
	fmt.Fprintf(&b, "@page{size:%smm %smm;margin:0}\n", hundredths(w), hundredths(h))
	regular, bold := p.weights()
	if regular {
		face(&b, false, 400)
	}
	if bold {
		face(&b, true, 700)
	}
	fmt.Fprintf(&b, "text{font-family:%q,\"DejaVu Sans Condensed\",\"DejaVu Sans\",sans-serif;font-stretch:condensed;"+
		"font-weight:400;font-kerning:none;font-variant-ligatures:none;white-space:pre;fill:#000}\n", lettering.Family)
	fmt.Fprintf(&b, "text.b{font-weight:700}text.x{fill:%s}\n", ink)
	b.WriteString("line,path,circle{fill:none;stroke:#000;stroke-linecap:butt;stroke-linejoin:miter}\n")
	for _, pen := range []drawing.Pen{drawing.P13, drawing.P18, drawing.P25, drawing.P35, drawing.P50, drawing.P70, drawing.P100} {
		fmt.Fprintf(&b, ".p%d{stroke-width:%d}", int(pen), int(pen))
	}
	fmt.Fprintf(&b, "\nline.x,path.x,circle.x{stroke:%s}\npath.w{fill:#fff;stroke:none}path.k{fill:#000;stroke:none}path.a{fill:%s;stroke:none}", ink, ink)
	return b.String()
}

// face writes an embedded font.
func face(b *strings.Builder, bold bool, weight int) {
	fmt.Fprintf(b, "@font-face{font-family:%q;font-weight:%d;src:url(data:font/ttf;base64,%s) format(\"truetype\")}\n",
		lettering.Family, weight, base64.StdEncoding.EncodeToString(lettering.Font(bold)))
}

// weights reports which weights the page uses.
func (p page) weights() (regular, bold bool) {
	drawing.Walk(p.elements, true, func(e drawing.Element) {
		if t, ok := e.(drawing.Text); ok && t.String != "" {
			regular, bold = regular || !t.Bold, bold || t.Bold
		}
	})
	return regular, bold
}

// fontSize prints the font size of a cap height, to a tenth of a hundredth.
func fontSize(size paper.Length) string {
	return trim(float64(size) * 1000 / lettering.CapShare / float64(unit))
}

// text draws a line of text; every run of it stands at its own place from the
// start, so that the whole is as wide as it was measured.
func (w writer) text(t drawing.Text) {
	t.String = oneLine(t.String)
	runs := lettering.Set(t.String, t.Cap, t.Bold)
	if len(runs) == 0 || t.Cap <= 0 {
		return
	}
	back := geom.Length(0)
	switch wide := geom.Length(lettering.Width(t.String, t.Cap, t.Bold)); t.Anchor {
	case drawing.Middle:
		back = wide / 2
	case drawing.End:
		back = wide
	}
	attr := []string{`xml:space="preserve"`, `font-size="` + fontSize(t.Cap) + `"`}
	if c := textClass(t); c != "" {
		attr = append(attr, `class="`+c+`"`)
	}
	at := geom.Pt(t.At.X-back, t.At.Y)
	if t.Turned {
		at = geom.Pt(t.At.X, t.At.Y-back)
		attr = append(attr, fmt.Sprintf(`transform="rotate(-90 %s)"`, w.pt(at)))
	}
	x, y := w.x(at.X), w.y(at.Y)
	if len(runs) == 1 {
		w.canvas.Text(x, y, t.String, attr...)
		return
	}
	w.canvas.Textspan(x, y, "", attr...)
	raised := 0
	for i, r := range runs {
		span := []string{fmt.Sprintf(`x="%d"`, x+units(geom.Length(r.At)))}
		if up := units(geom.Length(r.Raise)); up != raised {
			span = append(span, fmt.Sprintf(`dy="%d"`, raised-up))
			raised = up
		}
		if r.Cap != t.Cap {
			span = append(span, `font-size="`+fontSize(r.Cap)+`"`)
		}
		if i == 0 && len(span) == 1 {
			w.canvas.Span(r.Text)
			continue
		}
		w.canvas.Span(r.Text, span...)
	}
	w.canvas.TextEnd()
}

// textClass returns the classes of a text.
func textClass(t drawing.Text) string {
	var c []string
	if t.Bold {
		c = append(c, "b")
	}
	if t.Accent {
		c = append(c, "x")
	}
	return strings.Join(c, " ")
}
