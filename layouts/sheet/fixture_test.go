package sheet

import (
	"fmt"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// wall is an invented view: a wall 15 ft by 8 ft with rows of figures above,
// names at the left and a strip below, all of paper size.
func wall(w, h geom.Length, noteCount, rows int) Draw {
	return func(s paper.Scale) drawing.Plate {
		style := drawing.Style{Layer: drawing.Outline, Pen: drawing.P50}
		real := func(v float64) geom.Length { return s.Real(paper.MM(v)) }
		elements := []drawing.Element{
			drawing.Group{ID: "frame", Title: "Frame", Elements: []drawing.Element{
				drawing.Polyline{Style: style, Closed: true, Points: geom.RectOf(0, 0, w, h).Polygon()},
			}},
			drawing.Text{Layer: drawing.Words, At: geom.Pt(-real(48), h+real(30)), String: "whole wall", Cap: paper.MM(2.4)},
			drawing.Line{Style: style, A: geom.Pt(0, h+real(30)), B: geom.Pt(w, h+real(30))},
			drawing.Line{Style: style, A: geom.Pt(0, -real(20)), B: geom.Pt(w, -real(20))},
		}
		p := drawing.Plate{
			Drawing:  drawing.Drawing{Name: "wall-a", Title: "Framing, seen from inside the room", Scale: s, Elements: elements},
			Subtitle: "opening for the borrowed light",
		}
		for i := range noteCount {
			p.Notes = append(p.Notes, fmt.Sprintf("Fact %d: figures run to the faces of framing, heights from the finished floor, 14 3/4 at most.", i+1))
		}
		for i, words := range []string{"existing, kept", "new", "existing, taken out", "saw line; cut between nibs", "piece mark, as on the cut list", "mark on plate; stud on the ×", "running figures, from 0", "hidden in the wall"} {
			p.Legend = append(p.Legend, drawing.Sample{Words: words, Swatch: []drawing.Element{
				drawing.Polyline{Style: drawing.Style{Layer: drawing.FrameKept, Pen: drawing.P25}, Closed: true,
					Points: geom.RectOf(0, -mm(0.4+float64(i%3)), mm(13), mm(0.4+float64(i%3))).Polygon()},
			}})
		}
		t := drawing.Table{Heading: "Pieces on this sheet", Columns: []drawing.Column{
			{Bold: true}, {}, {}, {Heading: "no.", Right: true}, {Heading: "cut to, in.", Right: true, Bold: true}}}
		for i := range rows {
			t.Rows = append(t.Rows, []string{fmt.Sprintf("A%d", i+1), "header filler", "plywood 15/32 × 7 1/4", "2", "70 7/8"})
		}
		p.Tables = []drawing.Table{t}
		return p
	}
}

// post is an invented section, all of it of true size but some words.
func post(name string) Draw {
	return func(s paper.Scale) drawing.Plate {
		style := drawing.Style{Layer: drawing.Cut, Pen: drawing.P50}
		return drawing.Plate{
			Drawing: drawing.Drawing{Name: name, Title: "Section X, header", Scale: s, Elements: []drawing.Element{
				drawing.Polyline{Style: style, Closed: true, Points: geom.RectOf(0, 0, geom.In(4), geom.In(12)).Polygon()},
				drawing.Text{Layer: drawing.Words, At: geom.Pt(geom.In(4)+s.Real(paper.MM(8)), geom.In(6)), String: "header, 2 plies 2×8", Cap: paper.MM(2.4)},
			}},
			Notes:  []string{"The section is seen from the right."},
			Legend: []drawing.Sample{{Words: "cut by the section", Swatch: []drawing.Element{rule(drawing.Cut, 0, mm(13), 0, drawing.P50)}}},
		}
	}
}

// room is an invented room of six walls.
func room(this int) Key {
	p := []geom.Point{{}, {X: geom.In(182)}, {X: geom.In(182), Y: -geom.In(85)}, {X: geom.In(128), Y: -geom.In(85)}, {X: geom.In(128), Y: -geom.In(131)}, {Y: -geom.In(131)}}
	k := Key{Room: p, This: this}
	for i, a := range p {
		k.Walls = append(k.Walls, KeyWall{Name: string(rune('A' + i)), From: a, To: p[(i+1)%len(p)]})
	}
	return k
}

// spec is an invented sheet.
func spec(size string, portrait bool) Spec {
	s, _ := paper.ByName(size, portrait)
	return Spec{
		ID: "wall-a", Size: s, Main: wall(geom.In(182), geom.In(96), 6, 7), Scales: paper.InchScales(),
		Sections: []Draw{post("section-x")}, SectionScales: paper.InchScales(),
		Cautions: []string{
			"It is not known whether wall A carries load. Treat it as bearing: prop both sides before a stud is cut, and have a licensed person size the header. Local codes and the inspector decide.",
			"A cable runs in the wall at 132 from corner F/A, floor to 48. Switch off and find it before cutting or driving screws.",
		},
		Warnings: []string{"the bare border at wall D is 4 1/2, less than half a module"},
		Assumed:  []string{"jacks a side 1", "liner 3/4"},
		Key:      room(0),
		Band: Band{
			Big: "Wall A", Title: "Framing elevation", Subtitle: "opening for the borrowed light",
			Project: "Old laundry to bindery", Room: "workroom, ground floor", Units: "inches and fractions",
			DatumWord: "heights from", Datum: "finished floor = 0", MeasuredTo: "faces of framing", Kind: "framing drawing",
			DrawnBy: "householder", Owner: "householder", Status: "for building", Date: "2026-11-25", Revision: "B",
			Number: "OLB", File: "laundry.yaml",
		},
	}
}
