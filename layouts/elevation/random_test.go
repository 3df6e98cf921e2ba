package elevation

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom/finding"
	"roomwright/geom/lining"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/boards"
	"roomwright/layouts/cuts"
	"roomwright/layouts/internal/anyroom"
	"roomwright/layouts/internal/legible"
	"roomwright/layouts/paper"
	"roomwright/layouts/section"
)

// randomRoom writes a room file in millimetres with a wall of 1 to 10 m that
// has studs as found or at a spacing, and in stretches of its length openings,
// doors and windows, or boards; perhaps services. Not every file can be set out.
func randomRoom(t *rapid.T) string {
	pick := func(label string, list ...string) string { return rapid.SampledFrom(list).Draw(t, label) }
	num := func(label string, lo, hi int) int { return rapid.IntRange(lo, max(lo, hi)).Draw(t, label) }
	long, high, short := num("length", 1000, 10000), num("height", 2100, 3600), num("other length", 2000, 6000)
	madeOf := pick("made of", "studs", "studs", "new studs", "block")
	var walls, openings, b strings.Builder
	fmt.Fprintf(&walls, "  - wall: A\n    length: %d\n    made of: %s\n", long, madeOf)
	framed := madeOf != "block"
	if framed {
		fmt.Fprint(&walls, "    tape on: studs\n    lining: {inside: none, outside: 12.5 gypsum}\n    frame:\n      stud: 38 x 89\n      bearing: no\n      other duty: none\n")
		if madeOf == "studs" && rapid.Bool().Draw(t, "as found") {
			marks := []string{"0"}
			for x := num("first", 200, 600); x < long-80; x += num("gap", 100, 650) {
				marks = append(marks, fmt.Sprint(x))
			}
			fmt.Fprintf(&walls, "      studs: {left edges from left: [%s]}\n", strings.Join(append(marks, fmt.Sprint(long-38)), ", "))
		} else {
			fmt.Fprintf(&walls, "      studs: %s from %s\n", pick("spacing", "300", "400", "600"), pick("from", "left", "right"))
		}
	}
	slots := long / num("slot", 1500, 3000)
	used := false
	var doors, windows []string
	for i := range slots {
		from, wide := i*long/slots, long/slots
		what := pick("what", "opening", "door", "window", "nothing")
		used = used || what != "nothing"
		w := num("wide", 300, wide-600)
		at := from + num("at", 200, wide-w-300)
		switch {
		case what == "opening" && framed:
			bottom := rapid.SampledFrom([]int{0, 400, 900, 1200}).Draw(t, "bottom")
			fmt.Fprintf(&openings, "  - {opening: %s, wall: A, rough: %d x %d, left edge from left: %d, bottom from floor: %d, header: %s, jacks: {a side: %d, at sill: %s}, glazing: none}\n",
				pick("name", "borrowed light", "hatch", "way in")+" "+fmt.Sprint(i), w, num("high", 300, high-bottom-400), at, bottom,
				pick("header", "{plies: 2 of 38 x 140, filler: 12.5}", "{plies: 2 of 38 x 89, filler: 12.5}", "flat 38 x 89"),
				num("jacks", 1, 2), pick("at sill", "split", "through"))
		case what == "door":
			doors = append(doors, fmt.Sprintf("{door: %s %d, clear: %d x %d, left edge from left: %d}", pick("door name", "entry", "to the yard and store"), i, w, num("door high", 1900, 2000), at))
		case what == "window":
			windows = append(windows, fmt.Sprintf("{window: pane %d, clear: %d x %d, left edge from left: %d, bottom from floor: %d}", i, w, num("window high", 300, 900), at, num("window sill", 700, 1150)))
		}
	}
	if len(doors) > 0 {
		fmt.Fprintf(&walls, "    doors: [%s]\n", strings.Join(doors, ", "))
	}
	if len(windows) > 0 {
		fmt.Fprintf(&walls, "    windows: [%s]\n", strings.Join(windows, ", "))
	}
	if rapid.Bool().Draw(t, "services") {
		x := num("cable at", 50, long-50)
		fmt.Fprintf(&walls, "    in wall:\n      - {what: cable, centre from left: %d, from floor: 0 to %d}\n", x, num("cable to", 200, 2000))
		fmt.Fprintf(&walls, "      - {what: outlet, centre from left: %d, centre from floor: %d, size: 60 x 90}\n", min(long-50, x+num("outlet at", 0, 200)), num("outlet up", 200, 1400))
	}
	fmt.Fprintf(&b, "title: Random room\nunits: millimetres\nshow: %s\n", pick("show", "feet and inches", "inches", "millimetres", "inches to 1/64"))
	fmt.Fprintf(&b, "every wall: {made of: block, tape on: masonry, floor to structure: %d}\nwalls:\n%s", high, walls.String())
	fmt.Fprintf(&b, "  - {wall: B, length: %d}\n  - {wall: C, length: %d}\n  - {wall: D, length: %d}\nsurvey: {corners: square}\n", short, long, short)
	if openings.Len() > 0 {
		b.WriteString("openings:\n" + openings.String())
	}
	if !used && long > 1500 {
		fmt.Fprintf(&b, "boards:\n  - {board: pattern wall, wall: A, sheets: %d of 1200 x 2400, sheet: 6 hardboard, cut to: %d, bottom from floor: %d}\n",
			num("sheets", 1, long/1250), num("cut to", 600, 1900), num("board bottom", 20, 150))
	}
	return b.String()
}

// TestRandomWallsAreLegible draws walls that nobody thought of: no text on
// text, no line through text, and the pieces in the table are those that were
// set out.
func TestRandomWallsAreLegible(t *testing.T) {
	drew, tried := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		text := ""
		if rapid.IntRange(0, 2).Draw(t, "kind of room") == 0 {
			text = anyroom.File(func(name string, low, high int) int { return rapid.IntRange(low, high).Draw(t, name) })
		} else {
			text = randomRoom(t)
		}
		tried++
		r, found := roomfile.Read([]byte(text))
		if finding.Errors(found) > 0 {
			return
		}
		res := setout.SetOut(r)
		if finding.Errors(res.Findings) > 0 {
			return
		}
		drew++
		s := rapid.SampledFrom(append(paper.InchScales()[2:9], paper.MetricScales()[2:7]...)).Draw(t, "scale")
		check := func(name string, faults []string) {
			for _, f := range faults {
				t.Errorf("%s at 1:%d: %s\n%s", name, s.Ratio, f, text)
			}
		}
		wall := rapid.IntRange(0, 3).Draw(t, "wall")
		if rapid.Bool().Draw(t, "first wall") {
			wall = 0
		}
		v := drawn(res, wall, s)
		check("elevation", legible.Faults(v.plate.Elements, s))
		n := 0
		for _, row := range v.plate.Tables {
			if row.Heading == "Pieces on this sheet" {
				for _, l := range row.Rows {
					var k int
					fmt.Sscan(l[3], &k)
					n += k
				}
			}
		}
		want := 0
		for _, m := range res.Walls[wall].Members {
			if m.State != 0 {
				want++
			}
		}
		if n != want {
			t.Errorf("the table counts %d pieces, the wall has %d", n, want)
		}
		if slices.ContainsFunc(res.Boards, func(b lining.Row) bool { return b.Wall == 0 }) {
			check("boards", legible.Faults(boards.Draw(res, 0, s).Elements, s))
		}
		for _, c := range cuts.Of(res) {
			if c.Kind == cuts.Header {
				at := rapid.SampledFrom(paper.InchScales()[:3]).Draw(t, "section scale")
				for _, f := range legible.Faults(section.Header(res, c, at).Elements, at) {
					t.Errorf("section at 1:%d: %s\n%s", at.Ratio, f, text)
				}
			}
		}
	})
	t.Logf("%d of %d rooms drawn", drew, tried)
	if drew*4 < tried {
		t.Errorf("only %d of %d random rooms could be set out", drew, tried)
	}
}
