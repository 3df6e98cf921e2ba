package ceiling

import (
	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
	"roomwright/geom/rules"
	"roomwright/geom/survey"
)

// Build sets out the ceiling of r on the surveyed plan. It returns nil when no
// ceiling is wanted, or when none can be set out and the findings say why. When
// a finding is an error, the ceiling is not fit to be built.
func Build(r *room.Room, plan survey.Plan) (*Ceiling, []finding.Finding) {
	if r.Ceiling == nil {
		return nil, nil
	}
	b := &builder{settings: settle(r), room: r, want: r.Ceiling, out: &Ceiling{}, outline: plan.Finished, sides: plan.Sides}
	if !b.build(plan) {
		return nil, b.findings
	}
	return b.out, b.findings
}

// build does the work of Build; false when nothing can be set out.
func (b *builder) build(plan survey.Plan) bool {
	var ok bool
	if b.ground, ok = groundOf(plan.Finished); !ok || len(b.room.Walls) != 4 {
		b.find(finding.Finding{
			Place: b.want.At, Kind: finding.Error, Rule: "shape of the room",
			What:    "this edition sets out ceilings in four-sided rooms only",
			Found:   plural(len(plan.Finished), "corner"),
			Allowed: "four walls, listed clockwise, near enough square",
		})
		return false
	}
	if b.taped, ok = groundOf(plan.Taped); !ok {
		b.taped = b.ground
	}
	b.look()
	if !b.height() || !b.ask() || !b.choose() {
		return false
	}
	c, g := b.out, &b.chosen.grid
	c.Outline = plan.Finished
	c.ModuleX, c.ModuleY = b.search.module[across], b.search.module[down]
	c.MainsAlongX = g.run == across
	c.MainStock = b.stock
	c.PanelThick = b.thick
	b.lines()
	b.angles()
	b.mains()
	b.setLights()
	b.crosses()
	b.hangers()
	b.hangLights()
	b.cells()
	b.pieces()

	b.borders()
	b.follow()
	b.lengths()
	b.judgeLights()
	b.symmetry()
	b.askedMains()
	b.space()
	b.bearing()
	b.tilting()
	b.tiltLights()
	b.cautions()
	return true
}

// askedMains says when a line asked for is missed.
func (b *builder) askedMains() {
	if b.chosen.score[aimLines] == 0 {
		return
	}
	lines := [2][]geom.Length{b.chosen.lay[across].lines, b.chosen.lay[down].lines}
	for i, l := range append(append([]room.GridLine{}, b.want.Grid.Lines...), b.want.Mains.Line...) {
		a := axisOf(l.Wall)
		at := b.ground.off(l.Wall, l.Value.Value)
		kind, rule := finding.Warning, "line of the grid"
		met := false
		near := geom.Length(-1)
		for k, c := range lines[a] {
			if i >= len(b.want.Grid.Lines) && (a != b.chosen.square() || !b.chosen.main(k)) {
				continue
			}
			met = met || c == at
			if near < 0 || (c-at).Abs() < (near-at).Abs() {
				near = c
			}
		}
		if met || near < 0 {
			continue
		}
		if !l.Value.IfFits {
			kind = finding.Error
		}
		from := b.ground.reach[a].highIn - near
		if l.Wall == a.low() {
			from = near - b.ground.reach[a].lowIn
		}
		b.find(finding.Finding{
			Place: l.Value.At, Kind: kind, Rule: rule,
			What:    "a line asked for is not a line of the set-out",
			Found:   b.say(l.Value.Value) + " from wall " + b.room.Walls[l.Wall].Name,
			Allowed: b.say(from) + " is the nearest",
			Source:  rules.BorderSource,
		})
	}
}

// cautions says what is for licensed people and local codes.
func (b *builder) cautions() {
	if ask, source := rules.SeismicAsk(b.want.Seismic); ask != "" {
		b.find(finding.Finding{Place: b.want.At, Kind: finding.Caution, Rule: "earthquakes", What: ask, Source: source})
	}
	if len(b.out.Lights) > 0 {
		what := "lights: have them wired or checked by a licensed person, fasten each to the grid and the grid to the structure"
		if !b.shaken() {
			what += "; ask whether the local code wants wires from each light to the structure"
		}
		b.find(finding.Finding{
			Place: b.want.At, Kind: finding.Caution, Rule: "lights in a grid", What: what, Source: rules.LightFastenSource,
		})
	}
	b.find(finding.Finding{
		Place: b.want.At, Kind: finding.Caution, Rule: "fire and air",
		What:   "sprinklers, smoke alarms and air outlets: ask the fire authority before the ceiling is lowered; none is placed or moved here",
		Source: rules.Habit,
	})
}
