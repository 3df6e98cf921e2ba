package render_test

import (
	"cmp"
	"flag"
	"fmt"
	"slices"
	"testing"

	"roomwright/geom"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// margin is what many printers leave white: 1/4 in (a guide to printer margins
// calls it a safe bet).
const margin = geom.Inch / 4

// faults returns what is hard to read on a written sheet: words on words, words
// that the fonts lack signs for, and ink where printers may not reach.
func (w *written) faults() []string {
	var out []string
	reach := geom.RectOf(0, 0, w.w, w.h).Inset(margin)
	beyond := func(b geom.Rect) bool { return reach.Union(b) != reach }
	for _, x := range w.words {
		if beyond(x.box) {
			out = append(out, fmt.Sprintf("%q at %s stands outside the margins", x.text, place(x.box)))
		}
		for _, r := range x.text {
			if !lettering.Has(r) {
				out = append(out, fmt.Sprintf("%q holds %q, which the fonts lack", x.text, r))
			}
		}
	}
	for _, s := range w.strokes {
		if beyond(s.box) {
			out = append(out, fmt.Sprintf("a line at %s in %v is drawn outside the margins", place(s.box), s.in))
		}
	}
	words := slices.Clone(w.words)
	slices.SortStableFunc(words, func(a, b word) int { return cmp.Compare(a.box.Min.X, b.box.Min.X) })
	air := geom.Length(paper.MM(0.1))
	for i, a := range words {
		for _, b := range words[i+1:] {
			if b.box.Min.X >= a.box.Max.X {
				break
			}
			if a.box.Inset(air).Overlaps(b.box.Inset(air)) {
				out = append(out, fmt.Sprintf("%q and %q stand on each other at %s", a.text, b.text, place(b.box)))
			}
		}
	}
	return out
}

// place says where something is, in millimetres from the bottom left of the sheet.
func place(b geom.Rect) string {
	return fmt.Sprintf("(%.1f, %.1f) mm", b.Mid().X.Millimetres(), b.Mid().Y.Millimetres())
}

// TestSheetsAreLegible judges every sheet of every room, read back from its file.
func TestSheetsAreLegible(t *testing.T) {
	n := 0
	for _, s := range rooms(t) {
		for _, w := range s.paper {
			n++
			for _, f := range w.faults() {
				t.Errorf("%s, %s: %s", s.name, w.name, f)
			}
			if len(w.words) < 20 || len(w.strokes) < 4 {
				t.Errorf("%s, %s: %d words and %d lines: an empty sheet", s.name, w.name, len(w.words), len(w.strokes))
			}
		}
	}
	if want := least(200); n < want {
		t.Errorf("%d sheets, want at least %d", n, want)
	}
}

var anyRooms = flag.Int("rooms", 60, "how many rooms that nobody thought of are drawn")

// TestAnyRoomIsLegible draws rooms that nobody thought of. The seeds are fixed;
// a failing one is named with its room file.
func TestAnyRoomIsLegible(t *testing.T) {
	want, drawn := *anyRooms, 0
	if underRace || testing.Short() {
		want = 3
	}
	for seed := uint64(0); drawn < want; {
		batch := make([]subject, min(12, want))
		each(len(batch), func(i int) {
			s := seed + uint64(i)
			batch[i] = draw(fmt.Sprintf("seed %d", s), roomFile(s))
		})
		seed += uint64(len(batch))
		for _, s := range batch {
			if s.fault != "" || drawn == want {
				continue
			}
			drawn++
			if s.err != nil {
				t.Errorf("%s: %v\n%s", s.name, s.err, s.text)
				continue
			}
			failed := len(s.told) > 0
			for _, f := range s.told {
				t.Errorf("%s: %s: %s", s.name, f.Rule, f.What)
			}
			for _, w := range s.paper {
				for _, f := range w.faults() {
					t.Errorf("%s, %s: %s", s.name, w.name, f)
					failed = true
				}
			}
			if failed {
				t.Logf("the room file of %s:\n%s", s.name, s.text)
			}
		}
		if seed > uint64(8*want+100) {
			t.Fatalf("only %d of %d rooms could be set out", drawn, seed)
		}
	}
}
