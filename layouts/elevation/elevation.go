package elevation

import (
	"strings"

	"roomwright/geom/framing"
	"roomwright/geom/piece"
	"roomwright/geom/setout"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/paper"
)

// Draw returns the elevation of a wall at scale s.
func Draw(r setout.Result, wall int, s paper.Scale) drawing.Plate {
	v := view{Face: face.Of(r, wall, s)}
	v.sort()
	d := v.draw()
	d.Name = "wall-" + v.Slug()
	d.Scale = s
	d.Title = "Wall as it is, seen from inside the room"
	if len(v.Wall.Members) > 0 {
		d.Title = "Framing, seen from inside the room"
	}
	return drawing.Plate{Drawing: d, Subtitle: v.subtitle(), Notes: v.notes(), Legend: v.legend(), Tables: v.tables()}
}

// view is one elevation while it is drawn.
type view struct {
	face.Face
	kept, fresh, out []framing.Member // what is seen, back to front
	failed           []string         // marks that found no place
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
			v.out = append(v.out, m)
		default:
			v.kept = append(v.kept, m)
		}
	}
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
