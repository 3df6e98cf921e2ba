package setout

import (
	"os"
	"path/filepath"
	"testing"

	"roomwright/geom/piece"
	"roomwright/geom/roomfile"
)

// TestMarksAreUnique checks on every room of the project that a mark stands
// for one thing only: pieces of one mark are of one trade, name, profile and
// state, and of one length unless they are told apart by their box.
func TestMarksAreUnique(t *testing.T) {
	var files []string
	for _, glob := range []string{"../../cmd/roomwright/examples/*.yaml", "../../testdata/checks/*.yaml"} {
		list, err := filepath.Glob(glob)
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, list...)
	}
	if len(files) < 20 {
		t.Fatalf("%d room files, want at least 20", len(files))
	}
	for _, path := range files {
		b, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		r, _ := roomfile.Read(b)
		if r == nil {
			t.Fatalf("%s is not read", path)
		}
		first := map[piece.Mark]piece.Piece{}
		for _, p := range SetOut(r).Pieces {
			q, ok := first[p.Mark]
			if !ok {
				first[p.Mark] = p
				continue
			}
			if p.Trade != q.Trade || p.On != q.On || p.Name != q.Name || p.Profile != q.Profile || p.State != q.State || p.Length != q.Length {
				t.Errorf("%s: %s is %s of %s, and %s of %s", filepath.Base(path), p.Mark, q.Name, q.On, p.Name, p.On)
			}
		}
	}
}
