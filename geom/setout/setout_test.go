package setout

import (
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/piece"
	"roomwright/geom/roomfile"
)

// setText sets out a room file given as text.
func setText(t *testing.T, text string) Result {
	t.Helper()
	r, found := roomfile.Read([]byte(text))
	if finding.Errors(found) > 0 {
		t.Fatalf("does not read: %v", texts(found, finding.Error))
	}
	return SetOut(r)
}

// studio is an invented room in which all trades meet.
const studio = `title: Studio, invented
units: inches
show: inches to 1/16
built: 1962
walls:
  - wall: A
    length: 171-1/2
    made of: studs
    tape on: studs
    floor to structure: 106
    lining: {inside: none, outside: 1/2 gypsum}
    frame: {stud: 2x4, bearing: unknown, studs: 16 from left}
    in wall:
      - {what: outlet, centre from left: 24, centre from floor: 16, size: 2 x 3}
      - {what: cable, centre from left: 24, from floor: 0 to 16}
  - {wall: B, length: 139, made of: block, tape on: masonry, floor to structure: 106, doors: [{door: entry, clear: 32 x 80, right edge from right: 18, casing: 2-1/4}]}
  - {wall: C, length: 171-1/2, made of: block, tape on: masonry, floor to structure: 106}
  - {wall: D, length: 139, made of: block, tape on: masonry, floor to structure: 106}
survey: {corners: square}
above: {joists: {size: 2x8, run: A to C, spacing: 16, first centre from D: 12}}
openings:
  - {opening: pass, wall: A, clear: 60 x 30, left king: stud 6, bottom from floor: 46, header: {plies: 2 of 2x6, filler: 1/2}, glazing: 1/4 acrylic}
boards:
  - {board: under, wall: A, sheets: 1 of 48 x 24, sheet: 3/8 plywood, centred on: opening pass, bottom from floor: 8}
  - {board: beside, wall: A, sheets: 1 of 48 x 96, sheet: 3/8 plywood, cut to: 84, left edge from left: 0, bottom from floor: 4}
  - {board: block, wall: C, sheets: 3 of 48 x 96, sheet: 1/4 hardboard, cut to: 84, bottom from floor: 4}
ceiling: {face from floor: 94, seismic: B, grid: 24x24, panel: 5/8}
lights: [{light: panel, size: 24x24, count: 2, depth: 2-1/2, weight: 7 lb}]
`

func TestAllTrades(t *testing.T) {
	res := setText(t, studio)
	if n := finding.Errors(res.Findings); n > 0 {
		t.Fatalf("%d errors: %v", n, texts(res.Findings, finding.Error))
	}
	if len(res.Walls) != 4 || len(res.Boards) != 3 || res.Ceiling == nil {
		t.Fatalf("%d walls, %d rows, ceiling %v", len(res.Walls), len(res.Boards), res.Ceiling != nil)
	}
	want := len(res.Ceiling.Pieces)
	for _, w := range res.Walls {
		want += len(w.Members)
	}
	for _, b := range res.Boards {
		want += len(b.Sheets)
	}
	if len(res.Pieces) != want {
		t.Errorf("%d pieces, want every one of %d", len(res.Pieces), want)
	}
	// Every trade has its say, and every caution a sheet.
	for _, rule := range []string{"load not known", "lead paint", "board over a box", "anchors in masonry", "services behind screws", "safety glazing, window"} {
		if _, ok := hasRule(res, rule); !ok {
			t.Errorf("no finding %q", rule)
		}
	}
	for i, f := range res.Findings {
		if f.Kind == finding.Caution && f.On == "" {
			t.Errorf("caution on no sheet: %+v", f)
		}
		if i > 0 && res.Findings[i-1].Place.Line > f.Place.Line {
			t.Errorf("findings out of order at %v", f.Place)
		}
	}
}

// Equal marks are equal pieces, over all trades.
func TestMarks(t *testing.T) {
	type kind struct {
		profile piece.Profile
		length  geom.Length
		ends    string
	}
	of := map[piece.Mark]piece.Piece{}
	for _, p := range setText(t, studio).Pieces {
		if p.Mark == "" {
			t.Errorf("no mark on %+v", p)
			continue
		}
		if q, ok := of[p.Mark]; ok && (kind{q.Profile, q.Length, q.Ends}) != (kind{p.Profile, p.Length, p.Ends}) && p.On == q.On {
			t.Errorf("mark %s is on %+v and on %+v", p.Mark, q, p)
		}
		of[p.Mark] = p
	}
}

// Boards bear on what the opening leaves at their own height.
func TestBoardsOnCutStuds(t *testing.T) {
	res := setText(t, studio)
	under := res.Boards[0]
	o := res.Walls[0].Openings[0]
	if under.Box.X().Mid() != o.Clear.X().Mid() || under.Box.Max.Y != geom.In(32) {
		t.Errorf("row %v is not centred under %v", under.Box, o.Clear)
	}
	lines := 0
	for _, f := range under.Fixing {
		for _, m := range res.Walls[0].Members {
			if m.Role == framing.CrippleBelow && m.Box.X().Holds(f.X) {
				lines++
				break
			}
		}
	}
	if lines == 0 || lines != len(under.Fixing) {
		t.Errorf("%d of %d lines of screws are on cripples under the opening", lines, len(under.Fixing))
	}
	if res.Boards[2].Bearer != "masonry" || !res.Boards[2].Seams[1].Borne {
		t.Errorf("row on block: %+v", res.Boards[2])
	}
}

// The highest a board reaches is the ceiling, and the structure without one.
func TestBoardReach(t *testing.T) {
	high := strings.Replace(studio, "cut to: 84, left edge", "cut to: 92, left edge", 1)
	if _, ok := hasRule(setText(t, high), "board taller than the space"); !ok {
		t.Error("a board to 96 under a ceiling at 94 was taken")
	}
	i := strings.Index(high, "ceiling:")
	if f, ok := hasRule(setText(t, high[:i]), "board taller than the space"); ok {
		t.Errorf("a board to 96 under a structure at 106: %+v", f)
	}
}

// A casing at the room's face keeps boards off; one at the other face does not.
func TestCasingKeepsBoardsOff(t *testing.T) {
	near := strings.Replace(studio, "cut to: 84, left edge from left: 0, bottom", "cut to: 84, left edge from left: 34, bottom", 1)
	res := setText(t, near)
	left := res.Walls[0].Openings[0].Clear.Min.X - res.Room.Openings[0].Casing.Width.Value - res.Room.Openings[0].Casing.Reveal.Value
	f, ok := hasRule(res, "board over an opening")
	if want := "opening pass at " + res.Room.Show.Say(left); !ok || !strings.Contains(f.Found, want) {
		t.Errorf("%+v, want %q", f, want)
	}
}

// A survey that does not close ends the set-out; other errors do not keep the
// rest from being looked at.
func TestErrors(t *testing.T) {
	wrong := strings.Replace(studio, "survey: {corners: square}", "survey: {readings: {A/B to C/D: 18' 9\", D/A to B/C: 17' 0\"}}", 1)
	res := setText(t, wrong)
	if finding.Errors(res.Findings) == 0 || len(res.Walls) > 0 || res.Ceiling != nil || len(res.Boards) > 0 {
		t.Errorf("%d errors, %d walls: a survey that does not close is set out", finding.Errors(res.Findings), len(res.Walls))
	}
	two := strings.Replace(studio, "clear: 60 x 30", "clear: 160 x 30", 1)
	two = strings.Replace(two, "face from floor: 94", "face from floor: 120", 1)
	two = strings.Replace(two, "sheets: 3 of 48 x 96", "sheets: 9 of 48 x 96", 1)
	on := map[string]bool{}
	for _, f := range setText(t, two).Findings {
		if f.Kind == finding.Error {
			on[f.On] = true
		}
	}
	for _, want := range []string{"wall A", "ceiling", "board block"} {
		if !on[want] {
			t.Errorf("no error on %s in one run; errors on %v", want, on)
		}
	}
}

// The same room gives the same result, and a room is not changed by setting it out.
func TestTwice(t *testing.T) {
	a, b := setText(t, studio), setText(t, studio)
	if !reflect.DeepEqual(a, b) {
		t.Error("two results of one room file differ")
	}
	if again := SetOut(a.Room); !reflect.DeepEqual(a, again) {
		t.Error("the second result of one room differs")
	}
}

// The examples that ship with the command are set out without an error.
func TestExamples(t *testing.T) {
	files, err := filepath.Glob("../../cmd/roomwright/examples/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no examples: %v", err)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		res := setText(t, string(text))
		if got := texts(res.Findings, finding.Error); len(got) > 0 {
			t.Errorf("%s: %v", filepath.Base(file), got)
		}
		for _, f := range res.Findings {
			if f.Rule == "seam not borne" {
				t.Errorf("%s: %+v", filepath.Base(file), f)
			}
		}
	}
}

// Boxes keep boards off, cables and what has no known place only screws.
func TestServicesOffered(t *testing.T) {
	box := geom.RectOf(geom.In(23), geom.In(15), geom.In(25), geom.In(18))
	at := geom.RectOf(geom.In(50), geom.In(40), geom.In(50), geom.In(40))
	w := framing.Wall{Services: []framing.ServiceAt{
		{What: "outlet", Box: box}, {What: "cable", Box: at}, {What: "switch", Unknown: true, Box: box},
		{What: "heater", OnFace: true, Box: box}, {What: "blocking", Box: box}, {What: "switch", Box: at},
	}}
	var offer lining.Wall
	keepServices(&offer, &w)
	if want := []string{"outlet", "heater", "switch"}; !reflect.DeepEqual(offer.Names, want) || len(offer.Services) != 2 {
		t.Errorf("kept clear of %v and %d services, want %v and 2", offer.Names, len(offer.Services), want)
	}
	if got := offer.Keep[2]; got.W() != geom.In(2) || got.H() != geom.In(2) {
		t.Errorf("a switch without a size is kept clear as %v, want an inch each way", got)
	}
}
