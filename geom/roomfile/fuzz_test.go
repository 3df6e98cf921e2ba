package roomfile

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"pgregory.net/rapid"

	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// FuzzRead reads anything: it never panics, always ends, gives a room or an
// error, and every place lies inside the file.
func FuzzRead(f *testing.F) {
	files, err := filepath.Glob(filepath.Join(bad, "*.yaml"))
	if err != nil || len(files) == 0 {
		f.Fatal("no seeds")
	}
	for _, name := range files {
		text, err := os.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	f.Add(Starter(measure.Inches))
	f.Add(Starter(measure.Millimetres))
	for _, s := range []string{
		"", "\ufeff", "\r", "a: &x [*x]\n", "a: b: c\n  d", "\t", "? x\n: y\n", "walls:\n- {wall: A}\n- {wall: A}\n",
		"units: inches\nwalls: [{wall: A}, {wall: B}, {wall: C}, {wall: D}]\nopenings: [{opening: o, wall: A, centred on: opening o}]\n",
		"survey: {readings: {A/B to C/D: ±, /: 1, to: 2}}\n", strings.Repeat("[", 300), "a: |\n  x\n---\n...\n", "units:inches\n",
		"ceiling: {grid: {module: 1x1}}\nlights: [{size: 0x0}]\n", "walls: [{wall: A, frame: {studs: {left edges from left: [1 km, 1 km]}}}]\n",
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, text []byte) { lawful(t, text) })
}

// lawful checks what holds of every text that is read.
func lawful(t rapid.TB, text []byte) {
	m, list := Read(text)
	if m == nil && finding.Errors(list) == 0 {
		t.Fatal("no room and no error")
	}
	lines := split(text)
	for _, found := range list {
		if p := found.Place; p != (finding.Place{}) {
			if p.Line < 1 || p.Line > len(lines) || p.Column < 1 || p.Column > utf8.RuneCountInString(lines[p.Line-1])+1 {
				t.Fatalf("%v is no place of the file: %s", p, found.What)
			}
		}
		if found.What == "" || found.Rule == "" {
			t.Fatalf("an empty finding: %+v", found)
		}
		shown := Format(found, "room.yaml")
		if i := strings.IndexFunc(shown, func(c rune) bool { return c != '\n' && unicode.IsControl(c) }); i >= 0 {
			t.Fatalf("a control character is shown: %q", shown)
		}
		for _, leak := range []string{"yaml:", "!!", "goroutine", "runtime", "libyaml", "<nil>", "%!"} {
			if strings.Contains(found.What+found.Allowed+found.Hint, leak) && !bytes.Contains(text, []byte(leak)) {
				t.Fatalf("%q leaks: %q", leak, shown)
			}
		}
	}
	if finding.Errors(list) > 0 {
		return
	}
	if len(m.Walls) != 4 || m.Title == "" {
		t.Fatalf("no error, and no whole room: %+v", m)
	}
	for _, o := range m.Openings {
		if o.Wall < 0 || o.Wall > 3 || o.Size.W <= 0 || o.Size.H <= 0 || o.Jacks < 1 || o.Header.Plies < 1 ||
			o.Across.Kind == room.Nowhere || o.Up.Kind == room.NoHeight || !m.Walls[o.Wall].MadeOf.Framed() || !m.Walls[o.Wall].Frame.Stud.Given() {
			t.Fatalf("no error, and an opening that is not whole: %+v", o)
		}
	}
	for _, b := range m.Boards {
		if b.Wall < 0 || b.Wall > 3 || b.Count < 1 || b.Size.W <= 0 || b.Up.Kind == room.NoHeight {
			t.Fatalf("no error, and a board that is not whole: %+v", b)
		}
	}
	if c := m.Ceiling; c != nil {
		if !c.Grid.Module.Given() || c.FaceFromFloor.Given() == c.FaceBelowStructure.Given() || m.Above.Joists == nil || c.Mains.Pitch.Value <= 0 {
			t.Fatalf("no error, and a ceiling that is not whole: %+v", c)
		}
	}
}

// TestSpoilt spoils files in small ways, as a hand does: lines left out,
// doubled or swapped, signs put in, words exchanged.
func TestSpoilt(t *testing.T) {
	files := []string{string(Starter(measure.Inches)), string(Starter(measure.Millimetres))}
	names, err := filepath.Glob(filepath.Join(bad, "*.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, string(text), files[0], files[1])
	}
	signs := []string{
		" ", "\t", ":", ": ", "'", "\"", "#", "{", "}", "[", "]", ",", "-", "- ", "|", "&", "*", "!", "\n", "0", "-1", "1/2", "unknown", "about ",
		" if it fits", " +/- 1", "none", "A", "E", "x", "é", "½", "\u202e", "9999999999", "null", "~", "yes", "12'", "{}", "[]",
	}
	rapid.Check(t, func(rt *rapid.T) {
		lines := strings.Split(rapid.SampledFrom(files).Draw(rt, "file"), "\n")
		for range rapid.IntRange(1, 6).Draw(rt, "times") {
			i := rapid.IntRange(0, len(lines)-1).Draw(rt, "line")
			switch rapid.IntRange(0, 5).Draw(rt, "how") {
			case 0:
				if len(lines) > 1 {
					lines = slices.Delete(slices.Clone(lines), i, i+1)
				}
			case 1:
				lines = slices.Insert(slices.Clone(lines), i, lines[i])
			case 2:
				j := rapid.IntRange(0, len(lines)-1).Draw(rt, "other")
				lines[i], lines[j] = lines[j], lines[i]
			case 3:
				line := []rune(lines[i])
				at := rapid.IntRange(0, len(line)).Draw(rt, "at")
				lines[i] = string(line[:at]) + rapid.SampledFrom(signs).Draw(rt, "sign") + string(line[at:])
			case 4:
				words := strings.Split(lines[i], " ")
				words[rapid.IntRange(0, len(words)-1).Draw(rt, "word")] = rapid.SampledFrom(signs).Draw(rt, "sign")
				lines[i] = strings.Join(words, " ")
			case 5:
				line := []rune(lines[i])
				at := rapid.IntRange(0, len(line)).Draw(rt, "at")
				lines[i] = string(line[:at])
			}
		}
		lawful(rt, []byte(strings.Join(lines, "\n")))
	})
}

// split gives the lines of a text, ended by CR, LF or both, without a
// byte-order mark.
func split(text []byte) []string {
	s := strings.TrimPrefix(string(text), "\ufeff")
	s = strings.ReplaceAll(strings.ReplaceAll(s, "\r\n", "\n"), "\r", "\n")
	return strings.Split(s, "\n")
}
