package ceiling

import (
	"fmt"

	"roomwright/geom/finding"
	"roomwright/geom/rules"
)

// bearing says where tees and panels have too little to lie on.
func (b *builder) bearing() {
	if b.gap >= b.leg {
		b.find(finding.Finding{
			Place: b.want.EdgeGap.At, Kind: finding.Warning, Rule: "bearing on the wall angle",
			What:    "the tees end short of the wall angle",
			Found:   fmt.Sprintf("gap %s, leg of the wall angle %s", b.say(b.gap), b.say(b.leg)),
			Allowed: "a gap less than the leg",
			Source:  rules.BearingSource,
		})
	}
	least := rules.PanelBearingInches
	if b.metric {
		least = rules.PanelBearingMillimetres
	}
	if got := b.teeFace/2 - (b.short - b.panel[0]); got < least {
		b.find(finding.Finding{
			Place: b.want.Grid.TeeFace.At, Kind: finding.Warning, Rule: "bearing of the panels",
			What:    "a panel pushed to one side hardly lies on the tee at the other",
			Found:   fmt.Sprintf("%s on a face of %s, panels %s in a module of %s", b.say(max(0, got)), b.say(b.teeFace), b.say(b.panel[0]), b.say(b.short)),
			Allowed: b.say(least) + " or more",
			Hint:    "take panels made for this tee, and give their true size",
			Source:  rules.BearingSource,
		})
	}
}
