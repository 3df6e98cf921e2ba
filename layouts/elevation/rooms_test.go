package elevation

import (
	"os"
	"strings"
	"testing"

	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
)

// laundry is an invented room: a wall of studs as found, to be cut for an
// opening, with a door and a cable in it.
const laundry = `
title: Old laundry to bindery
units: inches
show: inches
every wall: {made of: block, tape on: masonry, floor to structure: 96-1/4}
walls:
  - wall: A
    length: 182-1/4
    made of: studs
    tape on: studs
    lining: {inside: none, outside: 1/2 gypsum}
    frame:
      stud: 2x4
      stud length: 91-3/4
      bearing: unknown
      other duty: none
      studs: {left edges from left: [0, 14-3/4, 31, 46-7/8, 63, 79-1/8, 95, 111-1/4, 127-1/8, 140-1/2, 142, 176, 177-1/2, 180-3/4]}
    doors: [{door: entry, rough: 32-1/2 x 82, left edge from left: 143-1/2}]
    in wall:
      - {what: cable, centre from left: 132, from floor: 0 to 46}
      - {what: outlet, centre from left: 132, centre from floor: 48, size: 2 x 3}
  - {wall: B, length: 130}
  - {wall: C, length: 182-1/4}
  - {wall: D, length: 130}
survey: {corners: square}
openings:
  - opening: borrowed light
    wall: A
    clear: 66 x 34
    right king: stud 8
    bottom from floor: 42
    header: {plies: 2 of 2x8, filler: 15/32}
    jacks: {a side: 1, at sill: split}
    glazing: {sheet: 1/4 acrylic}
`

// read sets out a room file; feet and millimetres replace how it is printed.
func read(t testing.TB, text, show string) setout.Result {
	t.Helper()
	if show != "" {
		lines := strings.Split(text, "\n")
		for i, l := range lines {
			if strings.HasPrefix(l, "show:") {
				lines[i] = ""
			}
			if strings.HasPrefix(l, "units:") {
				lines[i] += "\nshow: " + show
			}
		}
		text = strings.Join(lines, "\n")
	}
	r, found := roomfile.Read([]byte(text))
	fatal(t, found)
	res := setout.SetOut(r)
	fatal(t, res.Findings)
	return res
}

func fatal(t testing.TB, list []finding.Finding) {
	t.Helper()
	for _, f := range list {
		if f.Kind == finding.Error {
			t.Fatalf("line %d: %s: %s; found %s; allowed %s", f.Place.Line, f.Rule, f.What, f.Found, f.Allowed)
		}
	}
}

// example reads one of the invented rooms that come with the command.
func example(t testing.TB, name string) string {
	t.Helper()
	b, err := os.ReadFile("../../cmd/roomwright/examples/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}
