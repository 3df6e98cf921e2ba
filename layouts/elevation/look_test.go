package elevation

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"roomwright/geom"
	"roomwright/layouts/boards"
	"roomwright/layouts/cuts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
	"roomwright/layouts/section"
	"roomwright/layouts/sheet"
	"roomwright/render/svg"
)

func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK is not set")
	}
	out := func(name string, p drawing.Plate, s paper.Scale) {
		b := p.Bounds()
		e := drawing.Place(p.Elements, s, geom.Pt(geom.MM(10)-geom.Length(s.OnPaper(b.Min.X)), geom.MM(10)-geom.Length(s.OnPaper(b.Min.Y))))
		for i, l := range p.Legend {
			e = append(e, drawing.Place(l.Swatch, paper.Full(), geom.Pt(geom.MM(10), geom.Length(s.OnPaper(b.H()))+geom.MM(20+int64(i)*7)))...)
			e = append(e, drawing.Text{At: geom.Pt(geom.MM(27), geom.Length(s.OnPaper(b.H()))+geom.MM(19+int64(i)*7)), String: l.Words, Cap: paper.MM(2.4)})
		}
		size := paper.Size{W: s.OnPaper(b.W()) + paper.MM(20), H: s.OnPaper(b.H()) + paper.MM(20) + paper.MM(7*float64(len(p.Legend)))}
		bytes, err := svg.Write(sheet.Sheet{Title: p.Title, Size: size, Elements: e}, false)
		if err != nil {
			t.Fatal(err)
		}
		os.WriteFile(filepath.Join(dir, fmt.Sprintf("%s-%s-%d.svg", name, p.Name, s.Ratio)), bytes, 0o644)
		for _, f := range legible.Faults(p.Elements, s) {
			t.Errorf("%s %s 1:%d: %s", name, p.Name, s.Ratio, f)
		}
	}
	for _, c := range []struct{ name, text, show string }{
		{"laundry", laundry, ""}, {"laundryft", laundry, "feet and inches"},
		{"granary", granary, ""}, {"bow", example(t, "bow-makers-room.yaml"), ""}, {"glaze", example(t, "glaze-test-room.yaml"), ""},
	} {
		res := read(t, c.text, c.show)
		for _, n := range []int64{24, 48} {
			s := paper.Scale{Ratio: n, Name: fmt.Sprintf("1:%d", n)}
			for w := range res.Walls {
				p := Draw(res, w, s)
				if failed := drawn(res, w, s).failed; len(failed) > 0 {
					t.Logf("%s %s 1:%d: no place for %v", c.name, p.Name, n, failed)
				}
				out(c.name, p, s)
			}
			seen := map[int]bool{}
			for _, b := range res.Boards {
				if !seen[b.Wall] {
					seen[b.Wall] = true
					p := boards.Draw(res, b.Wall, s)
					out(c.name, p, s)
				}
			}
		}
		for _, k := range cuts.Of(res) {
			if k.Kind == cuts.Header {
				for _, n := range []int64{4, 8} {
					s := paper.Scale{Ratio: n, Name: fmt.Sprintf("1:%d", n)}
					out(c.name, section.Header(res, k, s), s)
				}
			}
		}
	}
}
