package dxf

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/layouts/dimension"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
)

// everything is one of each element, empty and zero ones included.
func everything() drawing.Drawing {
	s := paper.Scale{Ratio: 24, Name: `1/2" = 1'-0"`}
	pen := drawing.Style{Layer: drawing.FrameNew, Pen: drawing.P50}
	show := measure.Show{Form: measure.InchesOnly, To: geom.Inch / 16}
	chain := dimension.Chain{
		Side: dimension.Above, Object: geom.In(96), Scale: s, Show: show,
		Rows: []dimension.Row{
			{Name: "parts", At: []geom.Length{0, geom.InFrac(40, 1, 4), geom.In(120)}},
			{Name: "whole", At: []geom.Length{0, geom.In(120)}, Also: true},
		},
	}
	dims, _ := chain.Draw()
	box := geom.RectOf(0, 0, geom.In(120), geom.In(96)).Polygon()
	elements := []drawing.Element{
		drawing.Line{}, drawing.Polyline{}, drawing.Arc{}, drawing.Area{}, drawing.Hatch{}, drawing.Text{}, drawing.Dimension{}, drawing.Group{},
		drawing.Line{Style: pen, A: geom.Pt(0, 0), B: geom.Pt(geom.MM(200), 0)},
		drawing.Line{Style: drawing.Style{Layer: drawing.JoistLine, Pen: drawing.P18, Dash: drawing.Joist}, A: geom.Pt(0, geom.In(10)), B: geom.Pt(geom.In(120), geom.In(10))},
		drawing.Polyline{Style: pen, Points: box, Closed: true},
		drawing.Arc{Style: pen, Center: geom.Pt(geom.In(20), geom.In(20)), Radius: geom.In(5), To: 360},
		drawing.Arc{Style: pen, Center: geom.Pt(geom.In(20), geom.In(20)), Radius: geom.In(8), From: 90, To: 180},
		drawing.Area{Layer: drawing.Symbols, Outline: box, Fill: drawing.White},
		drawing.Area{Layer: drawing.Symbols, Outline: geom.RectOf(0, 0, geom.In(3), geom.In(3)).Polygon(), Fill: drawing.Black},
		drawing.Area{Layer: drawing.Symbols, Outline: geom.RectOf(0, 0, geom.In(3), geom.In(3)).Polygon(), Fill: drawing.Accent},
		drawing.HatchLines(box, drawing.Style{Layer: drawing.FramePattern, Pen: drawing.P18}, drawing.Rising45, paper.MM(1), s),
		drawing.Text{Layer: drawing.Words, At: geom.Pt(geom.In(30), geom.In(30)), String: "clear 66 × 34, ⌀ 3/4, 90°, ± 1/16", Cap: paper.MM(2.4)},
		drawing.Text{Layer: drawing.Words, At: geom.Pt(geom.In(30), geom.In(40)), String: "a\nb\r%%c \\U+0041 \x1b[31m 😀 Größe", Cap: paper.MM(2.4), Bold: true, Anchor: drawing.Middle, Turned: true},
		drawing.Group{ID: "g", Title: "inner", Elements: []drawing.Element{drawing.Line{Style: pen, A: geom.Pt(0, 0), B: geom.Pt(0, geom.In(96))}}},
	}
	return drawing.Drawing{Name: "all", Title: "One of each", Scale: s, Elements: append(elements, dims...)}
}

func write(t *testing.T, units measure.System) []byte {
	t.Helper()
	d := everything()
	b, err := Write([]View{{Drawing: d}, {Drawing: d, At: geom.Pt(geom.In(300), 0)}}, Options{Title: "test", Units: units})
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// tag is one group code and its value.
type tag struct {
	code  int
	value string
}

func tags(t *testing.T, file []byte) []tag {
	t.Helper()
	lines := strings.Split(strings.TrimSuffix(string(file), "\n"), "\n")
	if len(lines)%2 != 0 {
		t.Fatalf("%d lines: a text with a line end in it", len(lines))
	}
	var out []tag
	for i := 0; i < len(lines); i += 2 {
		code, err := strconv.Atoi(lines[i])
		if err != nil {
			t.Fatalf("line %d: %q is no group code", i+1, lines[i])
		}
		out = append(out, tag{code, lines[i+1]})
	}
	return out
}

// objects cuts the tags at every code 0.
func objects(list []tag) [][]tag {
	var out [][]tag
	for _, g := range list {
		if g.code == 0 {
			out = append(out, nil)
		}
		if len(out) > 0 {
			out[len(out)-1] = append(out[len(out)-1], g)
		}
	}
	return out
}

func get(object []tag, code int) (string, bool) {
	for _, g := range object {
		if g.code == code {
			return g.value, true
		}
	}
	return "", false
}

// TestEveryPointerResolves checks what readers repair in silence: handles,
// owners, pointers, and the names of layers, line types, styles and blocks.
func TestEveryPointerResolves(t *testing.T) {
	list := tags(t, write(t, measure.Inches))
	handles := map[string]bool{}
	names := map[string]map[string]bool{}
	seed := int64(0)
	for i, g := range list {
		if g.code == 9 && g.value == "$HANDSEED" {
			seed, _ = strconv.ParseInt(list[i+1].value, 16, 64)
		}
	}
	for _, o := range objects(list) {
		kind := o[0].value
		code := 5
		if kind == "DIMSTYLE" {
			code = 105
		}
		switch kind {
		case "SECTION", "ENDSEC", "ENDTAB", "EOF":
			continue
		}
		h, ok := get(o, code)
		if !ok {
			t.Errorf("%s without a handle", kind)
			continue
		}
		if handles[h] {
			t.Errorf("handle %s twice", h)
		}
		handles[h] = true
		if n, _ := strconv.ParseInt(h, 16, 64); n <= 0 || n >= seed {
			t.Errorf("%s has handle %s, the seed is %X", kind, h, seed)
		}
		if name, ok := get(o, 2); ok && kind != "TABLE" {
			if names[kind] == nil {
				names[kind] = map[string]bool{}
			}
			names[kind][name] = true
		}
	}
	for _, o := range objects(list) {
		kind := o[0].value
		for _, g := range o {
			switch {
			case g.code >= 330 && g.code <= 369 || g.code == 390:
				if g.value != "0" && !handles[g.value] {
					t.Errorf("%s points (%d) to %s, which is not there", kind, g.code, g.value)
				}
			}
		}
		if _, owned := get(o, 330); !owned && handlesOf(o) {
			t.Errorf("%s has no owner", kind)
		}
		if kind == "DIMSTYLE" || kind == "STYLE" || kind == "LTYPE" || kind == "SECTION" {
			continue
		}
		if l, ok := get(o, 8); ok && !names["LAYER"][l] {
			t.Errorf("%s on layer %q, which is not defined", kind, l)
		}
		if l, ok := get(o, 6); ok && l != "" && kind != "LAYOUT" && !names["LTYPE"][l] {
			t.Errorf("%s of line type %q, which is not defined", kind, l)
		}
		if kind == "TEXT" {
			if s, _ := get(o, 7); !names["STYLE"][s] {
				t.Errorf("text of style %q, which is not defined", s)
			}
		}
		if kind == "DIMENSION" {
			b, _ := get(o, 2)
			s, _ := get(o, 3)
			if !names["BLOCK"][b] || !names["BLOCK_RECORD"][b] || !names["DIMSTYLE"][s] {
				t.Errorf("dimension with block %q and style %q, not both defined", b, s)
			}
		}
	}
}

func handlesOf(o []tag) bool {
	switch o[0].value {
	case "SECTION", "ENDSEC", "ENDTAB", "EOF", "CLASS":
		return false
	}
	return true
}

// TestDimensionsSayWhatTheyMeasure checks code 42 against the two origins, and
// the figure against the picture.
func TestDimensionsSayWhatTheyMeasure(t *testing.T) {
	list := objects(tags(t, write(t, measure.Inches)))
	pictured := map[string][]string{}
	block := ""
	for _, o := range list {
		switch o[0].value {
		case "BLOCK":
			block, _ = get(o, 2)
		case "ENDBLK":
			block = ""
		case "TEXT":
			s, _ := get(o, 1)
			pictured[block] = append(pictured[block], s)
		}
	}
	n := 0
	for _, o := range list {
		if o[0].value != "DIMENSION" {
			continue
		}
		num := func(code int) float64 {
			s, _ := get(o, code)
			v, err := strconv.ParseFloat(s, 64)
			if err != nil {
				t.Fatalf("dimension, group %d: %v", code, err)
			}
			return v
		}
		want := math.Abs(num(14) - num(13))
		if num(50) == 90 {
			want = math.Abs(num(24) - num(23))
		}
		if math.Abs(num(42)-want) > 1e-7 {
			t.Errorf("written %v, measured %v", num(42), want)
		}
		name, _ := get(o, 2)
		figure, _ := get(o, 1)
		if figure == "" {
			continue
		}
		n++
		if !strings.Contains(strings.Join(pictured[name], " "), figure) {
			t.Errorf("figure %q, pictured %q", figure, pictured[name])
		}
	}
	if n < 6 {
		t.Errorf("%d dimensions with figures, want at least 6", n)
	}
}

func TestSameBytesFromManyAtOnce(t *testing.T) {
	want := write(t, measure.Millimetres)
	var wg sync.WaitGroup
	for i := 0; i < 16; i++ {
		wg.Add(1)
		go func() {
			defer wg.Done()
			d := everything()
			got, err := Write([]View{{Drawing: d}, {Drawing: d, At: geom.Pt(geom.In(300), 0)}}, Options{Title: "test", Units: measure.Millimetres})
			if err != nil || !bytes.Equal(got, want) {
				t.Errorf("run %d differs, error %v", i, err)
			}
		}()
	}
	wg.Wait()
}

// audit is what the independent reader says of a file.
type audit struct {
	Errors, Fixes []string
	Units         int
	Counts        map[string]int
	Layers        []string
	Layouts       []string
	Dimensions    []struct {
		Measurement, Written float64
		Figure               string
		Pictured             []string
	}
	Lines [][2][2]float64
	Texts []string
}

// read runs the independent reader, ezdxf of Debian's python3-ezdxf.
func read(t *testing.T, file []byte) audit {
	t.Helper()
	python := "/usr/bin/python3"
	if err := exec.Command(python, "-c", "import ezdxf").Run(); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("python3-ezdxf is not installed, and checks from outside are required here")
		}
		t.Skip("python3-ezdxf is not installed")
	}
	path := filepath.Join(t.TempDir(), "a.dxf")
	if err := os.WriteFile(path, file, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(python, "testdata/audit.py", path).Output()
	if err != nil {
		t.Fatalf("the reader failed: %v %s", err, err.(*exec.ExitError).Stderr)
	}
	var a audit
	if err := json.Unmarshal(out, &a); err != nil {
		t.Fatal(err)
	}
	return a
}

func TestIndependentReader(t *testing.T) {
	for _, c := range []struct {
		units measure.System
		code  int
		line  float64 // 200 mm in the file's unit
	}{{measure.Inches, 1, 200 / 25.4}, {measure.Millimetres, 4, 200}} {
		t.Run(fmt.Sprint(c.code), func(t *testing.T) {
			a := read(t, write(t, c.units))
			if len(a.Errors) > 0 || len(a.Fixes) > 0 {
				t.Errorf("errors %q, fixes %q", a.Errors, a.Fixes)
			}
			if a.Units != c.code {
				t.Errorf("$INSUNITS %d, want %d", a.Units, c.code)
			}
			for _, d := range a.Dimensions {
				if math.Abs(d.Measurement-d.Written) > 1e-7 {
					t.Errorf("reader measures %v, file says %v", d.Measurement, d.Written)
				}
			}
			if a.Counts["DIMENSION"] < 6 || a.Counts["HATCH"] != 4 || a.Counts["CIRCLE"] < 2 || a.Counts["ARC"] != 2 || a.Counts["LWPOLYLINE"] < 2 {
				t.Errorf("counts %v", a.Counts)
			}
			found := false
			for _, l := range a.Lines {
				if l[0] == [2]float64{} && math.Abs(l[1][0]-c.line) < 1e-7 && l[1][1] == 0 {
					found = true
				}
			}
			if !found {
				t.Errorf("no line of %v in the file", c.line)
			}
			if len(a.Layouts) != 2 {
				t.Errorf("layouts %q", a.Layouts)
			}
		})
	}
}

func TestEncode(t *testing.T) {
	for in, want := range map[string]string{
		"14 3/4":     "14 3/4",
		"48 × 96":    "48 x 96",
		"⌀ 3/4 90°":  "%%c 3/4 90%%d",
		"%%c typed":  `\U+0025%c typed`,
		`\U+0041`:    `\U+005CU+0041`,
		"a\nb\x1bc":  "a b c",
		"Größe":      `Gr\U+00F6\U+00DFe`,
		"bow 😀 room": "bow ? room",
		"12′ 6″":     `12' 6"`,
	} {
		if got := encode(in); got != want {
			t.Errorf("encode(%q) = %q, want %q", in, got, want)
		}
	}
}

func TestNotANumberIsRefused(t *testing.T) {
	f := &formatter{}
	f.WriteFloat(40, math.NaN())
	if f.err == nil {
		t.Error("NaN was written")
	}
}
