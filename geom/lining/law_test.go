package lining

import (
	"regexp"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/rules"
)

// drawWall draws a wall as found: studs at uneven places, some doubled, and
// perhaps a door and a box.
func drawWall(t *rapid.T) Wall {
	sixteenths := func(label string, from, to int64) geom.Length {
		return in(0, rapid.Int64Range(from*16, to*16).Draw(t, label))
	}
	length := sixteenths("length", 40, 220)
	w := Wall{Length: length, Finished: wall(sixteenths("left", 0, 1), length-sixteenths("right", 0, 1)), Ceiling: geom.In(97)}
	step := func() geom.Length { return sixteenths("step", 2, 25) }
	if rapid.Bool().Draw(t, "about 16 apart") {
		step = func() geom.Length { return in(15, rapid.Int64Range(4, 28).Draw(t, "step")) }
	}
	for x := geom.Length(0); x < length-in(1, 8); x += step() {
		w.Backing = append(w.Backing, Backing{X: wall(x, x+in(1, 8)), StudNo: len(w.Backing) + 1})
	}
	w.Backing = append(w.Backing, Backing{X: wall(length-in(1, 8), length), StudNo: len(w.Backing) + 1})
	if rapid.Bool().Draw(t, "door") {
		x := sixteenths("door at", 0, 200)
		w.Keep, w.Names = append(w.Keep, geom.RectOf(x, 0, x+geom.In(36), geom.In(82))), append(w.Names, "door entry")
	}
	if rapid.Bool().Draw(t, "box") {
		x := sixteenths("box at", 0, 200)
		w.Keep, w.Names = append(w.Keep, geom.RectOf(x, geom.In(40), x+geom.In(2), geom.In(43))), append(w.Names, "outlet")
	}
	return w
}

// drawBoard draws a row of up to four sheets without a place across.
func drawBoard(t *rapid.T) room.Board {
	width := rapid.OneOf(rapid.Just[int64](48*16), rapid.Int64Range(20*16, 60*16))
	return room.Board{
		Count: rapid.IntRange(1, 4).Draw(t, "count"),
		Size:  room.Size{W: in(0, width.Draw(t, "width")), H: geom.In(48)},
		Up:    up(in(0, rapid.Int64Range(0, 60*16).Draw(t, "bottom"))),
		Gap:   room.Want{Value: in(0, rapid.Int64Range(0, 4).Draw(t, "gap"))},
	}
}

// The search must find nothing worse than the best of all places a sixteenth
// apart: a slow and obvious second witness.
func TestSearchAgainstEverySixteenth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, b := drawWall(t), drawBoard(t)
		y := wall(b.Up.Value, b.Up.Value+b.Size.H)
		s := strip{n: b.Count, w: b.Size.W, gap: b.Gap.Value, bars: barsAt(w.Backing, y), judge: true}
		free := freeSpans(w.Finished, y, w.Keep)
		best, in, ok := s.search(free, nil)
		bestScore := score{}
		if ok {
			bestScore = s.score(best)
			if s.lost(best) > 0 && best.to-best.from < in.Len() {
				bestScore.short = 1
			}
		}
		for _, f := range free {
			for start := f.From - s.w; start < f.To; start += geom.Inch / 16 {
				p, fits := s.put(start, f)
				if !fits {
					continue
				}
				if !ok {
					t.Fatalf("search found nothing, but %v fits in %v", p, f)
				}
				got := s.score(p)
				if s.lost(p) > 0 && p.to-p.from < f.Len() {
					got.short = 1
				}
				got.fine, got.lost, got.away, got.least, got.at = bestScore.fine, bestScore.lost, bestScore.away, bestScore.least, bestScore.at
				if got.compare(bestScore) < 0 {
					t.Fatalf("search took %v %+v, but %v has %+v", best, bestScore, p, got)
				}
			}
		}
	})
}

// Sheets and gaps add up to the row, which stays between the finished faces
// and off doors; screws go into wood and not nearer an edge than is borne.
func TestRowLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w, b := drawWall(t), drawBoard(t)
		rows, _ := job144(b, w.Finished, func(to *Wall) { finished := to.Finished; *to = w; to.Finished = finished })
		row := rows[0]
		if len(row.Sheets) == 0 {
			return
		}
		var sum geom.Length
		for i, s := range row.Sheets {
			sum += s.Box.W()
			if s.Box.W() != s.Profile.Wide || s.Box.H() != s.Length || s.Box.W() > b.Size.W {
				t.Fatalf("sheet %+v does not agree with its box", s)
			}
			if i > 0 && s.Box.Min.X-row.Sheets[i-1].Box.Max.X != row.Gap {
				t.Fatalf("gap before sheet %d is not %v", i, row.Gap)
			}
		}
		if want := row.Box.W() - geom.Length(len(row.Sheets)-1)*row.Gap; sum != want {
			t.Fatalf("sheets sum to %v, want %v", sum, want)
		}
		if row.Box.Min.X < w.Finished.From || row.Box.Max.X > w.Finished.To {
			t.Fatalf("row %v outside %v", row.Box, w.Finished)
		}
		for i, k := range w.Keep {
			if w.Names[i] == "door entry" && k.Overlaps(row.Box) {
				t.Fatalf("row %v over the door %v", row.Box, k)
			}
		}
		on := barsAt(w.Backing, row.Box.Y())
		for _, f := range row.Fixing {
			box := row.Sheets[f.Sheet].Box
			if _, ok := on.at(f.X); !ok || f.X < box.Min.X+rules.BoardBearing || f.X > box.Max.X-rules.BoardBearing {
				t.Fatalf("screws at %v of sheet %v miss the wood or its edge distance", f.X, box)
			}
		}
	})
}

// Whatever a room says, Build gives one row a board and a finding with a place
// and a rule for each row that it leaves without sheets.
func TestNothingIsSilent(t *testing.T) {
	length := rapid.Map(rapid.Int64Range(-3000, 6000), func(n int64) geom.Length { return in(0, n) })
	rapid.Check(t, func(t *rapid.T) {
		w := drawWall(t)
		w.Solid = rapid.Bool().Draw(t, "solid")
		if rapid.Bool().Draw(t, "studs not known") {
			w.Backing = nil
		}
		w.Ceiling = max(0, length.Draw(t, "ceiling"))
		b := room.Board{
			Count: rapid.IntRange(-1, 40).Draw(t, "count"),
			Size:  room.Size{W: length.Draw(t, "width"), H: length.Draw(t, "height")},
			Across: room.Across{
				Kind:  room.AcrossKind(rapid.IntRange(0, 9).Draw(t, "across")),
				Edge:  room.Edge(rapid.IntRange(0, 2).Draw(t, "edge")),
				From:  room.End(rapid.IntRange(0, 1).Draw(t, "end")),
				Value: length.Draw(t, "at"), Wish: rapid.Bool().Draw(t, "wish across"),
				Stud:  room.StudRef{Number: rapid.IntRange(0, 9).Draw(t, "stud")},
				Stud2: room.StudRef{Mark: length.Draw(t, "other stud")}, Thing: "entry",
			},
			Up: room.Up{Kind: room.UpKind(rapid.IntRange(0, 6).Draw(t, "up")), Value: length.Draw(t, "height up"), Wish: rapid.Bool().Draw(t, "wish up")},
		}
		if rapid.Bool().Draw(t, "cut") {
			b.CutTo = room.Want{Value: length.Draw(t, "cut to"), IfFits: rapid.Bool().Draw(t, "wish cut")}
			b.CutTo.At.Line = 9
		}
		rows, found := job144(b, w.Finished, func(to *Wall) { finished := to.Finished; *to = w; to.Finished = finished })
		if len(rows) != 1 {
			t.Fatalf("%d rows of one board", len(rows))
		}
		failed := false
		for _, f := range found {
			failed = failed || f.Kind == finding.Error
			if f.Place.Line == 0 || f.Rule == "" || f.What == "" || f.On != "board test" {
				t.Fatalf("finding %+v", f)
			}
		}
		if len(rows[0].Sheets) == 0 && !failed {
			t.Fatalf("no sheets and no error: %v", found)
		}
		if box := rows[0].Box; len(rows[0].Sheets) > 0 && (box.Empty() || box.Min.Y < 0 || w.Ceiling > 0 && box.Max.Y > w.Ceiling) {
			t.Fatalf("row %v under %v", box, w.Ceiling)
		}
	})
}

// A place that a hint names works when it is typed back, whatever fractions
// the survey left in the faces.
func TestHintsWork(t *testing.T) {
	place := regexp.MustCompile(`(left edge from left|right edge from right): (\S+) (bears every seam|bears every edge|needs no cut|is clear of it)`)
	broken := map[string]string{
		"bears every seam": "seam not borne", "bears every edge": "outer edge not borne",
		"needs no cut": "row runs past its wall", "is clear of it": "board over an opening",
	}
	followed := 0
	rapid.Check(t, func(t *rapid.T) {
		w, b := drawWall(t), drawBoard(t)
		w.Finished.From += geom.Length(rapid.Int64Range(0, 30000).Draw(t, "odd left"))
		w.Finished.To -= geom.Length(rapid.Int64Range(0, 30000).Draw(t, "odd right"))
		b.Across = fromLeft(in(0, rapid.Int64Range(0, 60*16).Draw(t, "at")))
		if rapid.Bool().Draw(t, "from right") {
			b.Across.From, b.Across.Edge = room.Right, room.RightEdge
		}
		change := func(to *Wall) { finished := to.Finished; *to = w; to.Finished = finished }
		_, found := job144(b, w.Finished, change)
		for _, f := range found {
			for _, m := range place.FindAllStringSubmatch(f.Hint, -1) {
				value, err := measure.Parse(m[2], measure.Inches)
				if err != nil {
					t.Fatal(err)
				}
				again := b
				again.Across = fromLeft(value)
				if m[1] == "right edge from right" {
					again.Across.From, again.Across.Edge = room.Right, room.RightEdge
				}
				rows, then := job144(again, w.Finished, change)
				followed++
				if len(rows[0].Sheets) == 0 || slices.Contains(ruleNames(then), broken[m[3]]) {
					t.Fatalf("hint %q of %q does not work: %v", f.Hint, f.Rule, then)
				}
			}
		}
	})
	t.Logf("%d hints followed", followed)
	if followed == 0 {
		t.Error("no hint was followed")
	}
}
