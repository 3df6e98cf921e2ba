package framing

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/geom/room"
)

const sixteenth = geom.Inch / 16

// some draws a length between two, in sixteenths of an inch.
func some(t *rapid.T, from, to geom.Length, name string) geom.Length {
	return geom.Length(rapid.IntRange(int(from/sixteenth), int(to/sixteenth)).Draw(t, name)) * sixteenth
}

// anyWall draws a room of one wall: studs as found or at a spacing, perhaps a
// door and a window, and one or two openings that may or may not fit.
func anyWall(t *rapid.T) *room.Room {
	r := job()
	w := &r.Walls[0]
	l := some(t, geom.In(60), geom.In(220), "length")
	w.Length = reading(l, 6)
	w.Frame.StudLength = reading(some(t, geom.In(80), geom.In(110), "stud"), 8)
	w.Frame.Bearing = rapid.SampledFrom([]room.Answer{room.Yes, room.No, room.Unknown}).Draw(t, "bearing")
	if rapid.Bool().Draw(t, "new") {
		w.MadeOf = room.NewStuds
	}
	from := room.End(rapid.IntRange(0, 1).Draw(t, "end"))
	if rapid.Bool().Draw(t, "spaced") {
		w.Frame.Studs = room.StudPlan{Given: true, Spacing: some(t, geom.In(10), geom.In(26), "spacing"), From: from, At: at(9)}
	} else {
		p := room.StudPlan{Given: true, From: from, At: at(9)}
		for x := geom.Length(0); x+inch(1.5) <= l; x += inch(1.5) + some(t, 0, geom.In(24), "bay") {
			p.Marks = append(p.Marks, x)
		}
		w.Frame.Studs = p
		if from == room.Right { // marks of right edges from the right
			w.Frame.Studs.Edge = room.RightEdge
		}
	}
	if w.MadeOf == room.Studs && rapid.Bool().Draw(t, "door") {
		d := room.Existing{
			Name: "door", Size: room.Size{W: some(t, geom.In(24), geom.In(40), "door width"), H: geom.In(70), At: at(16)}, At: at(16),
		}
		d.Across = room.Across{Kind: room.EdgeFromEnd, At: at(16), Value: some(t, geom.In(4), max(geom.In(4), l-geom.In(45)), "door place")}
		w.Doors = append(w.Doors, d)
	}
	for i := range rapid.IntRange(0, 2).Draw(t, "openings") {
		r.Openings = append(r.Openings, anyOpening(t, l, i))
	}
	return r
}

func anyOpening(t *rapid.T, l geom.Length, i int) room.Opening {
	o := room.Opening{
		Name: fmt.Sprintf("opening %d", i), At: at(11), Jacks: rapid.IntRange(1, 2).Draw(t, "jacks"),
		Kind:  room.SizeKind(rapid.IntRange(0, 3).Draw(t, "kind")),
		Size:  room.Size{W: some(t, geom.In(6), geom.In(80), "width"), H: some(t, geom.In(6), geom.In(60), "height"), At: at(12)},
		Up:    room.Up{Kind: room.BottomFromFloor, Value: some(t, 0, geom.In(50), "bottom"), At: at(14)},
		Split: rapid.Bool().Draw(t, "split"), Sill: rapid.IntRange(0, 2).Draw(t, "sill"),
		Header: room.Header{
			Plies: rapid.IntRange(1, 3).Draw(t, "plies"), Timber: timber(rapid.SampledFrom([]string{"2x4", "2x6", "2x8"}).Draw(t, "header")),
			Filler: some(t, 0, inch(0.5), "filler"), LetIn: room.Want{Value: some(t, 0, inch(0.5), "let-in") / sixteenth * 2 * sixteenth / 2, At: at(15)}, At: at(15),
		},
	}
	if rapid.Bool().Draw(t, "lined") {
		o.Liner, o.Shims, o.Stops = want(0.75), want(0.25), want(0.75)
	}
	if rapid.Bool().Draw(t, "doorway") {
		o.Up.Value = 0
	}
	switch rapid.IntRange(0, 3).Draw(t, "across") {
	case 0:
		o.Across = room.Across{Kind: room.CentredOnWall, At: at(13)}
	case 1:
		o.Across = room.Across{Kind: room.AcrossKind(rapid.IntRange(int(room.KingLeft), int(room.KingRight)).Draw(t, "king")),
			Stud: room.StudRef{Number: rapid.IntRange(1, 8).Draw(t, "stud"), At: at(13)}, At: at(13)}
	default:
		o.Across = room.Across{Kind: room.EdgeFromEnd, Edge: room.Edge(rapid.IntRange(0, 2).Draw(t, "edge")),
			From: room.End(rapid.IntRange(0, 1).Draw(t, "from")), Value: some(t, 0, l, "place"), At: at(13)}
	}
	return o
}

func TestLaws(t *testing.T) {
	framedOnce := false
	rapid.Check(t, func(t *rapid.T) {
		r := anyWall(t)
		w, found := Build(r, 0, plan(r))
		again, foundAgain := Build(r, 0, plan(r))
		if !reflect.DeepEqual(w, again) || !slices.Equal(found, foundAgain) {
			t.Fatal("built twice, and not alike")
		}
		lawOfSpace(t, &w, found)
		lawOfMarks(t, &w)
		lawOfStubs(t, &w)
		for i := range w.Openings {
			framedOnce = true
			lawOfBearing(t, r, &w, &w.Openings[i])
		}
		if len(w.Openings) < len(r.Openings) && finding.Errors(found) == 0 {
			t.Fatal("an opening is missing and nothing is said")
		}
	})
	if !framedOnce {
		t.Error("no opening was ever set out: the test proves nothing")
	}
}

// lawOfSpace: no two sticks that stay or are new share a place, and all are
// inside the wall.
func lawOfSpace(t *rapid.T, w *Wall, found []finding.Finding) {
	header := func(m *Member) bool { return m.Role == HeaderPly || m.Role == HeaderFiller }
	for i := range w.Members {
		m := &w.Members[i]
		if b := m.Box; b.Min.X < 0 || b.Max.X > w.Length || b.Min.Y < 0 || b.Max.Y > w.Top {
			t.Fatalf("%s %s outside the wall: %v", m.Mark, m.Name, b)
		}
		if m.Box.Empty() || m.Length != max(m.Box.W(), m.Box.H()) && m.Length != min(m.Box.W(), m.Box.H()) {
			t.Fatalf("%s %s is %v long in %v", m.Mark, m.Name, m.Length, m.Box)
		}
		for j := range i {
			n := &w.Members[j]
			if m.State == piece.Removed || n.State == piece.Removed || !m.Box.Overlaps(n.Box) ||
				header(m) && header(n) && m.Depth != n.Depth {
				continue
			}
			if has(found, "studs run into each other")+has(found, "stud in a doorway") > 0 {
				continue
			}
			t.Fatalf("%s %s %v and %s %s %v share a place", m.Mark, m.Name, m.Box, n.Mark, n.Name, n.Box)
		}
	}
}

// lawOfMarks: equal marks are equal pieces; what stays or goes has a mark of its own.
func lawOfMarks(t *rapid.T, w *Wall) {
	seen := map[piece.Mark]*Member{}
	for i := range w.Members {
		m := &w.Members[i]
		if m.Mark == "" {
			t.Fatalf("%s has no mark", m.Name)
		}
		n := seen[m.Mark]
		seen[m.Mark] = m
		if n == nil {
			continue
		}
		if m.State != piece.New || n.State != piece.New || m.Length != n.Length || m.Profile != n.Profile || m.Name != n.Name {
			t.Fatalf("%s is %+v and %+v", m.Mark, m.Piece, n.Piece)
		}
	}
}

// lawOfStubs: stubs and what is taken out sum to the stud.
func lawOfStubs(t *rapid.T, w *Wall) {
	sum := map[int]geom.Length{}
	for _, m := range w.Members {
		if m.StudNo > 0 {
			sum[m.StudNo] += m.Length
		}
	}
	for no, l := range sum {
		if l != w.PlateLow-w.PlateTop {
			t.Fatalf("stud %d sums to %v in, want %v", no, l.Inches(), (w.PlateLow - w.PlateTop).Inches())
		}
	}
}

// lawOfBearing: the header lies on jacks at both ends, between kings that
// stand full height, and leaves the rough opening free.
func lawOfBearing(t *rapid.T, r *room.Room, w *Wall, o *Opening) {
	jacks := geom.Length(r.Openings[o.Index].Jacks)
	var left, right geom.Length
	for _, m := range w.Members {
		if m.State == piece.Removed {
			continue
		}
		if (m.Role == Jack || m.Role == UpperJack) && m.Box.Max.Y == o.Header.Min.Y {
			on := m.Box.X().Overlap(o.Header.X()).Len()
			if m.Box.Max.X <= o.Rough.Min.X {
				left += on
			} else if m.Box.Min.X >= o.Rough.Max.X {
				right += on
			}
		}
		if m.Box.Overlaps(o.Rough) {
			t.Fatalf("%s %s stands in opening %s", m.Mark, m.Name, o.Name)
		}
	}
	if bears := jacks*inch(1.5) - o.LetIn/2; left != bears || right != bears {
		t.Fatalf("header bears %v and %v, want %v", left, right, bears)
	}
	for _, k := range []struct{ index, face int }{{o.LeftKing, 0}, {o.RightKing, 1}} {
		if k.index < 0 {
			t.Fatalf("opening %s lacks a king", o.Name)
		}
		m := w.Members[k.index]
		ok := m.Role == King && m.Box.Min.Y == w.PlateTop && m.Box.Max.Y == w.PlateLow
		if k.face == 0 && m.Box.Max.X != o.Kings.From || k.face == 1 && m.Box.Min.X != o.Kings.To || !ok {
			t.Fatalf("king %+v of %+v", m, o.Kings)
		}
	}
	if o.Rough.Min.Y > 0 && o.Rough.Min.Y < w.PlateTop || o.Header.Max.Y > w.PlateLow {
		t.Fatalf("opening %v, header %v, plates %v and %v", o.Rough, o.Header, w.PlateTop, w.PlateLow)
	}
}

// mirror turns the room's wall round, with everything in it.
func mirror(r *room.Room) *room.Room {
	n := *r
	w := r.Walls[0]
	flip := func(a room.Across) room.Across {
		switch a.Kind {
		case room.EdgeFromEnd:
			a.From = room.Right - a.From
			if a.Edge != room.Centre {
				a.Edge = room.RightEdge - a.Edge
			}
		case room.KingLeft:
			a.Kind = room.KingRight
		case room.KingRight:
			a.Kind = room.KingLeft
		}
		return a
	}
	w.Frame.Studs.From = room.Right - w.Frame.Studs.From
	if w.Frame.Studs.Edge != room.Centre {
		w.Frame.Studs.Edge = room.RightEdge - w.Frame.Studs.Edge
	}
	w.Doors = slices.Clone(w.Doors)
	for i := range w.Doors {
		w.Doors[i].Across = flip(w.Doors[i].Across)
	}
	studs, _ := Build(r, 0, plan(r))
	count := 0
	for _, m := range studs.Members {
		if m.StudNo > count {
			count = m.StudNo
		}
	}
	n.Walls = []room.Wall{w}
	n.Openings = slices.Clone(r.Openings)
	for i := range n.Openings {
		a := flip(n.Openings[i].Across)
		if a.Stud.Given() {
			a.Stud.Number = count + 1 - a.Stud.Number
		}
		n.Openings[i].Across = a
	}
	return &n
}

// sketch lists what was set out, turned round when asked.
func sketch(w *Wall, turn bool) []string {
	x := func(s geom.Span) geom.Span {
		if turn {
			return geom.Span{From: w.Length - s.To, To: w.Length - s.From}
		}
		return s
	}
	var list []string
	for _, m := range w.Members {
		list = append(list, fmt.Sprint(m.Role, m.State, x(m.Box.X()), m.Box.Y(), m.Depth, m.Length, m.Opening))
	}
	for _, o := range w.Openings {
		list = append(list, fmt.Sprint(o.Index, x(o.Rough.X()), o.Rough.Y(), x(o.Header.X()), o.UpperCut, o.LowerCut, len(o.Cuts), len(o.Packs)))
	}
	slices.Sort(list)
	return list
}

func TestMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := anyWall(t)
		r.Walls[0].MadeOf = room.Studs
		for i := range r.Openings {
			a := &r.Openings[i].Across
			if a.Kind == room.KingLeft || a.Kind == room.KingRight {
				a.Stud.Number = 1 + a.Stud.Number%3
			}
		}
		w, found := Build(r, 0, plan(r))
		if has(found, "stud in a doorway") > 0 {
			return // drawn any way, and refused
		}
		m := mirror(r)
		v, _ := Build(m, 0, plan(m))
		if a, b := sketch(&w, false), sketch(&v, true); !slices.Equal(a, b) {
			t.Fatalf("not a mirrored wall:\n%s\n\n%s", strings.Join(a, "\n"), strings.Join(b, "\n"))
		}
	})
}

// TestHintsWork follows the hint of a refused place and finds no fault.
func TestHintsWork(t *testing.T) {
	followed := 0
	rapid.Check(t, func(t *rapid.T) {
		r := anyWall(t)
		if len(r.Openings) == 0 {
			return
		}
		r.Openings = r.Openings[:1]
		_, found := Build(r, 0, plan(r))
		o := &r.Openings[0]
		for _, f := range found {
			fixed := f.Hint
			for _, tail := range []string{" fits", " leaves it standing", " leaves it"} {
				fixed = strings.TrimSuffix(fixed, tail)
			}
			key, value, ok := strings.Cut(fixed, ": ")
			if !ok || fixed == f.Hint {
				continue
			}
			again := *r
			one := *o
			switch {
			case strings.HasSuffix(key, "king"):
				fmt.Sscanf(value, "stud %d", &one.Across.Stud.Number)
			case f.Place.Line == 13:
				v, err := measure.Parse(value, measure.Inches)
				if err != nil {
					t.Fatal(err)
				}
				edge, end, _ := strings.Cut(key, " from ")
				one.Across = room.Across{Kind: room.EdgeFromEnd, Value: v, At: at(13)}
				one.Across.Edge = map[string]room.Edge{"left edge": room.LeftEdge, "right edge": room.RightEdge, "centre": room.Centre}[edge]
				one.Across.From = map[string]room.End{"left": room.Left, "right": room.Right}[end]
			case f.Place.Line == 14:
				v, err := measure.Parse(strings.TrimSuffix(value, " fits; a doorway has its bottom at 0"), measure.Inches)
				if err != nil {
					t.Fatal(err)
				}
				one.Up.Value = v
			default:
				continue
			}
			again.Openings = []room.Opening{one}
			_, then := Build(&again, 0, plan(&again))
			followed++
			for _, g := range then {
				if g.Place.Line == f.Place.Line && g.Kind <= finding.Warning {
					t.Fatalf("%s: hint %q\nleads to %+v", f.What, f.Hint, g)
				}
			}
		}
	})
	if followed == 0 {
		t.Error("no hint was followed: the test proves nothing")
	}
}
