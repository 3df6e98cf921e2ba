package check

import (
	"fmt"
	"slices"
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// load asks and answers whether wall i, which is cut, carries anything.
func (k *checker) load(i int, cut []int) {
	w := &k.room.Walls[i]
	f := &w.Frame
	name := "wall " + w.Name
	switch f.Bearing {
	case room.NotSaid:
		at := k.room.Openings[cut[0]].At
		found := "no `bearing` in the frame of " + name
		if f.At.Line > 0 {
			found += fmt.Sprintf(" (%d:%d)", f.At.Line, f.At.Column)
		}
		k.on(i, finding.Finding{
			Place: at, Kind: finding.Error, Rule: "load-bearing not answered",
			What:    "is " + name + " load-bearing? asked before it is cut, and not answered",
			Found:   found,
			Allowed: "bearing: yes, no or unknown",
			Hint:    "add bearing: unknown if you do not know",
			Source:  rules.BearingShoringSource,
		})
	case room.Yes:
		k.on(i, finding.Finding{
			Place: f.BearingAt, Kind: finding.Caution, Rule: "wall carries load",
			What: "Wall " + w.Name + " carries load. Before a stud is cut, what rests on it must be shored on both sides down to something solid. " +
				"An engineer or the building department sizes the header and its posts; this drawing sizes neither.",
			Found:  name + ": bearing: yes",
			Source: rules.BearingShoringSource,
		})
	case room.Unknown:
		k.on(i, finding.Finding{
			Place: f.BearingAt, Kind: finding.Caution, Rule: "load not known",
			What: "Nobody has said whether wall " + w.Name + " carries load: take it that it does, and cut nothing before an engineer has looked. " +
				"Signs of load are joists or rafters across it, lapped or ending on it; a wall or beam straight above or below; a doubled top plate or posts. " +
				"Outside walls carry load, and joists along a wall are no proof that it carries none.",
			Found:  name + ": bearing: unknown" + k.joistsOver(i),
			Source: rules.BearingSignsSource,
		})
	case room.No:
		word := "not said by whom"
		if f.BearingBy != "" {
			word = "by " + f.BearingBy
		}
		k.on(i, finding.Finding{
			Place: f.BearingAt, Kind: finding.Caution, Rule: "taken to carry nothing",
			What: "Wall " + w.Name + " is drawn as one that carries nothing but itself. " +
				"Stop and ask an engineer at any sign that it does: joists ending on it, a wall above it, a saw that binds.",
			Found:  name + ": bearing: no, " + word + k.joistsOver(i),
			Source: rules.BearingSignsSource,
		})
	}
}

// joistsOver says how the joists run over wall i, when that is known.
func (k *checker) joistsOver(i int) string {
	j := k.room.Above.Joists
	switch {
	case j == nil:
		return ""
	case j.RunFrom == i || j.RunTo == i:
		return "; the joists overhead run square to it, which is a sign of load"
	}
	return "; the joists overhead run along it, which proves nothing"
}

// duty cautions of what else a wall may be there for.
func (k *checker) duty(i int, cut []int) {
	w := &k.room.Walls[i]
	duty := w.Frame.OtherDuty
	if slices.Equal(duty, []string{"none"}) {
		return
	}
	f := finding.Finding{
		Place: w.Frame.At, Kind: finding.Caution, Rule: "other duty of a wall",
		Found:  "wall " + w.Name + ": other duty not said",
		Source: rules.Habit,
	}
	if len(duty) == 0 || slices.Contains(duty, "unknown") {
		f.What = "It is not known whether wall " + w.Name + " braces the building, or is a fire-rated, party or outside wall. " +
			"Find out before it is cut; such walls are not cut without the building department."
		k.on(i, f)
		return
	}
	f.Found = "wall " + w.Name + ": " + strings.Join(duty, ", ")
	f.What = "Wall " + w.Name + " has another duty: " + strings.Join(duty, ", ") + ". " +
		"It is not to be cut before an engineer or the building department has agreed."
	if slices.Contains(duty, "fire-rated") || slices.Contains(duty, "party") {
		for _, j := range cut {
			if o := &k.room.Openings[j]; o.Glazing.Given && !o.Glazing.Sheet.None {
				f.What += " Glazing in it needs their approval too."
				break
			}
		}
	}
	k.on(i, f)
}

// newWall asks of a wall that is to be built whether it is to carry anything.
func (k *checker) newWall(i int) {
	w := &k.room.Walls[i]
	if w.MadeOf != room.NewStuds || w.Frame.Bearing == room.No {
		return
	}
	if w.Frame.Bearing == room.NotSaid {
		k.on(i, finding.Finding{
			Place: w.At, Kind: finding.Error, Rule: "load-bearing not answered",
			What:    "is wall " + w.Name + " to carry load? asked before it is built, and not answered",
			Found:   "no `bearing` in its frame",
			Allowed: "bearing: yes, no or unknown",
			Hint:    "add bearing: unknown if you do not know",
			Source:  rules.BearingShoringSource,
		})
		return
	}
	answer := map[room.Answer]string{room.Yes: "yes", room.Unknown: "unknown"}[w.Frame.Bearing]
	k.on(i, finding.Finding{
		Place: w.Frame.BearingAt, Kind: finding.Caution, Rule: "new wall that may carry load",
		What: "Wall " + w.Name + " is to be built and may have to carry load. " +
			"Its studs, plates, headers and what stands under it are for an engineer or the building department to size; this drawing sizes none of them.",
		Found:  "wall " + w.Name + ": bearing: " + answer,
		Source: rules.BearingShoringSource,
	})
}
