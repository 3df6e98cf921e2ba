package elevation

import (
	"strings"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/piece"
	"roomwright/geom/setout"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/paper"
)

// Draw returns the elevation of a wall at scale s.
func Draw(r setout.Result, wall int, s paper.Scale) drawing.Plate { return drawn(r, wall, s).plate }

// drawn draws the elevation of a wall.
func drawn(r setout.Result, wall int, s paper.Scale) *view {
	v := &view{Face: face.Of(r, wall, s)}
	v.sort()
	d := v.draw()
	d.Name = "wall-" + v.Slug()
	d.Scale = s
	d.Title = "Wall as it is, seen from inside the room"
	if v.framed() {
		d.Title = "Framing, seen from inside the room"
	}
	v.plate = drawing.Plate{Drawing: d, Subtitle: v.subtitle(), Notes: v.notes(), Legend: v.legend(), Tables: v.tables()}
	return v
}

// view is one elevation while it is drawn.
type view struct {
	face.Face
	kept, fresh, out []framing.Member // what is seen, back to front
	failed           []string         // what found no place
	plate            drawing.Plate
}

// sort parts the members by state and leaves out what lies behind another one.
func (v *view) sort() {
	for _, m := range v.Wall.Members {
		if m.Depth > 0 || m.Box.Empty() {
			continue
		}
		switch m.State {
		case piece.New:
			v.fresh = append(v.fresh, m)
		case piece.Removed:
			// What lies behind header and sill is not seen.
			if m.Opening >= 0 {
				m.Box = v.within(m)
			}
			v.out = append(v.out, m)
		default:
			v.kept = append(v.kept, m)
		}
	}
}

// within returns the part of a piece taken out that is seen in its opening.
func (v *view) within(m framing.Member) geom.Rect {
	for _, o := range v.Wall.Openings {
		if o.Index == m.Opening && m.Box.Y().Overlaps(o.Rough.Y()) {
			y := m.Box.Y().Overlap(o.Rough.Y())
			return geom.RectOf(m.Box.Min.X, y.From, m.Box.Max.X, y.To)
		}
	}
	return m.Box
}

// framed reports whether the view shows framing.
func (v *view) framed() bool { return len(v.Wall.Members) > 0 }

func (v *view) subtitle() string {
	var names []string
	for _, o := range v.Wall.Openings {
		names = append(names, o.Name)
	}
	switch len(names) {
	case 0:
		var boards []string
		for _, b := range v.Result.Boards {
			if b.Wall == v.Index {
				boards = append(boards, b.Name)
			}
		}
		if len(boards) > 0 {
			return "with " + strings.Join(boards, ", ")
		}
		return ""
	case 1:
		return "opening for " + names[0]
	}
	return "openings for " + strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

// upright reports whether a member stands.
func upright(m framing.Member) bool { return m.Box.H() >= m.Box.W() }

// group returns a titled group; nothing when it is empty.
func group(id, title string, e []drawing.Element) []drawing.Element {
	if len(e) == 0 {
		return nil
	}
	return []drawing.Element{drawing.Group{ID: id, Title: title, Elements: e}}
}
