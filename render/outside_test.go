package render_test

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"errors"
	"image/png"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
	"roomwright/render"
)

// tool returns the path of a program that reads our files. Where it is missing
// the test is skipped, but under CI every check from outside is required.
func tool(t *testing.T, name, pkg string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err == nil {
		return path
	}
	if os.Getenv("CI") != "" {
		t.Fatalf("%s (Debian: %s) is not installed, and checks from outside are required here", name, pkg)
	}
	t.Skipf("%s (Debian: %s) is not installed", name, pkg)
	return ""
}

// save writes files to a folder and returns their paths.
func save(t *testing.T, files []render.File) []string {
	t.Helper()
	dir := t.TempDir()
	var out []string
	for _, f := range files {
		path := filepath.Join(dir, f.Name)
		if err := os.WriteFile(path, f.Bytes, 0o600); err != nil {
			t.Fatal(err)
		}
		out = append(out, path)
	}
	return out
}

// TestSheetsAreWellFormed reads every sheet of every room as XML, by Go's
// reader and by xmllint, and finds its size in millimetres.
func TestSheetsAreWellFormed(t *testing.T) {
	size := regexp.MustCompile(`width="([0-9.]+)mm" height="([0-9.]+)mm" viewBox="0 0 (\d+) (\d+)"`)
	var all []string
	for _, s := range rooms(t) {
		for _, f := range s.sheets() {
			d := xml.NewDecoder(bytes.NewReader(f.Bytes))
			for {
				_, err := d.Token()
				if errors.Is(err, io.EOF) {
					break
				}
				if err != nil {
					t.Fatalf("%s, %s: %v", s.name, f.Name, err)
				}
			}
			m := size.FindSubmatch(f.Bytes)
			if m == nil {
				t.Fatalf("%s, %s: no size in millimetres with a view box in hundredths", s.name, f.Name)
			}
			for i := 1; i <= 2; i++ {
				mm, _ := strconv.ParseFloat(string(m[i]), 64)
				hundredths, _ := strconv.ParseFloat(string(m[i+2]), 64)
				if math.Abs(mm*100-hundredths) > 1e-6 {
					t.Errorf("%s, %s: %v mm against a view box of %v", s.name, f.Name, mm, hundredths)
				}
			}
		}
		all = append(all, save(t, s.sheets())...)
	}
	xmllint := tool(t, "xmllint", "libxml2-utils")
	if out, err := exec.Command(xmllint, append([]string{"--noout", "--huge"}, all...)...).CombinedOutput(); err != nil {
		t.Errorf("xmllint: %v %.2000s", err, out)
	}
}

// TestAnotherProgramDrawsTheSheets has librsvg draw every sheet of the two
// examples, and finds the print-check square of 2 inches true to a pixel.
func TestAnotherProgramDrawsTheSheets(t *testing.T) {
	rsvg := tool(t, "rsvg-convert", "librsvg2-bin")
	for _, name := range []string{bow, glaze} {
		s := room(t, name)
		paths := save(t, s.sheets())
		each(len(paths), func(i int) {
			out := paths[i] + ".png"
			said, err := exec.Command(rsvg, "-d", "254", "-p", "254", "-b", "white", "-o", out, paths[i]).CombinedOutput()
			if err != nil || len(said) > 0 {
				t.Errorf("%s: %v %s", paths[i], err, said)
				return
			}
			checkSquare(t, out)
		})
	}
}

// checkSquare finds the print-check square on a picture at 254 dots an inch:
// its right edge is the right margin of the sheet, its sides 508 dots.
func checkSquare(t *testing.T, path string) {
	f, err := os.Open(path)
	if err != nil {
		t.Error(err)
		return
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Error(err)
		return
	}
	dark := func(x, y int) bool {
		r, g, b, _ := img.At(x, y).RGBA()
		return r+g+b < 3*0x8000
	}
	// A column of the picture is an edge when it is dark over most of 500 dots.
	b := img.Bounds()
	edge := func(x, y0 int) int {
		n := 0
		for y := y0; y < y0+508 && y < b.Max.Y; y++ {
			if dark(x, y) {
				n++
			}
		}
		return n
	}
	right := b.Max.X - 120 // the margin at the right is 12 mm
	best, at := 0, 0
	for y := 0; y < b.Max.Y-508; y += 4 {
		if n := max(edge(right, y), edge(right-1, y), edge(right+1, y)); n > best {
			best, at = n, y
		}
	}
	if best < 480 {
		t.Errorf("%s: no print-check square at the right margin", path)
		return
	}
	found := false
	for x := right - 509; x <= right-507; x++ {
		if edge(x, at) >= 480 {
			found = true
		}
	}
	if !found {
		t.Errorf("%s: the print-check square is not 508 dots (2 in) wide", path)
	}
}

// TestABrowserDrawsASheet has Chromium draw the framing sheet of the first example.
func TestABrowserDrawsASheet(t *testing.T) {
	chromium := tool(t, "chromium", "chromium")
	s := room(t, bow)
	path := save(t, s.sheets()[1:2])[0]
	out := path + ".png"
	cmd := exec.Command(chromium, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
		"--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
		"--user-data-dir="+t.TempDir(), "--window-size=1640,1060", "--screenshot="+out, "file://"+path)
	if said, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("chromium: %v %.2000s", err, said)
	}
	f, err := os.Open(out)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	dark := 0
	for y := 0; y < img.Bounds().Max.Y; y++ {
		for x := 0; x < img.Bounds().Max.X; x++ {
			if r, g, b, _ := img.At(x, y).RGBA(); r+g+b < 3*0x6000 {
				dark++
			}
		}
	}
	// A sheet is mostly white paper, and never blank.
	if share := float64(dark) / float64(img.Bounds().Dx()*img.Bounds().Dy()); share < 0.01 || share > 0.3 {
		t.Errorf("%.1f %% of the picture is dark, want 1 to 30", 100*share)
	}
}

// audit is what the independent reader says of a DXF file.
type audit struct {
	Errors, Fixes []string
	Units         int
	Counts        map[string]int
	Layers        []string
	Dimensions    []struct {
		Measurement, Written float64
		Figure               string
		Pictured             []string
	}
	Texts []string
}

// audited reads the DXF files of rooms with ezdxf (Debian: python3-ezdxf).
func audited(t *testing.T, list []subject) []audit {
	t.Helper()
	const python = "/usr/bin/python3"
	if err := exec.Command(python, "-c", "import ezdxf").Run(); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("python3-ezdxf is not installed, and checks from outside are required here")
		}
		t.Skip("python3-ezdxf is not installed")
	}
	out := make([]audit, len(list))
	each(len(list), func(i int) {
		path := filepath.Join(t.TempDir(), "a.dxf")
		if err := os.WriteFile(path, list[i].model().Bytes, 0o600); err != nil {
			t.Error(err)
			return
		}
		b, err := exec.Command(python, filepath.Join("dxf", "testdata", "audit.py"), path).Output()
		if err == nil {
			err = json.Unmarshal(b, &out[i])
		}
		if err != nil {
			t.Errorf("%s: the reader failed: %v", list[i].name, err)
		}
	})
	return out
}

// figure reads back a printed figure: of "11 x 16 = 176" and of
// "193 3/4 = 16'-1 3/4"" the last part.
func figure(s string, bare measure.System) (geom.Length, error) {
	if _, sum, ok := strings.Cut(s, " = "); ok {
		s = sum
	}
	return measure.Parse(s, bare)
}

// TestAnotherProgramReadsTheModel has ezdxf read and audit the DXF of every
// room: no errors, no fixes, and each dimension measures what its figure says.
func TestAnotherProgramReadsTheModel(t *testing.T) {
	list := rooms(t)
	for i, a := range audited(t, list) {
		s := list[i]
		if len(a.Errors) > 0 || len(a.Fixes) > 0 {
			t.Errorf("%s: errors %q, fixes %q", s.name, a.Errors, a.Fixes)
		}
		unit, code := geom.Inch, 1
		if s.result.Room.Units == measure.Millimetres {
			unit, code = geom.Millimetre, 4
		}
		if a.Units != code {
			t.Errorf("%s: $INSUNITS %d, want %d", s.name, a.Units, code)
		}
		if len(a.Dimensions) == 0 {
			t.Errorf("%s: no dimensions", s.name)
		}
		bare := measure.Inches
		if s.result.Room.Show.Form == measure.MillimetresOnly {
			bare = measure.Millimetres
		}
		step := float64(s.result.Room.Show.To) / float64(unit)
		for _, d := range a.Dimensions {
			if math.Abs(d.Measurement-d.Written) > 1e-6 {
				t.Errorf("%s: %q measures %v, written %v", s.name, d.Figure, d.Measurement, d.Written)
			}
			l, err := figure(d.Figure, bare)
			if err != nil {
				t.Errorf("%s: figure %q: %v", s.name, d.Figure, err)
				continue
			}
			// A figure is the difference of two places, each rounded once.
			if got := float64(l) / float64(unit); math.Abs(got-d.Measurement) > step+1e-6 {
				t.Errorf("%s: figure %q against a measurement of %v", s.name, d.Figure, d.Measurement)
			}
		}
	}
}

// TestModelMeasuresTheResult finds the numbers of the result among the
// dimensions that the independent reader measures.
func TestModelMeasuresTheResult(t *testing.T) {
	list := []subject{room(t, bow), room(t, glaze)}
	for i, a := range audited(t, list) {
		s := list[i]
		unit := float64(geom.Inch)
		if s.result.Room.Units == measure.Millimetres {
			unit = float64(geom.Millimetre)
		}
		has := func(what string, l geom.Length) {
			want := float64(l) / unit
			for _, d := range a.Dimensions {
				if math.Abs(d.Measurement-want) < 1e-6 {
					return
				}
			}
			t.Errorf("%s: no dimension measures %s, %v", s.name, what, want)
		}
		for _, side := range s.result.Plan.Sides {
			has("wall "+side.Wall, side.Taped)
		}
		for _, w := range s.result.Walls {
			for _, o := range w.Openings {
				has("rough opening "+o.Name, o.Rough.W())
				has("between the kings of "+o.Name, o.Kings.Len())
				has("height of rough opening "+o.Name, o.Rough.H())
			}
		}
		c := s.result.Ceiling
		// The chains stand at the walls at the bottom and at the right.
		o := c.Outline
		has("border at the left", c.XLines[0].At-o[3].X)
		has("border at the right", o[2].X-c.XLines[len(c.XLines)-1].At)
		has("border at the top", o[1].Y-c.YLines[0].At)
		has("border at the bottom", c.YLines[len(c.YLines)-1].At-o[2].Y)
		has("a whole module", c.ModuleX)
	}
}
