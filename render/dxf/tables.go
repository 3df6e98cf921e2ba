package dxf

import (
	"github.com/yofu/dxf/format"
	"github.com/yofu/dxf/handle"
	"github.com/yofu/dxf/table"
)

// symbols is one symbol table, with its owner and, for dimension styles, the
// extra header that they have.
type symbols struct {
	name   string
	handle int
	list   []table.SymbolTable
}

func (t *symbols) Handle() int { return t.handle }

func (t *symbols) add(s table.SymbolTable) {
	s.SetOwner(t)
	t.list = append(t.list, s)
}

func (t *symbols) SetHandle(v *int) {
	t.handle = *v
	*v++
	for _, s := range t.list {
		s.SetHandle(v)
	}
}

func (t *symbols) Format(f *formatter) {
	f.WriteString(0, "TABLE")
	f.WriteString(2, t.name)
	f.WriteHex(5, t.handle)
	f.WriteHex(330, 0)
	f.WriteString(100, "AcDbSymbolTable")
	f.WriteInt(70, len(t.list))
	if t.name == "DIMSTYLE" {
		f.WriteString(100, "AcDbDimStyleTable")
		f.WriteInt(71, len(t.list))
		for _, s := range t.list {
			f.WriteHex(340, s.Handle())
		}
	}
	for _, s := range t.list {
		s.Format(f)
	}
	f.WriteString(0, "ENDTAB")
}

// dimStyle is a DIMSTYLE for one scale. Its sizes are those of the pictures,
// in the file's unit on paper, times the scale.
type dimStyle struct {
	name   string
	handle int
	owner  handle.Handler
	scale  float64
	mm     float64 // one paper millimetre in the file's unit
	metric bool
	font   *table.Style
}

func (d *dimStyle) IsSymbolTable() bool       { return true }
func (d *dimStyle) Name() string              { return d.name }
func (d *dimStyle) Handle() int               { return d.handle }
func (d *dimStyle) SetHandle(v *int)          { d.handle = *v; *v++ }
func (d *dimStyle) SetOwner(o handle.Handler) { d.owner = o }

func (d *dimStyle) Format(g format.Formatter) {
	f := asOurs(g)
	f.WriteString(0, "DIMSTYLE")
	f.WriteHex(105, d.handle)
	f.WriteHex(330, d.owner.Handle())
	f.WriteString(100, "AcDbSymbolTableRecord")
	f.WriteString(100, "AcDbDimStyleTableRecord")
	f.WriteString(2, d.name)
	f.WriteInt(70, 0)
	f.WriteFloat(40, d.scale)    // all sizes below times this
	f.WriteFloat(41, 2.1*d.mm)   // arrows, not used beside ticks
	f.WriteFloat(42, 1.6*d.mm)   // extension line off the object
	f.WriteFloat(43, 8*d.mm)     // rows apart
	f.WriteFloat(44, 1.6*d.mm)   // extension line past the dimension line
	f.WriteFloat(46, 1.4*d.mm)   // dimension line past the tick
	f.WriteFloat(140, 2.8*d.mm)  // figures
	f.WriteFloat(141, 0)         // no centre marks
	f.WriteFloat(142, 1.05*d.mm) // ticks
	f.WriteFloat(144, 1)         // measured as drawn
	f.WriteFloat(147, 1.1*d.mm)  // figure off the line
	f.WriteInt(73, 0)            // figures along their line
	f.WriteInt(74, 0)
	f.WriteInt(77, 1) // above the line
	if d.metric {
		f.WriteInt(78, 8)
	} else {
		f.WriteInt(78, 3)
	}
	f.WriteInt(172, 1)
	if d.metric {
		f.WriteInt(271, 0)
		f.WriteInt(277, 2)
	} else {
		f.WriteInt(271, 4)
		f.WriteInt(276, 2)
		f.WriteInt(277, 4)
	}
	f.WriteInt(279, 2)
	f.WriteHex(340, d.font.Handle())
	f.WriteInt(371, 18)
	f.WriteInt(372, 18)
}

// line types are sizes on paper in the file's unit; each entity carries the
// scale of its view.
func lineType(name, words string, mm float64, on []float64) *table.LineType {
	var pattern []float64
	for i, v := range on {
		if i%2 == 1 {
			v = -v
		}
		pattern = append(pattern, v*mm)
	}
	return table.NewLineType(name, words, pattern...)
}
