package setout

import (
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/geom/finding"
)

// lines gives the tee lines of a ceiling off their walls; mains only when asked.
func lines(of func(c *ceiling.Ceiling) []ceiling.TeeLine, mains bool) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, l := range of(res.Ceiling) {
			if l.Main || !mains {
				out = append(out, l.FromWall)
			}
		}
		return out
	}
}

func xLines(c *ceiling.Ceiling) []ceiling.TeeLine { return c.XLines }
func yLines(c *ceiling.Ceiling) []ceiling.TeeLine { return c.YLines }

// borders gives the borders of the set-out chosen: left, right, top, bottom.
func borders(res Result) []geom.Length {
	s := res.Ceiling.Strategy[0]
	return list(s.LeftBorder, s.RightBorder, s.TopBorder, s.BottomBorder)
}

// cuts gives the sizes to cut border panels to, across and down, from the
// first corner cell.
func cuts(res Result) []geom.Length {
	c := res.Ceiling.Cells[0]
	return list(c.CutW, c.CutH)
}

// hangers gives the hangers of main M1 along the page.
func hangers(splice bool) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, h := range res.Ceiling.Hangers {
			if h.Main == res.Ceiling.Mains[0].Mark && h.Splice == splice {
				out = append(out, h.At.X)
			}
		}
		return out
	}
}

// sticks gives start and end of each stick of main n along its run.
func sticks(n int) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, s := range res.Ceiling.Mains[n].Sticks {
			out = append(out, s.From, s.To)
		}
		return out
	}
}

// Sources of the rules stand in the room files. Lengths of tees are those of the
// worked examples less the gap of 1/8 in (3 mm) at the wall: the examples run
// up to the wall face.
func TestCeilingChecks(t *testing.T) {
	startCut := func(res Result) []geom.Length { return list(res.Ceiling.Mains[0].StartCut) }
	run(t, []figure{
		{"ceilings W1", "W1", "lines along 171-1/2", lines(xLines, false), "13-3/4 37-3/4 61-3/4 85-3/4 109-3/4 133-3/4 157-3/4"},
		{"ceilings W1", "W1", "lines along 139", lines(yLines, false), "21-1/2 45-1/2 69-1/2 93-1/2 117-1/2"},
		{"ceilings W1, W2", "W1", "borders", borders, "13-3/4 13-3/4 21-1/2 21-1/2"},
		{"ceilings W1", "W1", "border panels", cuts, "13-1/2 21-1/4"},
		{"ceilings W2", "W2", "borders of the sliver that was asked for", borders, "1-3/4 1-3/4 21-1/2 21-1/2"},
		{"ceilings W3", "W3", "mains of set S0", lines(yLines, true), "21-1/2 69-1/2 117-1/2"},
		{"ceilings W3", "W4", "mains of set S1", lines(yLines, true), "45-1/2 93-1/2"},
		// Slot at 15, cut off 1-1/4 and the gap of 1/8.
		{"ceilings W5", "W4", "cut of the first main", startCut, "1-3/8"},
		{"ceilings W5", "W4", "first run: 142-3/4, then 28-3/4 with the gap", sticks(0), "1/8 142-3/4 142-3/4 171-3/8"},
		{"ceilings W5", "W4", "second run: a start piece of 112-3/4, then 58-3/4 with the gap", sticks(1), "1/8 112-3/4 112-3/4 171-3/8"},
		// Slot at 18, cut off 4-1/4 and the gap of 1/8.
		{"ceilings W5", "W5", "cut of the first main, slots every 12", startCut, "4-3/8"},
		{"ceilings W6", "W1", "hangers along a main", hangers(false), "12 60 108 156"},
		{"ceilings W6", "W1", "hangers put in for the splice at 142-3/4", hangers(true), "140"},
		{"ceilings W7", "W7", "borders", borders, "315 315 535 535"},
		{"ceilings W7", "W7", "border panels", cuts, "310 530"},
		{"ceilings W7", "W7", "mains", lines(yLines, true), "1135 2335"},
		{"ceilings W13", "W13", "borders when the light must be on the axis", borders, "13-3/4 13-3/4 9 9"},
		{"ceilings W13", "W13b", "borders when it may move", borders, "13-3/4 13-3/4 21 21"},
		{"ceilings W13", "W13b", "centre of the light off wall A", func(res Result) []geom.Length {
			return list(-res.Ceiling.Lights[0].Box.Mid().Y)
		}, "45"},
		{"ceilings W14", "W14", "centres of the lights", func(res Result) []geom.Length {
			var out []geom.Length
			for _, l := range res.Ceiling.Lights {
				out = append(out, l.Box.Mid().X, -l.Box.Mid().Y)
			}
			return out
		}, "49-3/4 45-1/2 121-3/4 45-1/2 49-3/4 93-1/2 121-3/4 93-1/2"},
		{"ceilings W14", "W14", "mains", lines(yLines, true), "21-1/2 69-1/2 117-1/2"},
	})
}

// crossCount counts cross tees by the length as cut.
func crossCount(c *ceiling.Ceiling) map[geom.Length]int {
	out := map[geom.Length]int{}
	for _, x := range c.Crosses {
		out[x.Length]++
	}
	return out
}

// Cells, tees, sticks, panels and light wires are counts, not lengths.
func TestCeilingCounts(t *testing.T) {
	in := func(whole, eighths int64) geom.Length { return geom.InFrac(whole, eighths, 8) }
	cases := []struct {
		fact, file        string
		whole, cut, lit   int
		corners, borders  int
		crosses           map[geom.Length]int
		sticks, lightWire int
	}{
		{"ceilings W1, W4 set S1, W5", "W4", 24, 24, 0, 4, 20,
			map[geom.Length]int{in(48, 0): 7, in(45, 3): 14, in(24, 0): 18, in(13, 5): 6}, 3, 0},
		{"ceilings W4 set S0, W5", "W3", 24, 24, 0, 4, 20,
			map[geom.Length]int{in(48, 0): 14, in(21, 3): 14, in(24, 0): 12, in(13, 5): 4}, 4, 0},
		{"ceilings W7", "W7", 28, 26, 0, 4, 22,
			map[geom.Length]int{geom.MM(1200): 8, geom.MM(1132): 16, geom.MM(600): 21, geom.MM(312): 6}, 3, 0},
		{"ceilings W14", "W14", 16, 24, 8, 4, 20,
			map[geom.Length]int{in(48, 0): 14, in(21, 3): 14, in(24, 0): 8, in(13, 5): 4}, 4, 8},
	}
	for _, c := range cases {
		t.Run(c.fact, func(t *testing.T) {
			got := setFile(t, c.file).Ceiling
			if want := (ceiling.Count{Whole: c.whole, Cut: c.cut, Lit: c.lit}); got.Panels != want {
				t.Errorf("panels %+v, want %+v", got.Panels, want)
			}
			corners, borders := 0, 0
			for _, cell := range got.Cells {
				switch cell.Kind {
				case ceiling.Corner:
					corners++
				case ceiling.Border:
					borders++
				}
			}
			if corners != c.corners || borders != c.borders || len(got.Cells) != c.whole+c.cut+c.lit {
				t.Errorf("%d corners and %d edges of %d cells, want %d and %d", corners, borders, len(got.Cells), c.corners, c.borders)
			}
			for length, n := range crossCount(got) {
				if c.crosses[length] != n {
					t.Errorf("%d cross tees of %v in, want %d", n, length.Inches(), c.crosses[length])
				}
			}
			if len(crossCount(got)) != len(c.crosses) {
				t.Errorf("cross tees %v, want %v", crossCount(got), c.crosses)
			}
			if got.MainSticks != c.sticks {
				t.Errorf("%d sticks of main tee, want %d", got.MainSticks, c.sticks)
			}
			wires := 0
			for _, h := range got.Hangers {
				if h.Light != "" {
					wires++
				}
			}
			if wires != c.lightWire {
				t.Errorf("%d wires of lights, want %d", wires, c.lightWire)
			}
		})
	}
}

// What the worked examples reject is refused or warned of, with the nearest that works.
func TestCeilingRejects(t *testing.T) {
	cases := []struct {
		fact, file, rule string
		kind             finding.Kind
		want             string
	}{
		{"ceilings W2: a sliver of 1-3/4", "W2", "border under the least", finding.Warning, "the narrowest border is 13-3/4"},
		{"ceilings W11: 8 from the wall is a border, the nearest whole cell has its centre at 25-3/4", "W11", "light on whole modules", finding.Error, "25-3/4"},
		{"ceilings W13: the even choice leaves borders of 9", "W13", "border under the least", finding.Warning, "9 at wall A, 9 at wall C"},
		{"ceilings W13: two-module cells centre at 45 or 69, never 57", "W13b", "light on whole modules", finding.Warning, "45"},
		// Needed 5.82 from the flange, 4.32 above tees of 1-1/2; printed up to the next sixteenth.
		{"ceilings W24: 4 lies between 2.13 and 5.82, a warning and no error", "W24", "tilting panels in", finding.Warning, "4-3/8 above the tees, 5-7/8 above the flange"},
	}
	for _, c := range cases {
		t.Run(c.fact, func(t *testing.T) {
			res := setFile(t, c.file)
			f, ok := hasRule(res, c.rule)
			if !ok || f.Kind != c.kind {
				t.Fatalf("%+v, want a %v", f, c.kind)
			}
			if all := f.Found + "|" + f.Allowed + "|" + f.Hint; !strings.Contains(all, c.want) {
				t.Errorf("%s, want %q in it", all, c.want)
			}
			if got := finding.Errors(res.Findings) > 0; got != (c.kind == finding.Error) {
				t.Errorf("errors %v", texts(res.Findings, finding.Error))
			}
		})
	}
	c := setFile(t, "W24").Ceiling
	if needed := c.TiltFlat + c.TeeHeight; needed < geom.InFrac(5, 52, 64) || needed > geom.InFrac(5, 56, 64) {
		t.Errorf("a rigid panel tilts in %v in, want 5.82 or the next sixteenth", needed.Inches())
	}
}
