package check

import (
	"fmt"
	"strconv"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// live cautions of the cables in a wall that is cut.
func (k *checker) live(i int) {
	w := &k.room.Walls[i]
	k.on(i, finding.Finding{
		Kind: finding.Caution, Rule: "live cables",
		What: "Switch off, lock off and prove dead every circuit in wall " + w.Name + "; open one face by hand and look before a saw touches it. " +
			"Screws reach a cable less than " + k.say(rules.CableSetBack) + " behind a stud's face. Only a licensed electrician moves a cable, and no splice may be buried.",
		Source: rules.CableSetBackSource,
	})
}

// services cautions of pipes in a wall that is cut.
func (k *checker) services(i int) {
	w := &k.room.Walls[i]
	k.on(i, finding.Finding{
		Kind: finding.Caution, Rule: "pipes and ducts",
		What:   "Look above and below wall " + w.Name + " too: any pipe, gas line or duct in the bay stops the job until a licensed person has moved it.",
		Source: rules.Habit,
	})
}

// old reports whether the building is older than year, or of unknown age.
func (k *checker) old(year int) bool { return k.room.Built == 0 || k.room.Built < year }

// age says when the building was built.
func (k *checker) age() string {
	if k.room.Built == 0 {
		return "year of the building not known"
	}
	return "built " + strconv.Itoa(k.room.Built)
}

// lead cautions of old paint on a wall that is cut.
func (k *checker) lead(i int) {
	if !k.old(rules.LeadYear) {
		return
	}
	found := k.age()
	for j := range k.walls[i].Openings {
		o := &k.walls[i].Openings[j]
		found += "; opening " + o.Name + " takes out " + k.area(o.Rough.W(), o.Rough.H()) + " a face"
	}
	text := fmt.Sprintf("Paint from before %d may hold lead: test it, keep the dust in, and keep children and pregnant women away. ", rules.LeadYear)
	binds := fmt.Sprintf("Paid work comes under the US EPA renovation rule: it lets off at most %d ft2 a room, and never demolition or windows.", rules.LeadSquareFeet)
	if k.room.PaidWork == room.No {
		binds = fmt.Sprintf("The US EPA renovation rule binds paid work above %d ft2 a room; the lead is as bad for those who do it themselves.", rules.LeadSquareFeet)
	}
	k.on(i, finding.Finding{
		Kind: finding.Caution, Rule: "lead paint",
		What: text + binds, Found: found,
		Allowed: fmt.Sprintf("up to %d ft2 disturbed in a room where the rule applies", rules.LeadSquareFeet),
		Source:  rules.LeadSource,
	})
}

// area prints the area of a rectangle in square feet, and in square metres
// first where the room is in millimetres.
func (k *checker) area(w, h geom.Length) string {
	feet := strconv.FormatFloat(float64(w*h)/float64(geom.Foot*geom.Foot), 'f', 2, 64) + " ft2"
	if k.room.Units == measure.Millimetres {
		return strconv.FormatFloat(float64(w*h)/float64(geom.Metre*geom.Metre), 'f', 2, 64) + " m2 (" + feet + ")"
	}
	return feet
}

// asbestosInWall cautions of what an old wall may be lined with.
func (k *checker) asbestosInWall(i int) {
	if !k.old(rules.AsbestosYear) {
		return
	}
	k.on(i, finding.Finding{
		Kind: finding.Caution, Rule: "asbestos",
		What:   "Old joint compound, plaster, tiles and loose fill can hold asbestos, whatever their age: have a sample tested before wall " + k.room.Walls[i].Name + " is cut or scraped.",
		Found:  k.age(),
		Source: rules.AsbestosSource,
	})
}

// dust cautions of the dust of cutting.
func (k *checker) dust(i int) {
	k.on(i, finding.Finding{
		Kind: finding.Caution, Rule: "dust",
		What:   "Dust of plaster and masonry holds silica: wet it or extract it, and wear a mask rated for fine dust.",
		Source: rules.Habit,
	})
}

// permit cautions of what is usually asked before a wall is cut.
func (k *checker) permit(i int) {
	k.on(i, finding.Finding{
		Kind: finding.Caution, Rule: "permit",
		What:   "Cutting structure, wiring or a rated wall usually needs a permit; the building department has the last word.",
		Source: rules.Habit,
	})
}
