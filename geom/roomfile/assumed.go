package roomfile

import (
	"strconv"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// note records a value that was taken because none was written.
func (r *reader) note(at finding.Place, on, what, source string) {
	r.findings = append(r.findings, finding.Finding{
		Place: at, Kind: finding.Note, Rule: "default", What: what, Source: source, On: on,
	})
}

// either gives the figure for the units of the file.
func (r *reader) either(inches, millimetres geom.Length) geom.Length {
	if r.units == measure.Millimetres {
		return millimetres
	}
	return inches
}

// assume fills in what was not written, and notes each value.
func (r *reader) assume(f *file) {
	r.assumeSheets(f)
	r.assumeSurvey(f)
	openings := map[int]bool{}
	for i := range f.things {
		openings[f.things[i].Wall] = true
	}
	for i := range f.walls {
		r.assumeWall(&f.walls[i], openings[i])
	}
	for i := range f.things {
		r.assumeOpening(&f.things[i])
	}
	for i := range f.boards {
		b := &f.boards[i]
		if !b.said.has("gap") {
			b.Gap.Value = r.either(rules.BoardGap, rules.BoardGapMillimetres)
			source := rules.BoardGapSource
			if r.units == measure.Millimetres {
				source = rules.Habit
			}
			r.note(b.At, called("board", b.Name), "gap between the sheets of board "+b.Name+" taken as "+r.say(b.Gap.Value), source)
		}
	}
	if r.room.Ceiling != nil {
		r.assumeCeiling(f)
	}
	for i := range r.room.Lights {
		r.assumeLight(&r.room.Lights[i])
	}
}

// assumeSheets fills in what concerns the sheets and the cautions.
func (r *reader) assumeSheets(f *file) {
	if !f.topSaid.has("show") {
		r.note(f.topSaid.at, "", "figures shown as "+r.show.String(), rules.Habit)
	}
	if r.room.Built == 0 {
		r.note(f.topSaid.place("built"), "", "year of the building not known: the lead and the asbestos caution are both printed", rules.Habit)
	}
	if !f.topSaid.has("paid work") {
		r.note(f.topSaid.at, "", "whether the work is paid is not said: the lead caution is printed either way", rules.Habit)
	}
	if r.room.Drawing.Paper == "" {
		r.room.Drawing.Paper = "letter"
		if r.units == measure.Millimetres {
			r.room.Drawing.Paper = "A4"
		}
		r.note(f.topSaid.place("drawing"), "", "paper taken as "+r.room.Drawing.Paper, rules.Habit)
	}
	if e, ok := f.topSaid.get("drawing"); !ok || !hasPair(e.value, "orientation") {
		r.note(f.topSaid.place("drawing"), "", "sheets lie landscape", rules.Habit)
	}
}

// hasPair reports whether a map holds a key.
func hasPair(n *node, name string) bool {
	for _, p := range n.pairs {
		if ownSpelling(p.key.text) == name {
			return true
		}
	}
	return false
}

// assumeSurvey fills in how far the tape is trusted.
func (r *reader) assumeSurvey(f *file) {
	s := &r.room.Survey
	at := f.topSaid.place("survey")
	for _, v := range [...]struct {
		into *geom.Length
		l    geom.Length
		what string
	}{
		{&s.TapeReadsTo, r.either(rules.TapeReadsToInches, rules.TapeReadsToMillimetres), "the tape is taken to read to "},
		{&s.AboutMeans, r.either(rules.AboutMeansInches, rules.AboutMeansMillimetres), "about is taken to mean within "},
		{&s.ClosesWithin, r.either(rules.ClosesWithinInches, rules.ClosesWithinMillimetres), "greatest misfit of the survey taken as "},
	} {
		if *v.into == 0 {
			*v.into = v.l
			r.note(at, "", v.what+r.say(v.l), rules.Habit)
		}
	}
}

// assumeWall fills in what a wall did not say.
func (r *reader) assumeWall(w *wallText, cut bool) {
	if w.TapeOn == room.FaceNotSaid && !w.said.has("tape on") && w.MadeOf.Solid() && !w.Inside.Given() {
		w.TapeOn = room.FaceMasonry
		r.note(w.At, on(w.Name), "the tape is taken to touch the masonry of wall "+w.Name+", its face now", rules.Habit)
	}
	if !w.MadeOf.Framed() || !cut && w.MadeOf != room.NewStuds && len(w.frame.all) == 0 {
		return
	}
	at := w.frameAt
	if zero(at) {
		at = w.At
	}
	fr := &w.Frame
	plates := func(n int) string { return strconv.Itoa(n) }
	if fr.BottomPlates == 0 {
		fr.BottomPlates = rules.BottomPlates
		r.note(at, on(w.Name), "bottom plates of wall "+w.Name+" taken as "+plates(fr.BottomPlates), rules.Habit)
	}
	if fr.TopPlates == 0 {
		source := rules.Habit
		fr.TopPlates = rules.TopPlates
		if w.MadeOf == room.NewStuds && fr.Bearing == room.No {
			fr.TopPlates, source = rules.TopPlatesNew, rules.TopPlatesNewSource
		}
		r.note(at, on(w.Name), "top plates of wall "+w.Name+" taken as "+plates(fr.TopPlates), source)
	}
	if !fr.StudLength.Given() && w.Structure.Known() && fr.Stud.Given() {
		left := w.Structure.Value - geom.Length(fr.BottomPlates+fr.TopPlates)*fr.Stud.Thick
		if left <= 0 {
			r.fail(w.Structure.At, fault{
				rule: "sizes", what: "the plates of wall " + w.Name + " leave no height for studs", found: "floor to structure " + r.say(w.Structure.Value),
				allowed: "more than " + r.say(w.Structure.Value-left) + ", the plates",
			})
		} else {
			r.note(at, on(w.Name), "stud length of wall "+w.Name+" taken as "+r.say(left)+
				": floor to structure less "+plates(fr.BottomPlates+fr.TopPlates)+" plates", rules.Habit)
		}
	}
	if fr.Studs.Spacing > 0 && !w.firstCentre {
		fr.Studs.First = fr.Studs.Spacing
		r.note(fr.Studs.At, on(w.Name), "first stud centre of wall "+w.Name+" taken at the spacing, "+r.say(fr.Studs.First), rules.FirstCentreSource)
	}
	if cut && w.MadeOf != room.NewStuds && len(fr.OtherDuty) == 0 && !w.frame.has("other duty") {
		r.note(at, on(w.Name), "other duty of wall "+w.Name+" not known: the caution is printed", rules.Habit)
	}
}

// assumeOpening fills in what an opening did not say.
func (r *reader) assumeOpening(o *openingText) {
	sheet := ""
	if o.Wall >= 0 && o.Wall < len(r.walls) {
		sheet = on(r.walls[o.Wall])
	}
	who := called("opening", o.Name)
	want := func(w *room.Want, inches, millimetres geom.Length, what, source string) {
		if !w.Given() && zero(w.At) {
			w.Value = r.either(inches, millimetres)
			r.note(o.At, sheet, what+" of "+who+" taken as "+r.say(w.Value), source)
		}
	}
	if o.Jacks == 0 {
		o.Jacks = rules.JacksASide
		r.note(o.At, sheet, "jacks of "+who+" taken as "+strconv.Itoa(o.Jacks)+" a side", rules.JacksASideSource)
	}
	if !o.jacks.has("at sill") {
		r.note(o.At, sheet, "jacks of "+who+" run through to the plate", rules.Habit)
	}
	doorway := o.Up.Kind == room.BottomFromFloor && o.Up.Value == 0
	if !o.said.has("sill") {
		if !doorway {
			o.Sill = rules.SillMembers
		}
		r.note(o.At, sheet, "rough sill members of "+who+" taken as "+strconv.Itoa(o.Sill), rules.Habit)
	}
	if !o.header.has("filler") && o.Header.Plies > 1 {
		r.note(o.At, sheet, "no filler between the plies of the header of "+who, rules.Habit)
	}
	want(&o.Header.LetIn, rules.LetInInches, rules.LetInMillimetres, "let-in clearance of the header", rules.Habit)
	bare := o.Glazing.Sheet.None
	finished := !bare || o.said.has("liner")
	if finished {
		want(&o.Liner, rules.LinerInches, rules.LinerMillimetres, "liner", rules.Habit)
		if o.LinerRun == "" {
			o.LinerRun = "head and sill"
			r.note(o.At, sheet, "head and sill of the liner of "+who+" run over its sides", rules.Habit)
		}
		want(&o.Shims, rules.ShimsInches, rules.ShimsMillimetres, "shims", rules.ShimsSource)
	}
	if !finished && o.Kind == room.Clear {
		r.note(o.At, sheet, "no pane in "+who+", so no liner and no shims are reckoned: its rough size is the clear one (write liner: 3/4 to have one)", rules.Habit)
	}
	if !bare || o.said.has("casing") {
		if !o.faces {
			o.Casing.Inside, o.Casing.Outside = true, true
			r.note(o.At, sheet, "casing of "+who+" on both faces", rules.Habit)
		}
		if o.Casing.Inside || o.Casing.Outside {
			want(&o.Casing.Width, rules.CasingInches, rules.CasingMillimetres, "casing width", rules.Habit)
			want(&o.Casing.Reveal, rules.RevealInches, rules.RevealMillimetres, "casing reveal", rules.RevealSource)
		}
	}
	if !bare {
		want(&o.Stops, rules.StopsInches, rules.StopsMillimetres, "stops", rules.Habit)
	}
}

// assumeCeiling fills in what the ceiling did not say. A figure of the trade
// goes by the module: a grid in millimetres takes metric parts.
func (r *reader) assumeCeiling(f *file) {
	c := r.room.Ceiling
	metric := r.units == measure.Millimetres
	if m := c.Grid.Module; m.Given() {
		switch {
		case m.W%geom.Inch == 0 && m.H%geom.Inch == 0:
			metric = false
		case m.W%geom.Millimetre == 0 && m.H%geom.Millimetre == 0:
			metric = true
		}
	}
	either := func(inches, millimetres geom.Length) geom.Length {
		if metric {
			return millimetres
		}
		return inches
	}
	want := func(w *room.Want, inches, millimetres geom.Length, what, source string) {
		if zero(w.At) {
			w.Value = either(inches, millimetres)
			r.note(c.At, "ceiling", what+" taken as "+r.say(w.Value), source)
		}
	}
	want(&c.Clear, rules.ClearAboveInches, rules.ClearAboveMillimetres, "least free height above the tees", rules.ClearAboveSource)
	want(&c.Grid.TeeFace, rules.TeeFaceInches, rules.TeeFaceMillimetres, "face of the tees", rules.TeeFaceSource)
	want(&c.Grid.TeeHeight, rules.TeeHeightInches, rules.TeeHeightMillimetres, "height of the tees", rules.TeeHeightSource)
	want(&c.Mains.Spacing, rules.MainSpacingInches, rules.MainSpacingMillimetres, "spacing of the main tees", rules.MainSpacingSource)
	want(&c.Mains.Stock, rules.MainStockInches, rules.MainStockMillimetres, "stock length of the main tees", rules.MainStockSource)
	want(&c.Mains.Slot, rules.MainSlotInches, rules.MainSlotMillimetres, "first slot of the main tees", rules.MainSlotSource)
	want(&c.Mains.Pitch, rules.MainPitchInches, rules.MainPitchMillimetres, "pitch of the slots", rules.MainSlotSource)
	want(&c.HangerSpacing, rules.HangerSpacingInches, rules.HangerSpacingMillimetres, "spacing of the hangers", rules.HangerSpacingSource)
	want(&c.HangerFirst, rules.HangerFirstInches, rules.HangerFirstMillimetres, "first hanger from a wall, at most,", rules.HangerFirstSource)
	want(&c.EdgeGap, rules.EdgeGapInches, rules.EdgeGapMillimetres, "gap between tee and wall", rules.EdgeGapSource)
	want(&c.Angle, rules.WallAngleLegInches, rules.WallAngleLegMillimetres, "leg of the wall angle", rules.WallAngleLegSource)
	if m := c.Grid.Module; m.Given() && !c.Panel.Size.Given() {
		less := either(rules.PanelLessInches, rules.PanelLessMillimetres)
		c.Panel.Size = room.Size{W: m.W - less, H: m.H - less, At: m.At}
		r.note(c.At, "ceiling", "panels taken as "+r.say(c.Panel.Size.W)+" x "+r.say(c.Panel.Size.H)+", the module less "+r.say(less), rules.PanelLessSource)
	}
	if !c.Grid.Least.Given() {
		r.note(c.At, "ceiling", "least border taken as half a module, if it fits", rules.BorderSource)
	}
	if c.Grid.Follow < 0 {
		r.note(c.At, "ceiling", "the grid follows the longest wall", rules.Habit)
	}
	if c.Mains.Along < 0 {
		r.note(c.At, "ceiling", "main tees run across the joists", rules.MainsAcrossSource)
	}
	if c.Mains.Duty == "" {
		r.note(c.At, "ceiling", "duty class of the main tees not known: loads are printed, not judged", "")
	}
	if c.Panel.Weight.GramsPerM2 == 0 && zero(c.Panel.Weight.At) {
		r.note(c.At, "ceiling", "weight of the panels not known: loads are not checked", "")
	}
}

// assumeLight fills in what a kind of light did not say.
func (r *reader) assumeLight(l *room.Light) {
	who := called("light", l.Name)
	if l.Arrange == "" && len(l.Cells) == 0 && len(l.Centre) == 0 {
		l.Arrange = "symmetrical"
		r.note(l.At, "ceiling", who+" placed symmetrical", rules.Habit)
	}
	if !l.Thick.Given() && l.Depth.Known() {
		l.Thick = l.Depth
		r.note(l.At, "ceiling", "thickness of "+who+" taken as its depth, "+r.say(l.Depth.Value), rules.Habit)
	}
	if !l.Weight.Given() {
		r.note(l.At, "ceiling", "weight of "+who+" not known: loads are not checked", "")
	}
}
