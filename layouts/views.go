package layouts

import (
	"fmt"

	"roomwright/geom"
	"roomwright/layouts/boards"
	"roomwright/layouts/ceilingplan"
	"roomwright/layouts/cuts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/elevation"
	"roomwright/layouts/face"
	"roomwright/layouts/floorplan"
	"roomwright/layouts/paper"
	"roomwright/layouts/section"
	"roomwright/layouts/sheet"
)

// plan returns the sheet of the floor plan.
func (c *composer) plan() view {
	s := c.spec("plan", -1)
	r := c.r
	s.Main = func(at paper.Scale) drawing.Plate { return floorplan.Draw(r, at) }
	s.Band.Big, s.Band.Title = "Plan", "Floor plan"
	s.Band.MeasuredTo, s.Band.Kind = "faces as taped", "set-out drawing"
	return view{spec: s, on: []string{""}, line: c.lowest()}
}

// lowest returns the height on the page of the room's lowest corner.
func (c *composer) lowest() geom.Length { return c.r.Plan.Finished.Bounds().Min.Y }

// wall returns the sheet of one wall's elevation.
func (c *composer) wall(i int) view {
	w, r := c.r.Walls[i], c.r
	s := c.spec("wall-"+c.slug(i), i)
	s.Main = func(at paper.Scale) drawing.Plate { return elevation.Draw(r, i, at) }
	s.Band.Big = "Wall " + w.Name
	s.Band.Title, s.Band.MeasuredTo, s.Band.Kind = "Elevation", "faces as taped", "set-out drawing"
	if w.Make.Framed() && len(w.Members) > 0 {
		s.Band.Title, s.Band.MeasuredTo, s.Band.Kind = "Framing elevation", "faces of framing", "framing drawing"
	}
	for _, k := range cuts.Of(r) {
		if k.Kind == cuts.Header && k.Wall == i {
			s.Sections = append(s.Sections, func(at paper.Scale) drawing.Plate { return section.Header(r, k, at) })
		}
	}
	s.SectionScales = among(4, 10, c.metric)
	return view{spec: s, on: []string{"wall " + w.Name}}
}

// ceiling returns the sheet of the reflected ceiling plan.
func (c *composer) ceiling() view {
	s := c.spec("ceiling", -1)
	r := c.r
	s.Main = func(at paper.Scale) drawing.Plate { return ceilingplan.Draw(r, at) }
	s.Band.Big, s.Band.Title = "Ceiling", "Reflected ceiling plan"
	s.Band.DatumWord, s.Band.Datum = "ceiling at", r.Room.Show.Figure(r.Ceiling.Face)+" above floor"
	s.Band.MeasuredTo, s.Band.Kind = "finished faces", "set-out drawing"
	for _, k := range cuts.Of(r) {
		if k.Kind == cuts.Ceiling {
			s.Sections = append(s.Sections, func(at paper.Scale) drawing.Plate { return section.Ceiling(r, k, at) })
		}
	}
	s.SectionScales = among(8, 25, c.metric)
	return view{spec: s, on: []string{"ceiling"}, line: c.lowest()}
}

// boards returns the sheet of the boards of one wall.
func (c *composer) boards(i int) view {
	w, r := c.r.Walls[i], c.r
	s := c.spec("boards-"+c.slug(i), i)
	s.Main = func(at paper.Scale) drawing.Plate { return boards.Draw(r, i, at) }
	s.Band.Big, s.Band.Title = "Boards", "Board layout, wall "+w.Name
	s.Band.MeasuredTo, s.Band.Kind = "finished faces", "board layout"
	on := []string{"wall " + w.Name}
	for _, b := range r.Boards {
		if b.Wall == i {
			on = append(on, "board "+b.Name)
		}
	}
	v := view{spec: s, on: on}
	if !c.leftOut(leaveElevations) {
		v.read = on[1:] // what is assumed of the wall stands on its own sheet
	}
	return v
}

// notes returns the sheet of what found no room elsewhere.
func (c *composer) notes(lists []sheet.List) view {
	s := c.spec("assumed", -1)
	s.Lists = lists
	s.Band.Big, s.Band.Title, s.Band.Subtitle = "Notes", "Assumed values", "where the room file says nothing"
	s.Band.MeasuredTo, s.Band.Kind = "as on each sheet", "list"
	return view{spec: s}
}

// slug returns the name of a wall as part of a file name.
func (c *composer) slug(i int) string {
	if s := face.Of(c.r, i, paper.Full()).Slug(); s != "" {
		return s
	}
	return fmt.Sprintf("of-%02d", i+1)
}

// among returns the standard scales from one ratio to another, largest first.
func among(from, to int64, metric bool) []paper.Scale {
	list := paper.InchScales()
	if metric {
		list = paper.MetricScales()
	}
	var out []paper.Scale
	for _, s := range list {
		if s.Ratio >= from && s.Ratio <= to {
			out = append(out, s)
		}
	}
	return out
}
