package roomfile

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"roomwright/geom/finding"
)

// bad is where the room files with mistakes lie. Each ends with the answer
// that it wants, line by line behind "#> ".
const bad = "../../testdata/roomfile"

// answer gives the errors and warnings of a file as they are shown.
func answer(text []byte) string {
	_, list := Read(text)
	var b strings.Builder
	for _, f := range list {
		if f.Kind == finding.Error || f.Kind == finding.Warning {
			b.WriteString(Format(f, "room.yaml"))
		}
	}
	return b.String()
}

// TestMistakes reads each bad file and compares the answer to the letter.
func TestMistakes(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(bad, "*.yaml"))
	if err != nil || len(files) < 30 {
		t.Fatalf("bad files: %d, %v", len(files), err)
	}
	for _, name := range files {
		t.Run(filepath.Base(name), func(t *testing.T) {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			var want strings.Builder
			for _, line := range strings.Split(strings.ReplaceAll(string(text), "\r\n", "\n"), "\n") {
				if said, ok := strings.CutPrefix(line, "#> "); ok {
					want.WriteString(said + "\n")
				}
			}
			if want.Len() == 0 {
				t.Fatal("no answer is wanted of this file")
			}
			if got := answer(text); !slices.Equal(blocks(got), blocks(want.String())) {
				t.Errorf("got\n%s\nwant\n%s", got, want.String())
			}
		})
	}
}

// blocks gives the findings of an answer one by one, in the order of their
// words: the order in which they are shown is tested where it is made.
func blocks(answer string) []string {
	out := strings.Split(answer, "\nroom.yaml")
	out[0] = strings.TrimPrefix(out[0], "room.yaml")
	for i := range out {
		out[i] = strings.TrimSuffix(out[i], "\n")
	}
	slices.Sort(out)
	return out
}
