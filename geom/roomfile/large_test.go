package roomfile

import (
	"strings"
	"testing"
	"time"

	"roomwright/geom/finding"
)

// TestLarge reads files of up to the size that is read, each made to be hard
// in its own way: each ends, soon, with an error.
func TestLarge(t *testing.T) {
	walls := "units: inches\nwalls:\n"
	for _, c := range []struct{ name, head, part string }{
		{"brackets", "", "["},
		{"braces", "", "{a: "},
		{"dashes", "", "- "},
		{"colons", "", "a: b: c\n"},
		{"indents", "", "a:\n   b: 1\n  c: 2\n"},
		{"keys", "", "titel: x\n"},
		{"quotes", "", "a: 'b\n"},
		{"walls", walls, "  - {wall: A, length: 12}\n"},
		{"wrong walls", walls, "  - {wall: A, lenght: 12, tape on: nothing, in wall: [{what: x}]}\n"},
		{"openings", walls + "  - {wall: A, length: 12}\nopenings:\n", "  - {opening: x, wall: B, centred on: opening y}\n"},
		{"readings", walls + "  - {wall: A, length: 12}\nsurvey:\n  readings:\n", "    A/B to C/D: 12\n"},
		{"marks", walls + "  - wall: A\n    frame:\n      studs:\n        left edges from left: [0", ", 1"},
		{"letters", "title: ", "x"},
		{"digits", "title: x\nunits: inches\nsurvey: {tape reads to: ", "9"},
		{"tabs", "title: x\n", "\ta: b\n"},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := c.head + strings.Repeat(c.part, (200_000-len(c.head))/len(c.part))
			start := time.Now()
			_, list := Read([]byte(text))
			if finding.Errors(list) == 0 {
				t.Error("read without an error")
			}
			if d := time.Since(start); d > 20*time.Second {
				t.Errorf("took %v", d)
			} else {
				t.Logf("%v, %d findings", d, len(list))
			}
		})
	}
	_, list := Read([]byte(strings.Repeat("#", most+1)))
	if len(list) != 1 || list[0].Rule != "size of the file" {
		t.Errorf("a file beyond the size: %+v", list)
	}
}
