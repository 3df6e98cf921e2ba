package setout

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/measure"
	"roomwright/geom/piece"
	"roomwright/geom/roomfile"
)

// checks is where the room files of the outside checks lie; each names its
// source in a comment.
const checks = "../../testdata/checks"

// setFile reads a room file of the checks and sets it out.
func setFile(t *testing.T, name string) Result {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(checks, name+".yaml"))
	if err != nil {
		t.Fatal(err)
	}
	r, found := roomfile.Read(text)
	if finding.Errors(found) > 0 {
		t.Fatalf("%s does not read: %v", name, texts(found, finding.Error))
	}
	return SetOut(r)
}

// lengths reads figures in the units of the checks, inches or millimetres.
func lengths(t *testing.T, units measure.System, text string) []geom.Length {
	t.Helper()
	var out []geom.Length
	for _, s := range strings.Fields(text) {
		l, err := measure.Parse(s, units)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, l)
	}
	return out
}

// figure is one line of a worked example: what is measured in a result, and
// what it has to be.
type figure struct {
	fact string // the worked example, whose source stands in the room file
	file string
	what string
	got  func(Result) []geom.Length
	want string
}

// run checks figures, each file set out once.
func run(t *testing.T, figures []figure) {
	results := map[string]Result{}
	for _, f := range figures {
		res, ok := results[f.file]
		if !ok {
			res = setFile(t, f.file)
			if n := finding.Errors(res.Findings); n > 0 {
				t.Errorf("%s: %d errors: %v", f.file, n, texts(res.Findings, finding.Error))
			}
			results[f.file] = res
		}
		t.Run(f.fact+" "+f.what, func(t *testing.T) {
			got, want := f.got(res), lengths(t, res.Room.Units, f.want)
			if len(got) != len(want) {
				t.Fatalf("%d of them, want %d: %s, want %s", len(got), len(want), say(res, got), f.want)
			}
			for i := range got {
				if got[i] != want[i] {
					t.Fatalf("%s, want %s", say(res, got), f.want)
				}
			}
		})
	}
}

// say prints lengths for a failure.
func say(res Result, list []geom.Length) string {
	show := measure.Show{Form: measure.InchesOnly, To: geom.Inch / 64}
	if res.Room.Units == measure.Millimetres {
		show = measure.Show{Form: measure.MillimetresOnly, To: geom.Millimetre / 10}
	}
	var out []string
	for _, l := range list {
		out = append(out, show.Say(l))
	}
	return strings.Join(out, " ")
}

// texts returns the findings of a kind, for failures.
func texts(list []finding.Finding, kind finding.Kind) []string {
	var out []string
	for _, f := range list {
		if f.Kind == kind {
			out = append(out, f.Rule+": "+f.What+" ("+f.Found+"; "+f.Allowed+")")
		}
	}
	return out
}

// members returns the members of wall i with a role, left to right.
func members(res Result, i int, role framing.Role, state piece.State) []framing.Member {
	var out []framing.Member
	for _, m := range res.Walls[i].Members {
		if m.Role == role && m.State == state {
			out = append(out, m)
		}
	}
	return out
}

// centres gives the middle of every upright of wall i at the bottom plate.
func centres(i int) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, s := range res.Walls[i].Studs {
			out = append(out, s.Left+s.Thick/2)
		}
		return out
	}
}

// gaps gives the clear bays of wall i.
func gaps(i int) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		studs := res.Walls[i].Studs
		for k := 1; k < len(studs); k++ {
			out = append(out, studs[k].Left-studs[k-1].Left-studs[k-1].Thick)
		}
		return out
	}
}

// long gives the lengths of the members of wall A with a role.
func long(role framing.Role, state piece.State) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, m := range members(res, 0, role, state) {
			out = append(out, m.Length)
		}
		return out
	}
}

// edges gives left and right edge of the members of wall A with a role.
func edges(role framing.Role, state piece.State) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, m := range members(res, 0, role, state) {
			out = append(out, m.Box.Min.X, m.Box.Max.X)
		}
		return out
	}
}

// opening gives lengths of the one opening of wall A.
func opening(f func(o framing.Opening) []geom.Length) func(Result) []geom.Length {
	return func(res Result) []geom.Length { return f(res.Walls[0].Openings[0]) }
}

// list makes a list of lengths.
func list(l ...geom.Length) []geom.Length { return l }

func TestWallChecks(t *testing.T) {
	rough := opening(func(o framing.Opening) []geom.Length { return list(o.Rough.W(), o.Rough.H()) })
	run(t, []figure{
		{"framing E1", "E1", "studs at 16", centres(0), "3/4 16 32 48 64 80 96 112 128 143-1/4"},
		{"framing E1", "E1", "bays at 16", gaps(0), "13-3/4 14-1/2 14-1/2 14-1/2 14-1/2 14-1/2 14-1/2 14-1/2 13-3/4"},
		{"framing E1", "E1", "studs at 24", centres(2), "3/4 24 48 72 96 120 143-1/4"},
		{"framing E2", "E2a", "96 long", centres(0), "3/4 16 32 48 64 80 95-1/4"},
		{"framing E2", "E2a", "96-3/4 long: the last gap is 16", centres(1), "3/4 16 32 48 64 80 96"},
		{"framing E2", "E2b", "97 long: the last stud slid to 94-3/4, tight", gaps(0), "13-3/4 14-1/2 14-1/2 14-1/2 14-1/2 13-1/4 0"},
		{"framing E2", "E2b", "97 long", centres(0), "3/4 16 32 48 64 80 94-3/4 96-1/4"},
		{"framing E2", "E2b", "98-1/4 long: just touching", centres(1), "3/4 16 32 48 64 80 96 97-1/2"},
		{"framing E2", "E2c", "100 long: the last gap is 1-3/4", gaps(0), "13-3/4 14-1/2 14-1/2 14-1/2 14-1/2 14-1/2 1-3/4"},
		{"framing E3", "E3", "studs at 600", centres(0), "19 600 1200 1800 2400 3000 3581"},
		{"framing E3", "E3", "studs at 400", centres(2), "19 400 800 1200 1600 2000 2400 2800 3200 3581"},

		{"framing E5", "E5", "rough opening", rough, "73-1/2 37-1/4"},
		{"framing E5", "E5", "clear opening", opening(func(o framing.Opening) []geom.Length { return list(o.Clear.W(), o.Clear.H()) }), "71-1/2 35-1/4"},
		{"framing E6", "E5", "header, one jack a side", opening(func(o framing.Opening) []geom.Length { return list(o.Header.W(), o.Kings.Len()+3*geom.Inch) }), "76-1/2 79-1/2"},
		{"framing E6", "E6", "header, two jacks a side", opening(func(o framing.Opening) []geom.Length { return list(o.Header.W(), o.Kings.Len()+3*geom.Inch) }), "79-1/2 82-1/2"},
		{"framing E6", "E6", "plies of the header, two jacks a side", long(framing.HeaderPly, piece.New), "79-1/2 79-1/2"},
		{"framing E7", "E5", "jacks", edges(framing.Jack, piece.New), "32-3/4 34-1/4 107-3/4 109-1/4"},
		{"framing E7", "E5", "rough opening", opening(func(o framing.Opening) []geom.Length { return list(o.Rough.Min.X, o.Rough.Max.X) }), "34-1/4 107-3/4"},
		{"framing E7", "E5", "new king", edges(framing.King, piece.New), "109-1/4 110-3/4"},
		{"framing E7", "E5", "reused king", edges(framing.King, piece.Existing), "31-1/4 32-3/4"},
		{"framing E7", "E5", "middles of the studs cut", func(res Result) []geom.Length {
			var out []geom.Length
			for _, m := range members(res, 0, framing.Cutout, piece.Removed) {
				out = append(out, m.Box.X().Mid())
			}
			return out
		}, "48 64 80 96"},
		{"framing E7", "E5", "gap to pack", opening(func(o framing.Opening) []geom.Length {
			var out []geom.Length
			for _, p := range o.Packs {
				out = append(out, p.X.From, p.X.To)
			}
			return out
		}), "110-3/4 111-1/4"},
		{"framing E8", "E5", "jacks", long(framing.Jack, piece.New), "71-3/4 71-3/4"},
		{"framing E8", "E5", "header", opening(func(o framing.Opening) []geom.Length { return list(o.Header.Min.Y, o.Header.Max.Y) }), "73-1/4 78-3/4"},
		{"framing E8", "E5", "top of the rough sill", opening(func(o framing.Opening) []geom.Length { return list(o.Sill.Max.Y, o.Rough.Min.Y) }), "36 36"},
		{"framing E8", "E5", "saw cuts", opening(func(o framing.Opening) []geom.Length { return list(o.LowerCut, o.UpperCut) }), "34-1/2 78-3/4"},
		{"framing E8", "E5", "removed pieces", long(framing.Cutout, piece.Removed), "44-1/4 44-1/4 44-1/4 44-1/4"},
		{"framing E8", "E5", "cripples below from cut studs", long(framing.CrippleBelow, piece.Existing), "33 33 33 33"},
		{"framing E8", "E5", "cripples above from cut studs", long(framing.CrippleAbove, piece.Existing), "15-3/8 15-3/8 15-3/8 15-3/8"},
		{"framing E8b", "E8b", "top of the header", opening(func(o framing.Opening) []geom.Length { return list(o.Header.Max.Y, o.UpperCut) }), "80-1/2 80-1/2"},
		{"framing E8b", "E8b", "cripples above", long(framing.CrippleAbove, piece.Existing), "13-5/8 13-5/8 13-5/8 13-5/8"},
		{"framing E8b", "E8b", "removed pieces", long(framing.Cutout, piece.Removed), "46 46 46 46"},
		{"framing E9", "E9", "top of the flat header", opening(func(o framing.Opening) []geom.Length { return list(o.Header.Max.Y) }), "74-3/4"},
		{"framing E9", "E9", "up to the plates", func(res Result) []geom.Length {
			return list(res.Walls[0].PlateLow - res.Walls[0].Openings[0].Header.Max.Y)
		}, "19-3/8"},
		{"framing E9", "E9b", "up to the plates, studs of 104-5/8", func(res Result) []geom.Length {
			return list(res.Walls[0].PlateLow - res.Walls[0].Openings[0].Header.Max.Y)
		}, "31-3/8"},
	})
}

// The three parts of a stud that is cut sum to the stud, framing E8.
func TestCutStudsAddUp(t *testing.T) {
	for _, file := range []string{"E5", "E8b", "E9"} {
		res := setFile(t, file)
		sum := map[int]geom.Length{}
		for _, m := range res.Walls[0].Members {
			switch m.Role {
			case framing.Cutout, framing.CrippleBelow, framing.CrippleAbove:
				sum[m.StudNo] += m.Length
			}
		}
		for _, m := range members(res, 0, framing.Cutout, piece.Removed) {
			if want := geom.InFrac(92, 5, 8); sum[m.StudNo] != want {
				t.Errorf("%s: the parts of stud %d sum to %v in, want 92-5/8", file, m.StudNo, sum[m.StudNo].Inches())
			}
		}
	}
}

// hasRule finds a finding by its rule.
func hasRule(res Result, rule string) (finding.Finding, bool) {
	for _, f := range res.Findings {
		if f.Rule == rule {
			return f, true
		}
	}
	return finding.Finding{}, false
}

// The flat header of framing E9 is allowed under short studs and not under
// tall ones: IRC R602.7.4 in public transcriptions.
func TestFlatHeader(t *testing.T) {
	if f, bad := hasRule(setFile(t, "E9"), "flat header not allowed here"); bad {
		t.Errorf("19-3/8 under the plates: %+v", f)
	}
	f, ok := hasRule(setFile(t, "E9b"), "flat header not allowed here")
	if !ok || !strings.Contains(f.Found, "31-3/8") || f.Kind > finding.Warning {
		t.Errorf("31-3/8 under the plates: %+v", f)
	}
	if !setFile(t, "E5").Walls[0].Openings[0].FlatOK {
		t.Error("a flat header would be allowed over the opening of E5")
	}
}

// Two findings of the checks over the opening of E5: glazing E15 and lead E24.
func TestOpeningFindings(t *testing.T) {
	f, ok := hasRule(setFile(t, "E5"), "safety glazing, window")
	if want := "16.41 ft2, more than 9 ft2: yes; bottom edge 37-3/4 in"; !ok || !strings.Contains(f.Found, want) || f.Kind != finding.Note {
		t.Errorf("%+v, want %q: the stops leave 70 x 33-3/4 to see", f, want)
	}
	text, err := os.ReadFile(filepath.Join(checks, "E5.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	r, _ := roomfile.Read([]byte(strings.Replace(string(text), "built: 1995", "built: 1958", 1)))
	f, ok = hasRule(SetOut(r), "lead paint")
	if !ok || !strings.Contains(f.Found, "19.01 ft2 a face") {
		t.Errorf("%+v, want 19.0 ft2 a face", f)
	}
}

// seam gives lengths of the seams of row i, the ends left out.
func seam(i int, f func(s lining.Seam) geom.Length) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, s := range res.Boards[i].Seams {
			if !s.End {
				out = append(out, f(s))
			}
		}
		return out
	}
}

// widths gives the widths of the sheets of row i.
func widths(i int) func(Result) []geom.Length {
	return func(res Result) []geom.Length {
		var out []geom.Length
		for _, s := range res.Boards[i].Sheets {
			out = append(out, s.Profile.Wide)
		}
		return out
	}
}

func TestBoardChecks(t *testing.T) {
	at := func(s lining.Seam) geom.Length { return s.X }
	left := func(s lining.Seam) geom.Length { return s.OnLeft }
	right := func(s lining.Seam) geom.Length { return s.OnRight }
	height := func(i int) func(Result) []geom.Length {
		return func(res Result) []geom.Length { return list(res.Boards[i].Box.Min.Y, res.Boards[i].Box.Max.Y) }
	}
	run(t, []figure{
		{"boards E16", "E16", "seams", seam(0, at), "48 96"},
		{"boards E16", "E16", "bearing left", seam(0, left), "3/4 3/4"},
		{"boards E16", "E16", "bearing right", seam(0, right), "3/4 3/4"},
		{"boards E17", "E17", "seams as placed", seam(0, at), "48-1/2 96-1/2"},
		{"boards E17", "E17", "bearing right as placed", seam(0, right), "1/4 1/4"},
		{"boards E17", "E17", "seams as searched", seam(1, at), "48 96"},
		{"boards E17", "E17", "sheets as searched", widths(1), "47-1/2 48 47-1/2"},
		{"boards E18", "E18", "bearing with gaps of 1/16", seam(0, right), "11/16 5/8 9/16 1/2 7/16 3/8 5/16"},
		{"boards E18", "E18", "bearing with gaps of 1/8", seam(1, right), "5/8 1/2 3/8 1/4"},
		{"boards E25", "E25", "centre at 54", height(0), "30 78"},
		{"boards E25", "E25", "centre at 60", height(1), "36 84"},
	})
	borne := func(file string, row int, want string) {
		var got []string
		for _, s := range setFile(t, file).Boards[row].Seams {
			if !s.End {
				got = append(got, map[bool]string{true: "y", false: "n"}[s.Borne])
			}
		}
		if strings.Join(got, "") != want {
			t.Errorf("%s row %d: seams borne %v, want %s", file, row, got, want)
		}
	}
	borne("E16", 0, "yy")
	borne("E17", 0, "nn")
	borne("E17", 1, "yy")
	borne("E18", 0, "yyyyyyn") // the sixth just passes, the seventh fails
	borne("E18", 1, "yyyn")    // the fourth fails
	f, ok := hasRule(setFile(t, "E17"), "seam not borne")
	if want := "first sheet cut to 47-1/2 puts the seams on 48 and 96"; !ok || !strings.Contains(f.Hint, want) {
		t.Errorf("%+v, want %q", f, want)
	}
}
