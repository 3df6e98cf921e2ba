package ceiling

import (
	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// settings are the figures of a ceiling with every default filled in.
type settings struct {
	metric   bool
	show     measure.Show
	step     geom.Length // printed step
	short    geom.Length // lesser side of the module
	long     geom.Length // greater side of the module
	panel    [2]geom.Length
	teeFace  geom.Length
	tee      geom.Length // height of the tees above the flange
	alike    geom.Length // border pieces that differ by no more are cut alike
	gap      geom.Length // tee end to wall face
	leg      geom.Length // of the wall angle
	thick    geom.Length // of a lay-in panel, zero when not known
	spacing  geom.Length // of the mains
	stock    geom.Length // length of a main tee
	slot     geom.Length // first slot from the factory end
	pitch    geom.Length // of the slots
	wires    geom.Length // greatest hanger spacing
	first    geom.Length // greatest distance of the first hanger from the wall
	warn     geom.Length // warned above this
	end      geom.Length // no hanger nearer the end of a run, where there is a choice
	touch    geom.Length // wire to duct
	ties     geom.Length // added to a wire for its ties
	clear    geom.Length // least free height above the tees
	clearAsk bool        // it was asked for, not taken as usual
	close    geom.Length // how far the length of a wall is trusted
}

// settle fills in the figures of r's ceiling.
func settle(r *room.Room) settings {
	c := r.Ceiling
	s := settings{metric: r.Units == measure.Millimetres, show: r.Show, step: r.Show.To}
	pick := func(w room.Want, in, mm geom.Length) geom.Length {
		switch {
		case w.Given():
			return w.Value
		case s.metric:
			return mm
		}
		return in
	}
	size := func(in, mm geom.Length) geom.Length { return pick(room.Want{}, in, mm) }
	more := func(w room.Want, in, mm geom.Length) geom.Length { // never nothing
		if w.Value <= 0 {
			w = room.Want{}
		}
		return pick(w, in, mm)
	}
	if s.step <= 0 {
		s.step = size(geom.Inch/16, geom.Millimetre)
	}
	m := c.Grid.Module
	s.short, s.long = min(m.W, m.H), max(m.W, m.H)
	less := size(rules.PanelLessInches, rules.PanelLessMillimetres)
	s.panel = [2]geom.Length{s.short - less, s.long - less}
	if p := c.Panel.Size; p.W > 0 && p.H > 0 {
		s.panel = [2]geom.Length{min(p.W, p.H), max(p.W, p.H)}
	}
	s.teeFace = pick(c.Grid.TeeFace, rules.TeeFaceInches, rules.TeeFaceMillimetres)
	s.tee = pick(c.Grid.TeeHeight, rules.TeeHeightInches, rules.TeeHeightMillimetres)
	s.alike = size(rules.CutAlikeInches, rules.CutAlikeMillimetres)
	s.gap = pick(c.EdgeGap, rules.EdgeGapInches, rules.EdgeGapMillimetres)
	s.leg = pick(c.Angle, rules.WallAngleLegInches, rules.WallAngleLegMillimetres)
	if !c.Panel.Unknown {
		s.thick = c.Panel.Thick.Value
	}
	s.spacing = more(c.Mains.Spacing, rules.MainSpacingInches, rules.MainSpacingMillimetres)
	if c.Mains.Spacing.At == (room.Want{}).At && s.spacing != s.long && s.spacing != 2*s.long {
		// The usual spacing does not fit the module: take the one that does.
		s.spacing = s.long
		if s.short == s.long {
			s.spacing = 2 * s.long
		}
	}
	s.stock = more(c.Mains.Stock, rules.MainStockInches, rules.MainStockMillimetres)
	s.slot = more(c.Mains.Slot, rules.MainSlotInches, rules.MainSlotMillimetres)
	s.pitch = more(c.Mains.Pitch, rules.MainPitchInches, rules.MainPitchMillimetres)
	s.wires = more(c.HangerSpacing, rules.HangerSpacingInches, rules.HangerSpacingMillimetres)
	s.first = pick(c.HangerFirst, rules.HangerFirstInches, rules.HangerFirstMillimetres)
	s.warn = size(rules.HangerWarnInches, rules.HangerWarnMillimetres)
	if c.HangerFirst.At != (room.Want{}).At || s.first < s.warn {
		s.warn = s.first // set by the person who builds it
	}
	s.end = size(rules.HangerEndInches, rules.HangerEndMillimetres)
	s.touch = size(rules.HangerClearInches, rules.HangerClearMillimetres)
	s.ties = size(rules.HangerTiesInches, rules.HangerTiesMillimetres)
	s.clear = pick(c.Clear, rules.ClearAboveInches, rules.ClearAboveMillimetres)
	s.clearAsk = c.Clear.At != (room.Want{}).At
	s.close = r.Survey.ClosesWithin
	if s.close <= 0 {
		s.close = size(geom.Inch/2, 12*geom.Millimetre)
	}
	return s
}

// say prints l as the messages do.
func (s *settings) say(l geom.Length) string { return s.show.Say(l) }

// same reports whether a and b are printed alike or nearly so.
func (s *settings) same(a, b geom.Length) bool { return (a - b).Abs() <= s.step/2 }
