package layouts

import (
	"slices"
	"strconv"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/lining"
	"roomwright/geom/measure"
	"roomwright/geom/setout"
	"roomwright/layouts/paper"
	"roomwright/layouts/sheet"
)

// The views that a room file can leave out, in its words.
const (
	leaveElevations = "elevations"
	leaveBoards     = "boards"
	leaveCeiling    = "ceiling plan"
	leavePlan       = "floor plan"
	leaveSections   = "section"
)

// Compose makes the drawing set of a room that was set out without errors.
func Compose(r setout.Result, o Options) (Set, []finding.Finding) {
	set := Set{File: o.File}
	if r.Room == nil {
		return set, nil
	}
	set.Title, set.Units = r.Room.Title, r.Room.Units
	c := composer{r: r, o: o, metric: r.Room.Units == measure.Millimetres, names: map[string]bool{}}
	var left []sheet.List
	for _, v := range c.views() {
		sheets, told := sheet.Compose(v.spec)
		set.Sheets = append(set.Sheets, sheets...)
		for _, what := range told {
			c.found = append(c.found, finding.Finding{
				Kind: finding.Warning, Rule: "paper", What: what, On: v.on[0],
				Hint: "a larger paper or a smaller scale", Source: "common practice, no source",
			})
		}
		if len(sheets) > 0 {
			if list := sheets[0].Assumed; len(list) > 0 {
				left = append(left, sheet.List{Heading: v.spec.Band.Big, Items: list})
			}
			c.model.put(v.spec.Main(sheets[0].Scale).Drawing, v.line)
		}
		for _, d := range v.spec.Sections {
			c.model.put(d(sectionScale(sheets, v.spec)).Drawing, 0)
		}
	}
	if len(left) > 0 {
		sheets, _ := sheet.Compose(c.notes(left).spec)
		set.Sheets = append(set.Sheets, sheets...)
	}
	set.Sheets = sheet.Number(set.Sheets)
	set.Model = c.model.placed
	return set, c.found
}

// sectionScale returns the scale at which the sections of a sheet were drawn.
func sectionScale(sheets []sheet.Sheet, spec sheet.Spec) paper.Scale {
	for _, s := range sheets {
		if s.Sections.Ratio > 0 {
			return s.Sections
		}
	}
	return spec.SectionScales[len(spec.SectionScales)-1]
}

// composer is one set being composed.
type composer struct {
	r      setout.Result
	o      Options
	metric bool
	names  map[string]bool // that sheets have already
	model  row
	found  []finding.Finding
}

// view is one sheet to be, the things it is about, and the height of its own
// that stands on the common line of the model.
type view struct {
	spec sheet.Spec
	on   []string
	read []string // of these, what its remarks and assumed values are about; nil for all
	line geom.Length
}

// views returns the sheets of the set in their order.
func (c *composer) views() []view {
	var out []view
	add := func(leave string, v view) {
		if c.leftOut(leave) {
			return
		}
		if c.leftOut(leaveSections) {
			v.spec.Sections = nil
		}
		out = append(out, v)
	}
	add(leavePlan, c.plan())
	for i := range c.r.Walls {
		add(leaveElevations, c.wall(i))
	}
	if c.r.Ceiling != nil {
		add(leaveCeiling, c.ceiling())
	}
	for i := range c.r.Walls {
		if slices.ContainsFunc(c.r.Boards, func(b lining.Row) bool { return b.Wall == i }) {
			add(leaveBoards, c.boards(i))
		}
	}
	if len(out) > 0 && !slices.Contains(out[0].on, "") {
		out[0].on = append([]string{""}, out[0].on...) // what concerns the whole room stands on the first sheet
	}
	for i := range out {
		s, v := &out[i].spec, out[i]
		told := about(c.r.Findings, v.on...)
		s.Cautions, s.Warnings, s.Remarks, s.Assumed = told.cautions, told.warnings, told.remarks, told.assumed
		if v.read != nil && i > 0 {
			read := about(c.r.Findings, v.read...)
			s.Remarks, s.Assumed = read.remarks, read.assumed
		}
	}
	return out
}

// leftOut reports whether the room file leaves a view out.
func (c *composer) leftOut(view string) bool { return slices.Contains(c.r.Room.Drawing.LeaveOut, view) }

// spec returns what all sheets share.
func (c *composer) spec(name string, this int) sheet.Spec {
	room := c.r.Room
	s := sheet.Spec{
		ID: c.unique(name), Size: c.paper(), Metric: c.metric,
		Scales: paper.InchScales(), Key: c.key(this),
		Band: sheet.Band{
			Project: room.Title, Room: room.Place, Units: c.units(),
			DatumWord: "heights from", Datum: "finished floor = 0",
			DrawnBy: room.DrawnBy, Approved: room.CheckedBy, Date: room.Date, Revision: room.Revision,
			Number: room.Number, File: c.o.File, Status: "for checking",
		},
	}
	if room.CheckedBy != "" {
		s.Band.Status = "checked"
	}
	if c.metric {
		s.Scales = paper.MetricScales()
	}
	if ratio := room.Drawing.Scale; ratio > 0 {
		fixed := named(ratio)
		s.Fixed = &fixed
	}
	return s
}

// named returns the scale of a ratio under the name it has in either system.
func named(ratio int64) paper.Scale {
	for _, s := range slices.Concat(paper.InchScales(), paper.MetricScales()) {
		if s.Ratio == ratio {
			return s
		}
	}
	return paper.Scale{Ratio: ratio, Name: "1:" + strconv.FormatInt(ratio, 10)}
}

// paper returns the sheet asked for: Letter or A4 when none is (common
// practice, no source).
func (c *composer) paper() paper.Size {
	d := c.r.Room.Drawing
	if s, ok := paper.ByName(d.Paper, d.Portrait); ok {
		return s
	}
	name := "letter"
	if c.metric {
		name = "A4"
	}
	s, _ := paper.ByName(name, d.Portrait)
	return s
}

// units returns the words for how figures are printed.
func (c *composer) units() string {
	switch c.r.Room.Show.Form {
	case measure.InchesOnly:
		return "inches and fractions"
	case measure.MillimetresOnly:
		return "millimetres"
	}
	return "feet and inches"
}

// key returns the small plan of the room.
func (c *composer) key(this int) sheet.Key {
	room := c.r.Plan.Finished
	if len(room) == 0 {
		room = c.r.Plan.Taped
	}
	k := sheet.Key{Room: room, This: this}
	for i, p := range room {
		if i < len(c.r.Room.Walls) {
			k.Walls = append(k.Walls, sheet.KeyWall{Name: c.r.Room.Walls[i].Name, From: p, To: room[(i+1)%len(room)]})
		}
	}
	return k
}

// unique returns a name for a sheet that no other has.
func (c *composer) unique(name string) string {
	got := name
	for n := 2; c.names[got]; n++ {
		got = name + "-" + strconv.Itoa(n)
	}
	c.names[got] = true
	return got
}
