package elevation

import (
	"os"
	"path/filepath"
	"testing"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
	"roomwright/layouts/sheet"
	"roomwright/render/svg"
)

func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip("LOOK is not set")
	}
	res := setOut(t, laundry(inches()))
	for _, n := range []int{24, 48} {
		for _, s := range paper.InchScales() {
			if s.Ratio != int64(n) {
				continue
			}
			p := Draw(res, 0, s)
			b := p.Bounds()
			e := drawing.Place(p.Elements, s, geom.Pt(geom.MM(10)-geom.Length(s.OnPaper(b.Min.X)), geom.MM(10)-geom.Length(s.OnPaper(b.Min.Y))))
			size := paper.Size{W: s.OnPaper(b.W()) + paper.MM(20), H: s.OnPaper(b.H()) + paper.MM(20)}
			out, err := svg.Write(sheet.Sheet{Title: p.Title, Size: size, Elements: e}, false)
			if err != nil {
				t.Fatal(err)
			}
			os.WriteFile(filepath.Join(dir, p.Name+"-"+s.Name[:1]+".svg"), out, 0o644)
			for _, f := range legible.Faults(p.Elements, s) {
				t.Error(f)
			}
			t.Log(p.Notes, p.Tables)
		}
	}
}
