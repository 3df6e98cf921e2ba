package check

import (
	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/room"
)

// checker holds what is looked at and what was found.
type checker struct {
	room    *room.Room
	walls   []framing.Wall
	boards  []lining.Row
	ceiling *ceiling.Ceiling // nil when there is none
	list    []finding.Finding
}

// Check returns what there is to say about the room and its results. A nil
// ceiling is none.
func Check(r *room.Room, walls []framing.Wall, boards []lining.Row, c *ceiling.Ceiling) []finding.Finding {
	k := &checker{room: r, walls: walls, boards: boards, ceiling: c}
	for i := range walls {
		cut := k.cuts(i)
		if len(cut) > 0 {
			k.load(i, cut)
			k.duty(i, cut)
			k.live(i)
			k.services(i)
			k.lead(i)
			k.asbestosInWall(i)
			k.dust(i)
			k.permit(i)
		}
		k.newWall(i)
		for j := range walls[i].Openings {
			o := &walls[i].Openings[j]
			k.glazing(i, o)
			k.underCeiling(i, o)
		}
		k.doorsUnderCeiling(i)
	}
	k.bounds()
	k.overhead()
	k.linings()
	return k.list
}

// cuts returns the openings that are cut into wall i as it stands, by index in
// the room; a wall that is still to be built is not cut.
func (k *checker) cuts(i int) []int {
	if !k.room.Walls[i].MadeOf.Framed() || k.room.Walls[i].MadeOf == room.NewStuds {
		return nil
	}
	var out []int
	for j := range k.room.Openings {
		if k.room.Openings[j].Wall == i {
			out = append(out, j)
		}
	}
	return out
}

// say prints a length with its unit, since most of it is read on sheets.
func (k *checker) say(l geom.Length) string {
	show := k.room.Show
	show.Named = true
	return show.Say(l)
}

// on keeps a finding for the sheet of wall i.
func (k *checker) on(i int, f finding.Finding) {
	f.On = "wall " + k.room.Walls[i].Name
	if f.Place == (finding.Place{}) {
		f.Place = k.room.Walls[i].At
	}
	k.list = append(k.list, f)
}

// overAll keeps a finding for the sheet of the ceiling.
func (k *checker) overAll(f finding.Finding) {
	f.On = "ceiling"
	if f.Place == (finding.Place{}) && k.room.Ceiling != nil {
		f.Place = k.room.Ceiling.At
	}
	k.list = append(k.list, f)
}
