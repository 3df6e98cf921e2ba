package elevation

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"roomwright/geom"
	"roomwright/geom/framing"
	"roomwright/geom/piece"
	"roomwright/layouts/drawing"
	"roomwright/layouts/face"
)

// tables returns the table of pieces and the nailing schedule.
func (v *view) tables() []drawing.Table {
	var out []drawing.Table
	if t := v.pieces(); len(t.Rows) > 0 {
		out = append(out, t)
	}
	if t := v.nails(); len(t.Rows) > 0 {
		out = append(out, t)
	}
	return out
}

// line is one row of the table of pieces.
type line struct {
	first, last piece.Mark
	marks       []piece.Mark // each once
	p           piece.Piece
	count       int
}

func (v *view) pieces() drawing.Table {
	unit := "cut to, " + v.Show.Unit()
	t := drawing.Table{Heading: "Pieces on this sheet", Columns: []drawing.Column{
		{Heading: "mark", Bold: true}, {Heading: "piece"}, {Heading: "section"}, {Heading: "no.", Right: true}, {Heading: unit, Right: true, Bold: true},
	}}
	for _, state := range []piece.State{piece.New, piece.Removed} {
		for _, l := range v.lines(state) {
			name, mark := l.p.Name, string(l.first)
			if state == piece.Removed {
				if l.last != l.first {
					mark = marksList(l.marks)
				}
				if !strings.Contains(name, "out") {
					name += ", taken out"
				}
			}
			t.Rows = append(t.Rows, []string{
				mark, name, face.Times(l.p.Profile.Name), fmt.Sprint(l.count), v.Show.Figure(l.p.Length),
			})
		}
	}
	return t
}

// lines gathers the pieces of a state: equal marks are one line; pieces taken
// out that are alike and follow each other are one line too.
func (v *view) lines(state piece.State) []line {
	var out []line
	for _, m := range v.Wall.Members {
		if m.State != state {
			continue
		}
		if i := slices.IndexFunc(out, func(l line) bool { return slices.Contains(l.marks, m.Mark) }); i >= 0 {
			out[i].count++
			continue
		}
		if n := len(out); state == piece.Removed && n > 0 && alike(out[n-1].p, m.Piece) {
			out[n-1].last = m.Mark
			out[n-1].marks = append(out[n-1].marks, m.Mark)
			out[n-1].count++
			continue
		}
		out = append(out, line{first: m.Mark, last: m.Mark, marks: []piece.Mark{m.Mark}, p: m.Piece, count: 1})
	}
	slices.SortStableFunc(out, func(a, b line) int { return compareMarks(a.first, b.first) })
	return out
}

func alike(a, b piece.Piece) bool {
	return a.Name == b.Name && a.Profile == b.Profile && a.Length == b.Length
}

// compareMarks orders marks as people count: A9 before A10.
func compareMarks(a, b piece.Mark) int {
	la, lb := strings.TrimRight(string(a), "0123456789"), strings.TrimRight(string(b), "0123456789")
	if la != lb {
		return strings.Compare(la, lb)
	}
	if len(a) != len(b) {
		return len(a) - len(b)
	}
	return strings.Compare(string(a), string(b))
}

// nails returns the nailing schedule; joints that openings share stand once.
func (v *view) nails() drawing.Table {
	t := drawing.Table{Heading: "Nails", Columns: []drawing.Column{{Heading: "joint"}, {Heading: "nails"}}}
	for _, o := range v.Wall.Openings {
		for _, j := range o.Nails {
			nails := j.Nails
			if unsure(j) {
				nails += " *"
			}
			row := []string{j.Where, nails}
			if !slices.ContainsFunc(t.Rows, func(r []string) bool { return slices.Equal(r, row) }) {
				t.Rows = append(t.Rows, row)
			}
		}
	}
	return t
}

// notes returns what is to be known beside the figures.
func (v *view) notes() []string {
	var n []string
	faces := "to faces of framing"
	if !v.framed() {
		faces = "to the faces that the tape touched"
		if len(v.Wall.Doors) > 0 {
			faces += "; doors and windows to their clear size where no other is named"
		}
	}
	n = append(n, face.Units(v.Show)+", "+faces+". Heights from the finished floor.")
	n = append(n, v.studNotes()...)
	for _, o := range v.Wall.Openings {
		n = append(n, v.openingNotes(o)...)
	}
	for _, s := range v.Wall.Services {
		n = append(n, v.serviceNote(s))
	}
	if v.Room.Note != "" {
		n = append(n, strings.TrimRight(v.Room.Note, ".")+".")
	}
	n = append(n, v.sources()...)
	return append(n, "Check each figure on the wall before the saw. Do not scale.")
}

// serviceNote says where a thing in the wall or on it was found.
func (v *view) serviceNote(s framing.ServiceAt) string {
	on := "in"
	if s.OnFace {
		on = "on"
	}
	note := ""
	if s.Note != "" {
		note = "; " + strings.TrimRight(s.Note, ".")
	}
	if drawn, _ := v.Seen(s); s.Unknown || !drawn {
		return upper(s.What) + " " + on + " this wall, place not known: it may be anywhere" + note + "."
	}
	b := s.Box
	x := v.Show.Figure(b.Min.X)
	if b.W() > 0 {
		x += " to " + v.Show.Figure(b.Max.X)
	}
	y := v.Show.Figure(b.Min.Y) + " to " + v.Show.Figure(b.Max.Y) + " above the floor"
	switch {
	case b.H() <= 0:
		y = v.Show.Figure(b.Min.Y) + " above the floor"
	case b.Min.Y <= 0:
		y = "from the floor up to " + v.Show.Figure(b.Max.Y)
	}
	return upper(s.What) + " " + on + " the wall: " + x + " from the left corner, " + y + note + "."
}

// studNotes says where the studs stand.
func (v *view) studNotes() []string {
	plan := v.Room.Frame.Studs
	if !v.framed() || !plan.Given || plan.Unknown {
		return nil
	}
	if plan.Spacing > 0 {
		end := "left"
		if plan.From != 0 {
			end = "right"
		}
		n := fmt.Sprintf("Studs stand at %s on center from the %s corner.", v.Show.Figure(plan.Spacing), end)
		if plan.First > 0 && plan.First != plan.Spacing {
			n = fmt.Sprintf("Studs stand at %s on center, the first center %s from the %s corner.",
				v.Show.Figure(plan.Spacing), v.Show.Figure(plan.First), end)
		}
		return []string{n}
	}
	if len(plan.Marks) < 3 {
		return nil
	}
	least, most := geom.Length(0), geom.Length(0)
	for i := 1; i < len(plan.Marks); i++ {
		d := v.Show.Round(plan.Marks[i]) - v.Show.Round(plan.Marks[i-1])
		if i == 1 || d < least {
			least = d
		}
		most = max(most, d)
	}
	if least == most {
		return []string{"Studs are where the tape found them."}
	}
	return []string{"Studs are where the tape found them, not at a regular spacing."}
}

func (v *view) openingNotes(o framing.Opening) []string {
	var n []string
	at := ""
	if len(v.Wall.Openings) > 1 {
		at = upper(o.Name) + ": "
	}
	say := func(text string) {
		if at == "" {
			text = upper(text)
		}
		n = append(n, at+text)
	}
	if short := v.shortOf(o); len(short) > 0 && o.LetIn > 0 {
		say(fmt.Sprintf("%s: %s shorter than the %s between kings, to go in; pack tight.",
			strings.Join(short, ", "), v.Show.Figure(o.LetIn), v.Show.Figure(o.Kings.Len())))
	}
	var out []piece.Mark
	for _, m := range v.out {
		if m.Opening == o.Index && !slices.Contains(out, m.Mark) {
			out = append(out, m.Mark)
		}
	}
	if len(o.Cuts) > 0 {
		text := "stubs stay on the plates and become the cripples."
		if len(out) > 0 {
			text += " The saw's kerf comes out of " + marksList(out) + "."
		}
		say(text)
	}
	for _, k := range []struct {
		i    int
		side string
	}{{o.LeftKing, "left"}, {o.RightKing, "right"}} {
		if k.i >= 0 && k.i < len(v.Wall.Members) && v.Wall.Members[k.i].State == piece.Existing {
			say(fmt.Sprintf("the stud at %s is kept and serves as the %s king.", v.Show.Figure(v.Wall.Members[k.i].Box.Min.X), k.side))
		}
	}
	for _, k := range o.Packs {
		say(fmt.Sprintf("pack the gap of %s from %s to %s, beside stud %d.",
			v.Show.Figure(k.X.Len()), v.Show.Figure(k.X.From), v.Show.Figure(k.X.To), k.StudNo))
	}
	return n
}

// shortOf returns the marks of the pieces that are cut short of the kings.
func (v *view) shortOf(o framing.Opening) []string {
	var out []string
	for _, m := range v.Wall.Members {
		if m.Opening != o.Index || m.State != piece.New || m.Length != o.Kings.Len()-o.LetIn {
			continue
		}
		switch m.Role {
		case framing.Sill, framing.HeaderPly, framing.HeaderFiller:
			if !slices.Contains(out, string(m.Mark)) {
				out = append(out, string(m.Mark))
			}
		}
	}
	return out
}

// marksList joins marks: "R1 to R4", "R1 and R3", "R1".
func marksList(list []piece.Mark) string {
	switch len(list) {
	case 1:
		return string(list[0])
	case 2:
		return string(list[0]) + " and " + string(list[1])
	}
	return string(list[0]) + " to " + string(list[len(list)-1])
}

// code finds the places of published codes in the source of a joint.
var code = regexp.MustCompile(`(IRC|IBC) (Table )?R?[0-9][0-9.]*[0-9](\([0-9]+\))?`)

// unsure reports whether a joint rests on no published text that was read.
func unsure(j framing.Joint) bool {
	return strings.Contains(j.Source, "no source") || strings.Contains(j.Source, "from memory")
}

// sources names the codes that the nailing schedule is from.
func (v *view) sources() []string {
	var from []string
	star := false
	for _, o := range v.Wall.Openings {
		for _, j := range o.Nails {
			star = star || unsure(j)
			for _, c := range code.FindAllString(j.Source, -1) {
				if !slices.Contains(from, c) {
					from = append(from, c)
				}
			}
		}
	}
	var n []string
	if len(from) > 0 {
		n = append(n, "Nails after "+list(from)+"; the code in force where you build decides.")
	}
	if star {
		n = append(n, "Nails marked * are common practice or from memory: ask locally.")
	}
	return n
}

func upper(s string) string {
	if s == "" {
		return s
	}
	r := []rune(s)
	return strings.ToUpper(string(r[0])) + string(r[1:])
}
