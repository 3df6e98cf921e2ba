package dxf

import (
	"roomwright/layouts/drawing"
)

// style is how one entity departs from its layer.
type style struct {
	lineType string // empty: by layer, which is continuous
	pen      drawing.Pen
	accent   bool
}

// accentColour is the index of red; on paper the accent is an oxide red.
const accentColour = 1

func (s style) write(f *formatter) {
	if s.lineType != "" {
		f.WriteString(6, s.lineType)
	}
	if s.accent {
		f.WriteInt(62, accentColour)
	}
	if s.pen != 0 {
		f.WriteInt(370, weight(s.pen))
	}
}

// weight returns the line weight of a pen; all our pens are among those that
// the format knows.
func weight(p drawing.Pen) int { return int(p) }

// of returns the style of a line.
func of(s drawing.Style) style {
	out := style{pen: s.Pen, accent: s.Accent}
	if s.Dash != drawing.Solid {
		out.lineType = s.Dash.Name()
	}
	return out
}

// colour returns the colour index of a layer, by what it shows: walls and
// framing in the foreground, dimensions and hatches in quieter colours.
func colour(l drawing.Layer) int {
	switch l {
	case drawing.FrameNew, drawing.Opening, drawing.Board:
		return 3
	case drawing.FrameOut, drawing.SawLine:
		return 1
	case drawing.Dims:
		return 4
	case drawing.WallPattern, drawing.FramePattern, drawing.CutPattern, drawing.CeilPanel:
		return 8
	case drawing.Grid, drawing.MainTee, drawing.WallAngle, drawing.HangerWire:
		return 5
	case drawing.LightPanel:
		return 2
	case drawing.Duct, drawing.JoistLine, drawing.Service:
		return 6
	}
	return 7
}
