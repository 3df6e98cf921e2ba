package layouts

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts/drawing"
	"roomwright/layouts/sheet"
)

var drawingSection = regexp.MustCompile(`(?m)^drawing:.*$`)

// result reads and sets out an example, with its drawing section replaced.
func result(t *testing.T, name, section string) setout.Result {
	t.Helper()
	b, err := os.ReadFile(filepath.Join("..", "cmd", "roomwright", "examples", name))
	if err != nil {
		t.Fatal(err)
	}
	text := drawingSection.ReplaceAllString(string(b), "drawing: {"+section+"}")
	r, found := roomfile.Read([]byte(text))
	if finding.Errors(found) > 0 {
		t.Fatal(found)
	}
	res := setout.SetOut(r)
	res.Findings = finding.Sort(append(found, res.Findings...))
	return res
}

const bow, glaze = "bow-makers-room.yaml", "glaze-test-room.yaml"

func ids(set Set) []string {
	var out []string
	for _, s := range set.Sheets {
		out = append(out, s.ID)
	}
	return out
}

// base takes a continuation sheet for the sheet it belongs to.
func base(id string) string {
	head, _, _ := strings.Cut(id, "-notes")
	return head
}

// words returns all that is written on the sheets of one view.
func words(set Set, id string) string {
	var b strings.Builder
	for _, s := range set.Sheets {
		if base(s.ID) != id {
			continue
		}
		drawing.Walk(s.Elements, true, func(e drawing.Element) {
			if t, ok := e.(drawing.Text); ok {
				b.WriteString(t.String + " ")
			}
		})
	}
	return b.String()
}

func TestSheetsInTheirOrder(t *testing.T) {
	set, told := Compose(result(t, bow, "paper: tabloid"), Options{File: "room.yaml"})
	if len(told) > 0 {
		t.Errorf("told %v", told)
	}
	var got []string
	for _, id := range ids(set) {
		if b := base(id); !slices.Contains(got, b) {
			got = append(got, b)
		}
	}
	if n := len(got); n > 0 && got[n-1] == "assumed" {
		got = got[:n-1] // what found no room on the others
	}
	want := []string{"plan", "wall-a", "wall-b", "wall-c", "wall-d", "ceiling", "boards-c"}
	if !slices.Equal(got, want) {
		t.Errorf("sheets %q, want %q", got, want)
	}
	for i, s := range set.Sheets {
		if s.Number != i+1 || s.Of != len(set.Sheets) {
			t.Errorf("sheet %d is %d of %d", i+1, s.Number, s.Of)
		}
	}
	for i, id := range ids(set) {
		if slices.Index(ids(set), id) != i {
			t.Errorf("two sheets are called %q", id)
		}
	}
}

// Every caution and warning is on the sheets of what it is about, in full, and
// on no others.
func TestCautionsStandWhereTheyBelong(t *testing.T) {
	for _, name := range []string{bow, glaze} {
		for _, section := range []string{"paper: tabloid", "paper: letter", "paper: A4, orientation: portrait"} {
			r := result(t, name, section)
			r.Findings = append(r.Findings,
				finding.Finding{Kind: finding.Caution, Rule: "invented", What: "mind the invented step"},
				finding.Finding{Kind: finding.Warning, Rule: "invented", What: "zeppelins are heavy", On: "wall B"})
			set, _ := Compose(r, Options{})
			views := []string{"plan", "wall-a", "wall-b", "wall-c", "wall-d", "ceiling", "boards-c", "boards-d"}
			for _, f := range r.Findings {
				if f.Kind != finding.Caution && f.Kind != finding.Warning {
					continue
				}
				lead := strings.Fields(sentence(f.What, ""))
				lead = lead[:min(len(lead), 4)]
				for _, v := range views {
					got := words(set, v)
					if got == "" {
						continue // no such sheet in this room
					}
					want := concerns(r, f.On, v)
					there := strings.Contains(got, strings.Join(lead, " "))
					if want && !there {
						t.Errorf("%s, %s: %s lacks %q", name, section, v, f.What)
					}
					if !want && there && f.Rule == "invented" {
						t.Errorf("%s, %s: %q stands on %s, which it does not concern", name, section, f.What, v)
					}
				}
			}
		}
	}
}

// concerns reports whether a finding on something belongs to a view's sheets.
func concerns(r setout.Result, on, id string) bool {
	wall := strings.ToUpper(id[strings.LastIndex(id, "-")+1:])
	switch {
	case on == "":
		return id == "plan"
	case on == "ceiling":
		return id == "ceiling"
	case strings.HasPrefix(on, "wall "):
		return id == "wall-"+strings.ToLower(on[5:]) || id == "boards-"+strings.ToLower(on[5:])
	case strings.HasPrefix(on, "board "):
		for _, b := range r.Boards {
			if b.Name == on[6:] {
				return strings.HasPrefix(id, "boards-") && r.Room.Walls[b.Wall].Name == wall
			}
		}
	}
	return false
}

// Nothing that was assumed or found is lost, on any paper.
func TestEveryNoteIsOnSomeSheet(t *testing.T) {
	for _, name := range []string{bow, glaze} {
		for _, section := range []string{"paper: tabloid", "paper: letter", "paper: A4", "paper: A4, orientation: portrait"} {
			r := result(t, name, section)
			set, _ := Compose(r, Options{})
			all := ""
			for _, id := range ids(set) {
				all += words(set, base(id))
			}
			for _, f := range r.Findings {
				if f.Kind != finding.Note {
					continue
				}
				lead := strings.Fields(sentence(f.What, ""))
				if want := strings.Join(lead[:min(len(lead), 3)], " "); !strings.Contains(all, want) {
					t.Errorf("%s, %s: no sheet has %q", name, section, f.What)
				}
			}
		}
	}
}

func TestSectionsAreOnTheSheetsOfWhatTheyCut(t *testing.T) {
	set, _ := Compose(result(t, bow, "paper: tabloid"), Options{})
	if got := words(set, "wall-a"); !strings.Contains(got, "Section X, header") {
		t.Error("wall A has no section X")
	}
	if got := words(set, "ceiling"); !strings.Contains(got, "Section Y, tightest place") {
		t.Error("the ceiling has no section Y")
	}
}

func TestViewsLeftOut(t *testing.T) {
	for _, c := range []struct{ out, gone string }{
		{"floor plan", "plan"}, {"elevations", "wall-a"}, {"ceiling plan", "ceiling"}, {"boards", "boards-c"},
	} {
		set, _ := Compose(result(t, bow, "paper: A3, leave out: "+c.out), Options{})
		if got := ids(set); slices.ContainsFunc(got, func(id string) bool { return base(id) == c.gone }) || len(got) == 0 {
			t.Errorf("without %s there is %q", c.out, got)
		}
	}
	set, _ := Compose(result(t, bow, "paper: A3, leave out: section"), Options{})
	for _, id := range []string{"wall-a", "ceiling"} {
		if got := words(set, id); strings.Contains(got, "Section ") {
			t.Errorf("a section on %s", id)
		}
	}
	set, _ = Compose(result(t, bow, "paper: A3, leave out: [floor plan, elevations, ceiling plan, boards]"), Options{})
	if len(set.Sheets) > 0 || len(set.Model) > 0 {
		t.Errorf("with everything left out there is %q", ids(set))
	}
	// What concerns the whole room moves to the first sheet that there is.
	r := result(t, bow, "paper: A3, leave out: floor plan")
	r.Findings = append(r.Findings, finding.Finding{Kind: finding.Caution, What: "mind the invented step"})
	set, _ = Compose(r, Options{})
	if got := words(set, "wall-a"); !strings.Contains(got, "Mind the invented step.") {
		t.Error("the caution about the room is on no sheet")
	}
}

func TestScaleAskedFor(t *testing.T) {
	set, told := Compose(result(t, bow, "paper: tabloid, scale: 1/4 in to 1 ft"), Options{})
	for _, s := range set.Sheets {
		if base(s.ID) == s.ID && s.ID != "assumed" && s.Scale.Ratio != 48 {
			t.Errorf("%s at 1:%d, want 1:48", s.ID, s.Scale.Ratio)
		}
	}
	if len(told) > 0 {
		t.Errorf("told %v", told)
	}
	_, told = Compose(result(t, bow, "paper: letter, scale: 1:8"), Options{})
	if len(told) == 0 {
		t.Fatal("1:8 on Letter, and nothing is said")
	}
	for _, f := range told {
		if f.Kind != finding.Warning || !strings.Contains(f.What, "does not fit Letter") {
			t.Errorf("told %+v", f)
		}
	}
}

// The model holds every view once, side by side, two feet apart.
func TestModelSideBySide(t *testing.T) {
	for _, name := range []string{bow, glaze} {
		r := result(t, name, "paper: A3")
		set, _ := Compose(r, Options{})
		var last geom.Rect
		seen := map[string]bool{}
		for i, p := range set.Model {
			box := p.Drawing.Bounds().Move(p.At)
			if i > 0 && box.Min.X-last.Max.X != modelGap {
				t.Errorf("%s: %s begins %v after the one before, want %v", name, p.Drawing.Name, box.Min.X-last.Max.X, modelGap)
			}
			if seen[p.Drawing.Name] {
				t.Errorf("%s: %s is there twice", name, p.Drawing.Name)
			}
			seen[p.Drawing.Name] = true
			last = box
			switch low := r.Plan.Finished.Bounds().Min.Y; p.Drawing.Name {
			case "plan", "ceiling":
				if p.At.Y != -low {
					t.Errorf("%s: the lowest corner of %s is at %v", name, p.Drawing.Name, p.At.Y+low)
				}
			default:
				if p.At.Y != 0 {
					t.Errorf("%s: the floor of %s is at %v", name, p.Drawing.Name, p.At.Y)
				}
			}
		}
		for _, want := range []string{"plan", "wall-a", "ceiling", "section-x"} {
			if !seen[want] {
				t.Errorf("%s: the model has no %s, but %v", name, want, seen)
			}
		}
	}
}

func TestSentence(t *testing.T) {
	for _, c := range []struct{ what, hint, want string }{
		{"the room is small", "", "The room is small."},
		{"the room is small.", "build another", "The room is small: build another."},
		{"Is it?", "", "Is it?"},
		{"ärger", "", "Ärger."},
		{"", "x", ""},
	} {
		if got := sentence(c.what, c.hint); got != c.want {
			t.Errorf("%q, %q: %q, want %q", c.what, c.hint, got, c.want)
		}
	}
}

func TestPaperByUnits(t *testing.T) {
	for name, want := range map[string]string{bow: "Letter", glaze: "A4"} {
		set, _ := Compose(result(t, name, "orientation: landscape"), Options{})
		for _, s := range set.Sheets {
			if s.Size.Name != want {
				t.Errorf("%s on %s, want %s", name, s.Size.Name, want)
			}
		}
	}
}

func TestRoomlessResult(t *testing.T) {
	if set, told := Compose(setout.Result{}, Options{}); len(set.Sheets)+len(told) > 0 {
		t.Errorf("from nothing: %d sheets, %v", len(set.Sheets), told)
	}
	var none []sheet.Sheet
	if got := sheet.Number(none); len(got) != 0 {
		t.Errorf("no sheets numbered: %v", got)
	}
}
