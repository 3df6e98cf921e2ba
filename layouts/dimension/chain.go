package dimension

import (
	"slices"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// Row is one line of dimensions end to end.
type Row struct {
	Name  string        // printed in the left margin of rows above and below, may be empty
	At    []geom.Length // positions along the side, ascending
	From  []geom.Length // for each position, where across its extension line begins; nil is the object
	Quiet []bool        // by segment: no figure, a label or running mark gives it
	Gap   []bool        // by segment: nothing at all
	Bold  []bool        // by segment: new work
	Also  bool          // the figure is followed by the same in feet and inches
	Merge bool          // three or more equal segments become one figure, "7 × 16 = 112"
}

// Chain is the rows of dimensions on one side of an object.
type Chain struct {
	Side   Side
	Object geom.Length  // the object's edge, outside hatch and wall thickness: y for Above and Below, x for LeftOf and RightOf
	First  paper.Length // object to first row; 0 is 10 mm
	Rows   []Row        // nearest first
	Datum  geom.Length  // positions are rounded from here
	NamesX geom.Length  // where the names of rows begin
	Scale  paper.Scale
	Show   measure.Show
}

// segment is one figure of a row, with the positions it lies between.
type segment struct {
	from, to    geom.Length
	start, end  geom.Length // out, where its extension lines begin
	value       geom.Length // difference of the rounded positions
	figure      string      // empty when quiet
	also        string
	bold        bool
	first, last bool // of a run without gaps
	place       place
}

// line is a row with its segments.
type line struct {
	row    Row
	segs   []segment
	out    geom.Length // of the dimension line
	lift   geom.Length // of lifted figures, from the dimension line; 0 none
	passes []geom.Length
	ticks  []geom.Length
}

// Draw returns the elements of the chain, a drawing.Dimension for every
// segment with a figure, and the farthest coordinate across that is used.
func (c Chain) Draw() (elements []drawing.Element, outer geom.Length) {
	f := frame{c.Side, c.Object, c.Scale}
	lines := make([]line, 0, len(c.Rows))
	for _, r := range c.Rows {
		l := line{row: r, segs: c.segments(f, r)}
		for _, s := range l.segs {
			l.ticks = append(l.ticks, s.from, s.to)
		}
		slices.Sort(l.ticks)
		l.ticks = slices.Compact(l.ticks)
		lines = append(lines, l)
	}
	out := on(c.Scale, rowFirst)
	if c.First > 0 {
		out = c.Scale.Real(c.First)
	}
	far := geom.Length(0)
	for i := range lines {
		for _, later := range lines[i+1:] {
			lines[i].passes = append(lines[i].passes, later.ticks...)
		}
		slices.Sort(lines[i].passes)
		lines[i].passes = slices.Compact(lines[i].passes)
		c.place(f, &lines[i])
		lines[i].out = out
		far = max(far, out+on(c.Scale, max(extPast, nameDown+wordCap*0.31)))
		if f.textOut() {
			far = max(far, out+on(c.Scale, textOff+figureCap*1.06))
		}
		step := on(c.Scale, rowPitch)
		if lift := lines[i].lift; lift > 0 {
			top := lift + on(c.Scale, figureCap)
			far = max(far, out+top+on(c.Scale, figureCap*0.3))
			room := tickHalf + 0.5
			if !f.textOut() {
				room = textOff + figureCap + 1.6
			}
			step = max(step, top+on(c.Scale, room))
		}
		out += step
	}
	ext := c.extensions(f, lines)
	for i, l := range lines {
		for k := range l.segs {
			elements = append(elements, c.draw(f, lines, i, k, ext)...)
		}
	}
	for _, l := range lines {
		if l.row.Name != "" && len(l.segs) > 0 && !f.upright() {
			elements = append(elements, c.name(f, l))
		}
	}
	if len(elements) == 0 {
		return nil, c.Object
	}
	return elements, f.across(far)
}

// name returns the name of a row, in the margin on the height of its line.
func (c Chain) name(f frame, l line) drawing.Element {
	at := geom.Pt(c.NamesX, f.across(l.out)-on(c.Scale, nameDown))
	return drawing.Text{Layer: drawing.Dims, At: at, String: l.row.Name, Cap: paper.MM(wordCap)}
}

// flag returns the i-th of flags, false when there is none.
func flag(flags []bool, i int) bool { return i < len(flags) && flags[i] }

// segments cuts a row into its segments; equal ones are put together when the
// row asks for it.
func (c Chain) segments(f frame, r Row) []segment {
	var segs []segment
	joined := false // the next segment continues a run
	for i := 0; i+1 < len(r.At); i++ {
		if r.At[i+1] <= r.At[i] {
			continue
		}
		if flag(r.Gap, i) {
			if joined {
				segs[len(segs)-1].last = true
			}
			joined = false
			continue
		}
		s := segment{
			from: r.At[i], to: r.At[i+1], start: c.begin(f, r, i), end: c.begin(f, r, i+1),
			bold: flag(r.Bold, i), first: !joined,
		}
		s.value = c.round(s.to) - c.round(s.from)
		if !flag(r.Quiet, i) && s.value != 0 {
			s.figure = c.Show.Figure(s.value)
			if r.Also && c.Show.Form == measure.InchesOnly && s.value >= geom.Foot {
				s.also = " = " + c.Show.FeetInches(s.value)
			}
		}
		segs = append(segs, s)
		joined = true
	}
	if joined {
		segs[len(segs)-1].last = true
	}
	if r.Merge {
		segs = c.merge(segs)
	}
	return segs
}

// round returns a position from the datum, rounded as it is shown.
func (c Chain) round(at geom.Length) geom.Length { return c.Show.Round(at - c.Datum) }

// begin returns where, out, the extension line of a position begins.
func (c Chain) begin(f frame, r Row, i int) geom.Length {
	if i < len(r.From) {
		return f.out(r.From[i])
	}
	return 0
}

// merge puts runs of three or more equal segments together.
func (c Chain) merge(segs []segment) []segment {
	var out []segment
	for i := 0; i < len(segs); {
		j := i + 1
		for j < len(segs) && !segs[j].first && segs[j].value == segs[i].value &&
			segs[j].bold == segs[i].bold && segs[i].figure != "" && segs[j].figure != "" {
			j++
		}
		s := segs[i]
		if n := j - i; n >= 3 {
			last := segs[j-1]
			s.to, s.end, s.last, s.also = last.to, last.end, last.last, ""
			s.value = c.round(s.to) - c.round(s.from)
			s.figure = repeat(n, segs[i].figure, c.Show.Figure(s.value))
			out = append(out, s)
		} else {
			out = append(out, segs[i:j]...)
		}
		i = j
	}
	return out
}
