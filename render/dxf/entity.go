package dxf

import (
	"github.com/yofu/dxf/entity"
	"github.com/yofu/dxf/format"
	"github.com/yofu/dxf/handle"
	"github.com/yofu/dxf/table"

	"roomwright/layouts/drawing"
)

// item is anything that stands in a list of entities.
type item interface {
	Format(format.Formatter)
	Handle() int
	SetHandle(*int)
}

// styled is an entity of the library with a pen, a line type and a colour.
type styled struct {
	entity.Entity
	style style
}

func (s styled) Format(f format.Formatter) {
	s.Entity.Format(styling{formatter: asOurs(f), style: s.style})
}

// base is the common part of our own entities.
type base struct {
	kind   string
	handle int
	owner  handle.Handler
	layer  *table.Layer
	style  style
}

func (b *base) Handle() int      { return b.handle }
func (b *base) SetHandle(v *int) { b.handle = *v; *v++ }
func (b *base) begin(f *formatter) {
	f.WriteString(0, b.kind)
	f.WriteHex(5, b.handle)
	f.WriteHex(330, b.owner.Handle())
	f.WriteString(100, "AcDbEntity")
	f.WriteString(8, b.layer.Name())
	b.style.write(f)
}

// text is TEXT.
type text struct {
	base
	x, y, height float64
	value        string
	anchor       drawing.Anchor
	turned       bool
	font         string
}

func (t *text) Format(g format.Formatter) {
	f := asOurs(g)
	t.begin(f)
	f.WriteString(100, "AcDbText")
	f.point(10, t.x, t.y)
	f.WriteFloat(40, t.height)
	f.WriteString(1, t.value)
	if t.turned {
		f.WriteFloat(50, 90)
	}
	f.WriteString(7, t.font)
	if t.anchor != drawing.Start {
		f.WriteInt(72, map[drawing.Anchor]int{drawing.Middle: 1, drawing.End: 2}[t.anchor])
		f.point(11, t.x, t.y)
	}
	f.WriteString(100, "AcDbText")
}

// dot is POINT; the definition points of dimensions.
type dot struct {
	base
	x, y float64
}

func (d *dot) Format(g format.Formatter) {
	f := asOurs(g)
	d.begin(f)
	f.WriteString(100, "AcDbPoint")
	f.point(10, d.x, d.y)
}

// solid is HATCH with a solid fill, bounded by one polyline.
type solid struct {
	base
	points [][2]float64
}

func (s *solid) Format(g format.Formatter) {
	f := asOurs(g)
	s.begin(f)
	f.WriteString(100, "AcDbHatch")
	f.point(10, 0, 0)
	f.WriteFloat(210, 0)
	f.WriteFloat(220, 0)
	f.WriteFloat(230, 1)
	f.WriteString(2, "SOLID")
	f.WriteInt(70, 1)
	f.WriteInt(71, 0)
	f.WriteInt(91, 1)
	f.WriteInt(92, 1|2)
	f.WriteInt(72, 0)
	f.WriteInt(73, 1)
	f.WriteInt(93, len(s.points))
	for _, p := range s.points {
		f.WriteFloat(10, p[0])
		f.WriteFloat(20, p[1])
	}
	f.WriteInt(97, 0)
	f.WriteInt(75, 1)
	f.WriteInt(76, 1)
	f.WriteInt(98, 0)
}

// dimensionEntity is a linear DIMENSION, across or up, with its picture in a block.
type dimensionEntity struct {
	base
	block    *block
	dims     *dimStyle
	from, to [2]float64
	line     [2]float64
	text     [2]float64
	vertical bool
	measure  float64
	figure   string
}

func (d *dimensionEntity) Format(g format.Formatter) {
	f := asOurs(g)
	d.begin(f)
	f.WriteString(100, "AcDbDimension")
	f.WriteString(2, d.block.record.Name())
	// The definition point lies on the dimension line, over the second origin.
	if d.vertical {
		f.point(10, d.line[0], d.to[1])
	} else {
		f.point(10, d.to[0], d.line[1])
	}
	f.point(11, d.text[0], d.text[1])
	f.WriteInt(70, 32|128)
	f.WriteString(1, d.figure)
	f.WriteInt(71, 5)
	f.WriteFloat(42, d.measure)
	f.WriteString(3, d.dims.Name())
	f.WriteString(100, "AcDbAlignedDimension")
	f.point(13, d.from[0], d.from[1])
	f.point(14, d.to[0], d.to[1])
	if d.vertical {
		f.WriteFloat(50, 90)
	} else {
		f.WriteFloat(50, 0)
	}
	f.WriteString(100, "AcDbRotatedDimension")
}
