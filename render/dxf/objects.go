package dxf

import (
	"github.com/yofu/dxf/handle"
)

// entry is a named thing in a dictionary.
type entry struct {
	name string
	what handle.Handler
}

// dictionary is DICTIONARY with its owner.
type dictionary struct {
	handle  int
	owner   handle.Handler
	entries []entry
}

func (d *dictionary) Handle() int      { return d.handle }
func (d *dictionary) SetHandle(v *int) { d.handle = *v; *v++ }

func (d *dictionary) Format(f *formatter) {
	f.WriteString(0, "DICTIONARY")
	f.WriteHex(5, d.handle)
	f.WriteHex(330, owner(d.owner))
	f.WriteString(100, "AcDbDictionary")
	f.WriteInt(281, 1)
	for _, e := range d.entries {
		f.WriteString(3, e.name)
		f.WriteHex(350, e.what.Handle())
	}
}

// owner returns the handle of an owner, 0 for what nobody owns.
func owner(h handle.Handler) int {
	if h == nil {
		return 0
	}
	return h.Handle()
}

// plotStyles is ACDBDICTIONARYWDFLT, and normal the one style in it.
type plotStyles struct {
	dictionary
	normal *placeholder
}

func (d *plotStyles) Format(f *formatter) {
	f.WriteString(0, "ACDBDICTIONARYWDFLT")
	f.WriteHex(5, d.handle)
	f.WriteHex(330, owner(d.owner))
	f.WriteString(100, "AcDbDictionary")
	f.WriteInt(281, 1)
	f.WriteString(3, "Normal")
	f.WriteHex(350, d.normal.handle)
	f.WriteString(100, "AcDbDictionaryWithDefault")
	f.WriteHex(340, d.normal.handle)
}

// placeholder is ACDBPLACEHOLDER.
type placeholder struct {
	handle int
	owner  handle.Handler
}

func (p *placeholder) Handle() int      { return p.handle }
func (p *placeholder) SetHandle(v *int) { p.handle = *v; *v++ }

func (p *placeholder) Format(f *formatter) {
	f.WriteString(0, "ACDBPLACEHOLDER")
	f.WriteHex(5, p.handle)
	f.WriteHex(330, p.owner.Handle())
}

// layout is LAYOUT: model space, or a sheet of paper that shows it.
type layout struct {
	name   string
	handle int
	owner  handle.Handler
	record *record
	model  bool
	tab    int
	w, h   float64 // paper, mm
	min    [2]float64
	max    [2]float64
}

func (l *layout) Handle() int      { return l.handle }
func (l *layout) SetHandle(v *int) { l.handle = *v; *v++ }

func (l *layout) Format(f *formatter) {
	f.WriteString(0, "LAYOUT")
	f.WriteHex(5, l.handle)
	f.WriteHex(330, l.owner.Handle())
	f.WriteString(100, "AcDbPlotSettings")
	f.WriteString(1, "")
	f.WriteString(2, "")
	f.WriteString(4, "")
	f.WriteString(6, "")
	for code := 40; code <= 43; code++ {
		f.WriteFloat(code, 0)
	}
	f.WriteFloat(44, l.w)
	f.WriteFloat(45, l.h)
	for code := 46; code <= 49; code++ {
		f.WriteFloat(code, 0)
	}
	f.WriteFloat(140, 0)
	f.WriteFloat(141, 0)
	f.WriteFloat(142, 1)
	f.WriteFloat(143, 1)
	if l.model {
		f.WriteInt(70, 1024|512|128|32)
	} else {
		f.WriteInt(70, 512|128|32)
	}
	f.WriteInt(72, 1)
	f.WriteInt(73, 0)
	f.WriteInt(74, 5)
	f.WriteString(7, "")
	f.WriteInt(75, 16)
	f.WriteFloat(147, 1)
	f.WriteFloat(148, 0)
	f.WriteFloat(149, 0)
	f.WriteString(100, "AcDbLayout")
	f.WriteString(1, l.name)
	f.WriteInt(70, 1)
	f.WriteInt(71, l.tab)
	f.WriteFloat(10, 0)
	f.WriteFloat(20, 0)
	f.WriteFloat(11, l.w)
	f.WriteFloat(21, l.h)
	f.point(12, 0, 0)
	f.point(14, l.min[0], l.min[1])
	f.point(15, l.max[0], l.max[1])
	f.WriteFloat(146, 0)
	f.point(13, 0, 0)
	f.WriteFloat(16, 1)
	f.WriteFloat(26, 0)
	f.WriteFloat(36, 0)
	f.WriteFloat(17, 0)
	f.WriteFloat(27, 1)
	f.WriteFloat(37, 0)
	f.WriteInt(76, 0)
	f.WriteHex(330, l.record.handle)
}

// viewport is VIEWPORT: the window of a paper layout onto model space.
type viewport struct {
	base
	id           int
	x, y, w, h   float64 // on paper, mm
	viewX, viewY float64 // middle of what it shows
	viewHeight   float64
}

func (v *viewport) Format(f *formatter) {
	f.WriteString(0, "VIEWPORT")
	f.WriteHex(5, v.handle)
	f.WriteHex(330, v.owner.Handle())
	f.WriteString(100, "AcDbEntity")
	f.WriteInt(67, 1)
	f.WriteString(8, v.layer.Name())
	f.WriteString(100, "AcDbViewport")
	f.point(10, v.x, v.y)
	f.WriteFloat(40, v.w)
	f.WriteFloat(41, v.h)
	f.WriteInt(68, v.id)
	f.WriteInt(69, v.id)
	f.WriteFloat(12, v.viewX)
	f.WriteFloat(22, v.viewY)
	f.WriteFloat(13, 0)
	f.WriteFloat(23, 0)
	f.WriteFloat(14, 10)
	f.WriteFloat(24, 10)
	f.WriteFloat(15, 10)
	f.WriteFloat(25, 10)
	// Looking straight down.
	f.WriteFloat(16, 0)
	f.WriteFloat(26, 0)
	f.WriteFloat(36, 1)
	f.point(17, 0, 0)
	f.WriteFloat(42, 50)
	f.WriteFloat(43, 0)
	f.WriteFloat(44, 0)
	f.WriteFloat(45, v.viewHeight)
	f.WriteFloat(50, 0)
	f.WriteFloat(51, 0)
	f.WriteInt(72, 100)
	f.WriteInt(90, 32768)
	f.WriteString(1, "")
	f.WriteInt(281, 0)
	f.WriteInt(71, 1)
	f.WriteInt(74, 0)
	f.point(110, 0, 0)
	f.point(111, 1, 0)
	f.WriteFloat(112, 0)
	f.WriteFloat(122, 1)
	f.WriteFloat(132, 0)
	f.WriteInt(79, 0)
	f.WriteFloat(146, 0)
}
