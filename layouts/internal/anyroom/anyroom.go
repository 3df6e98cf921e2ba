package anyroom

import (
	"fmt"
	"math"
	"strings"
)

// Pick chooses a whole number from low to high; the name says what for.
type Pick func(name string, low, high int) int

// writer writes one room file.
type writer struct {
	strings.Builder
	pick   Pick
	metric bool
	names  [4]string
	long   [4]float64 // of the walls, in inches
	framed [4]bool
	high   float64 // floor to structure, in inches
}

// File returns a room file: four walls of 5 to 30 ft, now and then out of
// square, of masonry or studs, with doors, windows, an opening, things overhead
// and a suspended ceiling with lights. Not every file can be set out.
func File(pick Pick) string {
	w := &writer{pick: pick, metric: pick("metric", 0, 1) == 1}
	w.names = [4]string{"A", "B", "C", "D"}
	if w.some("long names", 8) {
		w.names = [4]string{"north", "yard", "long south wall", "N2"}
	}
	units, shows := "inches", []string{"feet and inches to 1/16", "inches to 1/16", "inches to 1/8", "feet and inches to 1/8"}
	if w.metric {
		units, shows = "millimetres", []string{"millimetres"}
	}
	w.high = float64(pick("high", 92, 120))
	fmt.Fprintf(w, "title: Room that nobody thought of\nunits: %s\nshow: %s\n", units, w.one("show", shows...))
	fmt.Fprintf(w, "every wall: {made of: block, tape on: masonry, floor to structure: %s}\nwalls:\n", w.len(w.high))
	readings := w.survey()
	for i := range w.names {
		w.wall(i)
	}
	fmt.Fprint(w, readings)
	w.above()
	w.opening()
	w.ceiling()
	return w.String()
}

// some reports true once in n.
func (w *writer) some(name string, n int) bool { return w.pick(name, 1, n) == 1 }

// one returns one of the words.
func (w *writer) one(name string, words ...string) string {
	return words[w.pick(name, 0, len(words)-1)]
}

// len writes a length given in inches, in the units of the file.
func (w *writer) len(in float64) string {
	if w.metric {
		return fmt.Sprint(int(math.Round(in * 25.4)))
	}
	n := int(math.Round(in * 16))
	if n%16 == 0 {
		return fmt.Sprint(n / 16)
	}
	if n < 16 {
		return fmt.Sprintf("%d/16", n)
	}
	return fmt.Sprintf("%d-%d/16", n/16, n%16)
}

// survey chooses the corners and returns the section with the readings.
func (w *writer) survey() string {
	wide, deep := float64(w.pick("wide", 60*16, 360*16))/16, float64(w.pick("deep", 60*16, 360*16))/16
	c := [4][2]float64{{0, 0}, {wide, 0}, {wide, -deep}, {0, -deep}}
	square := !w.some("out of square", 3)
	if !square {
		for i, name := range []string{"east", "south", "west"} {
			c[min(i+1, 3)][0] += float64(w.pick(name, -16, 16)) / 16
			c[max(2, i+1)][1] += float64(w.pick(name+" down", -16, 16)) / 16
		}
		c[1][1] = 0
	}
	far := func(i, j int) float64 { return math.Hypot(c[i][0]-c[j][0], c[i][1]-c[j][1]) }
	for i := range c {
		w.long[i] = far(i, (i+1)%4)
	}
	if square {
		return "survey: {corners: square}\n"
	}
	n := w.names
	return fmt.Sprintf("survey:\n  readings:\n    %s/%s to %s/%s: %s\n    %s/%s to %s/%s: %s\n",
		n[0], n[1], n[2], n[3], w.len(far(1, 3)), n[3], n[0], n[1], n[2], w.len(far(0, 2)))
}

// wall writes one wall with what is in it.
func (w *writer) wall(i int) {
	fmt.Fprintf(w, "  - wall: %s\n    length: %s\n", w.names[i], w.len(w.long[i]))
	n := w.names[i]
	switch w.pick("make of "+n, 0, 5) {
	case 0, 1:
		w.framed[i] = true
		size, lining := "2x4", "1/2 gypsum"
		if w.metric {
			size, lining = "38 x 89", "12.5 gypsum"
		}
		made, tape, inside := "studs", "studs", "none"
		if w.some("new "+n, 3) {
			made = "new studs"
		} else if w.some("lined "+n, 2) {
			tape, inside = "lining", lining
		}
		fmt.Fprintf(w, "    made of: %s\n    tape on: %s\n    lining: {inside: %s, outside: %s}\n", made, tape, inside, lining)
		fmt.Fprintf(w, "    frame: {stud: %s, bearing: no, other duty: none, studs: %s from left}\n", size, w.len(16))
	}
	free := w.long[i]
	if w.some("door in "+n, 3) && free > 50 {
		wide := float64(w.pick("door wide "+n, 24, 36))
		at := float64(w.pick("door at "+n, 4, int(free-wide-4)))
		swing := w.one("swing of "+n, "", ", hinge: left, opens: in", ", hinge: right, opens: in", ", hinge: left, opens: out", ", hinge: right, opens: out")
		fmt.Fprintf(w, "    doors: [{door: %s, clear: %s x %s, left edge from left: %s%s}]\n",
			w.one("door name "+n, "entry", "door to yard and store"), w.len(wide), w.len(80), w.len(at), swing)
	}
	if w.some("window in "+n, 3) && free > 60 {
		wide := float64(w.pick("window wide "+n, 16, min(60, int(free)-20)))
		at := float64(w.pick("window at "+n, 4, int(free-wide-4)))
		fmt.Fprintf(w, "    windows: [{window: pane %s, clear: %s x %s, left edge from left: %s, bottom from floor: %s}]\n",
			n, w.len(wide), w.len(36), w.len(at), w.len(38))
	}
}

// above writes joists and what hangs below them.
func (w *writer) above() {
	joists, things := !w.some("no joists", 5), w.pick("things overhead", 0, 3)
	if !joists && things == 0 {
		return
	}
	fmt.Fprint(w, "above:\n")
	if joists {
		k := w.pick("joists run", 0, 1)
		size := "2x8"
		if w.metric {
			size = "47 x 170"
		}
		fmt.Fprintf(w, "  joists: {size: %s, run: %s to %s, spacing: %s, first centre from %s: %s}\n",
			size, w.names[k], w.names[k+2], w.len(float64(w.pick("joist spacing", 12, 24))), w.names[(k+3)%4], w.len(float64(w.pick("first joist", 1, 20))))
	}
	if things > 0 {
		fmt.Fprint(w, "  in the way:\n")
	}
	for i := range things {
		side := w.pick(fmt.Sprint("thing off ", i), 0, 3)
		from := w.pick(fmt.Sprint("thing at ", i), 0, int(w.long[(side+1)%4])-4)
		wide := w.pick(fmt.Sprint("thing wide ", i), 1, 20)
		cross := ""
		if w.some(fmt.Sprint("thing ends ", i), 3) {
			next := (side + 1) % 4
			cross = fmt.Sprintf(", from %s: 0 to %s", w.names[next], w.len(float64(w.pick(fmt.Sprint("thing long ", i), 10, max(11, int(w.long[side])-2)))))
		}
		fmt.Fprintf(w, "    - {what: %s, from %s: %s to %s%s, below structure: %s}\n",
			w.one(fmt.Sprint("thing ", i), "duct", "pipe", "beam", "other"), w.names[side],
			w.len(float64(from)), w.len(float64(from+wide)), cross, w.len(float64(w.pick(fmt.Sprint("thing down ", i), 1, 12))))
	}
}

// opening writes an opening in each stud wall, now and then.
func (w *writer) opening() {
	first := true
	for i, n := range w.names {
		if !w.framed[i] || w.long[i] < 70 || !w.some("opening in "+n, 2) {
			continue
		}
		if first {
			fmt.Fprint(w, "openings:\n")
			first = false
		}
		header := "{plies: 2 of 2x6}"
		if w.metric {
			header = "{plies: 2 of 38 x 140}"
		}
		wide := w.pick("opening wide "+n, 20, min(60, int(w.long[i])-30))
		fmt.Fprintf(w, "  - {opening: light %s, wall: %s, rough: %s x %s, left edge from left: %s, bottom from floor: %s, header: %s, glazing: none}\n",
			n, n, w.len(float64(wide)), w.len(30), w.len(float64(w.pick("opening at "+n, 8, max(9, int(w.long[i])-wide-12)))), w.len(44), header)
	}
}

// ceiling writes the ceiling and its lights.
func (w *writer) ceiling() {
	if w.some("no ceiling", 12) {
		return
	}
	module, size := w.one("module", "24x24", "24x24", "24x48"), "24x24"
	thick, depth := "5/8", 2.5
	if w.metric {
		module, size = w.one("module", "600x600", "600x600", "600x1200"), "600x600"
		thick = "15"
	}
	if strings.HasSuffix(module, "48") || strings.HasSuffix(module, "1200") {
		size = module
	}
	along := ""
	if k := w.pick("mains along", 0, 3); k < 2 {
		along = fmt.Sprintf("\n  mains: {along: %s}", w.names[k])
	}
	fmt.Fprintf(w, "ceiling:\n  face from floor: %s\n  seismic: %s\n  grid: {module: %s}%s\n  panel: {thickness: %s}\n",
		w.len(w.high-float64(w.pick("ceiling down", 4, 16))), w.one("seismic", "none", "B", "D", "unknown"), module, along, thick)
	if n := w.pick("lights", 0, 8); n > 0 {
		fmt.Fprintf(w, "lights:\n  - {light: panel, size: %s, count: %d, arrange: %s, depth: %s, weight: %s}\n",
			size, n, w.one("arrange", "evenly", "symmetrical"), w.len(depth), w.one("weight", "7 lb", "20 lb"))
	}
}
