package check_test

import (
	"os"
	"strings"
	"testing"

	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
)

// TestSlipsOfThePen writes one wrong figure at a time into the first example,
// and wants one error that names it.
func TestSlipsOfThePen(t *testing.T) {
	b, err := os.ReadFile("../../cmd/roomwright/examples/bow-makers-room.yaml")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ was, now, wants string }{
		{"centre from left: 152, from floor: 0 to 48", "centre from left: 338, from floor: 0 to 48", "cable is not in wall A"},
		{"first centre from D: 10", "first centre from D: 1000", "no joist lies over the room"},
		{"spacing: 16, first", "spacing: 5 mm, first", "the joists stand closer than any are set"},
		{"studs: 16 from left", "studs: 3/16 from left", "the studs of wall C stand closer than any are set"},
		{"panel: {thickness: 5/8", "panel: {thickness: 30", "thicker than the space over the ceiling"},
		{"stud: 2x4\n      stud length", "stud: 2x44\n      stud length", "no timber is that large"},
	} {
		if !strings.Contains(string(b), c.was) {
			t.Fatalf("the example does not say %q", c.was)
		}
		r, list := roomfile.Read([]byte(strings.Replace(string(b), c.was, c.now, 1)))
		if finding.Errors(list) == 0 {
			list = setout.SetOut(r).Findings
		}
		found := false
		for _, f := range list {
			if f.Kind == finding.Error && strings.Contains(f.What, c.wants) && f.Place.Line > 0 {
				found = true
			}
		}
		if !found {
			t.Errorf("%s: no error with a place that says %q", c.now, c.wants)
		}
	}
}
