package render_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
)

// dice writes a room file that nobody thought of.
type dice struct {
	strings.Builder
	*rand.Rand
	metric bool
	long   [4]int // of the walls, in millimetres
	high   int
	framed [4]bool
	fresh  [4]bool // to be built
}

// upTo returns a number from low to high, low when there is no other.
func (d *dice) upTo(low, high int) int { return low + d.IntN(max(1, high-low+1)) }

// often reports true so many times out of ten.
func (d *dice) often(outOfTen int) bool { return d.IntN(10) < outOfTen }

// of returns one of the words.
func (d *dice) of(words ...string) string { return words[d.IntN(len(words))] }

// mm writes a length given in millimetres in the units of the file; inches go
// to the nearest sixteenth.
func (d *dice) mm(v int) string {
	if d.metric {
		return fmt.Sprint(v)
	}
	n, den := int(math.Round(float64(v)*16/25.4)), 16
	whole, num := n/16, n%16
	for num > 0 && num%2 == 0 {
		num, den = num/2, den/2
	}
	switch {
	case num == 0:
		return fmt.Sprint(whole)
	case whole == 0:
		return fmt.Sprintf("%d/%d", num, den)
	}
	return fmt.Sprintf("%d-%d/%d", whole, num, den)
}

// either writes a thing in the words of the system of the file.
func (d *dice) either(inches, millimetres string) string {
	if d.metric {
		return millimetres
	}
	return inches
}

// roomFile returns the room file of a seed: four walls of masonry, studs as
// found, studs at a spacing or studs to be built, out of square one time in
// three; doors, windows and what is in the wall; one to three openings; boards;
// a ceiling with lights and what is in its way; any paper and way to print
// lengths. Not every file can be set out.
func roomFile(seed uint64) string {
	d := &dice{Rand: rand.New(rand.NewPCG(seed, 1961))}
	d.metric = d.often(5)
	d.high = d.upTo(2250, 3300)
	system := d.either("inches", "millimetres")
	show := d.of("feet and inches", "inches", "inches to 1/8", "millimetres", "feet and inches to 1/32")
	if d.metric {
		show = d.of("millimetres", "millimetres", "inches", "millimetres to 0.5")
	}
	fmt.Fprintf(d, "title: %s\nplace: %s\ndrawn by: I. N. Vented\nnumber: %s\n",
		d.of("Room", "Old smithy to lace mender's workroom and store for patterns", "Wash house to bindery"),
		d.of("yard", "behind the orchard wall, up the outer stairs, second door"), d.of("R-1", "LONG-NUMBER-2026-0001"))
	fmt.Fprintf(d, "built: %s\npaid work: %s\nunits: %s\nshow: %s\n", d.of("1950", "1999", "unknown"), d.of("yes", "no"), system, show)
	fmt.Fprintf(d, "every wall: {made of: %s, tape on: masonry, floor to structure: %s}\nwalls:\n", d.of("block", "brick"), d.mm(d.high))
	survey := d.corners()
	for i := range 4 {
		d.wall(i)
	}
	d.WriteString(survey)
	d.above()
	d.openings()
	d.boards()
	d.ceiling()
	fmt.Fprintf(d, "drawing: {paper: %s, orientation: %s}\n", d.of("letter", "tabloid", "A4", "A3"), d.of("landscape", "landscape", "portrait"))
	return d.String()
}

// corners chooses the corners and returns what the survey says of them.
func (d *dice) corners() string {
	w, h := float64(d.upTo(1500, 8000)), float64(d.upTo(1500, 6000))
	c := [4][2]float64{{0, 0}, {w, 0}, {w, -h}, {0, -h}}
	square := d.often(7)
	if !square {
		for i := 2; i < 4; i++ {
			c[i][0] += float64(d.upTo(-20, 20))
			c[i][1] += float64(d.upTo(-20, 20))
		}
	}
	far := func(i, j int) int { return int(math.Round(math.Hypot(c[i][0]-c[j][0], c[i][1]-c[j][1]))) }
	for i := range 4 {
		d.long[i] = far(i, (i+1)%4)
	}
	if square {
		return "survey: {corners: square}\n"
	}
	return fmt.Sprintf("survey: {readings: {A/B to C/D: %s, D/A to B/C: %s}}\n", d.mm(far(1, 3)), d.mm(far(0, 2)))
}

// wall writes one wall and what is in it.
func (d *dice) wall(i int) {
	name, long := "ABCD"[i:i+1], d.long[i]
	fmt.Fprintf(d, "  - wall: %s\n    length: %s\n", name, d.mm(long))
	d.framed[i] = i == 0 && d.often(9) || d.often(3)
	if d.framed[i] {
		d.frame(i)
	}
	if wide := d.upTo(600, 950); d.often(3) && long > wide+300 && !d.fresh[i] {
		fmt.Fprintf(d, "    doors: [{door: %s, clear: %s x %s, left edge from left: %s, hinge: %s, opens: %s}]\n", d.of("entry ", "way of the coal store ")+name,
			d.mm(wide), d.mm(d.upTo(1900, 2050)), d.mm(d.upTo(80, long-wide-80)), d.of("left", "right"), d.of("in", "out"))
	}
	if wide := d.upTo(350, 1300); d.often(3) && long > wide+300 && !d.fresh[i] {
		fmt.Fprintf(d, "    windows: [{window: pane %s, clear: %s x %s, left edge from left: %s, bottom from floor: %s}]\n", name,
			d.mm(wide), d.mm(d.upTo(300, 900)), d.mm(d.upTo(80, long-wide-80)), d.mm(d.upTo(700, 1150)))
	}
	if at := d.upTo(100, long-100); d.often(3) {
		where := "on wall"
		if d.framed[i] {
			where = "in wall"
		}
		fmt.Fprintf(d, "    %s:\n      - {what: %s, centre from left: %s, from floor: 0 to %s}\n", where, d.of("cable", "pipe"), d.mm(at), d.mm(d.upTo(200, 2000)))
		fmt.Fprintf(d, "      - {what: %s, centre from left: %s, centre from floor: %s, size: %s}\n", d.of("outlet", "switch", "box"),
			d.mm(min(long-60, at+d.upTo(0, 150))), d.mm(d.upTo(250, 1400)), d.either("2 x 3", "60 x 90"))
	}
}

// frame writes how a stud wall is framed.
func (d *dice) frame(i int) {
	made, tape, inside := "studs", "studs", "none"
	switch d.IntN(3) {
	case 0:
		made, d.fresh[i] = "new studs", true
	case 1:
		tape, inside = "lining", d.either("1/2 gypsum", "12.5 gypsum")
	}
	fmt.Fprintf(d, "    made of: %s\n    tape on: %s\n    lining: {inside: %s, outside: %s}\n", made, tape, inside, d.either("1/2 gypsum", "12.5 gypsum"))
	studs := fmt.Sprintf("%s from %s", d.of(d.either("16", "400"), d.either("24", "600")), d.of("left", "right"))
	if long := d.long[i]; !d.fresh[i] && d.often(6) {
		marks := []string{"0"}
		for x := d.upTo(200, 600); x < long-90; x += d.upTo(90, 620) {
			marks = append(marks, d.mm(x))
		}
		marks = append(marks, d.mm(long-39))
		studs = fmt.Sprintf("{left edges from left: [%s]}", strings.Join(marks, ", "))
	}
	fmt.Fprintf(d, "    frame: {stud: %s, bearing: %s, other duty: none, studs: %s}\n", d.either("2x4", "38 x 89"), d.of("no", "no", "unknown", "yes"), studs)
}

// above writes joists and what hangs below them.
func (d *dice) above() {
	k := d.IntN(2)
	fmt.Fprintf(d, "above:\n  joists: {size: %s, run: %s, spacing: %s, first centre from %s: %s}\n", d.either("2x8", "47 x 170"),
		[]string{"A to C", "B to D"}[k], d.mm(d.upTo(300, 620)), []string{"D", "A"}[k], d.mm(d.upTo(30, 400)))
	if !d.often(6) {
		return
	}
	d.WriteString("  in the way:\n")
	for range d.upTo(1, 3) {
		i := d.IntN(4)
		wide := d.upTo(20, 400)
		from := d.upTo(0, max(1, d.long[(i+1)%4]-wide-50))
		fmt.Fprintf(d, "    - {what: %s, from %s: %s to %s, below structure: %s}\n", d.of("duct", "pipe", "beam", "valve"),
			"ABCD"[i:i+1], d.mm(from), d.mm(from+wide), d.mm(d.upTo(20, 180)))
	}
}

// openings writes openings wanted in the first wall.
func (d *dice) openings() {
	if !d.framed[0] || !d.often(8) {
		return
	}
	d.WriteString("openings:\n")
	x := d.upTo(60, 500)
	for i := range d.upTo(1, 3) {
		wide := d.upTo(300, 1900)
		if i > 0 && x+wide > d.long[0] {
			return
		}
		bottom := []int{0, 600, 900, 1150}[d.IntN(4)]
		fmt.Fprintf(d, "  - {opening: %s, wall: A, %s: %s x %s, left edge from left: %s, bottom from floor: %s, header: %s, jacks: {a side: %d, at sill: %s}, glazing: %s}\n",
			[]string{"borrowed light", "hatch", "pass for trays"}[i], d.of("rough", "clear"), d.mm(wide), d.mm(d.upTo(300, 2000-bottom)), d.mm(x), d.mm(bottom),
			d.of(d.either("{plies: 2 of 2x6, filler: 15/32}", "{plies: 2 of 38 x 140, filler: 12.5}"), d.either("{plies: 2 of 2x4, filler: 15/32}", "{plies: 2 of 38 x 89, filler: 12.5}")),
			d.upTo(1, 2), d.of("split", "through"), d.of("none", d.either("1/4 acrylic", "6 acrylic")))
		x += wide + d.upTo(250, 900)
	}
}

// boards writes rows of boards.
func (d *dice) boards() {
	if !d.often(6) {
		return
	}
	i := d.IntN(4)
	where := d.of("", ", centred on: wall", ", left edge from left: "+d.mm(d.upTo(0, 600)))
	fmt.Fprintf(d, "boards:\n  - {board: %s, wall: %s, sheets: %d of %s, sheet: %s, cut to: %s, bottom from floor: %s%s}\n", d.of("wall of patterns", "slate"),
		"ABCD"[i:i+1], d.upTo(1, 4), d.either("48 x 96", "1200 x 2400"), d.either("1/4 hardboard", "6 hardboard"), d.mm(d.upTo(600, 2000)), d.mm(d.upTo(0, 300)), where)
}

// ceiling writes a suspended ceiling and its lights.
func (d *dice) ceiling() {
	if !d.often(8) {
		return
	}
	module, light := d.either("24x48", "600x1200"), d.either("24x48", "600x1200")
	if d.often(7) {
		module, light = d.either("24x24", "600x600"), d.of(d.either("24x24", "600x600"), light)
	}
	fmt.Fprintf(d, "ceiling:\n  face from floor: %s\n  seismic: %s\n  grid: {module: %s}\n  panel: {thickness: %s, weight: %s}\n", d.mm(d.high-d.upTo(180, 420)),
		d.of("none", "B", "unknown"), module, d.either("5/8", "15"), d.either("1 lb/ft2", "3.2 kg/m2"))
	if d.often(7) {
		fmt.Fprintf(d, "lights:\n  - {light: panel, size: %s, count: %d, arrange: %s, weight: %s, depth: %s}\n", light,
			d.upTo(1, 6), d.of("evenly", "symmetrical"), d.either("7 lb", "3.4 kg"), d.mm(d.upTo(25, 90)))
	}
}
