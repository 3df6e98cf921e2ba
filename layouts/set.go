package layouts

import (
	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/drawing"
	"roomwright/layouts/sheet"
)

// Options are what the room file does not say about a set.
type Options struct {
	File string // name of the room file, printed in the title band
}

// Placed is a drawing and where its origin goes in the model.
type Placed struct {
	Drawing drawing.Drawing
	At      geom.Point
}

// Set is the drawing set of one room.
type Set struct {
	Title  string
	File   string // name of the room file
	Units  measure.System
	Sheets []sheet.Sheet
	Model  []Placed
}

// modelGap is the space between two drawings in the model: 2 ft.
const modelGap = 2 * geom.Foot

// row places drawings side by side in their order, modelGap apart, each with
// the given height of its own on the common line.
type row struct {
	placed []Placed
	next   geom.Length
}

func (r *row) put(d drawing.Drawing, line geom.Length) {
	box := d.Bounds()
	at := geom.Pt(r.next-box.Min.X, -line)
	r.next += box.W() + modelGap
	r.placed = append(r.placed, Placed{Drawing: d, At: at})
}
