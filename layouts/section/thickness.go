package section

import (
	"slices"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// wideEnough reports whether the thickness of the plies can be dimensioned
// under them; else the callout of the header gives it.
func (h *header) wideEnough() bool {
	for i, m := range h.members {
		if m.Role == framing.HeaderFiller {
			continue
		}
		t := h.across[i].Len()
		if h.Scale.OnPaper(t) < lettering.Width(h.Show.Figure(t), paper.MM(2.8), false)+paper.MM(1.8) {
			return false
		}
	}
	return len(h.members) > 0
}

// dimensions draws the ladder of heights, the header's depth and the
// thickness of its plies.
func (h *header) dimensions() []drawing.Element {
	o := h.opening.Header
	var list face.Heights
	if h.opening.UpperCut > 0 {
		list.Add("", h.opening.UpperCut, true)
	}
	list.Add("", o.Max.Y, false)
	list.Add("", o.Min.Y, false)
	if h.capped {
		list.Add("", h.Wall.PlateLow, false)
	}
	spine := h.left() - h.MM(16)
	ladder := dimension.Ladder{WordsX: spine - h.MM(30), FiguresX: spine - h.MM(6), SpineX: spine, Heights: list.Plain(), Scale: h.Scale, Show: h.Show}
	e := ladder.Draw()
	depth := dimension.Chain{
		Side: dimension.LeftOf, Object: h.left(), First: paper.MM(7), Scale: h.Scale, Show: h.Show,
		Rows: []dimension.Row{{At: []geom.Length{o.Min.Y, o.Max.Y}}},
	}
	more, _ := depth.Draw()
	e = append(e, more...)
	if !h.wideEnough() {
		return e
	}
	var row dimension.Row
	for _, a := range h.across {
		row.At = append(row.At, h.x(a.From), h.x(a.To))
	}
	slices.Sort(row.At)
	row.At = slices.Compact(row.At)
	row.Quiet = make([]bool, len(row.At)-1)
	for i, m := range h.members {
		if m.Role == framing.HeaderFiller {
			at := slices.Index(row.At, min(h.x(h.across[i].From), h.x(h.across[i].To)))
			row.Quiet[at] = true
		}
	}
	plies := dimension.Chain{
		Side: dimension.Below, Object: o.Min.Y, First: paper.MM(11), Scale: h.Scale, Show: h.Show, Rows: []dimension.Row{row},
	}
	more, _ = plies.Draw()
	return append(e, more...)
}
