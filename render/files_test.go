package render

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/layouts"
	"roomwright/layouts/drawing"
	"roomwright/layouts/paper"
	"roomwright/layouts/sheet"
)

// set returns an invented set of sheets with the given ids.
func set(file string, ids ...string) layouts.Set {
	s := layouts.Set{Title: "invented", File: file}
	size, _ := paper.ByName("A4", false)
	line := drawing.Line{Style: drawing.Style{Layer: drawing.Outline, Pen: drawing.P50}, B: geom.Pt(geom.MM(200), 0)}
	for _, id := range ids {
		s.Sheets = append(s.Sheets, sheet.Sheet{ID: id, Title: id, Size: size, Scale: paper.Full(), Elements: []drawing.Element{line}})
		s.Model = append(s.Model, layouts.Placed{Drawing: drawing.Drawing{Name: id, Scale: paper.Full(), Elements: []drawing.Element{line}}})
	}
	return s
}

func TestNames(t *testing.T) {
	files, err := Files(set("rooms/Old Laundry.v2.yaml", "plan", "wall-a", "wall-a", "../../etc/passwd", "Ω", "wall-\x1b[31m"), false)
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"01-plan.svg", "02-wall-a.svg", "03-wall-a.svg", "04-etc-passwd.svg", "05-sheet.svg", "06-wall-31m.svg", "old-laundry-v2.dxf"}
	for i, f := range files {
		if f.Name != want[i] {
			t.Errorf("file %d is called %q, want %q", i, f.Name, want[i])
		}
	}
}

func TestNameOfTheModel(t *testing.T) {
	for file, want := range map[string]string{
		"": "roomwright.dxf", "-": "roomwright.dxf", "standard input": "standard-input.dxf",
		"nul.yaml": "roomwright-nul.dxf", "COM1.yaml": "roomwright-com1.dxf", "Küche.yaml": "k-che.dxf",
		`C:\rooms\shed.yaml`: "c-rooms-shed.dxf", "..": "roomwright.dxf",
		strings.Repeat("long ", 100) + ".yaml": "",
	} {
		files, err := Files(set(file), false)
		if err != nil {
			t.Fatal(err)
		}
		got := files[0].Name
		if want != "" && got != want {
			t.Errorf("%q gives %q, want %q", file, got, want)
		}
		if !regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*\.dxf$`).MatchString(got) || len(got) > 70 {
			t.Errorf("%q gives %q, which is not safe everywhere", file, got)
		}
	}
}

func TestSameBytes(t *testing.T) {
	a, err := Files(set("x.yaml", "plan", "ceiling"), true)
	if err != nil {
		t.Fatal(err)
	}
	b, _ := Files(set("x.yaml", "plan", "ceiling"), true)
	for i := range a {
		if a[i].Name != b[i].Name || !bytes.Equal(a[i].Bytes, b[i].Bytes) {
			t.Errorf("%s differs between two runs", a[i].Name)
		}
	}
}
