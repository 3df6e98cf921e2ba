package framing

import (
	"strconv"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

func itoa(n int) string { return strconv.Itoa(n) }

// flatOK reports whether a single flat member of the studs' section would be
// allowed over an opening.
func (b *builder) flatOK(o *Opening) bool {
	return b.w.Bearing == room.No &&
		o.Rough.W() <= rules.FlatHeaderWidest &&
		b.w.PlateLow-(o.Rough.Max.Y+b.t) <= rules.FlatHeaderRise
}

// carries reports whether the wall is taken to carry load; not known is yes.
func (b *builder) carries() bool { return b.w.Bearing != room.No }

// carriesWord says what is known of that.
func (b *builder) carriesWord() string {
	if b.w.Bearing == room.Yes {
		return "wall " + b.w.Name + " carries load"
	}
	return "it is not known whether wall " + b.w.Name + " carries load"
}

// checkHeader judges what can be judged without sizing the header.
func (b *builder) checkHeader(p *opening, o *Opening) {
	h := &p.o.Header
	at := place(h.At, p.o.At)
	if h.Flat {
		b.checkFlat(p, o, at)
	}
	b.checkThickness(p, at)
	if !b.carries() {
		return
	}
	if p.jacks == 1 && o.Rough.W() > rules.OneJackWidest {
		b.say(finding.Warning, at, "one jack under a wide header",
			"opening "+o.Name+" is wide for one jack a side where "+b.carriesWord(),
			"rough "+b.len(o.Rough.W())+" wide", "up to "+b.len(rules.OneJackWidest)+" with one jack a side",
			"two jacks a side, or as the engineer says", rules.OneJackSource)
	}
	bearing := geom.Length(p.jacks)*b.t - p.letIn/2
	if bearing < rules.HeaderBearing && !h.Flat {
		b.say(finding.Warning, at, "header bears too little",
			"the header of opening "+o.Name+" bears on less than is asked where "+b.carriesWord(),
			b.len(bearing)+" at each end, with "+b.len(p.letIn)+" left out to get it in",
			b.len(rules.HeaderBearing)+" at least",
			"let-in: 0, and cut it to fit from king to king; or two jacks a side", rules.HeaderBearingSource)
	}
}

// checkFlat judges a flat header.
func (b *builder) checkFlat(p *opening, o *Opening, at finding.Place) {
	rise := b.w.PlateLow - o.Header.Max.Y
	found := "rough " + b.len(o.Rough.W()) + " wide; " + b.len(rise) + " from the top of the header to the plates"
	allowed := "in a wall that carries nothing, up to " + b.len(rules.FlatHeaderWidest) + " wide and " +
		b.len(rules.FlatHeaderRise) + " under the plates"
	switch {
	case b.carries():
		b.say(finding.Error, at, "flat header where load may come",
			"opening "+o.Name+" has a flat header, and "+b.carriesWord(), found, allowed,
			"have a header sized by an engineer or the building department", rules.FlatHeaderSource)
	case o.Rough.W() > rules.FlatHeaderWidest || rise > rules.FlatHeaderRise:
		b.say(finding.Warning, at, "flat header not allowed here",
			"a flat header is not allowed over opening "+o.Name, found, allowed,
			"put the header on edge: plies such as 2 of 2x6", rules.FlatHeaderSource)
	}
}

// checkThickness compares the thickness of a header with the depth of the studs.
func (b *builder) checkThickness(p *opening, at finding.Place) {
	h := &p.o.Header
	n := geom.Length(plies(h))
	sum := n*h.Timber.Thick + (n-1)*h.Filler
	parts := itoa(plies(h)) + " plies of " + b.exact(h.Timber.Thick)
	if h.Filler > 0 && n > 1 {
		parts += ", " + itoa(plies(h)-1) + " filler of " + b.exact(h.Filler)
	}
	if h.Flat {
		sum = h.Timber.Wide
		parts = "a flat " + h.Timber.Name
	}
	off := sum - b.w.Depth
	found := parts + ": " + b.exact(sum) + "; studs " + b.exact(b.w.Depth) + " deep"
	allowed := "within " + b.exact(rules.HeaderMisfit)
	hint := ""
	if !h.Flat && n > 1 && b.w.Depth > n*h.Timber.Thick {
		hint = "a filler of " + b.exact((b.w.Depth-n*h.Timber.Thick)/(n-1)) + " between plies brings it flush"
	}
	switch {
	case off == 0:
	case off.Abs() <= rules.HeaderMisfit:
		b.say(finding.Note, at, "header not flush",
			"the header of opening "+p.o.Name+" is not quite as thick as the studs are deep", found, allowed, "",
			rules.HeaderMisfitSource)
	case off < 0:
		b.say(finding.Warning, at, "header not flush",
			"the header of opening "+p.o.Name+" is thinner than the studs are deep", found, allowed, hint, rules.HeaderMisfitSource)
	default:
		b.say(finding.Warning, at, "header not flush",
			"the header of opening "+p.o.Name+" is thicker than the studs are deep", found, allowed, hint, rules.HeaderMisfitSource)
	}
}

// exact prints a thickness finer than other lengths.
func (b *builder) exact(l geom.Length) string {
	step := geom.Inch / 64
	if b.r.Show.Form == measure.MillimetresOnly {
		step = geom.Millimetre / 10
	}
	return measure.Show{Form: b.r.Show.Form, To: step}.Say(l)
}

// nails lists how the sticks of an opening are nailed.
func (b *builder) nails(p *opening, o *Opening) {
	add := func(j rules.NailedJoint) {
		n := rules.Nailed(j)
		o.Nails = append(o.Nails, Joint{Where: n.Where, Nails: n.Nails, Source: n.Source})
	}
	h := &p.o.Header
	if plies(h) > 1 && !h.Flat {
		add(rules.NailHeaderPlies)
		thick := geom.Length(plies(h))*h.Timber.Thick + geom.Length(plies(h)-1)*h.Filler
		if thick <= 7*geom.Inch/2 {
			n := &o.Nails[len(o.Nails)-1]
			n.Nails += "; drive at a slight angle, the nail is as long as the header is thick"
			n.Source += "; " + rules.NailPointSource
		}
	}
	if b.fresh() {
		add(rules.NailPlateToFloor)
		if b.topPlates() > 1 {
			add(rules.NailDoubleTop)
		}
	}
	add(rules.NailPlateToStud)
	add(rules.NailStudToStud)
	add(rules.NailHeaderEnd)
	if h.Flat {
		add(rules.NailFlatHeader)
	}
	if p.sill > 0 {
		add(rules.NailSillEnd)
	}
	below, above := false, false
	for i := range b.sticks {
		if m := &b.sticks[i]; m.Opening == p.index {
			below = below || m.Role == CrippleBelow
			above = above || m.Role == CrippleAbove
		}
	}
	if below && p.sill > 0 {
		add(rules.NailSillToCripple)
	}
	if above {
		add(rules.NailHeaderToCripple)
	}
	if len(o.Packs) > 0 {
		add(rules.NailPacking)
	}
}
