package rules

import (
	"strings"
	"testing"
)

// Each row is a joint and what its nails have to say. Source: IRC Table
// R602.3(1) in a public transcription of key rows (plies, plates, double top
// plate), and on a city permit drawing (stud to stud).
func TestNailed(t *testing.T) {
	for j, want := range map[NailedJoint]string{
		NailHeaderPlies:  "16d common at 16 in on center along each edge",
		NailPlateToStud:  "2-16d common end nailed, or 4-8d common toe nailed",
		NailStudToStud:   "16d common at 24 in on center",
		NailHeaderEnd:    "3-16d common",
		NailDoubleTop:    "laps 24 in or more with 8-16d at each side",
		NailPlateToFloor: "16d common at 16 in on center",
	} {
		n := Nailed(j)
		if !strings.Contains(n.Nails, want) || !strings.Contains(n.Source, "IRC") {
			t.Errorf("%s: %s (%s), want %s", n.Where, n.Nails, n.Source, want)
		}
	}
	seen := map[string]bool{}
	for j := NailHeaderPlies; j <= NailDoubleTop; j++ {
		n := Nailed(j)
		if n.Where == "" || n.Nails == "" || n.Source == "" || seen[n.Where] {
			t.Errorf("joint %d is %+v", j, n)
		}
		seen[n.Where] = true
	}
	if n := Nailed(NailDoubleTop + 1); n != (Nailing{}) {
		t.Errorf("a joint that is none is nailed: %+v", n)
	}
}
