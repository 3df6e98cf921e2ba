package check

import (
	"fmt"
	"strconv"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/measure"
	"roomwright/geom/rules"
)

// overhead cautions of work under the structure, and of headroom.
func (k *checker) overhead() {
	if k.room.Ceiling == nil {
		return
	}
	k.overAll(finding.Finding{
		Kind: finding.Caution, Rule: "ladders",
		What: fmt.Sprintf("Set a ladder one out for %d up, let it stand %s past a landing, and keep you and your tools within its rating. ",
			rules.LadderOutPerUp, k.feet(rules.LadderPast)) +
			"Do not stand on the top step, and use one that does not conduct near wiring.",
		Source: rules.LadderSource,
	})
	if k.old(rules.AsbestosYear) {
		k.overAll(finding.Finding{
			Kind: finding.Caution, Rule: "asbestos",
			What: "An old ceiling, its texture and what lies above it can hold asbestos, and age is no proof either way. " +
				"Have a sample tested before anything is scraped, drilled or taken down.",
			Found: k.age(), Source: rules.AsbestosSource,
		})
	}
	if k.ceiling == nil || k.ceiling.Face >= rules.HeadroomRoom {
		return
	}
	k.overAll(finding.Finding{
		Place: k.room.Ceiling.FaceFromFloor.At,
		Kind:  finding.Caution, Rule: "headroom",
		What: fmt.Sprintf("The ceiling is lower than the %s that habitable rooms usually need. Ask the building department what this room is counted as.",
			k.say(rules.HeadroomRoom)),
		Found:   "ceiling face " + k.say(k.ceiling.Face) + " above the finished floor",
		Allowed: k.say(rules.HeadroomRoom) + " in habitable rooms; " + k.say(rules.HeadroomOther) + " in baths, laundries and basements that nobody lives in",
		Source:  rules.HeadroomSource,
	})
}

// underCeiling compares an opening with the finished ceiling.
func (k *checker) underCeiling(i int, o *framing.Opening) {
	if k.ceiling == nil || k.ceiling.Face <= 0 {
		return
	}
	want := &k.room.Openings[o.Index]
	face := k.ceiling.Face
	top, what := o.Clear.Max.Y, "its clear opening"
	if want.Casing.Width.Value > 0 && want.Casing.Inside {
		top, what = top+want.Casing.Reveal.Value+want.Casing.Width.Value, "its casing"
	}
	if top <= face {
		return
	}
	place := want.Up.At
	k.on(i, finding.Finding{
		Place: place, Kind: finding.Warning, Rule: "opening above the ceiling",
		What:    "opening " + o.Name + " reaches above the finished ceiling",
		Found:   "top of " + what + " " + k.say(top) + " above the floor",
		Allowed: k.say(face) + " or less, the face of the ceiling",
		Hint:    k.lower(o, top-face),
		Source:  rules.Habit,
	})
}

// lower says how far down an opening has to come.
func (k *checker) lower(o *framing.Opening, by geom.Length) string {
	if bottom := o.Clear.Min.Y - by; bottom >= 0 {
		return "lower it by " + k.say(by) + ", to a clear bottom at " + k.say(bottom)
	}
	return "make it " + k.say(by) + " less high, or raise the ceiling"
}

// doorsUnderCeiling compares doors and windows that are there with the
// finished ceiling.
func (k *checker) doorsUnderCeiling(i int) {
	if k.ceiling == nil || k.ceiling.Face <= 0 {
		return
	}
	for j := range k.walls[i].Doors {
		d := &k.walls[i].Doors[j]
		if d.Clear.Empty() {
			continue
		}
		word, why := "door", "the door would not open under it"
		if d.Window {
			word, why = "window", "the ceiling would cross it"
		} else if d.Thing.OpensOut {
			why = "the way through it would be lower"
		}
		top, what := d.Clear.Max.Y, "head"
		if top <= k.ceiling.Face && d.Thing.Casing > 0 {
			top, what, why = top+d.Thing.Casing, "casing", "the wall angle would cross its casing"
		}
		if top <= k.ceiling.Face {
			continue
		}
		k.on(i, finding.Finding{
			Place: d.Thing.At, Kind: finding.Warning, Rule: "door above the ceiling",
			What:    word + " " + d.Name + " reaches above the finished ceiling: " + why,
			Found:   what + " at " + k.say(top) + " above the floor",
			Allowed: k.say(k.ceiling.Face) + " or less, the face of the ceiling",
			Hint:    "face from floor: " + k.say(top) + " or more",
			Source:  rules.Habit,
		})
	}
}

// linings reports boards that reach above the finished ceiling.
func (k *checker) linings() {
	if k.ceiling == nil || k.ceiling.Face <= 0 {
		return
	}
	for i := range k.boards {
		b := &k.boards[i]
		if len(b.Sheets) == 0 || b.Box.Max.Y <= k.ceiling.Face {
			continue
		}
		k.list = append(k.list, finding.Finding{
			Place: b.At, Kind: finding.Warning, Rule: "board above the ceiling",
			What:    "board " + b.Name + " reaches above the finished ceiling",
			Found:   "top at " + k.say(b.Box.Max.Y) + " above the floor",
			Allowed: k.say(k.ceiling.Face) + " or less, the face of the ceiling",
			Hint:    "cut to: " + k.say(max(0, k.ceiling.Face-b.Box.Min.Y)),
			Source:  rules.Habit,
			On:      "board " + b.Name,
		})
	}
}

// feet prints a length that a rule gives in whole feet: in feet, or in metres
// to the nearest tenth with the feet behind.
func (k *checker) feet(l geom.Length) string {
	feet := strconv.FormatInt(int64(l/geom.Foot), 10) + " ft"
	if k.room.Units == measure.Millimetres {
		return strconv.FormatFloat(float64(l)/float64(geom.Metre), 'f', 1, 64) + " m (" + feet + ")"
	}
	return feet
}
