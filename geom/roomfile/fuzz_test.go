package roomfile

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"roomwright/geom/finding"
	"roomwright/geom/measure"
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
	f.Fuzz(func(t *testing.T, text []byte) {
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
	})
}

// split gives the lines of a text, ended by CR, LF or both, without a
// byte-order mark.
func split(text []byte) []string {
	s := strings.TrimPrefix(string(text), "\ufeff")
	s = strings.ReplaceAll(strings.ReplaceAll(s, "\r\n", "\n"), "\r", "\n")
	return strings.Split(s, "\n")
}
