package elevation

import (
	"slices"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
	"roomwright/layouts/marks"
	"roomwright/layouts/paper"
)

// legend returns samples of what is on the drawing, made by the functions that
// draw it.
func (v *view) legend() []drawing.Sample {
	full := paper.Full()
	mm := func(x float64) geom.Length { return geom.Length(paper.MM(x)) }
	bar := geom.RectOf(0, -mm(0.8), mm(13), mm(0.8))
	var out []drawing.Sample
	add := func(words string, e []drawing.Element) { out = append(out, drawing.Sample{Words: words, Swatch: e}) }
	if len(v.kept) > 0 {
		add("existing, kept", face.Kept(bar, drawing.FrameKept))
	}
	if len(v.fresh) > 0 {
		add("new", face.New(bar, drawing.Falling45, full))
	}
	if len(v.out) > 0 {
		add("existing, taken out", face.Out(bar, false, full))
	}
	if len(v.sawLines()) > 0 {
		stud := geom.RectOf(mm(5.4), -mm(1.8), mm(7), mm(1.8))
		e := []drawing.Element{marks.SawLine(geom.Span{From: 0, To: mm(13)}, 0, full)}
		e = append(e, face.Kept(stud, drawing.FrameKept)...)
		add("saw line; cut between nibs", append(e, marks.SawStroke(stud.X(), 0, full)...))
	}
	if mark := v.anyMark(); mark != "" {
		w, _ := marks.LabelSize(mark, true)
		add("piece mark, as on the cut list", []drawing.Element{marks.Label(mark, true, geom.Pt(geom.Length(w/2)+mm(1.5), 0), full)})
	}
	if len(v.Wall.Studs) > 0 {
		k := dimension.Stick{From: 0, To: mm(13), Edge: mm(1.6), Scale: full, Show: v.Show}
		k.Marks = []dimension.StickMark{{At: mm(5), Thick: mm(1.6)}}
		add("mark on plate; stud on the ×", strip(k))
	}
	if slices.ContainsFunc(v.Wall.Services, func(s framing.ServiceAt) bool { _, hidden := v.Seen(s); return hidden }) {
		add("hidden in the wall", []drawing.Element{drawing.Line{
			Style: drawing.Style{Layer: drawing.Service, Pen: drawing.P35, Dash: drawing.Hidden}, A: geom.Pt(0, 0), B: geom.Pt(mm(13), 0)}})
	}
	if len(v.ceiling()) > 0 {
		add("face of the finished ceiling", []drawing.Element{drawing.Line{
			Style: drawing.Style{Layer: drawing.CeilPanel, Pen: drawing.P35, Dash: drawing.Overhead}, A: geom.Pt(0, 0), B: geom.Pt(mm(13), 0)}})
	}
	return out
}

// strip returns the strip of a stick and its marks without their figures.
func strip(k dimension.Stick) []drawing.Element {
	e, _ := k.Draw()
	var out []drawing.Element
	drawing.Walk(e, false, func(x drawing.Element) {
		if l, ok := x.(drawing.Line); ok && l.A.Y >= k.Edge-k.Scale.Real(paper.MM(3.3)) && l.B.Y >= k.Edge-k.Scale.Real(paper.MM(3.3)) {
			out = append(out, l)
		}
	})
	return out
}

func (v *view) anyMark() string {
	if len(v.fresh) > 0 {
		return string(v.fresh[0].Mark)
	}
	for _, row := range v.Result.Boards {
		if row.Wall == v.Index && len(row.Sheets) > 0 {
			return string(row.Sheets[0].Mark)
		}
	}
	return ""
}
