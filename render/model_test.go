package render_test

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"roomwright/geom"
	"roomwright/geom/lining"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
)

// audit is what the independent reader says of a DXF file.
type audit struct {
	Errors, Fixes   []string
	Version         string
	Units           int
	Header, Extents [4]float64
	Layers          []string
	Counts          map[string]int
	Dimensions      []dimension
	Boxes           [][3]any
	Texts           []string

	unit geom.Length // of the file
}

// dimension is one DIMENSION, measured by the reader, as written in the file,
// and between its definition points.
type dimension struct {
	Measured, Written, Apart float64
	Layer, Figure            string
	Vertical                 bool
	Pictured                 []string
}

// audits has ezdxf (Debian: python3-ezdxf) read the DXF of every room, once for
// all tests.
var audits = sync.OnceValues(func() ([]audit, error) {
	list, err := drawn()
	if err != nil {
		return nil, err
	}
	dir, err := os.MkdirTemp("", "models")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	var paths []string
	for i, s := range list {
		paths = append(paths, filepath.Join(dir, fmt.Sprintf("%d.dxf", i)))
		if err := os.WriteFile(paths[i], s.model().Bytes, 0o600); err != nil {
			return nil, err
		}
	}
	const hands = 2
	out, failed := make([]audit, len(list)), make([]error, hands)
	each(hands, func(k int) {
		from, to := k*len(list)/hands, (k+1)*len(list)/hands
		b, err := exec.Command(interpreter, append([]string{filepath.Join("testdata", "audit.py")}, paths[from:to]...)...).Output()
		var got []audit
		if err == nil {
			err = json.Unmarshal(b, &got)
		}
		if err == nil && len(got) != to-from {
			err = fmt.Errorf("%d of %d files read", len(got), to-from)
		}
		failed[k] = err
		copy(out[from:to], got)
	})
	for i, s := range list {
		out[i].unit = geom.Inch
		if s.result.Room.Units == measure.Millimetres {
			out[i].unit = geom.Millimetre
		}
	}
	return out, errors.Join(failed...)
})

// audited returns every room and what the reader says of its DXF.
func audited(t *testing.T) ([]subject, []audit) {
	t.Helper()
	list := rooms(t)
	python(t)
	out, err := audits()
	if err != nil {
		t.Fatalf("the reader failed: %v", err)
	}
	return list, out
}

// near is what two numbers of a DXF file may differ by: they have ten digits.
const near = 1e-6

// layers are the names that a file may use.
func layers() []string {
	var out []string
	for _, l := range []drawing.Layer{
		drawing.WallFull, drawing.WallPattern, drawing.FrameKept, drawing.FrameNew, drawing.FrameOut, drawing.FramePattern,
		drawing.SawLine, drawing.Opening, drawing.Board, drawing.Outline, drawing.Door, drawing.Glazing, drawing.Grid, drawing.MainTee,
		drawing.WallAngle, drawing.HangerWire, drawing.CeilPanel, drawing.LightPanel, drawing.JoistLine, drawing.Duct, drawing.Service,
		drawing.Cut, drawing.Beyond, drawing.CutPattern, drawing.Dims, drawing.Words, drawing.Symbols, drawing.TitleBlock,
	} {
		out = append(out, string(l))
	}
	return append(out, "0", "Defpoints")
}

// TestAnotherProgramReadsTheModels has ezdxf read and audit the DXF of every
// room: no errors, nothing to fix, the units of the room, layers by their
// names, and extents that hold everything.
func TestAnotherProgramReadsTheModels(t *testing.T) {
	list, models := audited(t)
	known := layers()
	for i, a := range models {
		name := list[i].name
		if len(a.Errors) > 0 || len(a.Fixes) > 0 {
			t.Errorf("%s: errors %q, fixes %q", name, a.Errors, a.Fixes)
		}
		code := map[geom.Length]int{geom.Inch: 1, geom.Millimetre: 4}[a.unit]
		if a.Units != code || a.Version != "AC1015" {
			t.Errorf("%s: $INSUNITS %d, want %d; version %s", name, a.Units, code, a.Version)
		}
		for _, l := range a.Layers {
			if !slices.Contains(known, l) {
				t.Errorf("%s: layer %q", name, l)
			}
		}
		for what := range a.Counts {
			if l, _, _ := strings.Cut(what, " "); !slices.Contains(a.Layers, l) || l == "0" || l == "Defpoints" {
				t.Errorf("%s: %s stands on no layer of ours", name, what)
			}
		}
		// The header counts texts in full, so it may reach further than the lines.
		side := max(a.Extents[2]-a.Extents[0], a.Extents[3]-a.Extents[1])
		for k, sign := range []float64{-1, -1, 1, 1} {
			if more := sign * (a.Header[k] - a.Extents[k]); more < -near || more > side/10 {
				t.Errorf("%s: extents %v in the header, %v in the model", name, a.Header, a.Extents)
			}
		}
		if len(a.Dimensions) == 0 || len(a.Texts) == 0 {
			t.Errorf("%s: %d dimensions and %d texts", name, len(a.Dimensions), len(a.Texts))
		}
	}
}

// figure is a printed figure read back: "11 x 16 = 176" is 11 times 16, all
// others are once themselves.
type figure struct {
	whole, part geom.Length
	times       int
}

func figureOf(s string, bare measure.System) (f figure, err error) {
	f.times = 1
	if left, sum, ok := strings.Cut(s, " = "); ok {
		n, part, ok := strings.Cut(left, " x ")
		if f.times, err = strconv.Atoi(n); err != nil || !ok {
			return f, fmt.Errorf("%q is no count of equal parts", left)
		}
		if f.part, err = measure.Parse(part, bare); err != nil {
			return f, err
		}
		f.whole, err = measure.Parse(sum, bare)
		return f, err
	}
	f.whole, err = measure.Parse(s, bare)
	f.part = f.whole
	return f, err
}

// TestDimensionsSayWhatTheyMeasure checks every dimension of every room: the
// reader, group 42 and the definition points agree, the figure says the same
// within one printed step, and the picture shows the figure.
func TestDimensionsSayWhatTheyMeasure(t *testing.T) {
	list, models := audited(t)
	n, merged := 0, 0
	for i, a := range models {
		s := list[i]
		step := float64(s.result.Room.Show.To) / float64(a.unit)
		if step <= 0 {
			t.Fatalf("%s: no printed step", s.name)
		}
		for _, d := range a.Dimensions {
			n++
			if math.Abs(d.Measured-d.Written) > near || math.Abs(d.Measured-d.Apart) > near || d.Measured <= 0 {
				t.Errorf("%s: %q measures %v, written %v, its points are %v apart", s.name, d.Figure, d.Measured, d.Written, d.Apart)
			}
			if d.Layer != string(drawing.Dims) {
				t.Errorf("%s: dimension %q on layer %s", s.name, d.Figure, d.Layer)
			}
			if !slices.Contains(d.Pictured, d.Figure) {
				t.Errorf("%s: figure %q, pictured %q", s.name, d.Figure, d.Pictured)
			}
			f, err := figureOf(d.Figure, s.bare())
			if err != nil {
				t.Errorf("%s: figure %q: %v", s.name, d.Figure, err)
				continue
			}
			// A figure is the difference of two places, each rounded once.
			if got := float64(f.whole) / float64(a.unit); math.Abs(got-d.Measured) > step+near {
				t.Errorf("%s: figure %q against a measurement of %v", s.name, d.Figure, d.Measured)
			}
			if f.times > 1 {
				merged++
				if f.part*geom.Length(f.times) != f.whole {
					t.Errorf("%s: figure %q does not add up", s.name, d.Figure)
				}
			}
		}
	}
	if n < least(300) || merged < least(10) {
		t.Errorf("%d dimensions read, %d of them of equal parts; want at least %d and %d", n, merged, least(300), least(10))
	}
}

// measures reports whether a dimension measures l to within most, alone or as
// one of several equal parts, and its figure says so.
func (a audit) measures(l geom.Length, most float64, vertical bool, s subject) bool {
	step := s.result.Room.Show.To
	return slices.ContainsFunc(a.Dimensions, func(d dimension) bool {
		if d.Vertical != vertical {
			return false
		}
		f, err := figureOf(d.Figure, s.bare())
		if err != nil {
			return false
		}
		if f.times > 1 {
			return math.Abs(d.Measured-float64(l)*float64(f.times)/float64(a.unit)) < most*float64(f.times) && (f.part-l).Abs() <= step
		}
		return math.Abs(d.Measured-float64(l)/float64(a.unit)) < most && (f.whole-l).Abs() <= step
	})
}

// followed returns the row of boards that the chain follows in the place of b:
// one that shares a stretch of the wall with it and hangs lower.
func (s subject) followed(b lining.Row) *lining.Row {
	for i, o := range s.result.Boards {
		lower := o.Box.Min.Y < b.Box.Min.Y || o.Box.Min.Y == b.Box.Min.Y && o.Index < b.Index
		if o.Wall == b.Wall && lower && o.Box.X().Overlaps(b.Box.X()) {
			return &s.result.Boards[i]
		}
	}
	return nil
}

// beside returns what is next to a row of boards on both sides: another row or
// the finished face of the wall there.
func (s subject) beside(b lining.Row) (left, right geom.Length) {
	side := s.result.Plan.Sides[b.Wall]
	left, right = side.LeftOff, side.Taped-side.RightOff
	for _, o := range s.result.Boards {
		if o.Wall != b.Wall || o.Index == b.Index || s.followed(o) != nil {
			continue
		}
		if o.Box.Max.X <= b.Box.Min.X {
			left = max(left, o.Box.Max.X)
		}
		if o.Box.Min.X >= b.Box.Max.X {
			right = min(right, o.Box.Min.X)
		}
	}
	return left, right
}

// TestModelsMeasureTheResult finds the numbers of the result among the
// dimensions that the independent reader measures: walls, openings, borders,
// boards and their margins.
func TestModelsMeasureTheResult(t *testing.T) {
	list, models := audited(t)
	n := 0
	for i, a := range models {
		s := list[i]
		most := near
		has := func(what string, l geom.Length, vertical bool) {
			n++
			if l > 0 && !a.measures(l, most, vertical, s) {
				t.Errorf("%s: no dimension measures %s, %s", s.name, what, s.result.Room.Show.Figure(l))
			}
		}
		for _, side := range s.result.Plan.Sides {
			has("wall "+side.Wall, side.Taped, false)
		}
		for _, w := range s.result.Walls {
			for _, o := range w.Openings {
				has("the rough width of "+o.Name, o.Rough.W(), false)
				has("between the kings of "+o.Name, o.Kings.Len(), false)
				if s.name == bow || s.name == glaze {
					// On small sheets words may take its place; the ladder always tells both heights.
					has("the rough height of "+o.Name, o.Rough.H(), true)
				}
			}
		}
		for _, b := range s.result.Boards {
			if s.followed(b) != nil {
				continue
			}
			for k := 1; k < len(b.Seams); k++ {
				has("a board of "+b.Name, b.Seams[k].X-b.Seams[k-1].X, false)
			}
			left, right := s.beside(b)
			has("what is left of "+b.Name, b.Box.Min.X-left, false)
			has("what is right of "+b.Name, right-b.Box.Max.X, false)
		}
		if c := s.result.Ceiling; c != nil {
			// The chains stand at the wall at the bottom of the page and at the right;
			// where that wall is a hair out of square, a figure runs along it.
			if !s.result.Plan.Square {
				most = float64(s.result.Room.Show.To) / float64(a.unit) / 2
			}
			right, low, left := c.Outline[1], c.Outline[2], c.Outline[3]
			has("the border at the left", c.XLines[0].At-left.X, false)
			has("the border at the right", low.X-c.XLines[len(c.XLines)-1].At, false)
			has("the border at the top", right.Y-c.YLines[0].At, true)
			has("the border at the bottom", c.YLines[len(c.YLines)-1].At-low.Y, true)
			if len(c.XLines) > 1 {
				has("a module across", c.ModuleX, false)
			}
			if len(c.YLines) > 1 {
				has("a module up", c.ModuleY, true)
			}
		}
	}
	if want := least(150); n < want {
		t.Errorf("%d numbers looked for, want at least %d", n, want)
	}
}

// TestModelsAreInTrueSize finds new uprights, boards and light panels as closed
// boxes of their true size on their layers.
func TestModelsAreInTrueSize(t *testing.T) {
	list, models := audited(t)
	n := 0
	for i, a := range models {
		s := list[i]
		has := func(what string, layer drawing.Layer, w, h geom.Length) {
			n++
			if !slices.ContainsFunc(a.Boxes, func(b [3]any) bool {
				return b[0] == string(layer) && math.Abs(b[1].(float64)-float64(w)/float64(a.unit)) < near && math.Abs(b[2].(float64)-float64(h)/float64(a.unit)) < near
			}) {
				t.Errorf("%s: no box of %s by %s for %s", s.name, s.result.Room.Show.Figure(w), s.result.Room.Show.Figure(h), what)
			}
		}
		for _, w := range s.result.Walls {
			for _, m := range w.Members {
				if m.State == piece.New && m.Depth == 0 {
					has(m.Name+" "+string(m.Mark), drawing.FrameNew, m.Box.W(), m.Box.H())
				}
			}
		}
		for _, b := range s.result.Boards {
			for _, sh := range b.Sheets {
				has("board "+string(sh.Mark), drawing.Board, sh.Box.W(), sh.Box.H())
			}
		}
		if s.result.Ceiling != nil {
			for _, l := range s.result.Ceiling.Lights {
				face := s.result.Ceiling.TeeFace // what is seen lies between the tees' flanges
				has("light "+string(l.Mark), drawing.LightPanel, l.Box.W()-face, l.Box.H()-face)
			}
		}
	}
	if want := least(100); n < want {
		t.Errorf("%d boxes looked for, want at least %d", n, want)
	}
}

// TestASecondProgramReadsTheModels has dxf-parser 1.1.2 (npm) read the models
// of the examples, and find what ezdxf finds. It is fetched under CI alone and
// is never required.
func TestASecondProgramReadsTheModels(t *testing.T) {
	if os.Getenv("CI") == "" {
		t.Skip("dxf-parser is fetched with npm where CI is set")
	}
	ctx, stop := context.WithTimeout(t.Context(), 20*time.Second)
	defer stop()
	dir := t.TempDir()
	install := exec.CommandContext(ctx, "npm", "install", "--prefix", dir, "--no-audit", "--no-fund", "--ignore-scripts", "dxf-parser@1.1.2")
	if said, err := install.CombinedOutput(); err != nil {
		t.Skipf("dxf-parser could not be had: %v %.300s", err, said)
	}
	script, err := filepath.Abs(filepath.Join("testdata", "second.js"))
	if err != nil {
		t.Fatal(err)
	}
	list, models := audited(t)
	for i, a := range models {
		if list[i].name != bow && list[i].name != glaze {
			continue
		}
		cmd := exec.Command("node", script, save(t, list[i].model())[0])
		cmd.Env = append(os.Environ(), "NODE_PATH="+filepath.Join(dir, "node_modules"))
		b, err := cmd.Output()
		var got struct {
			Units      int
			Counts     map[string]int
			Layers     []string
			Dimensions []dimension
		}
		if err == nil {
			err = json.Unmarshal(b, &got)
		}
		if err != nil {
			t.Errorf("%s: the second reader failed: %v", list[i].name, err)
			continue
		}
		want := map[string]int{}
		for what, n := range a.Counts {
			_, kind, _ := strings.Cut(what, " ")
			want[kind] += n
		}
		for _, kind := range []string{"LINE", "LWPOLYLINE", "CIRCLE", "ARC", "TEXT", "DIMENSION"} {
			if got.Counts[kind] != want[kind] {
				t.Errorf("%s: %d %s, ezdxf finds %d", list[i].name, got.Counts[kind], kind, want[kind])
			}
		}
		if got.Units != a.Units || !slices.Equal(got.Layers, a.Layers) {
			t.Errorf("%s: units %d, layers %q", list[i].name, got.Units, got.Layers)
		}
		for k, d := range got.Dimensions {
			if e := a.Dimensions[k]; math.Abs(d.Measured-e.Measured) > near || d.Figure != e.Figure || !slices.Contains(d.Pictured, d.Figure) {
				t.Errorf("%s: dimension %q of %v, pictured %q; ezdxf reads %q of %v", list[i].name, d.Figure, d.Measured, d.Pictured, e.Figure, e.Measured)
			}
		}
	}
}
