// Package paper holds lengths on paper, the sheets that are printed on, the
// standard scales, and the scale that alone turns real lengths into paper.
//
// Units: a Length is a printed length in sixteenths of a micrometre, like
// geom.Length, but a type of its own. Errors: none.
//
// Source: sheet sizes as in ISO 216 (A series) and ANSI/ASME Y14.1 (Letter
// 8.5 x 11 in, Tabloid 11 x 17 in); metric scales from ISO 5455 (from memory)
// with 1:25, which is common practice, no source; scales of inches to the foot
// as listed in the Metropolitan Community College drafting standards.
package paper

import (
	"math"

	"roomwright/geom"
)

// Length is a length on paper.
type Length int64

// MM returns a paper length of so many millimetres, rounded to 1/16 µm.
func MM(mm float64) Length { return Length(math.Round(mm * float64(geom.Millimetre))) }

// MM returns l in millimetres.
func (l Length) MM() float64 { return float64(l) / float64(geom.Millimetre) }

// Scale is how many real lengths go into one on paper.
type Scale struct {
	Ratio int64  // 24 for 1:24
	Name  string // as written under a view: `1/2" = 1'-0"`, "1:20"
}

// Full returns the scale 1:1, that of things drawn on the sheet itself.
func Full() Scale { return Scale{Ratio: 1, Name: "1:1"} }

// Real returns the real length that prints as l.
func (s Scale) Real(l Length) geom.Length { return geom.Length(int64(l) * s.Ratio) }

// OnPaper returns the printed length of l, rounded to the nearest.
func (s Scale) OnPaper(l geom.Length) Length {
	return Length(l.Round(geom.Length(s.Ratio)) / geom.Length(s.Ratio))
}

// InchScales returns the scales of inches to the foot, largest first.
func InchScales() []Scale {
	return []Scale{
		{4, `3" = 1'-0"`}, {8, `1 1/2" = 1'-0"`}, {12, `1" = 1'-0"`}, {16, `3/4" = 1'-0"`},
		{24, `1/2" = 1'-0"`}, {32, `3/8" = 1'-0"`}, {48, `1/4" = 1'-0"`}, {64, `3/16" = 1'-0"`},
		{96, `1/8" = 1'-0"`}, {192, `1/16" = 1'-0"`},
	}
}

// MetricScales returns the metric scales, largest first.
func MetricScales() []Scale {
	return []Scale{{2, "1:2"}, {5, "1:5"}, {10, "1:10"}, {20, "1:20"}, {25, "1:25"}, {50, "1:50"}, {100, "1:100"}, {200, "1:200"}}
}

// Size is a sheet of paper.
type Size struct {
	Name string
	W, H Length
}

// ByName returns the sheet called name (letter, tabloid, A4, A3), landscape
// unless portrait is wanted.
func ByName(name string, portrait bool) (Size, bool) {
	var s Size
	switch name {
	case "letter":
		s = Size{"Letter", MM(279.4), MM(215.9)}
	case "tabloid":
		s = Size{"Tabloid", MM(431.8), MM(279.4)}
	case "A4":
		s = Size{"A4", MM(297), MM(210)}
	case "A3":
		s = Size{"A3", MM(420), MM(297)}
	default:
		return Size{}, false
	}
	if portrait {
		s.W, s.H = s.H, s.W
	}
	return s, true
}
