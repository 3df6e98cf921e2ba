package ceiling

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// height finds the face of the ceiling, and says when it cannot hang there.
func (b *builder) height() bool {
	w, o := b.want, &b.over
	c := b.out
	c.TeeFace, c.TeeHeight = b.teeFace, b.tee
	c.Structure = o.structure
	asked := w.FaceFromFloor
	fromFloor := asked.Given()
	switch {
	case fromFloor:
		c.Face = asked.Value
	case !o.known:
		b.find(finding.Finding{
			Place: w.FaceBelowStructure.At, Kind: finding.Error, Rule: "height of the ceiling",
			What: "the ceiling is measured from a structure whose height is not known",
			Hint: "give floor to structure at the walls, or face from floor",
		})
		return false
	default:
		asked = w.FaceBelowStructure
		c.Face = o.structure - asked.Value
	}
	if !o.known {
		b.find(finding.Finding{
			Place: w.At, Kind: finding.Warning, Rule: "space above the ceiling",
			What: "the height of the structure is not known; the space above is not checked, no hangers are placed",
			Hint: "give floor to structure at the walls",
		})
		return true
	}
	usual := b.usual(o.structure)
	if c.Face+b.tee >= o.structure {
		f := finding.Finding{
			Place: asked.At, Kind: finding.Error, Rule: "ceiling above the structure",
			What:    "the ceiling is above the structure",
			Found:   fmt.Sprintf("%s; lowest structure %s, at wall %s", b.say(c.Face), b.say(o.structure), o.wall),
			Allowed: fmt.Sprintf("less than %s (tees %s high under %s)", b.say(o.structure-b.tee), b.say(b.tee), b.say(o.structure)),
			Hint:    fmt.Sprintf("%s leaves %s clear above the tees", b.say(usual), b.say(b.clear)),
			Source:  rules.ClearAboveSource,
		}
		if !fromFloor {
			f.What = "the ceiling has no room below the structure"
			f.Found = fmt.Sprintf("%s below the structure", b.say(asked.Value))
			f.Allowed = fmt.Sprintf("more than %s, the height of the tees", b.say(b.tee))
			f.Hint = fmt.Sprintf("%s leaves %s clear above the tees", b.say(o.structure-usual), b.say(b.clear))
		}
		b.find(f)
		return false
	}
	if c.Face <= 0 {
		b.find(finding.Finding{
			Place: asked.At, Kind: finding.Error, Rule: "height of the ceiling",
			What:  "the ceiling is not above the floor",
			Found: b.say(c.Face) + " above the floor",
		})
		return false
	}
	return true
}

// usual returns the highest face that leaves the clear height above the tees.
func (b *builder) usual(under geom.Length) geom.Length { return under - b.tee - b.clear }

// space measures what is free above the tees, and says where it is too little.
func (b *builder) space() {
	c, o := b.out, &b.over
	if !o.known {
		return
	}
	low, index := o.structure, -1
	room := b.outline.Bounds()
	for i := range o.things {
		if t := &o.things[i]; t.box.Overlaps(room) && t.underside < low {
			low, index = t.underside, i
		}
	}
	for i := range c.Obstacles {
		if c.Obstacles[i].Underside > 0 {
			c.Obstacles[i].Clear = c.Obstacles[i].Underside - b.top()
		}
	}
	c.Clear = low - b.top()
	at := b.want.FaceFromFloor.At
	if !b.want.FaceFromFloor.Given() {
		at = b.want.FaceBelowStructure.At
	}
	for i := range o.things {
		t := &o.things[i]
		if t.underside >= b.top() || !t.box.Overlaps(room) {
			continue
		}
		b.find(finding.Finding{
			Place: at, Kind: finding.Warning, Rule: "ceiling above a thing overhead",
			What:    fmt.Sprintf("the tees run into the %s", t.what),
			Found:   fmt.Sprintf("tops of the tees at %s; underside of the %s at %s", b.say(b.top()), t.what, b.say(t.underside)),
			Allowed: fmt.Sprintf("a face at %s or lower (tees %s high under %s)", b.say(t.underside-b.tee), b.say(b.tee), b.say(t.underside)),
			Hint:    fmt.Sprintf("face from floor %s leaves %s clear above the tees; or move or box in the %s", b.say(b.usual(low)), b.say(b.clear), t.what),
			Source:  rules.LowestSource,
		})
	}
	if c.Clear >= b.clear || c.Clear < 0 {
		return
	}
	over := "the structure at wall " + o.wall
	if index >= 0 {
		over = "the " + o.things[index].what
	}
	wanted := "usual"
	if b.clearAsk {
		wanted = "wanted"
	}
	b.find(finding.Finding{
		Place: at, Kind: finding.Warning, Rule: "clear height above the tees",
		What:    "less clear height above the tees than is " + wanted,
		Found:   fmt.Sprintf("%s under %s, at %s from the floor", b.say(c.Clear), over, b.say(low)),
		Allowed: b.say(b.clear) + " or more",
		Hint:    fmt.Sprintf("face from floor %s leaves %s", b.say(b.usual(low)), b.say(b.clear)),
		Source:  rules.ClearAboveSource,
	})
}

// tilting says when a rigid panel cannot be tilted in.
func (b *builder) tilting() {
	c := b.out
	if !b.over.known {
		return
	}
	if b.thick > 0 {
		c.TiltFlat = b.tiltOver(b.panel[0], b.panel[1], b.thick)
		if c.Clear >= b.thick && c.TiltFlat > c.Clear {
			b.find(finding.Finding{
				Place: b.want.Panel.Thick.At, Kind: finding.Warning, Rule: "tilting panels in",
				What:    "only panels that bend can be tilted in everywhere",
				Found:   fmt.Sprintf("%s clear above the tees, %s above the flange", b.say(c.Clear), b.say(c.Clear+b.tee)),
				Allowed: fmt.Sprintf("%s above the tees, %s above the flange, for a rigid panel %s thick", b.say(c.TiltFlat), b.say(c.TiltFlat+b.tee), b.say(b.thick)),
				Hint:    "lay rigid panels and lights before the last cross tee beside them",
				Source:  rules.TiltSource,
			})
		}
		return
	}
	b.find(finding.Finding{
		Place: b.want.Panel.Thick.At, Kind: finding.Warning, Rule: "tilting panels in",
		What: "the thickness of the panels is not known; whether they can be tilted in is not checked",
		Hint: "give the panel's thickness",
	})
}
