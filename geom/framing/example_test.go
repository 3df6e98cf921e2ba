package framing_test

import (
	"fmt"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// A wall to be built, 32 in long with studs at 16 in: one at each end and one
// in the middle.
func ExampleBuild() {
	r := &room.Room{
		Show: measure.DefaultShow(measure.Inches),
		Walls: []room.Wall{{
			Name: "A", MadeOf: room.NewStuds,
			Frame: room.Frame{
				Stud:    room.Timber{Name: "2x4", Thick: geom.InFrac(1, 1, 2), Wide: geom.InFrac(3, 1, 2)},
				Bearing: room.No,
				Studs:   room.StudPlan{Given: true, Spacing: geom.In(16)},
			},
		}},
	}
	plan := survey.Plan{Sides: []survey.Side{{Wall: "A", Taped: geom.In(32), Structure: geom.In(96)}}}
	w, _ := framing.Build(r, 0, plan)
	for _, m := range w.Members {
		fmt.Println(m.Mark, m.Name, r.Show.Say(m.Length), "at", r.Show.Say(m.Box.Min.X))
	}
	// Output:
	// A1 bottom plate 2' 8" at 0"
	// A2 top plate 2' 8" at 0"
	// A3 stud 7' 9" at 0"
	// A3 stud 7' 9" at 1' 3-1/4"
	// A3 stud 7' 9" at 2' 6-1/2"
}
