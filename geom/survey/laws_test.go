package survey_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/survey"
)

// apart returns the distance between two points, to the nearest 1/16 µm.
func apart(a, b geom.Point) geom.Length {
	return geom.Length(math.Round(math.Hypot(float64(a.X-b.X), float64(a.Y-b.Y))))
}

// plain is a reading of l.
func plain(line int, l geom.Length) room.Reading {
	return room.Reading{Value: l, All: []geom.Length{l}, At: finding.Place{Line: line, Column: 1}}
}

// readOff makes a room whose readings are those of p.
func readOff(p geom.Polygon) *room.Room {
	r := fourWalls("1", "1", "1", "1")
	for i := range p {
		r.Walls[i].Length = plain(i+1, apart(p[i], p[(i+1)%4]))
	}
	for i := range 2 {
		r.Survey.Readings = append(r.Survey.Readings, room.Diagonal{From: i, To: i + 2, Reading: plain(11+i, apart(p[i], p[i+2]))})
	}
	return r
}

// drawPolygon draws a room of four corners, each off a rectangle by at most off
// either way; corner 0 is the origin and wall 0 runs along +x.
func drawPolygon(t *rapid.T, off geom.Length) geom.Polygon {
	w := geom.Length(rapid.Int64Range(int64(geom.In(48)), int64(geom.In(480))).Draw(t, "width"))
	h := geom.Length(rapid.Int64Range(int64(geom.In(48)), int64(geom.In(480))).Draw(t, "depth"))
	move := func(name string) geom.Length {
		return geom.Length(rapid.Int64Range(-int64(off), int64(off)).Draw(t, name))
	}
	return geom.Polygon{{}, {X: w + move("x1")}, {X: w + move("x2"), Y: -h + move("y2")}, {X: move("x3"), Y: -h + move("y3")}}
}

// Readings of a known room give it back, from all six or any five of them.
func TestKnownRoomsAreRecovered(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := drawPolygon(t, geom.In(12))
		r := readOff(want)
		switch out := rapid.IntRange(-1, 5).Draw(t, "left out"); {
		case out >= 4:
			r.Survey.Readings = slices.Delete(r.Survey.Readings, out-4, out-3)
		case out >= 0:
			r.Walls[out].Length = room.Reading{Unknown: true, At: finding.Place{Line: 1, Column: 1}}
		}
		p, found := survey.Solve(r)
		if finding.Errors(found) > 0 {
			t.Fatalf("%v: %+v", want, found)
		}
		for i := range want {
			if d := apart(p.Taped[i], want[i]); d > inch(0.001) {
				t.Fatalf("corner %d is %v, want %v: %.5f in off", i, p.Taped[i], want[i], d.Inches())
			}
		}
		for _, m := range p.Misfits {
			if m.By().Abs() > inch(0.001) {
				t.Fatalf("%s misfits by %.5f in", m.Reading, m.By().Inches())
			}
		}
	})
}

// Where the tape errs by no more than it reads to, the corners are within
// three times that much.
func TestSmallErrorsStaySmall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := geom.Length(rapid.Int64Range(int64(geom.In(96)), int64(geom.In(240))).Draw(t, "width"))
		h := geom.Length(rapid.Int64Range(int64(geom.In(96)), int64(geom.In(240))).Draw(t, "depth"))
		want := geom.Polygon{{}, {X: w}, {X: w, Y: -h}, {Y: -h}}
		r := readOff(want)
		tol := int64(geom.Inch / 16)
		err := func() geom.Length { return geom.Length(rapid.Int64Range(-tol, tol).Draw(t, "error")) }
		for i := range r.Walls {
			r.Walls[i].Length = plain(i+1, r.Walls[i].Length.Value+err())
		}
		for i := range r.Survey.Readings {
			r.Survey.Readings[i].Reading = plain(11+i, r.Survey.Readings[i].Reading.Value+err())
		}
		p, found := survey.Solve(r)
		if finding.Errors(found) > 0 {
			t.Fatalf("%+v", found)
		}
		for i, s := range p.Sides {
			// A solved length lies between the reading and what the others want.
			lo, hi := p.Misfits[i].Read, p.Misfits[i].Wanted
			if lo > hi {
				lo, hi = hi, lo
			}
			if s.Taped < lo-2 || s.Taped > hi+2 {
				t.Fatalf("wall %s is solved as %d, not between %d and %d", s.Wall, s.Taped, lo, hi)
			}
			if d := (s.Taped - p.Misfits[i].Read).Abs(); d > geom.Inch/16 {
				t.Fatalf("wall %s is moved by %.4f in", s.Wall, d.Inches())
			}
		}
	})
}

// In a room that is nearly square the one reading that is wrong is named.
func TestWrongReadingIsNamed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := readOff(drawPolygon(t, geom.Inch/8))
		which := rapid.IntRange(0, 5).Draw(t, "wrong")
		by := geom.Length(rapid.Int64Range(int64(geom.In(3)), int64(geom.In(8))).Draw(t, "by"))
		if rapid.Bool().Draw(t, "short") {
			by = -by
		}
		line := which + 1
		if which < 4 {
			r.Walls[which].Length = plain(line, r.Walls[which].Length.Value+by)
		} else {
			d := &r.Survey.Readings[which-4].Reading
			line = 11 + which - 4
			*d = plain(line, d.Value+by)
		}
		_, found := survey.Solve(r)
		var errs []finding.Finding
		for _, f := range found {
			if f.Kind == finding.Error {
				errs = append(errs, f)
			}
		}
		if len(errs) != 1 || errs[0].Rule != "survey closes" || errs[0].Place.Line != line {
			t.Fatalf("reading of line %d is wrong by %.2f in; found %+v", line, by.Inches(), errs)
		}
	})
}

// A room told beginning with another wall is the same room.
func TestAnyWallFirst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := readOff(drawPolygon(t, geom.In(6)))
		for i := range r.Walls {
			if rapid.Bool().Draw(t, "lined") {
				line(r, i, geom.Inch/2, room.FaceStuds)
			}
		}
		p, found := survey.Solve(r)
		by := rapid.IntRange(1, 3).Draw(t, "turned by")
		turned := *r
		turned.Walls = append(slices.Clone(r.Walls[by:]), r.Walls[:by]...)
		turned.Survey.Readings = slices.Clone(r.Survey.Readings)
		for i := range turned.Survey.Readings {
			d := &turned.Survey.Readings[i]
			d.From, d.To = (d.From-by+4)%4, (d.To-by+4)%4
		}
		q, found2 := survey.Solve(&turned)
		if finding.Errors(found) > 0 || finding.Errors(found2) > 0 {
			t.Fatalf("%+v, %+v", found, found2)
		}
		for i, s := range p.Sides {
			o := q.Sides[(i-by+4)%4]
			const tol = 8
			if s.Wall != o.Wall || s.Start != o.Start || s.End != o.End ||
				(s.Taped-o.Taped).Abs() > tol || (s.Finished-o.Finished).Abs() > tol ||
				(s.LeftOff-o.LeftOff).Abs() > tol || (s.RightOff-o.RightOff).Abs() > tol {
				t.Fatalf("\n%+v\n%+v", s, o)
			}
		}
	})
}

// Each finished wall runs at the thickness of its lining off the taped one,
// and the parts of a side add up to it.
func TestLiningsKeepTheirThickness(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := readOff(drawPolygon(t, geom.In(12)))
		var thick, out [4]geom.Length
		for i := range r.Walls {
			l := geom.Length(rapid.Int64Range(0, int64(geom.In(2))).Draw(t, "thickness"))
			face := rapid.SampledFrom([]room.Face{room.FaceStuds, room.FaceMasonry, room.FaceLining, room.FaceNotSaid}).Draw(t, "face")
			line(r, i, l, face)
			if face == room.FaceStuds || face == room.FaceMasonry {
				thick[i] = l
			} else {
				out[i] = l
			}
		}
		p, found := survey.Solve(r)
		if finding.Errors(found) > 0 {
			t.Fatalf("%+v", found)
		}
		for i, s := range p.Sides {
			for _, end := range []int{i, (i + 1) % 4} {
				if d := into(p.Taped, i, p.Finished[end]); math.Abs(d-float64(thick[i])) > 3 {
					t.Fatalf("finished wall %d is %.1f in at corner %d, want %d", i, d, end, thick[i])
				}
				if d := into(p.Taped, i, p.Rough[end]); math.Abs(d+float64(out[i])) > 3 {
					t.Fatalf("rough wall %d is %.1f in at corner %d, want %d out", i, d, end, out[i])
				}
			}
			if s.LeftOff+s.Finished+s.RightOff != s.Taped {
				t.Fatalf("parts of %+v do not add up", s)
			}
			if d := (apart(p.Finished[i], p.Finished[(i+1)%4]) - s.Finished).Abs(); d > 4 {
				t.Fatalf("finished wall %d is %d off its corners", i, d)
			}
		}
	})
}

// into returns how far q lies inwards of wall i of p.
func into(p geom.Polygon, i int, q geom.Point) float64 {
	way := p[(i+1)%4].Sub(p[i])
	to := q.Sub(p[i])
	return (float64(way.Y)*float64(to.X) - float64(way.X)*float64(to.Y)) / math.Hypot(float64(way.X), float64(way.Y))
}

// Whatever is taped, there is an answer: a plan of four walls that all turn
// right, or an error, and the same one each time.
func TestAnyReadings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(line int) room.Reading {
			if rapid.IntRange(0, 4).Draw(t, "kind") == 0 {
				return room.Reading{Unknown: true, At: finding.Place{Line: line, Column: 1}}
			}
			r := plain(line, geom.Length(rapid.Int64Range(-5, 400).Draw(t, "inches"))*geom.Inch)
			r.About = rapid.Bool().Draw(t, "about")
			r.Within = geom.Length(rapid.Int64Range(0, int64(geom.In(50))).Draw(t, "within"))
			return r
		}
		r := fourWalls("", "", "", "")
		r.Show = measure.DefaultShow(measure.Millimetres)
		r.Survey.Square = rapid.Bool().Draw(t, "square")
		r.Survey.ClosesWithin = geom.Length(rapid.Int64Range(0, int64(geom.In(100))).Draw(t, "closes within"))
		for i := range r.Walls {
			r.Walls[i].Length = draw(i + 1)
		}
		for i := range rapid.IntRange(0, 4).Draw(t, "readings") {
			r.Survey.Readings = append(r.Survey.Readings, room.Diagonal{
				From: rapid.IntRange(0, 3).Draw(t, "from"), To: rapid.IntRange(0, 3).Draw(t, "to"), Reading: draw(11 + i),
			})
		}
		p, found := survey.Solve(r)
		again, found2 := survey.Solve(r)
		if !slices.Equal(p.Taped, again.Taped) || !slices.Equal(found, found2) {
			t.Fatal("two answers to one room")
		}
		if (len(p.Taped) == 4) == (finding.Errors(found) > 0) {
			t.Fatalf("a plan and errors, or neither: %+v %+v", p, found)
		}
		for i := range p.Taped {
			a := p.Taped[(i+1)%4].Sub(p.Taped[i])
			b := p.Taped[(i+2)%4].Sub(p.Taped[(i+1)%4])
			if float64(a.X)*float64(b.Y)-float64(a.Y)*float64(b.X) >= 0 {
				t.Fatalf("wall %d turns left: %v", i, p.Taped)
			}
		}
		if len(p.Taped) > 0 && (p.Taped[0] != geom.Point{} || p.Taped[1].Y != 0 || p.Taped[1].X <= 0) {
			t.Fatalf("the first wall does not run along +x: %v", p.Taped)
		}
	})
}
