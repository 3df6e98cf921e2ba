package render_test

import (
	"flag"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"roomwright/geom/roomfile"
)

var update = flag.Bool("update", false, "rewrite the goldens under testdata/golden; look at every changed drawing first")

// fontData is the embedded font of a sheet, too long for a golden.
var fontData = regexp.MustCompile(`base64,[A-Za-z0-9+/=]+`)

// listing is a result as text: every piece, then every finding.
func listing(s subject) string {
	var b strings.Builder
	show := s.result.Room.Show
	for _, p := range s.result.Pieces {
		fmt.Fprintf(&b, "%-6s %-8s %-10s %-28s %-22s %10s  x %s to %s, y %s to %s\n", p.Mark, p.State, p.On, p.Name, p.Profile.Name,
			show.Figure(p.Length), show.Figure(p.Box.Min.X), show.Figure(p.Box.Max.X), show.Figure(p.Box.Min.Y), show.Figure(p.Box.Max.Y))
	}
	b.WriteByte('\n')
	for _, f := range s.result.Findings {
		b.WriteString(roomfile.Format(f, s.name+".yaml"))
	}
	return b.String()
}

// TestGoldens compares the results and sheets of the two examples with those
// that were looked at.
func TestGoldens(t *testing.T) {
	for _, name := range []string{bow, glaze} {
		s := room(t, name)
		want := map[string]string{"result.txt": listing(s), "dxf.txt": contents(t, s)}
		for _, f := range s.sheets() {
			want[f.Name] = fontData.ReplaceAllString(string(f.Bytes), "base64,")
		}
		for file, text := range want {
			if len(text) > longestGolden {
				t.Errorf("%s/%s holds %d bytes, more than anybody looks at", name, file, len(text))
			}
		}
		dir := filepath.Join("..", "testdata", "golden", name)
		if *update {
			if err := os.RemoveAll(dir); err != nil {
				t.Fatal(err)
			}
			if err := os.MkdirAll(dir, 0o755); err != nil {
				t.Fatal(err)
			}
			for file, text := range want {
				if err := os.WriteFile(filepath.Join(dir, file), []byte(text), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			continue
		}
		there, err := os.ReadDir(dir)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range there {
			if _, ok := want[e.Name()]; !ok {
				t.Errorf("%s/%s is a golden of nothing that is made", name, e.Name())
			}
		}
		for file, text := range want {
			b, err := os.ReadFile(filepath.Join(dir, file))
			if err != nil {
				t.Error(err)
				continue
			}
			if got, old := strings.Split(text, "\n"), strings.Split(string(b), "\n"); text != string(b) {
				for i := range got {
					if i >= len(old) || got[i] != old[i] {
						t.Errorf("%s/%s, line %d: %.300s", name, file, i+1, got[i])
						break
					}
				}
				if len(got) < len(old) {
					t.Errorf("%s/%s: %d lines, the golden has %d", name, file, len(got), len(old))
				}
			}
		}
	}
}

// longestGolden is how long a golden may be, so that changes can be looked at.
const longestGolden = 150 << 10

// contents is a model as text: how many entities of each kind stand on each
// layer, then every dimension with what it measures.
func contents(t *testing.T, s subject) string {
	t.Helper()
	lines := strings.Split(strings.TrimSuffix(string(s.model().Bytes), "\n"), "\n")
	counts := map[string]int{}
	var dims []string
	section := ""
	entity := map[string]string{} // group code to its first value
	end := func() {
		if section == "ENTITIES" && entity["8"] != "" {
			counts[fmt.Sprintf("%-16s %s", entity["8"], entity["0"])]++
			if entity["0"] == "DIMENSION" {
				dims = append(dims, fmt.Sprintf("%-24s %s", entity["1"], entity["42"]))
			}
		}
		entity = map[string]string{}
	}
	for i := 0; i+1 < len(lines); i += 2 {
		code, value := lines[i], lines[i+1]
		if code == "0" {
			end()
		}
		if _, ok := entity[code]; !ok {
			entity[code] = value
		}
		if code == "2" && entity["0"] == "SECTION" {
			section = value
		}
	}
	if len(dims) == 0 {
		t.Errorf("%s: no dimensions in the model", s.name)
	}
	var b strings.Builder
	for _, what := range slices.Sorted(maps.Keys(counts)) {
		fmt.Fprintf(&b, "%6d  %s\n", counts[what], what)
	}
	fmt.Fprintf(&b, "\n%s\n", strings.Join(dims, "\n"))
	return b.String()
}

// TestSameBytes draws rooms again, several at once, and compares every byte.
func TestSameBytes(t *testing.T) {
	var list []subject
	for _, s := range rooms(t) {
		if underRace && s.name != bow && s.name != glaze {
			continue
		}
		if !strings.Contains(s.name, " on ") { // the same rooms on other papers
			list = append(list, s)
		}
	}
	each(len(list), func(i int) {
		s, again := list[i], draw(list[i].name, list[i].text)
		if len(again.files) != len(s.files) {
			t.Errorf("%s: %d files, then %d", s.name, len(s.files), len(again.files))
			return
		}
		for k, f := range s.files {
			if g := again.files[k]; g.Name != f.Name || string(g.Bytes) != string(f.Bytes) {
				t.Errorf("%s: %s differs from one run to the next", s.name, f.Name)
			}
		}
	})
	if want := least(8); len(list) < want {
		t.Errorf("%d rooms drawn twice, want at least %d", len(list), want)
	}
}
