package render_test

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/roomfile"
	"roomwright/geom/setout"
	"roomwright/layouts"
	"roomwright/render"
)

// subject is one room file on its way through the whole house.
type subject struct {
	name   string // "bow-makers-room", "E5", "bow-makers-room on A4 portrait"
	text   string
	result setout.Result
	set    layouts.Set
	told   []finding.Finding // by the composing
	files  []render.File
	paper  []*written // the sheets, read back from their files
	err    error
	fault  string // why it could not be drawn: the first error among its findings
}

// draw takes a room file through the whole house. A panic becomes an error.
func draw(name, text string) (s subject) {
	s = subject{name: name, text: text}
	defer func() {
		if p := recover(); p != nil {
			s.err = fmt.Errorf("panic: %v", p)
		}
	}()
	room, found := roomfile.Read([]byte(text))
	if s.fault = firstError(found); s.fault != "" {
		return s
	}
	s.result = setout.SetOut(room)
	s.result.Findings = finding.Sort(append(found, s.result.Findings...))
	if s.fault = firstError(s.result.Findings); s.fault != "" {
		return s
	}
	s.set, s.told = layouts.Compose(s.result, layouts.Options{File: strings.Fields(name)[0] + ".yaml"})
	if s.files, s.err = render.Files(s.set, false); s.err != nil {
		return s
	}
	for _, f := range s.sheets() {
		w, err := sheetOf(f)
		if err != nil {
			s.err = err
			return s
		}
		s.paper = append(s.paper, w)
	}
	return s
}

func firstError(list []finding.Finding) string {
	for _, f := range list {
		if f.Kind == finding.Error {
			return fmt.Sprintf("line %d: %s: %s (found %s, allowed %s)", f.Place.Line, f.Rule, f.What, f.Found, f.Allowed)
		}
	}
	return ""
}

// sheet returns the files of the sheets, and model that of the DXF.
func (s subject) sheets() []render.File { return s.files[:len(s.files)-1] }
func (s subject) model() render.File    { return s.files[len(s.files)-1] }

// The rooms that come with the command.
const (
	bow   = "bow-makers-room"
	glaze = "glaze-test-room"
)

// example returns the text of a room that comes with the command.
func example(name string) (string, error) {
	b, err := os.ReadFile(filepath.Join("..", "cmd", "roomwright", "examples", name+".yaml"))
	return string(b), err
}

var drawingLine = regexp.MustCompile(`(?m)^drawing:.*$`)

// texts returns every room file, by name: the examples, on each paper in both
// orientations too, the starters, and those of the outside checks.
func texts() ([][2]string, error) {
	var out [][2]string
	for _, name := range []string{bow, glaze} {
		text, err := example(name)
		if err != nil {
			return nil, err
		}
		out = append(out, [2]string{name, text})
		for _, paper := range []string{"letter", "tabloid", "A4", "A3"} {
			for _, way := range []string{"landscape", "portrait"} {
				line := fmt.Sprintf("drawing: {paper: %s, orientation: %s}", paper, way)
				if n := len(drawingLine.FindAllString(text, -1)); n != 1 {
					return nil, fmt.Errorf("%s has %d lines for the drawing", name, n)
				}
				out = append(out, [2]string{name + " on " + paper + " " + way, drawingLine.ReplaceAllString(text, line)})
			}
		}
	}
	for _, units := range []measure.System{measure.Inches, measure.Millimetres} {
		out = append(out, [2]string{"starter-" + units.String(), string(roomfile.Starter(units))})
	}
	list, err := filepath.Glob(filepath.Join("..", "testdata", "checks", "*.yaml"))
	if err != nil {
		return nil, err
	}
	for _, path := range list {
		if filepath.Base(path) == "W11.yaml" {
			continue // its light fits no whole cell: an error is its right answer
		}
		b, err := os.ReadFile(path)
		if err != nil {
			return nil, err
		}
		out = append(out, [2]string{strings.TrimSuffix(filepath.Base(path), ".yaml"), string(b)})
	}
	return out, nil
}

// fewRooms are those drawn under the race detector.
func fewRooms() []string {
	return []string{bow, bow + " on letter portrait", glaze, "starter-inches", "starter-millimetres", "E5", "E17", "W1", "W14"}
}

// drawn returns every room drawn once, for all tests of the package.
var drawn = sync.OnceValues(func() ([]subject, error) {
	list, err := texts()
	if err != nil {
		return nil, err
	}
	if underRace {
		list = slices.DeleteFunc(list, func(room [2]string) bool { return !slices.Contains(fewRooms(), room[0]) })
	}
	out := make([]subject, len(list))
	each(len(list), func(i int) { out[i] = draw(list[i][0], list[i][1]) })
	return out, nil
})

// each calls f for 0 to n-1 from a few goroutines at once.
func each(n int, f func(int)) {
	const hands = 4
	next := make(chan int)
	var wg sync.WaitGroup
	for range hands {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for i := range next {
				f(i)
			}
		}()
	}
	for i := range n {
		next <- i
	}
	close(next)
	wg.Wait()
}

// rooms returns every room, drawn without errors.
func rooms(t *testing.T) []subject {
	t.Helper()
	list, err := drawn()
	if err != nil {
		t.Fatal(err)
	}
	return list
}

// room returns one of the rooms.
func room(t *testing.T, name string) subject {
	t.Helper()
	for _, s := range rooms(t) {
		if s.name == name {
			if s.err != nil || s.fault != "" || len(s.files) == 0 {
				t.Fatalf("%s was not drawn: %v %s", name, s.err, s.fault)
			}
			return s
		}
	}
	t.Fatalf("no room %s", name)
	return subject{}
}

// TestEveryRoomIsDrawn checks that no room of the project fails on its way, and
// that nothing was left off its sheets.
func TestEveryRoomIsDrawn(t *testing.T) {
	list := rooms(t)
	want := 44
	if underRace {
		want = len(fewRooms())
	}
	if len(list) < want {
		t.Errorf("%d rooms, want at least %d", len(list), want)
	}
	for _, s := range list {
		switch {
		case s.err != nil:
			t.Errorf("%s: %v", s.name, s.err)
		case s.fault != "":
			t.Errorf("%s: %s", s.name, s.fault)
		case len(s.files) != len(s.set.Sheets)+1:
			t.Errorf("%s: %d files of %d sheets", s.name, len(s.files), len(s.set.Sheets))
		}
		for _, f := range s.told {
			t.Errorf("%s: %s %s: %s (%s)", s.name, f.Kind, f.Rule, f.What, f.On)
		}
	}
}
