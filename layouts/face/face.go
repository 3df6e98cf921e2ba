package face

import (
	"strings"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/setout"
	"roomwright/geom/survey"
	"roomwright/layouts/paper"
)

// Face is one wall as it is drawn.
type Face struct {
	Result setout.Result
	Index  int          // of the wall
	Wall   framing.Wall //
	Room   room.Wall    // the wall as written
	Side   survey.Side  //
	Scale  paper.Scale
	Show   measure.Show
	Length geom.Length // corner to corner as taped
	Top    geom.Length // how high the wall is drawn: to the structure when that is known
	Capped bool        // the structure's height is known
}

// Of returns the face of a wall of r, to be drawn at scale s.
func Of(r setout.Result, wall int, s paper.Scale) Face {
	f := Face{Result: r, Index: wall, Scale: s, Show: r.Room.Show, Wall: framing.Wall{Index: wall}}
	if wall < len(r.Room.Walls) {
		f.Room = r.Room.Walls[wall]
	}
	if wall < len(r.Walls) {
		f.Wall = r.Walls[wall]
	}
	if wall < len(r.Plan.Sides) {
		f.Side = r.Plan.Sides[wall]
	}
	if f.Wall.Name == "" {
		f.Wall.Name = f.Room.Name
	}
	f.Length = first(f.Wall.Length, f.Side.Taped, f.Room.Length.Value)
	f.Top = first(f.Wall.Structure, f.Side.Structure, f.Room.Structure.Value)
	f.Capped = f.Top > 0
	if !f.Capped {
		f.Top = f.highest()
	}
	return f
}

// first returns the first length that is more than zero.
func first(list ...geom.Length) geom.Length {
	for _, l := range list {
		if l > 0 {
			return l
		}
	}
	return 0
}

// highest returns the height of the highest thing known on the wall, and never
// less than a door's.
func (f Face) highest() geom.Length {
	top := max(f.Wall.Top, geom.MM(2100))
	if c := f.Result.Ceiling; c != nil {
		top = max(top, c.Face, c.Structure)
	}
	for _, h := range f.Wall.Doors {
		top = max(top, h.Rough.Max.Y, h.Clear.Max.Y)
	}
	for _, b := range f.Result.Boards {
		if b.Wall == f.Index {
			top = max(top, b.Box.Max.Y)
		}
	}
	return top
}

// MM returns the real length that prints as so many millimetres.
func (f Face) MM(mm float64) geom.Length { return f.Scale.Real(paper.MM(mm)) }

// LeftCorner returns the name of the corner at the left end.
func (f Face) LeftCorner() string {
	if f.Side.Start != "" {
		return f.Side.Start
	}
	return f.Result.Room.CornerName(f.Index)
}

// Neighbours returns the names of the walls at the left and right end.
func (f Face) Neighbours() (left, right string) {
	walls := f.Result.Room.Walls
	n := len(walls)
	if n < 2 {
		return "", ""
	}
	return walls[(f.Index+n-1)%n].Name, walls[(f.Index+1)%n].Name
}

// Finished returns the span between the finished faces of the neighbours.
func (f Face) Finished() geom.Span {
	return geom.Span{From: f.Side.LeftOff, To: f.Length - f.Side.RightOff}
}

// Units returns the words for the units of the figures, to begin a sentence.
func Units(s measure.Show) string {
	switch s.Form {
	case measure.MillimetresOnly:
		return "Millimetres"
	case measure.InchesOnly:
		return "Inches"
	}
	return "Feet and inches"
}

// Slug returns a wall's name as a part of a file name: lower case letters,
// digits and hyphens; the index is added where two walls would share one.
func (f Face) Slug() string {
	own := slug(f.Wall.Name)
	for i, w := range f.Result.Room.Walls {
		if i != f.Index && slug(w.Name) == own {
			return own + "-" + digits(f.Index+1)
		}
	}
	return own
}

func slug(name string) string {
	var b strings.Builder
	for _, r := range strings.ToLower(name) {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9':
			b.WriteRune(r)
		default:
			b.WriteByte('-')
		}
	}
	return strings.Trim(b.String(), "-")
}

func digits(n int) string {
	if n < 10 {
		return string(rune('0' + n))
	}
	return digits(n/10) + string(rune('0'+n%10))
}

// Times writes the sign × between the sizes of a profile or sheet: "2x4" is 2×4.
func Times(name string) string {
	out := []rune(name)
	for i := 1; i+1 < len(out); i++ {
		if (out[i] == 'x' || out[i] == 'X') && figure(out[i-1]) && figure(out[i+1]) {
			out[i] = '×'
		}
	}
	return strings.NewReplacer(" x ", " × ").Replace(string(out))
}

func figure(r rune) bool { return r >= '0' && r <= '9' }
