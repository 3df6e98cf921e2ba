package dxf

import (
	"github.com/yofu/dxf/format"
	"github.com/yofu/dxf/handle"
	"github.com/yofu/dxf/table"
)

// record is a BLOCK_RECORD; those of layouts point to them.
type record struct {
	name   string
	handle int
	owner  handle.Handler
	layout *layout
}

func (r *record) IsSymbolTable() bool       { return true }
func (r *record) Name() string              { return r.name }
func (r *record) Handle() int               { return r.handle }
func (r *record) SetHandle(v *int)          { r.handle = *v; *v++ }
func (r *record) SetOwner(o handle.Handler) { r.owner = o }
func (r *record) Format(g format.Formatter) {
	f := asOurs(g)
	f.WriteString(0, "BLOCK_RECORD")
	f.WriteHex(5, r.handle)
	f.WriteHex(330, r.owner.Handle())
	f.WriteString(100, "AcDbSymbolTableRecord")
	f.WriteString(100, "AcDbBlockTableRecord")
	f.WriteString(2, r.name)
	if r.layout != nil {
		f.WriteHex(340, r.layout.handle)
	} else {
		f.WriteHex(340, 0)
	}
}

// block is a BLOCK with its contents and its end.
type block struct {
	record    *record
	layer     *table.Layer
	anonymous bool
	paper     bool
	handle    int
	end       int
	items     []item
}

func (b *block) SetHandle(v *int) {
	b.handle = *v
	*v++
	for _, e := range b.items {
		e.SetHandle(v)
	}
	b.end = *v
	*v++
}

func (b *block) Format(f *formatter) {
	f.WriteString(0, "BLOCK")
	f.WriteHex(5, b.handle)
	f.WriteHex(330, b.record.handle)
	f.WriteString(100, "AcDbEntity")
	if b.paper {
		f.WriteInt(67, 1)
	}
	f.WriteString(8, b.layer.Name())
	f.WriteString(100, "AcDbBlockBegin")
	f.WriteString(2, b.record.name)
	flags := 0
	if b.anonymous {
		flags = 1
	}
	f.WriteInt(70, flags)
	f.point(10, 0, 0)
	f.WriteString(3, b.record.name)
	f.WriteString(1, "")
	for _, e := range b.items {
		e.Format(f)
	}
	f.WriteString(0, "ENDBLK")
	f.WriteHex(5, b.end)
	f.WriteHex(330, b.record.handle)
	f.WriteString(100, "AcDbEntity")
	if b.paper {
		f.WriteInt(67, 1)
	}
	f.WriteString(8, b.layer.Name())
	f.WriteString(100, "AcDbBlockEnd")
}
