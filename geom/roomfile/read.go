package roomfile

import (
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/measure"
	"roomwright/geom/room"
)

// reader holds what is known while one room file is read.
type reader struct {
	findings   []finding.Finding
	units      measure.System
	unitsKnown bool // the file says its units
	show       measure.Show
	room       *room.Room
	walls      []string // names in the order of the file
	known      bool     // the walls could be read, so that names of walls can be judged
	lost       map[string]bool
	said       map[string]said // what the maps of things said, by thing
	questions  []question      // not answered
	doubles    map[string]finding.Place
}

// Read reads a room file. It gives all findings, sorted; when one of them is an
// error the room may be partial or nil.
func Read(text []byte) (*room.Room, []finding.Finding) {
	r := &reader{lost: map[string]bool{}, said: map[string]said{}, doubles: map[string]finding.Place{}}
	src, ok := r.bytes(text)
	if !ok {
		return nil, r.sorted(nil)
	}
	top := r.parse(src)
	if top == nil {
		return nil, r.sorted(src)
	}
	r.roomOf(top)
	return r.room, r.sorted(src)
}

// sorted gives the findings in order, every place inside the file.
func (r *reader) sorted(src *source) []finding.Finding {
	for i := range r.findings {
		if src != nil {
			r.findings[i].Place = src.inside(r.findings[i].Place)
		}
	}
	return finding.Sort(r.findings)
}

// fault is the part of an error that its reader sees, without its place.
type fault struct{ rule, what, found, allowed, hint string }

// fail records an error.
func (r *reader) fail(at finding.Place, f fault) {
	r.findings = append(r.findings, finding.Finding{
		Place: at, Kind: finding.Error, Rule: f.rule,
		What: f.what, Found: f.found, Allowed: f.allowed, Hint: f.hint,
	})
}

// warn records a warning that belongs to the sheet named on.
func (r *reader) warn(at finding.Place, on string, f fault) {
	r.findings = append(r.findings, finding.Finding{
		Place: at, Kind: finding.Warning, Rule: f.rule, On: on,
		What: f.what, Found: f.found, Allowed: f.allowed, Hint: f.hint,
	})
}

// quote puts a word of the file between back quotes, shortened when long.
func quote(s string) string { return "`" + brief(s) + "`" }

// brief shortens a text of the file for a message.
func brief(s string) string {
	s = strings.Join(strings.Fields(clean(s)), " ")
	if chars := []rune(s); len(chars) > 60 {
		return string(chars[:57]) + "..."
	}
	return s
}
