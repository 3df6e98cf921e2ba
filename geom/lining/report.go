package lining

import (
	"fmt"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// say prints a length for a message.
func (j *job) say(l geom.Length) string { return j.room.Show.Say(l) }

// span prints both ends of s.
func (j *job) span(s geom.Span) string { return j.say(s.From) + " to " + j.say(s.To) }

func (j *job) wallName() string { return j.room.Walls[j.board.Wall].Name }

// corner names the corner that places on the wall run from.
func (j *job) corner() string {
	return "from corner " + j.room.CornerName(j.board.Wall) + " as taped"
}

// add keeps a finding on the board; a zero place is the board's own.
func (j *job) add(f finding.Finding) {
	if f.Place == (finding.Place{}) {
		f.Place = j.board.At
	}
	f.On = "board " + j.board.Name
	j.findings = append(j.findings, f)
}

// report says what there is to say about a row that has its place.
func (j *job) report(row *Row, p placed) {
	j.reportCut(row, p)
	if row.Bearer == "unknown" {
		j.add(finding.Finding{
			Place: j.board.At, Kind: finding.Warning, Rule: "nothing known to fix to",
			What:    "what holds the screws of board " + j.board.Name + " is not known, so no screws are placed and no seam is judged",
			Found:   "no studs or masonry given for wall " + j.wallName(),
			Allowed: "`made of`, and for a stud wall where the studs are",
			Hint:    "find the studs and write their edges in the frame of wall " + j.wallName(),
			Source:  rules.Habit,
		})
	}
	j.reportSeams(row, p)
	j.reportEnds(row, p)
	j.reportBoxes(p)
	j.reportHeight(row)
	j.reportSheet(row)
	j.reportServices(row)
}

// reportCut says which sheets are cut in width, and where a searched row went.
func (j *job) reportCut(row *Row, p placed) {
	var cut []string
	if n := len(row.Sheets); row.Sheets[0].CutW {
		cut = append(cut, "first sheet "+j.say(row.Sheets[0].Box.W())+" wide")
		if n > 1 && row.Sheets[n-1].CutW {
			cut = append(cut, "last sheet "+j.say(row.Sheets[n-1].Box.W())+" wide")
		}
	} else if row.Sheets[n-1].CutW {
		cut = append(cut, "last sheet "+j.say(row.Sheets[n-1].Box.W())+" wide")
	}
	if p.searched {
		found := "left edge " + j.say(p.from-j.wall.Finished.From) + " from left, right edge " + j.say(j.wall.Finished.To-p.to) + " from right"
		if len(cut) > 0 {
			found += "; " + strings.Join(cut, ", ")
		}
		j.add(finding.Finding{
			Kind: finding.Note, Rule: "place across searched",
			What:    "no place across for board " + j.board.Name + ": every seam borne, then fewest cuts, then the most equal ends",
			Found:   found,
			Allowed: "any place across",
			Hint:    "write a place, such as left edge from left, to keep it",
			Source:  rules.Habit,
		})
		return
	}
	if len(cut) == 0 {
		return
	}
	whole := p.whole()
	fit := j.fitting(p.strip)
	hint := fmt.Sprintf("%d whole in a row fit", fit)
	if fit >= j.board.Count {
		start := min(max(p.start, j.wall.Finished.From), j.wall.Finished.To-whole)
		if text, ok := j.typeable(p.strip, p.y, start, always); ok {
			hint = text + " needs no cut"
		}
	}
	j.add(finding.Finding{
		Place: j.board.Across.At, Kind: finding.Warning, Rule: "row runs past its wall",
		What:    "board " + j.board.Name + " does not fit whole where it is placed, so a sheet is cut in width",
		Found:   strings.Join(cut, ", ") + "; the row is " + j.say(whole) + " long",
		Allowed: j.say(j.wall.Finished.Len()) + " between the finished faces of wall " + j.wallName(),
		Hint:    hint,
		Source:  rules.Habit,
	})
}

// fitting returns how many whole sheets fit side by side on the wall.
func (j *job) fitting(s strip) int {
	return int((j.wall.Finished.Len() + s.gap) / (s.w + s.gap))
}

// reportSeams warns of seams that do not bear, with what would.
func (j *job) reportSeams(row *Row, p placed) {
	var bad []string
	for k, s := range row.Seams {
		if !p.judge || s.End || s.Borne {
			continue
		}
		bad = append(bad, fmt.Sprintf("seam %d at %s: %s", k, j.say(s.X), j.bearing(s, p.bars)))
	}
	if len(bad) == 0 {
		return
	}
	j.add(finding.Finding{
		Place: j.board.Across.At, Kind: finding.Warning, Rule: "seam not borne",
		What:    fmt.Sprintf("board %s: %s on too little of a stud", j.board.Name, count(len(bad), "seam bears", "seams bear")),
		Found:   list(bad) + " (" + j.corner() + ")",
		Allowed: j.say(rules.BoardBearing) + " or more under each side of a seam",
		Hint:    j.hintSeams(p),
		Source:  rules.BoardBearingSource,
	})
}

// bearing prints what each side of a seam bears on.
func (j *job) bearing(s Seam, on bars) string {
	short := func(l geom.Length) bool { return l < rules.BoardBearing }
	var text string
	switch {
	case s.OnLeft == 0 && s.OnRight == 0:
		text = "nothing behind it"
		if b, ok := on.nearest(s.X); ok {
			text += ", the nearest upright is at " + j.span(b.x)
		}
		return text
	case short(s.OnLeft) && short(s.OnRight):
		text = fmt.Sprintf("the sheets bear %s and %s", j.say(s.OnLeft), j.say(s.OnRight))
	case short(s.OnLeft):
		text = "the sheet left of it bears " + j.say(s.OnLeft)
	default:
		text = "the sheet right of it bears " + j.say(s.OnRight)
	}
	if b, ok := on.nearest(s.X); ok {
		if b.stud > 0 {
			text += fmt.Sprintf(" on stud %d", b.stud)
		}
		text += " (" + j.span(b.x) + ")"
	}
	return text
}

// reportEnds warns of outer edges that do not bear.
func (j *job) reportEnds(row *Row, p placed) {
	var bad []string
	for k, s := range row.Seams {
		if !p.judge || !s.End || s.Borne {
			continue
		}
		side := "left"
		if k > 0 {
			side = "right"
		}
		text := fmt.Sprintf("%s edge at %s bears %s", side, j.say(s.X), j.say(max(s.OnLeft, s.OnRight)))
		if b, ok := p.bars.nearest(s.X); ok {
			text += ", the nearest upright is at " + j.span(b.x)
		}
		bad = append(bad, text)
	}
	if len(bad) == 0 {
		return
	}
	hint := "nail a block or a strip behind it"
	spans := freeSpans(j.wall.Finished, p.y, j.keep(true))
	if q, ok := p.nearest(p.start, spans); ok {
		all := func(at spot) bool { got := p.score(at); return got.seams == 0 && got.ends == 0 }
		if text, ok := j.typeable(p.strip, p.y, q.start, all); ok {
			hint = text + " bears every edge; or " + hint
		}
	}
	j.add(finding.Finding{
		Place: j.board.Across.At, Kind: finding.Warning, Rule: "outer edge not borne",
		What:    fmt.Sprintf("board %s: %s on too little of a stud", j.board.Name, count(len(bad), "outer edge bears", "outer edges bear")),
		Found:   list(bad) + " (" + j.corner() + ")",
		Allowed: j.say(rules.BoardBearing) + " or more",
		Hint:    hint,
		Source:  rules.BoardBearingSource,
	})
}

// reportBoxes warns of boxes and the like behind the row.
func (j *job) reportBoxes(p placed) {
	for _, i := range j.over(p.spot, p.y, false) {
		k := j.wall.Keep[i]
		j.add(finding.Finding{
			Kind: finding.Warning, Rule: "board over a box",
			What:    fmt.Sprintf("board %s covers a %s", j.board.Name, j.wall.Names[i]),
			Found:   fmt.Sprintf("%s at %s across and %s up", j.wall.Names[i], j.span(k.X()), j.span(k.Y())),
			Allowed: "no box behind a board; behind a hole in it, flush with its face when the board burns and at most " + j.say(rules.BoxSetBack) + " behind it when it does not",
			Hint:    "move the row, or have a licensed electrician bring the box forward",
			Source:  rules.BoxSetBackSource,
		})
	}
}

// reportHeight gives the height at which the boards hang, and warns where they
// are as tall as the space.
func (j *job) reportHeight(row *Row) {
	y := row.Box.Y()
	j.add(finding.Finding{
		Place: j.board.Up.At, Kind: finding.Note, Rule: "height of boards",
		What: "no accessibility rule names the height of fixed boards; the reach range is for things that are operated",
		Found: fmt.Sprintf("board %s: bottom %s, centre %s, top %s above the finished floor",
			j.board.Name, j.say(y.From), j.say(y.Mid()), j.say(y.To)),
		Allowed: fmt.Sprintf("institutions put the centre of a writing board at %s or %s; reach %s to %s",
			j.say(rules.BoardCentreLow), j.say(rules.BoardCentreHigh), j.say(rules.ReachLow), j.say(rules.ReachHigh)),
		Source: rules.BoardCentreSource + "; " + rules.ReachSource,
	})
	if head := j.wall.Ceiling - y.To; j.wall.Ceiling > 0 && head < rules.BoardHeadGap {
		j.add(finding.Finding{
			Place: j.board.Up.At, Kind: finding.Warning, Rule: "no gap over the boards",
			What:    "board " + j.board.Name + " leaves too little over it to lift the sheets in",
			Found:   j.say(head) + " under the ceiling or the structure",
			Allowed: "about " + j.say(rules.BoardHeadGap),
			Hint:    "cut to: " + j.sayDown(j.wall.Ceiling-rules.BoardHeadGap-y.From),
			Source:  rules.BoardHeadGapSource,
		})
	}
}

// reportSheet reports on weight, thin sheets and anchors.
func (j *job) reportSheet(row *Row) {
	b := j.board
	if b.Size.W*b.Size.H >= rules.BoardTwoPersonArea {
		j.add(finding.Finding{
			Kind: finding.Caution, Rule: "two-person lift",
			What:   "Sheets of this size are a two-person lift. Steel-faced boards are heavier still.",
			Found:  fmt.Sprintf("%d sheets of %s x %s", b.Count, j.say(b.Size.W), j.say(b.Size.H)),
			Source: rules.BoardTwoPersonSource,
		})
	}
	known := b.Sheet.Given() && !b.Sheet.None && !b.Sheet.Unknown && b.Sheet.Thick > 0
	if known && row.Bearer == "studs" && b.Sheet.Thick < rules.BoardThin && j.room.Walls[b.Wall].Inside.None {
		j.add(finding.Finding{
			Place: b.Sheet.At, Kind: finding.Warning, Rule: "thin sheet on bare studs",
			What:    "board " + b.Name + " is thin to go straight on studs",
			Found:   j.profile(),
			Allowed: j.say(rules.BoardThin) + " or more straight on studs",
			Hint:    "line the wall first, with 1/2 in (12.5 mm) gypsum for one",
			Source:  rules.BoardThinSource,
		})
	}
	if j.wall.Solid {
		j.add(finding.Finding{
			Kind: finding.Caution, Rule: "anchors in masonry",
			What:   "Use anchors made for what this wall is built of, and for the weight of the boards. Hollow block, soft brick and old stone each hold differently; try one first.",
			Found:  "wall " + j.wallName() + ": " + string(j.made),
			Source: rules.BoardAnchorSource,
		})
	}
}

// reportServices cautions of cables and pipes that screws could hit.
func (j *job) reportServices(row *Row) {
	var hit []string
	reach := row.Box.Inset(-rules.CableSetBack)
	for _, s := range j.wall.Services {
		if s.X().From <= reach.Max.X && s.X().To >= reach.Min.X && s.Y().From <= reach.Max.Y && s.Y().To >= reach.Min.Y {
			hit = append(hit, fmt.Sprintf("%s across, %s up", j.span(s.X()), j.span(s.Y())))
		}
	}
	if len(hit) == 0 {
		return
	}
	named := j.room.Show
	named.Named = true
	j.add(finding.Finding{
		Kind: finding.Caution, Rule: "services behind screws",
		What: "Cables or pipes run behind these boards. A screw that goes more than " + named.Say(rules.CableSetBack) +
			" into a stud can reach them. Find them and choose the screws before fixing.",
		Found:  list(hit) + " (" + j.corner() + ")",
		Source: rules.CableSetBackSource,
	})
}

// count prints n with the word for one or for several.
func count(n int, one, several string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, several)
}

// list joins items, and says how many more there are after the fourth.
func list(items []string) string {
	if len(items) > 4 {
		return strings.Join(items[:4], "; ") + fmt.Sprintf("; and %d more", len(items)-4)
	}
	return strings.Join(items, "; ")
}

// and joins items as a sentence does, the first few of them.
func and(items []string) string {
	switch n := len(items); {
	case n == 0:
		return ""
	case n == 1:
		return items[0]
	case n > 5:
		return strings.Join(items[:4], ", ") + " and on"
	default:
		return strings.Join(items[:n-1], ", ") + " and " + items[n-1]
	}
}
