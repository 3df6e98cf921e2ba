package layouts_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/anyroom"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
)

// compose takes a room file to its sheets; it reports false when the file has
// errors, which then are not for the sheets to show.
func compose(text string) (layouts.Set, []finding.Finding, bool) {
	r, found := roomfile.Read([]byte(text))
	if finding.Errors(found) > 0 {
		return layouts.Set{}, nil, false
	}
	res := setout.SetOut(r)
	res.Findings = finding.Sort(append(found, res.Findings...))
	if finding.Errors(res.Findings) > 0 {
		return layouts.Set{}, nil, false
	}
	set, told := layouts.Compose(res, layouts.Options{File: "a-room-file-with-a-long-name.yaml"})
	return set, told, true
}

// printable is the margin that every printer leaves white (a guide to printer
// margins calls a quarter of an inch a safe bet).
const printable = 6.35

// judge checks that nothing on a sheet is hard to read or outside the part
// that printers reach.
func judge(t *testing.T, name string, set layouts.Set) {
	t.Helper()
	for _, s := range set.Sheets {
		for _, f := range legible.Faults(s.Elements, paper.Full()) {
			t.Errorf("%s, %s: %s", name, s.ID, f)
		}
		inside := geom.RectOf(0, 0, geom.Length(s.Size.W), geom.Length(s.Size.H)).Inset(geom.Length(paper.MM(printable)))
		drawing.Walk(s.Elements, true, func(e drawing.Element) {
			if _, group := e.(drawing.Group); group {
				return
			}
			b := drawing.Bounds([]drawing.Element{e}, paper.Full())
			if b != (geom.Rect{}) && inside.Union(b) != inside {
				what := fmt.Sprintf("%T", e)
				if text, ok := e.(drawing.Text); ok {
					what = text.String
				}
				t.Errorf("%s, %s: %s reaches out of the sheet", name, s.ID, what)
			}
		})
	}
}

var drawingLine = regexp.MustCompile(`(?m)^drawing:.*$`)

// TestSheetsOfTheExamples judges every sheet of the examples, on each paper in
// both orientations, and of the starters.
func TestSheetsOfTheExamples(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "cmd", "roomwright", "examples", "*.yaml"))
	if err != nil || len(files) < 2 {
		t.Fatalf("examples: %v %v", files, err)
	}
	n := 0
	one := func(name, text string) {
		set, told, ok := compose(text)
		if !ok {
			t.Fatalf("%s has errors", name)
		}
		for _, f := range told {
			t.Errorf("%s: %s", name, f.What)
		}
		n += len(set.Sheets)
		judge(t, name, set)
	}
	for _, path := range files {
		b, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for _, size := range []string{"letter", "tabloid", "A4", "A3"} {
			for _, way := range []string{"landscape", "portrait"} {
				line := "drawing: {paper: " + size + ", orientation: " + way + "}"
				one(filepath.Base(path)+" on "+size+" "+way, drawingLine.ReplaceAllString(string(b), line))
			}
		}
	}
	one("starter in inches", string(roomfile.Starter(measure.Inches)))
	one("starter in millimetres", string(roomfile.Starter(measure.Millimetres)))
	if n < 150 {
		t.Errorf("%d sheets judged, want at least 150", n)
	}
}

// TestSheetsOfAnyRoom judges the sheets of rooms that nobody thought of. The
// seeds are fixed; a failing one is named.
func TestSheetsOfAnyRoom(t *testing.T) {
	want, drawn := 12, 0
	for seed := uint64(0); drawn < want; seed++ {
		if seed == 900 {
			t.Fatalf("only %d of %d rooms could be set out", drawn, seed)
		}
		r := rand.New(rand.NewPCG(seed, 2))
		text := anyroom.File(func(_ string, low, high int) int { return low + r.IntN(high-low+1) })
		set, _, ok := compose(text)
		if !ok {
			continue
		}
		drawn++
		judge(t, fmt.Sprintf("seed %d", seed), set)
	}
}
