package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
	"roomwright/layouts/sheet"
)

// node is an element of a file as another reader sees it.
type node struct {
	name  string
	attr  map[string]string
	text  string // of this element and those inside it
	depth int
}

// read reads a file to its end; it fails when the file is not well-formed.
func read(t testing.TB, file []byte) []node {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(file))
	var nodes []node
	var open []int
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return nodes
		}
		if err != nil {
			t.Fatalf("not well-formed: %v", err)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			n := node{name: tok.Name.Local, attr: map[string]string{}, depth: len(open)}
			for _, a := range tok.Attr {
				n.attr[a.Name.Local] = a.Value
			}
			open = append(open, len(nodes))
			nodes = append(nodes, n)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			for _, i := range open {
				nodes[i].text += string(tok)
			}
		}
	}
}

// named returns the elements of a name.
func named(nodes []node, name string) []node {
	var out []node
	for _, n := range nodes {
		if n.name == name {
			out = append(out, n)
		}
	}
	return out
}

func a4(e ...drawing.Element) page {
	size, _ := paper.ByName("A4", false)
	return page{title: "test", desc: "test", size: size, elements: e}
}

func write(t testing.TB, p page) []byte {
	t.Helper()
	out, err := p.write()
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func mm(v float64) geom.Length { return geom.Length(paper.MM(v)) }

func black(pen drawing.Pen) drawing.Style { return drawing.Style{Pen: pen} }

// kinds is one of each kind of element, empty and zero ones after it.
func kinds() []drawing.Element {
	square := geom.RectOf(mm(20), mm(20), mm(60), mm(60)).Polygon()
	line := drawing.Line{Style: black(drawing.P25), A: geom.Pt(mm(10), mm(10)), B: geom.Pt(mm(50), mm(10))}
	return []drawing.Element{
		line,
		drawing.Polyline{Style: black(drawing.P50), Points: square, Closed: true},
		drawing.Arc{Style: black(drawing.P18), Center: geom.Pt(mm(40), mm(40)), Radius: mm(5), To: 360},
		drawing.Arc{Style: black(drawing.P18), Center: geom.Pt(mm(40), mm(40)), Radius: mm(8), From: 270, To: 90},
		drawing.Area{Outline: square, Fill: drawing.Accent},
		drawing.HatchLines(square, black(drawing.P18), drawing.Rising45, paper.MM(1), paper.Full()),
		drawing.Text{At: geom.Pt(mm(10), mm(100)), String: "14 3/4", Cap: paper.MM(2.8)},
		drawing.Dimension{Figure: "40", Picture: []drawing.Element{line}},
		drawing.Group{ID: "wall-a", Title: "Wall A", Elements: []drawing.Element{line}},
		drawing.Line{}, drawing.Polyline{}, drawing.Polyline{Points: square[:1], Closed: true}, drawing.Arc{},
		drawing.Arc{Radius: mm(3)}, drawing.Area{}, drawing.Area{Outline: square[:2]}, drawing.Hatch{},
		drawing.Hatch{Lines: [][2]geom.Point{{}}}, drawing.Text{}, drawing.Text{String: "no size"}, drawing.Text{Cap: paper.MM(2)},
		drawing.Dimension{}, drawing.Group{}, drawing.Group{ID: "wall-a", Elements: []drawing.Element{drawing.Group{}}},
	}
}

func TestEveryKindComesThrough(t *testing.T) {
	nodes := read(t, write(t, a4(kinds()...)))
	counts := map[string]int{}
	for _, n := range nodes {
		counts[n.name]++
	}
	// Three lines: alone, in the dimension, in the group; four paths: the
	// square, the half circle, the area, the hatch; one whole circle.
	for name, want := range map[string]int{"line": 3, "path": 4, "circle": 1, "text": 1, "g": 2, "rect": 1} {
		if counts[name] != want {
			t.Errorf("%d %s elements, want %d", counts[name], name, want)
		}
	}
	if root := nodes[0]; root.attr["width"] != "297mm" || root.attr["height"] != "210mm" ||
		root.attr["viewBox"] != "0 0 29700 21000" || root.attr["role"] != "img" {
		t.Errorf("root is %v", root.attr)
	}
	if nodes[1].name != "title" {
		t.Errorf("first element is %s, not the title", nodes[1].name)
	}
	first := slices.IndexFunc(nodes, func(n node) bool { return n.name == "rect" || n.name == "line" || n.name == "path" })
	if nodes[first].name != "rect" || nodes[first].attr["fill"] != "#fff" {
		t.Error("the white sheet is not drawn first")
	}
}

func TestReadsAsXMLElsewhere(t *testing.T) {
	tool, err := exec.LookPath("xmllint")
	if err != nil {
		missing(t, "xmllint")
	}
	cmd := exec.Command(tool, "--noout", "--nonet", "-")
	cmd.Stdin = bytes.NewReader(write(t, a4(append(kinds(), hostile()...)...)))
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Errorf("xmllint: %v\n%s", err, out)
	}
}

// missing skips a test whose tool is not installed; on the build server that
// is a failure.
func missing(t *testing.T, tool string) {
	t.Helper()
	if os.Getenv("CI") == "true" {
		t.Fatalf("%s is not installed", tool)
	}
	t.Skipf("%s is not installed", tool)
}

// tricks are texts that break out of careless writers.
func tricks() []string {
	return []string{
		`</text><script>alert(1)</script>`, `" onload="alert(1)`, `' x='`, `]]></style><script>`, "\x00\x07\x1b[31mred",
		"two\nlines\tand a tab", "bad \xff\xfe bytes", `<!--`, `&amp;&lt;&#0;`, "\u202e4/3 41", `a 1/2 <b> 3/4`,
	}
}

func hostile() []drawing.Element {
	var out []drawing.Element
	for i, s := range tricks() {
		out = append(out, drawing.Group{ID: s, Title: s, Elements: []drawing.Element{
			drawing.Text{At: geom.Pt(mm(20), mm(float64(20+10*i))), String: s, Cap: paper.MM(3), Turned: i%2 == 0},
		}})
	}
	return out
}

func TestHostileTextStaysText(t *testing.T) {
	p := a4(hostile()...)
	p.title, p.desc = strings.Join(tricks(), " "), strings.Join(tricks(), " ")
	file := write(t, p)
	allowed := map[string][]string{
		"svg": {"width", "height", "viewBox", "role", "aria-labelledby", "xmlns", "xlink"}, "title": {"id"}, "desc": {"id"},
		"style": {"type"}, "rect": {"x", "y", "width", "height", "fill"}, "g": {"id"},
		"text": {"x", "y", "space", "font-size", "transform", "class"}, "tspan": {"x", "dy", "font-size"},
	}
	texts := 0
	for _, n := range read(t, file) {
		names, ok := allowed[n.name]
		if !ok {
			t.Errorf("an element %s came in", n.name)
		}
		for a := range n.attr {
			if !slices.Contains(names, a) {
				t.Errorf("an attribute %s came into %s", a, n.name)
			}
		}
		if n.name == "text" {
			texts++
			if strings.ContainsAny(n.text, "\x00\x07\x1b\n\t\u202e") {
				t.Errorf("a control character in %q", n.text)
			}
		}
	}
	if texts != len(tricks()) {
		t.Errorf("%d texts, want %d", texts, len(tricks()))
	}
}

func TestIDsAreUsedOnce(t *testing.T) {
	e := append(hostile(), hostile()...)
	for range 3 {
		e = append(e, drawing.Group{ID: "label-a1", Elements: kinds()[:1]}, drawing.Group{ID: "label-a1-2", Elements: kinds()[:1]},
			drawing.Group{ID: "sheet-title", Elements: kinds()[:1]})
	}
	seen := map[string]bool{}
	for _, n := range read(t, write(t, a4(e...))) {
		id, ok := n.attr["id"]
		if ok && (seen[id] || strings.Trim(id, "abcdefghijklmnopqrstuvwxyz0123456789-") != "") {
			t.Errorf("id %q is used before, or is no id", id)
		}
		seen[id] = true
	}
}

// A line of 200 mm is 20000 units long, and the sheet's width and height in
// millimetres agree with its view box.
func TestTrueSizeInUnits(t *testing.T) {
	nodes := read(t, write(t, a4(drawing.Line{Style: black(drawing.P50), A: geom.Pt(mm(20), mm(100)), B: geom.Pt(mm(220), mm(100))})))
	l := named(nodes, "line")[0].attr
	if l["x1"] != "2000" || l["x2"] != "22000" || l["y1"] != "11000" || l["y2"] != "11000" {
		t.Errorf("line %v", l)
	}
}

// Rendered at 254 dots an inch, ten to the millimetre, a line of 200 mm is
// 2000 pixels long and the sheet 2970 by 2100.
func TestTrueSizeRendered(t *testing.T) {
	tool, err := exec.LookPath("rsvg-convert")
	if err != nil {
		missing(t, "rsvg-convert")
	}
	dir := t.TempDir()
	in, out := filepath.Join(dir, "line.svg"), filepath.Join(dir, "line.png")
	file := write(t, a4(drawing.Line{Style: black(drawing.P50), A: geom.Pt(mm(20), mm(100)), B: geom.Pt(mm(220), mm(100))}))
	if err := os.WriteFile(in, file, 0o644); err != nil {
		t.Fatal(err)
	}
	if msg, err := exec.Command(tool, "-d", "254", "-p", "254", "-o", out, in).CombinedOutput(); err != nil {
		t.Fatalf("rsvg-convert: %v\n%s", err, msg)
	}
	r, err := os.Open(out)
	if err != nil {
		t.Fatal(err)
	}
	defer r.Close()
	picture, err := png.Decode(r)
	if err != nil {
		t.Fatal(err)
	}
	if b := picture.Bounds(); b.Dx() != 2970 || b.Dy() != 2100 {
		t.Errorf("sheet is %d by %d pixels", b.Dx(), b.Dy())
	}
	dark := 0
	for x := range picture.Bounds().Dx() {
		if r, _, _, _ := picture.At(x, 1100).RGBA(); r < 0x8000 {
			dark++
		}
	}
	if dark != 2000 {
		t.Errorf("line of 200 mm is %d pixels long, want 2000", dark)
	}
}

func TestSameBytes(t *testing.T) {
	if !bytes.Equal(write(t, sample()), write(t, sample())) {
		t.Error("the same sheet gives two files")
	}
}

func TestSheetWithoutSize(t *testing.T) {
	if _, err := Write(sheet.Sheet{}, false); err == nil {
		t.Error("a sheet without size is written")
	}
}

func TestPlainHasNoColour(t *testing.T) {
	e := []drawing.Element{
		drawing.Line{Style: drawing.Style{Pen: drawing.P70, Accent: true}, B: geom.Pt(mm(9), 0)},
		drawing.Text{String: "cut", Cap: paper.MM(2.4), Accent: true},
	}
	p := a4(e...)
	if !bytes.Contains(write(t, p), []byte(accent)) {
		t.Error("no accent")
	}
	p.plain = true
	if bytes.Contains(write(t, p), []byte(accent)) {
		t.Error("accent in a plain sheet")
	}
}

func TestOnlyUsedWeightsAreEmbedded(t *testing.T) {
	for _, c := range []struct {
		name  string
		e     []drawing.Element
		faces int
	}{
		{"no text", kinds()[:2], 0},
		{"regular", []drawing.Element{drawing.Text{String: "a", Cap: paper.MM(2)}}, 1},
		{"bold in a dimension", []drawing.Element{drawing.Dimension{Picture: []drawing.Element{drawing.Text{String: "a", Cap: paper.MM(2), Bold: true}}}}, 1},
		{"both", []drawing.Element{drawing.Text{String: "a", Cap: paper.MM(2), Bold: true}, drawing.Text{String: "a", Cap: paper.MM(2)}}, 2},
	} {
		if n := bytes.Count(write(t, a4(c.e...)), []byte("@font-face")); n != c.faces {
			t.Errorf("%s: %d fonts embedded, want %d", c.name, n, c.faces)
		}
	}
}

// Text reads as it was given, fractions and spaces included, and every run
// begins where it was measured.
func TestTextReadsAndStands(t *testing.T) {
	for _, c := range []struct {
		text   string
		anchor drawing.Anchor
	}{{"14 3/4", drawing.Start}, {`= 15'-2 1/4"`, drawing.Middle}, {"plain words", drawing.End}, {"1/2 of 3/4", drawing.End}, {"two  spaces ", drawing.Start}} {
		size := paper.MM(2.8)
		nodes := read(t, write(t, a4(drawing.Text{At: geom.Pt(mm(100), mm(100)), String: c.text, Cap: size, Anchor: c.anchor})))
		if got := named(nodes, "text")[0].text; got != c.text {
			t.Errorf("%q reads %q", c.text, got)
		}
		start := mm(100)
		wide := geom.Length(lettering.Width(c.text, size, false))
		switch c.anchor {
		case drawing.Middle:
			start -= wide / 2
		case drawing.End:
			start -= wide
		}
		var places []string
		for _, n := range named(nodes, "tspan") {
			if x, ok := n.attr["x"]; ok {
				places = append(places, x)
			}
		}
		for _, r := range lettering.Set(c.text, size, false) {
			want := units(start + geom.Length(r.At))
			near := func(x string) bool { v, _ := strconv.Atoi(x); return v >= want-1 && v <= want+1 }
			if r.At > 0 && !slices.ContainsFunc(places, near) {
				t.Errorf("%q: no run begins at %d: %v", c.text, want, places)
			}
		}
	}
}

// The dashes of a line fill it: whole periods, ending in a dash.
func TestDashesFillTheLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := rapid.IntRange(500, 40000).Draw(t, "hundredths")
		dash := drawing.Dash(rapid.IntRange(1, 5).Draw(t, "dash"))
		parts := dashes(dash, float64(geom.Length(length)*unit))
		if len(parts) == 0 {
			return // too short: solid
		}
		period, last := 0.0, 0.0
		for _, p := range strings.Fields(strings.TrimSuffix(strings.TrimPrefix(parts[0], `stroke-dasharray="`), `"`)) {
			v, err := strconv.ParseFloat(p, 64)
			if err != nil {
				t.Fatal(err)
			}
			period, last = period+v, v
		}
		n := (float64(length) + last) / period
		if off := (n - float64(int(n+0.5))) * period; off > 8 || off < -8 { // 0.08 mm on paper
			t.Fatalf("line of %d with period %v and gap %v ends %v off its last dash", length, period, last, off)
		}
	})
}
