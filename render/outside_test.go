package render_test

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/png"
	"math"
	"os"
	"os/exec"
	"slices"
	"strconv"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/measure"
)

// TestSheetsAreWellFormed has xmllint read every sheet of every room. Go's own
// reader has read them already, with their sizes, when they were drawn.
func TestSheetsAreWellFormed(t *testing.T) {
	xmllint := tool(t, "xmllint", "libxml2-utils")
	n := 0
	for _, s := range rooms(t) {
		paths := save(t, s.sheets()...)
		n += len(paths)
		if said, err := exec.Command(xmllint, append([]string{"--noout"}, paths...)...).CombinedOutput(); err != nil || len(said) > 0 {
			t.Errorf("%s: xmllint: %v %.2000s", s.name, err, said)
		}
	}
	if want := least(200); n < want {
		t.Errorf("%d sheets read, want at least %d", n, want)
	}
}

// TestAnotherProgramTakesEverySheet has librsvg draw every sheet of every room,
// one document a room: it has nothing to say about any.
func TestAnotherProgramTakesEverySheet(t *testing.T) {
	rsvg := tool(t, "rsvg-convert", "librsvg2-bin")
	list := rooms(t)
	each(len(list), func(i int) {
		paths := save(t, list[i].sheets()...)
		out := paths[0] + ".pdf"
		said, err := exec.Command(rsvg, append([]string{"-f", "pdf", "-o", out}, paths...)...).CombinedOutput()
		if err != nil || len(said) > 0 {
			t.Errorf("%s: rsvg-convert: %v %.2000s", list[i].name, err, said)
		}
	})
}

// TestPrintsAreTrue has librsvg draw every sheet of the examples at 254 dots an
// inch, ten to the millimetre: none is blank, the print-check square is 508
// dots wide and high, and every scale bar is as long as it says.
func TestPrintsAreTrue(t *testing.T) {
	rsvg := tool(t, "rsvg-convert", "librsvg2-bin")
	names := []string{bow, glaze}
	if underRace {
		names = names[:1]
	}
	bars := 0
	for _, name := range names {
		s := room(t, name)
		paths := save(t, s.sheets()...)
		if underRace {
			paths = paths[1:3] // an elevation, and a section with notes
		}
		pictures := make([]picture, len(paths))
		each(len(paths), func(i int) {
			said, err := exec.Command(rsvg, "-d", "254", "-p", "254", "-b", "white", paths[i]).Output()
			if err != nil {
				t.Errorf("%s: rsvg-convert: %v", paths[i], err)
				return
			}
			if pictures[i], err = pictureOf(said, 10); err != nil {
				t.Errorf("%s: %v", paths[i], err)
			}
		})
		for i, p := range pictures {
			w := s.paper[i]
			if underRace {
				w = s.paper[i+1]
			}
			if p.img == nil {
				continue
			}
			if wide, high := p.img.Rect.Dx(), p.img.Rect.Dy(); math.Abs(float64(wide)-w.w.Millimetres()*10) > 1 || math.Abs(float64(high)-w.h.Millimetres()*10) > 1 {
				t.Errorf("%s, %s: %d by %d dots, the sheet is %v by %v mm", name, w.name, wide, high, w.w.Millimetres(), w.h.Millimetres())
			}
			if share := p.ink(); share < 0.004 || share > 0.3 {
				t.Errorf("%s, %s: %.2f %% of the sheet is ink", name, w.name, 100*share)
			}
			bars += p.check(t, name, w)
		}
	}
	if want := least(8); bars < want {
		t.Errorf("%d scale bars measured, want at least %d", bars, want)
	}
}

// TestABrowserPrintsTrue has Chromium draw the framing sheet of the first
// example at twice its 96 dots an inch, and measures the same things.
func TestABrowserPrintsTrue(t *testing.T) {
	chromium := tool(t, "chromium", "chromium")
	s := room(t, bow)
	w, file := s.paper[1], s.sheets()[1]
	path := save(t, file)[0]
	out := path + ".png"
	const perMM = 2 * 96 / 25.4
	size := fmt.Sprintf("--window-size=%d,%d", int(math.Ceil(w.w.Millimetres()*perMM/2)), int(math.Ceil(w.h.Millimetres()*perMM/2)))
	cmd := exec.Command(chromium, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
		"--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
		"--force-device-scale-factor=2", size, "--user-data-dir="+t.TempDir(), "--screenshot="+out, "file://"+path)
	if said, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("chromium: %v %.2000s", err, said)
	}
	b, err := os.ReadFile(out)
	if err != nil {
		t.Fatal(err)
	}
	p, err := pictureOf(b, perMM)
	if err != nil {
		t.Fatal(err)
	}
	if share := p.ink(); share < 0.004 || share > 0.3 {
		t.Errorf("%.2f %% of the sheet is ink", 100*share)
	}
	if n := p.check(t, bow, w); n == 0 {
		t.Error("no scale bar to measure")
	}
}

// picture is a sheet as another program drew it.
type picture struct {
	img   *image.Gray
	perMM float64
}

// pictureOf reads a PNG with so many dots to the millimetre.
func pictureOf(b []byte, perMM float64) (picture, error) {
	img, err := png.Decode(bytes.NewReader(b))
	if err != nil {
		return picture{}, err
	}
	grey := image.NewGray(img.Bounds())
	switch img := img.(type) { // one channel tells ink from paper, the accent too
	case *image.NRGBA:
		for i := range grey.Pix {
			grey.Pix[i] = img.Pix[4*i+1]
		}
	case *image.RGBA:
		for i := range grey.Pix {
			grey.Pix[i] = img.Pix[4*i+1]
		}
	default:
		return picture{}, fmt.Errorf("a picture of kind %T", img)
	}
	return picture{grey, perMM}, nil
}

// ink returns the share of dark dots.
func (p picture) ink() float64 {
	n := 0
	for _, v := range p.img.Pix {
		if v < 128 {
			n++
		}
	}
	return float64(n) / float64(len(p.img.Pix))
}

// along returns the first and last dark place, in dots, on a line across the
// sheet (or up it) at a height (or distance from the left), between two places.
// An edge between two dots is told by how grey they are.
func (p picture) along(upright bool, at, from, to float64) (first, last float64, ok bool) {
	grey := func(i int) float64 {
		x, y := i, int(at)
		if upright {
			x, y = y, x
		}
		if !(image.Point{x, y}).In(p.img.Rect) {
			return 0
		}
		return 1 - float64(p.img.GrayAt(x, y).Y)/255
	}
	for i := int(from); i <= int(to); i++ {
		if grey(i) < 0.5 {
			continue
		}
		if !ok {
			first, ok = float64(i)-grey(i-1), true
		}
		last = float64(i) + 1 + grey(i+1)
	}
	return first, last, ok
}

// check measures the print-check square and the scale bars of a sheet, and
// returns how many bars it found.
func (p picture) check(t *testing.T, name string, w *written) (bars int) {
	t.Helper()
	dots := func(l geom.Length) float64 { return l.Millimetres() * p.perMM }
	down := func(y geom.Length) float64 { return dots(w.h - y) }
	about := 1.5 * p.perMM // where the file says a line is, it is looked for this near
	middle := func(upright bool, at, near float64) float64 {
		first, last, ok := p.along(upright, at, near-about, near+about)
		if !ok {
			t.Errorf("%s, %s: no line near %v", name, w.name, near)
		}
		return (first + last) / 2
	}
	squares := 0
	for _, k := range w.strokes {
		if k.pen != 35 || !within(k.in, "key") {
			continue
		}
		squares++
		b := k.mid
		quarter := b.H() * 3 / 10
		wide := middle(false, down(b.Mid().Y+quarter), dots(b.Max.X)) - middle(false, down(b.Mid().Y+quarter), dots(b.Min.X))
		high := middle(true, dots(b.Mid().X+quarter), down(b.Min.Y)) - middle(true, dots(b.Mid().X+quarter), down(b.Max.Y))
		if want := 50.8 * p.perMM; math.Abs(wide-want) > 1 || math.Abs(high-want) > 1 {
			t.Errorf("%s, %s: the print-check square is %.1f by %.1f dots, want %.1f", name, w.name, wide, high, want)
		}
	}
	if squares != 1 {
		t.Errorf("%s, %s: %d print-check squares", name, w.name, squares)
	}
	for id, title := range w.groups {
		scale, ok := strings.CutPrefix(title, "scale bar, ")
		if !ok {
			continue
		}
		bars++
		want, err := w.barLength(id, scale)
		if err != nil {
			t.Errorf("%s, %s: %v", name, w.name, err)
			continue
		}
		var bar geom.Rect
		for _, k := range w.strokes {
			if slices.Contains(k.in, id) {
				bar = bar.Union(k.box)
			}
		}
		first, last, _ := p.along(false, down(bar.Mid().Y), dots(bar.Min.X)-about, dots(bar.Max.X)+about)
		if got := last - first; math.Abs(got-dots(want)) > 1 {
			t.Errorf("%s, %s: the scale bar of %s is %.1f dots long, want %.1f", name, w.name, scale, got, dots(want))
		}
	}
	return bars
}

// barLength returns how long a scale bar has to be on paper: its last figure at
// the scale that it names, 1:20 or 1/2" = 1'-0".
func (w *written) barLength(id, scale string) (geom.Length, error) {
	last := ""
	for _, x := range w.words {
		if slices.Contains(x.in, id) {
			last = x.text
		}
	}
	real, err := measure.Parse(last, measure.Inches)
	if err != nil || !strings.ContainsAny(last, "ftinm") {
		return 0, fmt.Errorf("the scale bar ends at %q: %v", last, err)
	}
	if one, ratio, ok := strings.Cut(scale, ":"); ok && one == "1" {
		n, err := strconv.ParseInt(ratio, 10, 64)
		if err != nil || n < 1 {
			return 0, fmt.Errorf("scale %q", scale)
		}
		return real / geom.Length(n), nil
	}
	paper, foot, ok := strings.Cut(scale, " = ")
	part, err1 := measure.Parse(paper, measure.Inches)
	whole, err2 := measure.Parse(foot, measure.Inches)
	if err := errors.Join(err1, err2); err != nil || !ok || whole <= 0 {
		return 0, fmt.Errorf("scale %q: %v", scale, err)
	}
	return real * part / whole, nil
}
