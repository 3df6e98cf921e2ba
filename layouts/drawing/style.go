package drawing

import "roomwright/layouts/paper"

// Pen is a line width in hundredths of a millimetre on paper.
type Pen int

// The pens, each about √2 times the one before.
const (
	P13  Pen = 13
	P18  Pen = 18
	P25  Pen = 25
	P35  Pen = 35
	P50  Pen = 50
	P70  Pen = 70
	P100 Pen = 100
)

// Dash is a line type.
type Dash int

// The line types.
const (
	Solid    Dash = iota
	Taken         // pieces that are removed: 2.4 on, 1.1 off
	Hidden        // in the wall or behind: 1.2 on, 1.0 off
	Joist         // joist centres overhead: 1.6 on, 1.2 off
	Overhead      // ducts and pipes above: 3.2 on, 1.2 off
	Chain         // saw lines: 6 on, 1 off, 1 on, 1 off
)

// Name returns the name of the line type, as a DXF line type is called.
func (d Dash) Name() string {
	return [...]string{"CONTINUOUS", "TAKEN_OUT", "HIDDEN_BEHIND", "JOIST_ABOVE", "OVERHEAD", "SAW_LINE"}[d]
}

// Pattern returns on and off lengths in turn, on paper; nil when solid.
func (d Dash) Pattern() []paper.Length {
	mm := [...][]float64{nil, {2.4, 1.1}, {1.2, 1.0}, {1.6, 1.2}, {3.2, 1.2}, {6, 1, 1, 1}}[d]
	var out []paper.Length
	for _, v := range mm {
		out = append(out, paper.MM(v))
	}
	return out
}

// Fit returns the pattern stretched so that a line of the given printed length
// begins and ends with a dash; nil when the line is solid or too short.
func (d Dash) Fit(length paper.Length) []paper.Length {
	p := d.Pattern()
	if len(p) == 0 || length <= 0 {
		return nil
	}
	period, gap := paper.Length(0), p[len(p)-1]
	for _, v := range p {
		period += v
	}
	n := (length + gap + period/2) / period
	if n < 1 {
		return nil
	}
	// n periods less the last gap span the line.
	whole := n*period - gap
	out := make([]paper.Length, len(p))
	for i, v := range p {
		out[i] = paper.Length(int64(v) * int64(length) / int64(whole))
	}
	return out
}

// Layer is the name of a layer.
type Layer string

// The layers. Status endings: N new, E existing, D to be taken out.
const (
	WallFull     Layer = "A-WALL-FULL"   // walls cut in plan, masonry
	WallPattern  Layer = "A-WALL-PATT"   // their hatch
	FrameKept    Layer = "A-WALL-FRAM-E" // framing that is there and stays
	FrameNew     Layer = "A-WALL-FRAM-N" // framing to be built
	FrameOut     Layer = "A-WALL-FRAM-D" // framing to be taken out
	FramePattern Layer = "A-WALL-FRAM-P" // hatch of new framing (own group)
	SawLine      Layer = "A-WALL-SAWL"   // saw cuts (own group)
	Opening      Layer = "A-WALL-OPNG"   // openings wanted (own group)
	Board        Layer = "A-WALL-BORD"   // full boards (own group)
	Outline      Layer = "A-ELEV-OTLN"   // floor, structure, neighbours of an elevation
	Door         Layer = "A-DOOR"
	Glazing      Layer = "A-GLAZ"
	Grid         Layer = "A-CLNG-GRID" // cross tees
	MainTee      Layer = "A-CLNG-TEES"
	WallAngle    Layer = "A-CLNG-EDGE" // own group
	HangerWire   Layer = "A-CLNG-SUSP"
	CeilPanel    Layer = "A-CLNG-PATT"
	LightPanel   Layer = "E-LITE-CLNG"
	JoistLine    Layer = "S-JOIS" // own group
	Duct         Layer = "M-HVAC"
	Service      Layer = "E-POWR-WALL" // what is in the wall
	Cut          Layer = "A-SECT-MCUT" // members cut by a section
	Beyond       Layer = "A-SECT-MBND" // seen beyond it
	CutPattern   Layer = "A-SECT-PATT"
	Dims         Layer = "A-ANNO-DIMS"
	Words        Layer = "A-ANNO-TEXT"
	Symbols      Layer = "A-ANNO-SYMB" // marks, labels, letters of walls and sections
	TitleBlock   Layer = "A-ANNO-TTLB"
)

// Style is how a line is drawn.
type Style struct {
	Layer  Layer
	Pen    Pen
	Dash   Dash
	Accent bool // in the one accent colour: saw cuts, the tightest place, cautions
}
