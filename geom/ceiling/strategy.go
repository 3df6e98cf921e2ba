package ceiling

import (
	"fmt"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// choose searches the set-out and records it with the runner-up. It is false
// when no grid can be laid.
func (b *builder) choose() bool {
	list := b.search.best()
	if len(list) == 0 {
		b.find(finding.Finding{
			Place: b.want.Grid.At, Kind: finding.Error, Rule: "set-out of the grid",
			What: "no grid of this module can be laid in this room", Source: rules.OutOfSquareSource,
		})
		return false
	}
	b.chosen = list[0]
	why := b.reasons(&list[0])
	next := b.search.runnerUp(list)
	if next >= 0 {
		why = append(why, "next best: "+b.across(&list[next])+"; "+b.against(&list[0], &list[next]))
	}
	b.out.Strategy = []Choice{b.choice(&list[0], strings.Join(why, "; "))}
	if next >= 0 {
		b.out.Strategy = append(b.out.Strategy, b.choice(&list[next], b.across(&list[next])+"; falls behind: "+b.against(&list[next], &list[0])))
	}
	return true
}

// choice gives the figures of one set-out.
func (b *builder) choice(t *trial, why string) Choice {
	x, d := &t.lay[across], &t.lay[down]
	return Choice{
		LeftBorder: x.low(), RightBorder: x.high(), TopBorder: d.low(), BottomBorder: d.high(),
		LeastBorder: min(x.least(), d.least()), CutPanels: int(t.score[aimCuts]), Why: why,
	}
}

// reasons says how the chosen set-out meets its aims, in their order.
func (b *builder) reasons(t *trial) []string {
	s := &b.search
	var list []string
	for _, a := range []axis{across, down} {
		l := &t.lay[a]
		ends := fmt.Sprintf("%s and %s", b.say(l.low()), b.say(l.high()))
		switch {
		case len(l.lines) == 0:
			list = append(list, fmt.Sprintf("%s one cell, %s wide", a.name(), b.say(l.narrow())))
			continue
		case b.same(l.low(), l.high()):
			ends = b.say(l.low()) + " at both ends"
		}
		text := fmt.Sprintf("%s %s between borders of %s", a.name(), plural(len(l.lines)-1, "whole module"), ends)
		if l.uneven() == 0 {
			text += [...]string{", a module on the axis", ", a tee line on the axis"}[len(l.lines)%2]
		}
		switch {
		case l.least() < s.least[a]:
			text += fmt.Sprintf(", under the least of %s", b.say(s.least[a]))
		default:
			text += fmt.Sprintf(", none under %s", b.say(s.least[a]))
		}
		if sl := l.slant(); sl > b.step {
			text += fmt.Sprintf(" (walls out of square: the narrowest place, %s, governs the least border, the widest, %s, that none is over a module)",
				b.say(l.narrow()), b.say(l.wide()))
		}
		list = append(list, text)
	}
	if len(b.kinds) > 0 && t.score[aimMusts] == 0 {
		text := "every light on whole modules"
		if t.score[aimLights] == 0 {
			text += " and where it is wanted"
		}
		list = append(list, text)
	}
	return append(list, plural(int(t.score[aimCuts]), "cut panel"))
}

// across prints the borders of t.
func (b *builder) across(t *trial) string {
	x, d := &t.lay[across], &t.lay[down]
	return fmt.Sprintf("borders %s, %s across and %s, %s down", b.say(x.low()), b.say(x.high()), b.say(d.low()), b.say(d.high()))
}

// against says in which aim t and u differ first.
func (b *builder) against(t, u *trial) string {
	l := func(aim int, v *trial) string { return b.say(geom.Length(v.score[aim])) }
	n := func(aim int, v *trial) string { return fmt.Sprint(v.score[aim]) }
	aim := decided(t.score, u.score)
	switch aim {
	case aimMusts:
		return fmt.Sprintf("lights that miss what they must have, %s against %s", n(aim, t), n(aim, u))
	case aimLeast:
		return fmt.Sprintf("borders short of the least by %s against %s", l(aim, t), l(aim, u))
	case aimLines:
		return fmt.Sprintf("lines asked for and missed, %s against %s", n(aim, t), n(aim, u))
	case aimClear:
		return fmt.Sprintf("lights with something in their way, %s against %s", n(aim, t), n(aim, u))
	case aimLights:
		return fmt.Sprintf("wishes for the lights missed, %s against %s", n(aim, t), n(aim, u))
	case aimEqual:
		return fmt.Sprintf("opposite borders differ by %s against %s", l(aim, t), l(aim, u))
	case aimCuts:
		return fmt.Sprintf("cut panels, %s against %s", n(aim, t), n(aim, u))
	case aimWidest:
		return fmt.Sprintf("least border, %s against %s", b.say(geom.Length(-t.score[aim])), b.say(geom.Length(-u.score[aim])))
	case aimMains:
		return fmt.Sprintf("mains, %s against %s", n(aim, t), n(aim, u))
	case aimPlumb:
		return fmt.Sprintf("mains too far from a joist, %s against %s", n(aim, t), n(aim, u))
	case aimBorders:
		return fmt.Sprintf("least borders together, %s against %s", b.say(geom.Length(-t.score[aim])), b.say(geom.Length(-u.score[aim])))
	case aimEnd:
		return fmt.Sprintf("greatest distance from a wall to a main, %s against %s", l(aim, t), l(aim, u))
	case aims:
		return "alike in every aim"
	}
	return "how evenly the lights lie"
}

// borders says what is amiss with the borders.
func (b *builder) borders() {
	s := &b.search
	for _, a := range []axis{across, down} {
		l := &b.chosen.lay[a]
		b.parity(a, l)
		if len(l.lines) == 0 || l.least() >= s.least[a] {
			continue
		}
		var at []string
		for _, e := range []struct {
			wall  int
			width geom.Length
		}{{a.low(), l.low()}, {a.high(), l.high()}} {
			if e.width < s.least[a] {
				at = append(at, fmt.Sprintf("%s at wall %s", b.say(e.width), b.room.Walls[e.wall].Name))
			}
		}
		f := finding.Finding{
			Place: b.want.Grid.At, Kind: finding.Warning, Rule: "border under the least",
			What:    "border panels narrower than the least border",
			Found:   strings.Join(at, ", "),
			Allowed: b.say(s.least[a]) + " or more",
			Hint:    b.widerBorder(a),
			Source:  rules.BorderSource,
		}
		if w := b.want.Grid.Least; w.Given() && !w.IfFits {
			f.Kind, f.Place = finding.Error, w.At
		} else if w.Given() {
			f.Place = w.At
		}
		b.find(f)
	}
}

// widerBorder says what border there would be without the lines and lights
// that were asked for.
func (b *builder) widerBorder(a axis) string {
	for _, drop := range []string{"lines", "lights", "lines and lights"} {
		s := b.search
		if strings.Contains(drop, "lines") {
			s.must, s.wish, s.mains = [2][]geom.Length{}, [2][]geom.Length{}, nil
		}
		if strings.Contains(drop, "lights") {
			s.kinds = nil
		}
		list := s.best()
		if len(list) > 0 && list[0].lay[a].least() > b.chosen.lay[a].least() {
			return fmt.Sprintf("without the %s asked for, the narrowest border is %s", drop, b.say(list[0].lay[a].least()))
		}
	}
	return "this is the widest least border there is with this module; boxing along one wall changes it"
}

// parity says when a little error in a wall would change the number of modules.
func (b *builder) parity(a axis, l *lay) {
	m := l.module
	k := (l.wide() + b.close).RoundDown(m)
	if k < m || k < l.narrow()-b.close {
		return
	}
	b.find(finding.Finding{
		Place: b.want.Grid.At, Kind: finding.Warning, Rule: "length near a whole number of modules",
		What: fmt.Sprintf("%s the room is so near to a whole number of modules that a small error in the tape changes the borders", a.name()),
		Found: fmt.Sprintf("%s to %s, %d modules are %s; borders %s and %s",
			b.say(l.narrow()), b.say(l.wide()), k/m, b.say(k), b.say(l.low()), b.say(l.high())),
		Allowed: fmt.Sprintf("more than %s off a whole number of modules", b.say(b.close)),
		Hint:    "tape this length again at ceiling height before anything is cut",
		Source:  rules.BorderParity,
	})
}

// follow says when the wall that the grid was to follow is out of square.
func (b *builder) follow() {
	w := b.want.Grid.Follow
	if w < 0 || w > 3 {
		return
	}
	r := b.ground.reach[axisOf(w)]
	slant := r.highOut - r.highIn
	if w == axisOf(w).low() {
		slant = r.lowIn - r.lowOut
	}
	if slant <= b.step {
		return
	}
	b.find(finding.Finding{
		Place: b.want.Grid.At, Kind: finding.Warning, Rule: "wall that the grid follows",
		What:   fmt.Sprintf("the grid is square to wall %s, and wall %s is out of square to it", b.room.Walls[0].Name, b.room.Walls[w].Name),
		Found:  fmt.Sprintf("%s over the length of wall %s", b.say(slant), b.room.Walls[w].Name),
		Hint:   "list that wall first to have the grid parallel to it",
		Source: rules.OutOfSquareSource,
	})
}

// long says which wall angles are made of more than one length.
func (b *builder) lengths() {
	stock := rules.WallAngleStockInches
	if b.metric {
		stock = rules.WallAngleStockMillimetres
	}
	var walls []string
	for i := range b.out.Angles {
		if a := &b.out.Angles[i]; a.Length > stock {
			walls = append(walls, a.Wall)
		}
	}
	if len(walls) == 0 {
		return
	}
	slices.Sort(walls)
	b.find(finding.Finding{
		Place: b.want.Angle.At, Kind: finding.Note, Rule: "length of the wall angle",
		What:   "wall angle longer than one length as sold is butted along the wall",
		Found:  "walls " + strings.Join(walls, ", "),
		Source: rules.WallAngleStockSource,
		Hint:   fmt.Sprintf("lengths of %s are reckoned with", b.say(stock)),
	})
}
