package check

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// bounds finds figures that are slips of the pen: what lies outside the room,
// or closer or thicker than anything that is built.
func (k *checker) bounds() {
	for i := range k.walls {
		w := &k.room.Walls[i]
		if s := w.Frame.Studs; s.Spacing > 0 && s.Spacing < rules.ClosestCentres {
			k.on(i, k.tooClose("studs of wall "+w.Name, s.Spacing, s.At))
		}
		for j, s := range k.walls[i].Services {
			if s.Unknown || j >= len(w.Services) {
				continue
			}
			if s.Box.Min.X > k.walls[i].Length || s.Box.Max.X < 0 {
				k.on(i, finding.Finding{
					Place: w.Services[j].At, Kind: finding.Error, Rule: "outside the wall",
					What:    s.What + " is not in wall " + w.Name,
					Found:   k.say(s.Box.Min.X) + " from the left end",
					Allowed: "0 to " + k.say(k.walls[i].Length) + ", the length of the wall",
					Hint:    "left and right are as you face the wall from inside the room",
				})
			}
		}
	}
	c, joists := k.ceiling, k.room.Above.Joists
	if joists != nil && joists.Spacing > 0 && joists.Spacing < rules.ClosestCentres {
		k.overAll(k.tooClose("joists", joists.Spacing, joists.At))
	}
	if c == nil {
		return
	}
	if joists != nil && !joists.Unknown && len(c.Joists) == 0 && (joists.Spacing > 0 || len(joists.Centres) > 0) {
		k.overAll(finding.Finding{
			Place: joists.At, Kind: finding.Error, Rule: "joists outside the room",
			What:    "no joist lies over the room",
			Found:   "first centre " + k.say(joists.First) + " from wall " + k.room.Walls[joists.From].Name,
			Allowed: "less than the room is wide there",
		})
	}
	if room := c.Clear + c.TeeHeight; c.PanelThick > room {
		k.overAll(finding.Finding{
			Place: k.room.Ceiling.Panel.Thick.At, Kind: finding.Error, Rule: "panel too thick",
			What:    "a panel is thicker than the space over the ceiling",
			Found:   k.say(c.PanelThick),
			Allowed: "less than " + k.say(max(0, room)) + ", from the flange of the tees to the lowest thing above",
		})
	}
	weighed := k.room.Ceiling.Panel.Weight.GramsPerM2 > 0
	for _, l := range k.room.Lights {
		weighed = weighed || l.Weight.Given()
	}
	if weighed {
		k.overAll(finding.Finding{
			Place: k.room.Ceiling.At, Kind: finding.Warning, Rule: "loads not judged",
			What:   "the weight of panels and lights on the tees is not judged here: compare it with what the tees are made to carry",
			Source: "ASTM C635 classes: light 5, intermediate 12, heavy 16 lb/ft of main tee, as a trade note gives them",
		})
	}
}

// tooClose is the finding of things set closer than any are.
func (k *checker) tooClose(what string, spacing geom.Length, at finding.Place) finding.Finding {
	return finding.Finding{
		Place: at, Kind: finding.Error, Rule: "too close",
		What: "the " + what + " stand closer than any are set", Found: "spacing " + k.say(spacing),
		Allowed: k.say(rules.ClosestCentres) + " or more", Hint: "16 or 24 in, 400 or 600 mm are usual",
	}
}
