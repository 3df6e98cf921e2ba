package dxf

import (
	"fmt"
	"math"
	"slices"

	"github.com/yofu/dxf/class"
	"github.com/yofu/dxf/color"
	"github.com/yofu/dxf/table"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// View is one drawing and where its origin goes in model space.
type View struct {
	Drawing drawing.Drawing
	At      geom.Point
}

// Options are what the file as a whole has to say.
type Options struct {
	Title string
	Units measure.System
}

// Write returns the drawings as one DXF file in true size.
func Write(views []View, o Options) ([]byte, error) {
	w := newWriter(o)
	for _, v := range views {
		w.view(v)
	}
	return w.bytes()
}

// writer gathers the parts of one file.
type writer struct {
	o      Options
	unit   geom.Length // one unit of the file
	tables [9]*symbols
	blocks []*block
	items  []item
	layers map[drawing.Layer]*table.Layer
	styles map[int64]*dimStyle
	fonts  [2]*table.Style
	zero   *table.Layer
	points *table.Layer
	normal *placeholder
	model  *record
	sheet  *record
	min    [2]float64
	max    [2]float64
	empty  bool
}

// The order of the tables in the file.
const (
	tVport = iota
	tLtype
	tLayer
	tStyle
	tView
	tUcs
	tAppid
	tDimstyle
	tRecord
)

func newWriter(o Options) *writer {
	w := &writer{o: o, unit: geom.Inch, layers: map[drawing.Layer]*table.Layer{}, styles: map[int64]*dimStyle{}, normal: &placeholder{}, empty: true}
	if o.Units == measure.Millimetres {
		w.unit = geom.Millimetre
	}
	for i, name := range []string{"VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"} {
		w.tables[i] = &symbols{name: name}
	}
	continuous := table.NewLineType("Continuous", "Solid line")
	for _, lt := range []*table.LineType{table.NewLineType("ByLayer", ""), table.NewLineType("ByBlock", ""), continuous} {
		w.tables[tLtype].add(lt)
	}
	for _, d := range []struct {
		dash  drawing.Dash
		words string
	}{{drawing.Taken, "taken out"}, {drawing.Hidden, "hidden behind"}, {drawing.Joist, "joist centres above"}, {drawing.Overhead, "ducts and pipes above"}, {drawing.Chain, "saw line"}} {
		var on []float64
		for _, l := range d.dash.Pattern() {
			on = append(on, l.MM())
		}
		w.tables[tLtype].add(lineType(d.dash.Name(), d.words, w.mm(), on))
	}
	w.zero = w.newLayer("0", 7, continuous)
	w.points = w.newLayer("Defpoints", 8, continuous)
	for i, f := range []struct{ name, file string }{{"Standard", "arial.ttf"}, {"BOLD", "arialbd.ttf"}} {
		w.fonts[i] = table.NewStyle(f.name)
		w.fonts[i].FontName = f.file
		w.fonts[i].WidthFactor = 0.95
		w.fonts[i].LastHeightUsed = w.mm() * 2.8
		w.tables[tStyle].add(w.fonts[i])
	}
	w.tables[tAppid].add(table.NewAppID("ACAD"))
	w.tables[tDimstyle].add(w.newDimStyle("Standard", 1))
	w.model, w.sheet = &record{name: "*Model_Space"}, &record{name: "*Paper_Space"}
	for _, r := range []*record{w.model, w.sheet} {
		w.tables[tRecord].add(r)
		w.blocks = append(w.blocks, &block{record: r, layer: w.zero, paper: r == w.sheet})
	}
	return w
}

// mm returns one millimetre in the file's unit.
func (w *writer) mm() float64 { return float64(geom.Millimetre) / float64(w.unit) }

// real returns a length in the file's unit.
func (w *writer) real(l geom.Length) float64 { return float64(l) / float64(w.unit) }

func (w *writer) newLayer(name string, aci int, lt *table.LineType) *table.Layer {
	l := table.NewLayer(name, color.ColorNumber(aci), lt)
	l.PlotStyle = w.normal
	w.tables[tLayer].add(l)
	return l
}

// layer returns the layer of an element, made when it is first used.
func (w *writer) layer(l drawing.Layer) *table.Layer {
	if got, ok := w.layers[l]; ok {
		return got
	}
	continuous := w.tables[tLtype].list[2].(*table.LineType)
	made := w.newLayer(string(l), colour(l), continuous)
	w.layers[l] = made
	return made
}

func (w *writer) newDimStyle(name string, ratio int64) *dimStyle {
	return &dimStyle{name: name, scale: float64(ratio), mm: w.mm(), metric: w.o.Units == measure.Millimetres, font: w.fonts[0]}
}

// dimStyleFor returns the dimension style of a scale.
func (w *writer) dimStyleFor(s paper.Scale) *dimStyle {
	if d, ok := w.styles[s.Ratio]; ok {
		return d
	}
	d := w.newDimStyle(fmt.Sprintf("SCALE-1-%d", s.Ratio), s.Ratio)
	w.styles[s.Ratio] = d
	w.tables[tDimstyle].add(d)
	return d
}

// view adds one drawing and its title.
func (w *writer) view(v View) {
	at := place{w: w, at: v.At, scale: v.Drawing.Scale, owner: w.model}
	w.items = append(w.items, at.all(v.Drawing.Elements)...)
	b := v.Drawing.Bounds()
	if v.Drawing.Title == "" || b == (geom.Rect{}) {
		return
	}
	title := v.Drawing.Title
	if v.Drawing.Scale.Name != "" {
		title += ", text sized for " + v.Drawing.Scale.Name
	}
	w.items = append(w.items, at.all([]drawing.Element{drawing.Text{
		Layer: drawing.TitleBlock, At: geom.Pt(b.Min.X, b.Max.Y+v.Drawing.Scale.Real(paper.MM(8))),
		String: title, Cap: paper.MM(4.2), Bold: true,
	}})...)
}

// reach widens the extents of the file.
func (w *writer) reach(x, y float64) {
	if w.empty {
		w.min, w.max, w.empty = [2]float64{x, y}, [2]float64{x, y}, false
		return
	}
	w.min = [2]float64{math.Min(w.min[0], x), math.Min(w.min[1], y)}
	w.max = [2]float64{math.Max(w.max[0], x), math.Max(w.max[1], y)}
}

// bytes gives every part its handle and writes the file.
func (w *writer) bytes() ([]byte, error) {
	middle := [2]float64{(w.min[0] + w.max[0]) / 2, (w.min[1] + w.max[1]) / 2}
	height := math.Max(w.max[1]-w.min[1], (w.max[0]-w.min[0])*297/420) * 1.05
	if height <= 0 {
		height = 1
	}
	vport := table.NewViewport("*ACTIVE")
	vport.UpperRight = []float64{1, 1}
	vport.ViewCenter = []float64{middle[0], middle[1]}
	vport.SnapSpacing, vport.GridSpacing = []float64{1, 1}, []float64{1, 1}
	vport.ViewDirection = []float64{0, 0, 1}
	vport.Height, vport.AspectRatio = height, 420.0/297
	w.tables[tVport].add(vport)

	root, group, layouts := &dictionary{}, &dictionary{}, &dictionary{}
	styles := &plotStyles{normal: w.normal}
	w.normal.owner = styles
	group.owner, layouts.owner, styles.owner = root, root, root
	root.entries = []entry{{"ACAD_GROUP", group}, {"ACAD_LAYOUT", layouts}, {"ACAD_PLOTSTYLENAME", styles}}
	model := &layout{name: "Model", owner: layouts, record: w.model, model: true, w: 420, h: 297, min: w.min, max: w.max}
	sheet := &layout{name: "All views", owner: layouts, record: w.sheet, tab: 1, w: 420, h: 297, max: [2]float64{420, 297}}
	layouts.entries = []entry{{"All views", sheet}, {"Model", model}}
	w.model.layout, w.sheet.layout = model, sheet
	main := &viewport{base: base{owner: w.sheet, layer: w.zero}, id: 1, x: 210, y: 148.5, w: 420, h: 297, viewX: 210, viewY: 148.5, viewHeight: 297}
	window := &viewport{base: base{owner: w.sheet, layer: w.zero}, id: 2, x: 210, y: 148.5, w: 400, h: 277, viewX: middle[0], viewY: middle[1], viewHeight: height}

	next := 1
	for _, t := range w.tables {
		t.SetHandle(&next)
	}
	for _, b := range w.blocks {
		b.SetHandle(&next)
	}
	for _, e := range w.items {
		e.SetHandle(&next)
	}
	main.SetHandle(&next)
	window.SetHandle(&next)
	for _, d := range []interface{ SetHandle(*int) }{root, group, layouts, styles, w.normal, model, sheet} {
		d.SetHandle(&next)
	}

	f := &formatter{}
	w.header(f, next)
	class.New().Format(f)
	section(f, "TABLES", func() {
		for _, t := range w.tables {
			t.Format(f)
		}
	})
	section(f, "BLOCKS", func() {
		for _, b := range w.blocks {
			b.Format(f)
		}
	})
	section(f, "ENTITIES", func() {
		for _, e := range w.items {
			e.Format(f)
		}
		main.Format(f)
		window.Format(f)
	})
	section(f, "OBJECTS", func() {
		root.Format(f)
		group.Format(f)
		layouts.Format(f)
		styles.Format(f)
		w.normal.Format(f)
		model.Format(f)
		sheet.Format(f)
	})
	f.WriteString(0, "EOF")
	if f.err != nil {
		return nil, fmt.Errorf("dxf: %w", f.err)
	}
	return slices.Clone(f.buf.Bytes()), nil
}

// section writes one section around its contents.
func section(f *formatter, name string, contents func()) {
	f.WriteString(0, "SECTION")
	f.WriteString(2, name)
	contents()
	f.WriteString(0, "ENDSEC")
}

// header writes the variables that say what the numbers mean.
func (w *writer) header(f *formatter, next int) {
	units, measurement, lunits, luprec := 1, 0, 4, 4
	if w.o.Units == measure.Millimetres {
		units, measurement, lunits, luprec = 4, 1, 2, 0
	}
	section(f, "HEADER", func() {
		for _, v := range []struct {
			name string
			code int
			text string
		}{{"$ACADVER", 1, "AC1015"}, {"$DWGCODEPAGE", 3, "ANSI_1252"}, {"$CLAYER", 8, "0"}, {"$TEXTSTYLE", 7, "Standard"}, {"$DIMSTYLE", 2, "Standard"}} {
			f.WriteString(9, v.name)
			f.WriteString(v.code, v.text)
		}
		for _, v := range []struct {
			name  string
			value int
		}{{"$INSUNITS", units}, {"$MEASUREMENT", measurement}, {"$LUNITS", lunits}, {"$LUPREC", luprec}, {"$LWDISPLAY", 1}} {
			f.WriteString(9, v.name)
			code := 70
			if v.name == "$LWDISPLAY" {
				code = 290
			}
			f.WriteInt(code, v.value)
		}
		for _, v := range []struct {
			name string
			at   [2]float64
		}{{"$INSBASE", [2]float64{}}, {"$EXTMIN", w.min}, {"$EXTMAX", w.max}} {
			f.WriteString(9, v.name)
			f.point(10, v.at[0], v.at[1])
		}
		f.WriteString(9, "$LTSCALE")
		f.WriteFloat(40, 1)
		f.WriteString(9, "$HANDSEED")
		f.WriteHex(5, next)
	})
}
