package lining

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// errorSize refuses a row without a size.
func (j *job) errorSize() {
	b := j.board
	j.add(finding.Finding{
		Place: b.Size.At, Kind: finding.Error, Rule: "board without a size",
		What:    "board " + b.Name + " has no size to hang",
		Found:   fmt.Sprintf("%d of %s x %s, cut to %s", b.Count, j.say(b.Size.W), j.say(b.Size.H), j.say(b.CutTo.Value)),
		Allowed: "one sheet or more, each with a width and a height",
		Hint:    "sheets: 3 of 48 x 96",
		Source:  rules.Habit,
	})
}

// errorHeight refuses a row without a height on the wall.
func (j *job) errorHeight() {
	j.add(finding.Finding{
		Place: j.board.Up.At, Kind: finding.Error, Rule: "board without a height",
		What:    "board " + j.board.Name + " is not placed up the wall",
		Allowed: "bottom from floor, top from floor, centre from floor, or, below a ceiling, top from ceiling",
		Hint:    "centre from floor: " + j.say(rules.BoardCentreLow),
		Source:  rules.BoardCentreSource,
	})
}

// errorCutTo refuses a cut that makes a sheet taller.
func (j *job) errorCutTo() {
	j.add(finding.Finding{
		Place: j.board.CutTo.At, Kind: finding.Error, Rule: "board cut to more than it is",
		What:    "board " + j.board.Name + " is cut to more than the sheets have",
		Found:   "cut to " + j.say(j.board.CutTo.Value),
		Allowed: "at most " + j.say(j.board.Size.H),
		Hint:    "width comes first, then height as hung: " + j.say(j.board.Size.H) + " x " + j.say(j.board.Size.W) + " lies",
		Source:  rules.Habit,
	})
}

// errorPlace refuses a place that cannot be made out.
func (j *job) errorPlace(trouble string) {
	j.add(finding.Finding{
		Place: j.board.Across.At, Kind: finding.Error, Rule: "board placed on nothing",
		What:    "board " + j.board.Name + " is placed on something that is not there",
		Found:   trouble,
		Allowed: "a stud, a door, a window or an opening of wall " + j.wallName(),
		Hint:    "left edge from left: X, or leave the place across out and it is searched",
		Source:  rules.Habit,
	})
}

// errorTall refuses a row that is taller than the space, or in the floor.
func (j *job) errorTall(bottom, h geom.Length) {
	if bottom < 0 && (j.wall.Ceiling == 0 || h <= j.wall.Ceiling) {
		j.add(finding.Finding{
			Place: j.board.Up.At, Kind: finding.Error, Rule: "board below the floor",
			What:    "board " + j.board.Name + " reaches below the finished floor",
			Found:   "bottom " + j.say(-bottom) + " below the floor, the sheets " + j.say(h) + " high",
			Allowed: "bottom at the floor or above it",
			Hint:    "bottom from floor: " + j.say(rules.BoardHeadGap) + ", or cut to " + j.say(max(0, h+bottom)),
			Source:  rules.Habit,
		})
		return
	}
	bottom = max(0, bottom)
	room := max(0, j.wall.Ceiling-bottom)
	hint := "lay the sheets across"
	if cut := room - rules.BoardHeadGap; cut > 0 {
		hint = "cut to: " + j.sayDown(cut) + " (" + j.say(rules.BoardHeadGap) + " clear over it), or lay the sheets across"
	}
	if low := j.wall.Ceiling - h; low >= 0 {
		hint = "bottom from floor: " + j.sayDown(low) + " at most; or " + hint
	}
	place := j.board.Up.At
	if j.board.CutTo.Given() {
		place = j.board.CutTo.At
	}
	j.add(finding.Finding{
		Place: place, Kind: finding.Error, Rule: "board taller than the space",
		What:    "board " + j.board.Name + " is taller than the space over its bottom edge",
		Found:   fmt.Sprintf("%s high from %s, top at %s", j.say(h), j.say(bottom), j.say(bottom+h)),
		Allowed: "top at " + j.say(j.wall.Ceiling) + " or less, the ceiling or the structure of wall " + j.wallName(),
		Hint:    hint,
		Source:  rules.BoardHeadGapSource,
	})
}

// errorLonger refuses a row that its wall cannot hold.
func (j *job) errorLonger(s strip) {
	wall := j.wall.Finished.Len()
	fit := j.fitting(s)
	hint := "turn the sheets, or take narrower ones"
	if fit > 0 {
		hint = fmt.Sprintf("%s in a row, or one more with the end sheets cut", count(fit, "whole sheet fits", "whole sheets fit"))
	}
	allowed := j.say(wall) + " between the finished faces of wall " + j.wallName() +
		", or a cut that leaves " + j.say(rules.BoardLeastStrip) + " or more of an end sheet"
	if s.whole() <= wall {
		hint = "leave the place across out, and the nearest one that works is searched"
		if j.board.Across.At == (finding.Place{}) {
			allowed = "a stretch of " + j.say(s.whole()) + " clear of doors, windows and openings"
			hint = "fewer sheets, or another height or wall"
		}
	}
	j.add(finding.Finding{
		Place: j.board.Across.At, Kind: finding.Error, Rule: "row longer than its wall",
		What:    "board " + j.board.Name + " does not fit on wall " + j.wallName(),
		Found:   fmt.Sprintf("%d of %s with gaps of %s: %s", s.n, j.say(s.w), j.say(s.gap), j.say(s.whole())),
		Allowed: allowed,
		Hint:    hint,
		Source:  rules.BoardLeastStripSource,
	})
}

// errorOver refuses a row across a door, a window or an opening.
func (j *job) errorOver(p placed, i int, start geom.Length) {
	k := j.wall.Keep[i]
	hint := "hang the row above or below it, or fewer sheets"
	spans := freeSpans(j.wall.Finished, p.y, j.keep(true))
	if q, ok := p.nearest(start, spans); ok {
		if text, ok := j.typeable(p.strip, p.y, q.start, always); ok {
			hint = text + " is clear of it"
		}
	}
	j.add(finding.Finding{
		Place: j.board.Across.At, Kind: finding.Error, Rule: "board over an opening",
		What: fmt.Sprintf("board %s covers %s", j.board.Name, j.wall.Names[i]),
		Found: fmt.Sprintf("the row at %s across and %s up; %s at %s and %s", j.span(geom.Span{From: p.from, To: p.to}), j.span(p.y),
			j.wall.Names[i], j.span(k.X()), j.span(k.Y())),
		Allowed: "clear of doors, windows, openings and their casings",
		Hint:    hint,
		Source:  rules.Habit,
	})
}

// warnMoved reports a place across that was a wish and gave way.
func (j *job) warnMoved(p placed, start geom.Length) {
	asked, was := j.typed(start, p.whole())
	_, is := j.typed(p.start, p.whole())
	j.add(finding.Finding{
		Place: j.board.Across.At, Kind: finding.Warning, Rule: "place across moved",
		What:    "board " + j.board.Name + " moved to the nearest place across that works",
		Found:   asked + j.say(is) + ", asked for " + j.say(was),
		Allowed: "on the wall, clear of what is in it, and every seam borne",
		Hint:    "write the place without `if it fits` to keep it",
		Source:  rules.Habit,
	})
}

// warnRaised reports a height that was a wish and gave way.
func (j *job) warnRaised(asked, bottom, h geom.Length) {
	j.add(finding.Finding{
		Place: j.board.Up.At, Kind: finding.Warning, Rule: "height moved",
		What:    "board " + j.board.Name + " moved to the nearest height that works",
		Found:   "bottom " + j.say(bottom) + " above the floor, asked for " + j.say(asked),
		Allowed: "clear of what is on the wall, top at " + j.say(j.wall.Ceiling) + " or less with sheets " + j.say(h) + " high",
		Hint:    "write the height without `if it fits` to keep it",
		Source:  rules.Habit,
	})
}

// warnCutLess reports a cut that was a wish and gave way.
func (j *job) warnCutLess(h, left geom.Length) {
	j.add(finding.Finding{
		Place: j.board.CutTo.At, Kind: finding.Warning, Rule: "board cut shorter",
		What:    "board " + j.board.Name + " is cut to what the space leaves",
		Found:   "cut to " + j.say(left) + ", asked for " + j.say(h),
		Allowed: "top at " + j.say(j.wall.Ceiling) + " or less",
		Hint:    "write the cut without `if it fits` to keep it",
		Source:  rules.Habit,
	})
}
