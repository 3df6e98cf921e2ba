package finding

import "testing"

func TestSortKeepsCautionsAndDropsDoubles(t *testing.T) {
	at := Place{Line: 3, Column: 1}
	grave := Finding{Place: at, Kind: Caution, Rule: "z load", What: "carries load"}
	light := Finding{Place: at, Kind: Caution, Rule: "a dust", What: "makes dust"}
	note := Finding{Place: Place{Line: 2, Column: 9}, Kind: Note, What: "taken as 1"}
	wrong := Finding{Place: at, Kind: Error, Rule: "b", What: "second"}
	first := Finding{Place: at, Kind: Error, Rule: "a", What: "first"}
	got := Sort([]Finding{grave, wrong, light, grave, first, note})
	want := []Finding{note, first, wrong, grave, light}
	if len(got) != len(want) {
		t.Fatalf("%d findings, want %d", len(got), len(want))
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("finding %d is %+v, want %+v", i, got[i], want[i])
		}
	}
	if n := Errors(got); n != 2 {
		t.Errorf("%d errors, want 2", n)
	}
}
