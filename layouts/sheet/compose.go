package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// Compose puts a spec on paper: one sheet, and as many continuation sheets as
// its reading matter needs. It also tells, in words, what could not be done as
// asked; normally nothing.
func Compose(spec Spec) ([]Sheet, []string) {
	c := &composer{spec: spec.clean(), form: formOf(spec.Size)}
	var pages []page
	rest := c.everything()
	if spec.Main != nil {
		pages, rest = c.first()
	} else {
		pages, rest = c.on(rest)
	}
	if rest.any() {
		c.say("some of the reading matter fits no sheet of this size")
	}
	out := make([]Sheet, len(pages))
	for i, p := range pages {
		out[i] = c.sheet(p, i)
	}
	// No sheet is begun for values assumed alone: they are handed back.
	if len(out) > 0 && rest.assumed != nil {
		out[0].Assumed = c.spec.Assumed
	}
	return out, c.said
}

// composer is one spec on its way to paper.
type composer struct {
	spec  Spec
	form  form
	views []view // of the main view, one for each scale tried
	said  []string
	loose bool // lists may be parted between columns and sheets
}

// say notes what could not be done as asked, once.
func (c *composer) say(format string, a ...any) {
	if s := fmt.Sprintf(format, a...); !slices.Contains(c.said, s) {
		c.said = append(c.said, s)
	}
}

// page is one sheet before its title band.
type page struct {
	elements []drawing.Element
	main     *view
	section  paper.Scale // of its sections
	sections int
	text     bool // reading matter besides sections
	parted   bool // cautions go on to the next sheet
	rest     rest
}

// rest is what is still to be put on a sheet.
type rest struct {
	sections []Draw
	matter   []matter
	assumed  matter // goes on to a sheet that there is anyway; nil when placed
}

func (r rest) any() bool { return len(r.sections)+len(r.matter) > 0 }

// size says how much is left, so that progress can be told.
func (r rest) size() geom.Length {
	h := geom.Length(len(r.sections)) * geom.Metre
	for _, m := range r.matter {
		h += m.block(mm(80)).h
	}
	if r.assumed != nil {
		h += r.assumed.block(mm(80)).h
	}
	return h
}

// clean returns the spec with every text fit for one line of a drawing, and
// without empty ones.
func (s Spec) clean() Spec {
	list := func(in []string) []string {
		var whole []string
		for _, t := range in {
			if t = clean(t); t != "" && !slices.Contains(whole, t) {
				whole = append(whole, t)
			}
		}
		return allPieces(whole)
	}
	s.Cautions, s.Warnings = list(s.Cautions), list(s.Warnings)
	s.Remarks, s.Assumed = list(s.Remarks), list(s.Assumed)
	lists := make([]List, 0, len(s.Lists))
	for _, l := range s.Lists {
		if l = (List{clean(l.Heading), list(l.Items)}); len(l.Items) > 0 {
			lists = append(lists, l)
		}
	}
	s.Lists = lists
	b := &s.Band
	for _, t := range []*string{
		&b.Big, &b.Title, &b.Subtitle, &b.Project, &b.Room, &b.Units, &b.DatumWord, &b.Datum, &b.MeasuredTo, &b.Kind,
		&b.DrawnBy, &b.Approved, &b.Owner, &b.Status, &b.Date, &b.Revision, &b.Number, &b.File,
	} {
		*t = clean(*t)
	}
	return s
}

// mainAt returns the main view at a scale, made once.
func (c *composer) mainAt(s paper.Scale) view {
	for _, v := range c.views {
		if v.scale == s {
			return v
		}
	}
	v := viewAt(c.spec.Main, s)
	c.views = append(c.views, v)
	return v
}

// fits reports whether the view fits a field.
func (v view) fits(field geom.Rect) bool { return v.bounds.W() <= field.W() && v.h() <= field.H() }

// largest returns the main view at the largest scale at which it fits.
func (c *composer) largest(field geom.Rect) (view, bool) {
	for _, s := range c.candidates() {
		if v := c.mainAt(s); v.fits(field) {
			return v, true
		}
	}
	return view{}, false
}

// candidates returns the scales to be tried: the one asked for, else the
// standard ones, then smaller and smaller ones so that no view is too large.
func (c *composer) candidates() []paper.Scale {
	var out []paper.Scale
	if c.spec.Fixed != nil {
		out = append(out, *c.spec.Fixed)
	}
	for _, s := range c.spec.Scales {
		if c.spec.Fixed == nil || s.Ratio > c.spec.Fixed.Ratio {
			out = append(out, s)
		}
	}
	return smaller(out)
}

// on arranges the continuation sheets: lists are kept whole, or parted where
// that saves a sheet.
func (c *composer) on(r rest) ([]page, rest) {
	c.loose = false
	pages, left := c.goOn(r)
	if len(pages) < 2 {
		return pages, left
	}
	c.loose = true
	if fewer, none := c.goOn(r); len(fewer) < len(pages) && none.size() <= left.size() {
		return fewer, none
	}
	return pages, left
}

// goOn arranges continuation sheets until nothing is left, or nothing goes on.
func (c *composer) goOn(r rest) ([]page, rest) {
	var pages []page
	for r.any() {
		p := c.more(r)
		if p.rest.size() >= r.size() {
			break
		}
		pages, r = append(pages, p), p.rest
	}
	return pages, r
}

// choice is one way to arrange a spec.
type choice struct {
	pages []page
	rest  rest
}

// better reports whether c is to be preferred to d: more of the pieces marked
// first, then cautions in full, where that costs no more than half as much again in scale, then the larger
// scale, then fewer sheets, then less left over for them.
func (c choice) better(d choice) bool {
	p, q := c.pages[0], d.pages[0]
	if a, b := p.main.plate.Unplaced, q.main.plate.Unplaced; a != b {
		return a < b
	}
	if p.parted != q.parted {
		whole, parted := p.main.scale.Ratio, q.main.scale.Ratio
		if p.parted {
			whole, parted = parted, whole
		}
		return (2*whole <= 3*parted) == q.parted
	}
	return cmp.Or(
		cmp.Compare(p.main.scale.Ratio, q.main.scale.Ratio),
		cmp.Compare(len(c.pages), len(d.pages)),
		cmp.Compare(p.rest.size(), q.rest.size()),
	) < 0
}

// first arranges the sheet with the main view and those that go on from it.
func (c *composer) first() ([]page, rest) {
	var best *choice
	try := func(a arrangement, v view) {
		p := c.pack(a, v)
		more, r := c.on(p.rest)
		if now := (choice{append([]page{p}, more...), r}); best == nil || now.better(*best) {
			best = &now
		}
	}
	for _, a := range c.arrangements() {
		if v, ok := c.largest(a.field); ok {
			try(a, v)
		}
	}
	if best == nil {
		s := c.candidates()
		try(c.arrangements()[0], c.mainAt(s[len(s)-1]))
		c.say("the view %q does not fit %s at any scale", best.pages[0].main.plate.Title, c.spec.Size.Name)
	}
	main := best.pages[0].main
	if f := c.spec.Fixed; f != nil && main.scale.Ratio != f.Ratio {
		c.say("at %s the view %q does not fit %s; drawn at %s", f.Name, main.plate.Title, c.spec.Size.Name, main.scale.Name)
	}
	return best.pages, best.rest
}

// legendOf returns the samples of some plates, each once.
func legendOf(plates ...drawing.Plate) legend {
	var l legend
	for _, p := range plates {
		for _, s := range p.Legend {
			if !slices.ContainsFunc(l.samples, func(t drawing.Sample) bool { return t.Words == s.Words }) {
				l.samples = append(l.samples, s)
			}
		}
	}
	return l
}

// reading returns the reading matter of some plates, in the order in which it
// is read.
func (c *composer) reading(plates ...drawing.Plate) []matter {
	var out []matter
	n := notes{id: "notes", heading: "Notes"}
	for _, p := range plates {
		for i, t := range p.Tables {
			if len(t.Columns) > 0 && len(t.Rows) > 0 {
				out = append(out, table{Table: t, id: fmt.Sprintf("table-%d", i+1)})
			}
		}
		for _, s := range p.Notes {
			if s = clean(s); s != "" && !slices.Contains(n.items, s) {
				n.items = append(n.items, s)
			}
		}
	}
	n.items = allPieces(n.items)
	if len(n.items) > 0 {
		out = append(out, n)
	}
	return out
}

// warned, remarks and assumed return those lists as matter, nil when empty.
func (c *composer) warned() matter {
	if len(c.spec.Warnings) == 0 {
		return nil
	}
	return notes{id: "warnings", heading: "Warnings", items: c.spec.Warnings}
}

func (c *composer) remarks() matter {
	if len(c.spec.Remarks) == 0 {
		return nil
	}
	return notes{id: "remarks", heading: "Found while setting out", items: c.spec.Remarks}
}

func (c *composer) assumed() matter {
	if len(c.spec.Assumed) == 0 {
		return nil
	}
	return notes{id: "assumed", heading: "Assumed values", items: c.spec.Assumed}
}

// everything returns all there is to put for a spec without a main view.
func (c *composer) everything() rest {
	r := rest{sections: c.spec.Sections}
	for _, m := range []matter{c.warned(), c.remarks(), c.assumed()} {
		if m != nil {
			r.matter = append(r.matter, m)
		}
	}
	for _, l := range c.spec.Lists {
		r.matter = append(r.matter, notes{id: "list", heading: l.Heading, items: l.Items})
	}
	return r
}

// sheet puts the band on a page.
func (c *composer) sheet(p page, i int) Sheet {
	b := c.spec.Band
	s := Sheet{ID: c.spec.ID, Size: c.spec.Size, Scale: paper.Full()}
	s.Sections = p.section
	said := scales{main: "no view", section: p.section.Name}
	if p.main != nil {
		if b.Subtitle == "" {
			b.Subtitle = clean(p.main.plate.Subtitle)
		}
		s.Scale = p.main.scale
		said.main = p.main.scale.Name
	} else if p.sections > 0 {
		said = scales{main: p.section.Name}
	}
	title := b.Title
	if i > 0 {
		what := "notes"
		if p.sections > 0 {
			what = "details"
			if p.text {
				what = "details and notes"
			}
		}
		b.Subtitle = what + ", to the sheet before"
		title = what
		s.ID += "-notes"
		if i > 1 {
			s.ID += fmt.Sprintf("-%d", i)
			title = fmt.Sprintf("%s %d", what, i)
		}
	}
	s.Title = b.Big + ", " + lowerFirst(title)
	s.Desc = c.describe(p, said)
	band, late := b.draw(c.form, said)
	s.late = late
	s.Elements = append(p.elements, band...)
	return s
}

// describe says what is on a page.
func (c *composer) describe(p page, s scales) string {
	var parts []string
	if p.main != nil {
		what := clean(p.main.plate.Title)
		if sub := clean(p.main.plate.Subtitle); sub != "" {
			what += ", " + sub
		}
		parts = append(parts, what+". Scale "+written(p.main.scale)+".")
	}
	if p.sections > 0 {
		parts = append(parts, fmt.Sprintf("Sections: %d, at scale %s.", p.sections, p.section.Name))
	}
	if n := len(c.spec.Cautions); n > 0 {
		parts = append(parts, fmt.Sprintf("Cautions: %d.", n))
	}
	if p.text {
		parts = append(parts, "Notes and lists beside the drawing.")
	}
	return strings.Join(parts, " ")
}

func lowerFirst(s string) string {
	r := []rune(s)
	if len(r) > 0 {
		r[0] = []rune(strings.ToLower(string(r[0])))[0]
	}
	return string(r)
}
