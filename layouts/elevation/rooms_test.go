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

// granary is an invented room: two openings in a stud wall, one of them a
// doorway, with a window, a pipe and a cable whose place is not known; a block
// wall with a door, a window, a heater and a board.
const granary = `
title: Grain store to reading room
units: inches
show: inches
built: 1991
every wall: {made of: block, tape on: masonry, floor to structure: 104}
walls:
  - wall: A
    length: 21' 3"
    made of: studs
    tape on: studs
    lining: {inside: none, outside: 1/2 gypsum}
    frame:
      stud: 2x4
      bearing: {answer: no, by: the county inspector}
      other duty: none
      studs: 16 from left
    windows: [{window: porch light, clear: 30 x 36, left edge from left: 206, bottom from floor: 42}]
    in wall:
      - {what: pipe, from left: 178 to 179-1/2, from floor: 0 to 104}
      - {what: switch, centre from left: 190, centre from floor: 48, size: 2 x 3}
      - {what: cable, position: unknown}
  - {wall: B, length: 140}
  - wall: C
    length: 21' 3"
    windows: [{window: yard, clear: 40 x 30, left edge from left: 30, bottom from floor: 44}]
    doors: [{door: entry, clear: 32 x 80, left edge from left: 100}]
    on wall: [{what: heater, from left: 140 to 200, from floor: 4 to 20}]
  - {wall: D, length: 140}
survey: {corners: square}
openings:
  - {opening: hatch, wall: A, clear: 30 x 24, left edge from left: 40, bottom from floor: 40, header: {plies: 2 of 2x6, filler: 15/32}, jacks: {a side: 1, at sill: through}, glazing: none}
  - {opening: doorway, wall: A, rough: 38 x 82-1/2, left edge from left: 110, bottom from floor: 0, header: {plies: 2 of 2x8, filler: 15/32}, jacks: {a side: 2}, glazing: none}
boards:
  - {board: pin wall, wall: C, sheets: 1 of 48 x 96, sheet: 1/4 hardboard, cut to: 48, left edge from left: 204, bottom from floor: 32}
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
