package render_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
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
		want := map[string]string{"result.txt": listing(s)}
		for _, f := range s.sheets() {
			want[f.Name] = fontData.ReplaceAllString(string(f.Bytes), "base64,")
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

// TestSameBytes draws the examples again, and compares every byte.
func TestSameBytes(t *testing.T) {
	for _, name := range []string{bow, glaze} {
		s := room(t, name)
		again := draw(name, s.text)
		if len(again.files) != len(s.files) {
			t.Fatalf("%s: %d files, then %d", name, len(s.files), len(again.files))
		}
		for i, f := range s.files {
			if g := again.files[i]; g.Name != f.Name || string(g.Bytes) != string(f.Bytes) {
				t.Errorf("%s: %s differs from one run to the next", name, f.Name)
			}
		}
	}
}

// TestEveryNewPieceIsOnItsSheet finds the mark of each piece to be cut, and the
// length that it is cut to, among the words of the sheets of its wall or ceiling.
func TestEveryNewPieceIsOnItsSheet(t *testing.T) {
	tags := regexp.MustCompile(`<[^>]*>`)
	text := regexp.MustCompile(`(?s)<text[^>]*>(.*?)</text>`)
	for _, name := range []string{bow, glaze} {
		s := room(t, name)
		words := map[string]map[string]bool{} // sheet to its texts
		for i, f := range s.sheets() {
			id := s.set.Sheets[i].ID
			words[id] = map[string]bool{}
			for _, m := range text.FindAllSubmatch(f.Bytes, -1) {
				plain := tags.ReplaceAllString(string(m[1]), "")
				words[id][strings.NewReplacer("&#34;", `"`, "&#39;", "'", "&amp;", "&").Replace(plain)] = true
			}
		}
		on := func(prefix, word string) bool {
			for id, list := range words {
				if strings.HasPrefix(id, prefix) && list[word] {
					return true
				}
			}
			return false
		}
		n := 0
		for _, p := range s.result.Pieces {
			if p.State.String() != "new" || p.Trade == "boards" {
				continue
			}
			prefix := strings.ToLower(strings.ReplaceAll(p.On, " ", "-"))
			if !on(prefix, string(p.Mark)) {
				t.Errorf("%s: %s, %s, is on no sheet of %s", name, p.Mark, p.Name, p.On)
			}
			if p.Trade == "framing" && !on(prefix, s.result.Room.Show.Figure(p.Length)) {
				t.Errorf("%s: the length of %s, %s, is on no sheet of %s", name, p.Mark, s.result.Room.Show.Figure(p.Length), p.On)
			}
			n++
		}
		for _, w := range s.result.Walls {
			for _, o := range w.Openings {
				for what, h := range map[string]string{
					"under the header": s.result.Room.Show.Figure(o.Header.Min.Y),
					"upper saw cut":    s.result.Room.Show.Figure(o.UpperCut),
					"lower saw cut":    s.result.Room.Show.Figure(o.LowerCut),
				} {
					if len(o.Cuts) == 0 && what != "under the header" {
						continue
					}
					if !on("wall-"+strings.ToLower(w.Name), h) {
						t.Errorf("%s: the height %s, %s, is on no sheet of wall %s", name, what, h, w.Name)
					}
				}
			}
		}
		if n < 40 {
			t.Errorf("%s: %d new pieces, want at least 40", name, n)
		}
	}
}
