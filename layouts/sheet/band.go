package sheet

import (
	"strings"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// form is the division of one paper size: margins, the foot rule, the band.
type form struct {
	size        paper.Size
	left, right geom.Length // margins; the left one is wider, for holes
	top         geom.Length // where titles begin
	base        geom.Length // foot rule
	bottom      geom.Length // lowest place above the band
	kind        bandKind
}

// bandKind is how the title band is parted.
type bandKind int

const (
	wideBand   bandKind = iota // six columns
	mediumBand                 // five columns, closer rows
	narrowBand                 // two storeys
)

// formOf parts a paper size.
func formOf(size paper.Size) form {
	w, h := geom.Length(size.W), geom.Length(size.H)
	f := form{size: size, left: mm(20), right: w - mm(12), top: h - mm(16.2), base: mm(37), kind: wideBand}
	switch {
	case w < mm(240):
		f.kind, f.base, f.top = narrowBand, mm(55), h-mm(13)
	case w < mm(380):
		f.kind, f.top = mediumBand, h-mm(13)
	}
	f.bottom = f.base + mm(7)
	return f
}

func (f form) wide() geom.Length { return f.right - f.left }

// field is one line of the band: a word and what it says.
type field struct {
	label, value string
}

// open returns the value, or the word that stands for none.
func (f field) open() string {
	if f.value == "" {
		return "open"
	}
	return f.value
}

// scales is what the band says about the scales of a sheet.
type scales struct{ main, section string }

// written returns a scale as written on the sheet: with its ratio when the
// name does not give it.
func written(s paper.Scale) string {
	if ratio := ratioOf(s); ratio != s.Name {
		return s.Name + "  (" + ratio + ")"
	}
	return s.Name
}

// band returns the title band of a sheet.
func (b Band) draw(f form, s scales) ([]drawing.Element, late) {
	elements := []drawing.Element{rule(drawing.TitleBlock, f.left, f.right, f.base, drawing.P70)}
	p := press{base: f.base}
	switch f.kind {
	case wideBand:
		p.wide(b, f, s)
	case mediumBand:
		p.medium(b, f, s)
	case narrowBand:
		p.narrow(b, f, s)
	}
	return append(elements, drawing.Group{ID: "title-block", Title: "Title block", Elements: p.elements}), p.late
}

// press sets the texts of a band; baselines run down from the rule.
type press struct {
	base     geom.Length
	elements []drawing.Element
	late     late
}

// put sets one line with its baseline down below the rule.
func (p *press) put(x, down geom.Length, s string, cap paper.Length, bold bool) {
	if s == "" {
		return
	}
	t := words(x, p.base-down, s, cap, bold)
	t.Layer = drawing.TitleBlock
	p.elements = append(p.elements, t)
}

// fit sets a text in at most so many lines, the last of them at down.
func (p *press) fit(x, down geom.Length, s string, bold bool, w geom.Length, lines int, sizes ...paper.Length) geom.Length {
	if s == "" {
		return 0
	}
	got, cap := fit(s, bold, w, lines, sizes...)
	right := geom.Length(0)
	for i, line := range got {
		p.put(x, down-geom.Length(cap)*16/10*geom.Length(len(got)-1-i), line, cap, bold)
		right = max(right, width(line, cap, bold))
	}
	return right
}

// upright parts two columns.
func (p *press) upright(x, from, to geom.Length) {
	p.elements = append(p.elements, drawing.Line{
		Style: drawing.Style{Layer: drawing.TitleBlock, Pen: drawing.P18},
		A:     geom.Pt(x, p.base-from), B: geom.Pt(x, p.base-to),
	})
}

// rows sets fields under each other, values at a tab.
func (p *press) rows(x, down, step, tab, w geom.Length, fields []field) {
	for i, f := range fields {
		y := down + step*geom.Length(i)
		p.put(x, y, shorten(f.label, capWords, false, tab-mm(1)), capWords, false)
		if f.label == "number" {
			p.late.numberAt, p.late.numberW, p.late.number = geom.Pt(x+tab, p.base-y), w-tab, f.value
			continue
		}
		lines := []string{shorten(f.open(), capWords, false, w-tab)}
		if f.label == fileWord && i == len(fields)-1 {
			lines = fileName(f.open(), w-tab)
		}
		for k, line := range lines {
			p.put(x+tab, y+mm(4.2)*geom.Length(k), line, capWords, false)
		}
	}
}

func (b Band) people() []field {
	return []field{{"drawn by", b.DrawnBy}, {"approved by", b.Approved}, {"owner", b.Owner}, {"status", b.Status}}
}

func (b Band) papers() []field {
	return []field{{"date", b.Date}, {"revision", b.Revision}, {"number", b.Number}, {fileWord, b.File}}
}

// fileWord is the word before the name of the room file.
const fileWord = "file"

// fileName breaks the name of a file into two lines at most, where it can
// after a hyphen, a dot, a line or a blank.
func fileName(s string, w geom.Length) []string {
	if width(s, capWords, false) <= w {
		return []string{s}
	}
	runes := []rune(s)
	n := len(runes)
	for n > 1 && width(string(runes[:n]), capWords, false) > w {
		n--
	}
	if k := strings.LastIndexAny(string(runes[:n]), "-._ "); k > 0 {
		n = len([]rune(string(runes[:n])[:k])) + 1
	}
	return []string{string(runes[:n]), shorten(string(runes[n:]), capWords, false, w)}
}

// big sets what the sheet is about, in two lines when one is too long even
// small.
func (p *press) big(x, down geom.Length, s string, w geom.Length) geom.Length {
	for _, cap := range []paper.Length{capAbout, capMM(7), capMM(5.5)} {
		if width(s, cap, true) <= w {
			return p.fit(x, down, s, true, w, 1, cap)
		}
	}
	return p.fit(x, down, s, true, w, 2, capTitle)
}

// project sets the project and the room on one line.
func (p *press) project(b Band, x, down, w geom.Length) {
	both := width(b.Project, capHeading, true) + mm(2.6) + width(b.Room, capHeading, false)
	sizes := []paper.Length{capHeading, capWords}
	if both > w {
		sizes = sizes[1:]
	}
	got, cap := fit(b.Project, true, w, 1, sizes...)
	p.put(x, down, got[0], cap, true)
	used := width(got[0], cap, true) + mm(2.6)
	if room := shorten(b.Room, cap, false, w-used); w-used > mm(12) {
		p.put(x+used, down, room, cap, false)
	}
}

func (p *press) wide(b Band, f form, s scales) {
	edges := []geom.Length{f.right - mm(277.8), f.right - mm(207.8), f.right - mm(142.8), f.right - mm(87.8), f.right - mm(40)}
	for _, x := range edges {
		p.upright(x, mm(2.6), mm(25))
	}
	w := edges[0] - mm(4) - f.left
	big := p.big(f.left, mm(14.5), b.Big, w*6/10)
	x := f.left + big + mm(5.4)
	title, cap := fit(b.Title, true, w-big-mm(5.4), 2, capTitle, capKey, capHeading)
	for i, line := range title {
		p.put(x, mm(7.6)+geom.Length(cap)*15/10*geom.Length(i), line, cap, true)
	}
	if len(title) == 1 {
		p.fit(x, mm(14.4), b.Subtitle, false, w-big-mm(5.4), 1, capHeading, capWords)
	}
	p.project(b, f.left, mm(23.2), w)

	at := func(i int) geom.Length { return edges[i] + mm(4) }
	span := func(i int) geom.Length { return edges[i+1] - edges[i] - mm(6) }
	p.put(at(0), mm(5.4), "scale", capWords, false)
	p.fit(at(0), mm(10.5), s.main, true, span(0), 1, capKey, capHeading, capWords)
	tech := []field{{"units", b.Units}}
	if s.section != "" {
		tech = []field{{"section", s.section}, {"units", b.Units}}
	}
	p.rows(at(0), mm(15.6), mm(5), mm(21.5), span(0), tech)
	p.put(at(1), mm(5.4), shorten(b.DatumWord, capWords, false, span(1)), capWords, false)
	p.fit(at(1), mm(10.5), b.Datum, true, span(1), 1, capKey, capHeading, capWords)
	p.rows(at(1), mm(15.6), mm(5), mm(21.5), span(1), []field{{"measured to", b.MeasuredTo}, {"kind", b.Kind}})
	p.rows(at(2), mm(5.4), mm(5), mm(21.5), span(2), b.people())
	p.rows(at(3), mm(5.4), mm(5), mm(17), span(3), b.papers())
	p.late.corner = geom.RectOf(at(4), p.base-mm(24.8), f.right, p.base-mm(5.4))
}

// technical is the fields about the drawing, for the closer bands.
func (b Band) technical(s scales) []field {
	list := []field{{"scale", s.main}}
	if s.section != "" {
		list = append(list, field{"section", s.section})
	}
	return append(list, field{"units", b.Units}, field{b.DatumWord, b.Datum}, field{"measured to", b.MeasuredTo})
}

// about sets the name, the title and the project in a column w wide.
func (p *press) about(b Band, x, w geom.Length) {
	big := p.big(x, mm(12), b.Big, w)
	if left := w - big - mm(4); left >= mm(22) {
		lines, cap := fit(b.Subtitle, false, left, 2, capWords)
		for i, line := range lines {
			p.put(x+big+mm(4), mm(12)-pitch*geom.Length(len(lines)-1-i), line, cap, false)
		}
	}
	p.fit(x, mm(18.7), b.Title, true, w, 1, capKey, capHeading, capWords)
	p.project(b, x, mm(24.6), w)
}

func (p *press) medium(b Band, f form, s scales) {
	edges := []geom.Length{f.right - mm(167), f.right - mm(110), f.right - mm(61), f.right - mm(25)}
	for _, x := range edges {
		p.upright(x, mm(2.6), mm(25))
	}
	p.about(b, f.left, edges[0]-mm(3)-f.left)
	const from, step = 52 * geom.Length(tenth), 47 * geom.Length(tenth)
	at := func(i int) geom.Length { return edges[i] + mm(3) }
	span := func(i int) geom.Length { return edges[i+1] - edges[i] - mm(4) }
	tech := b.technical(s)
	p.rows(at(0), from, step, mm(21), span(0), tech)
	p.rows(at(1), from, step, mm(20), span(1), append([]field{{"kind", b.Kind}}, b.people()...))
	p.rows(at(2), from, step, mm(14), span(2), b.papers())
	p.late.corner = geom.RectOf(at(3), p.base-mm(24.8), f.right, p.base-from)
}

func (p *press) narrow(b Band, f form, s scales) {
	// Upper storey: what the sheet is about.
	w := f.wide()
	big := p.big(f.left, mm(12.5), b.Big, w*6/10)
	x, left := f.left+big+mm(5), w-big-mm(5)
	p.fit(x, mm(7), b.Title, true, left, 1, capTitle, capKey, capHeading, capWords)
	p.fit(x, mm(12.5), b.Subtitle, false, left, 1, capHeading, capWords)
	p.project(b, f.left, mm(18.6), w)
	// Lower storey: the fields.
	edges := []geom.Length{f.left - mm(3), f.left + mm(56), f.left + mm(106), f.right - mm(29)}
	for _, x := range edges[1:] {
		p.upright(x, mm(21.6), mm(43))
	}
	const from, step = 245 * geom.Length(tenth), 45 * geom.Length(tenth)
	at := func(i int) geom.Length { return edges[i] + mm(3) }
	span := func(i int) geom.Length { return edges[i+1] - edges[i] - mm(4) }
	p.rows(at(0), from, step, mm(20.5), span(0), b.technical(s))
	p.rows(at(1), from, step, mm(20), span(1), append([]field{{"kind", b.Kind}}, b.people()...))
	p.rows(at(2), from, step, mm(14.5), span(2), b.papers())
	p.late.corner = geom.RectOf(at(3), p.base-mm(42.8), f.right, p.base-from)
}

// capMM returns so many millimetres of paper as a cap height.
func capMM(v float64) paper.Length { return paper.MM(v) }
