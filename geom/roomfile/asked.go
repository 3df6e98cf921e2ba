package roomfile

import (
	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// finish settles what only the whole file shows: what is asked for because the
// job touches it, what contradicts itself, and what is taken where nothing was
// said.
func (r *reader) finish(f *file) {
	if f.topSaid.has("lights") && !f.topSaid.has("ceiling") && !r.lost["ceiling"] {
		r.fail(f.topSaid.place("lights"), fault{
			rule: "key needed", what: "lights lie in the grid of a ceiling, and there is none", found: "no `ceiling`", allowed: "a ceiling with a grid",
		})
	}
	r.centredOn(f)
	cut := map[int]bool{}
	for _, o := range f.things {
		cut[o.Wall] = true
	}
	for i := range f.walls {
		r.wallAgrees(&f.walls[i], cut[i])
	}
	r.askForJobs(f)
	r.putQuestions()
	r.assume(f)
	for i := range f.walls {
		r.room.Walls[i] = f.walls[i].Wall
	}
	for _, o := range f.things {
		r.room.Openings = append(r.room.Openings, o.Opening)
	}
	for _, b := range f.boards {
		r.room.Boards = append(r.room.Boards, b.Board)
	}
}

// wallAgrees checks what a wall says against itself, and says what its answers
// of unknown cost.
func (r *reader) wallAgrees(w *wallText, cut bool) {
	tape, _ := w.said.get("tape on")
	clash := func(found, allowed string) {
		r.fail(tape.value.at, fault{
			rule: "tape on", what: "a face that wall " + w.Name + " does not have", found: found, allowed: allowed,
		})
	}
	switch {
	case w.TapeOn == room.FaceMasonry && w.MadeOf.Framed():
		clash("masonry, and made of "+string(w.MadeOf), "studs, lining")
	case w.TapeOn == room.FaceStuds && w.MadeOf.Solid():
		clash("studs, and made of "+string(w.MadeOf), "masonry, lining")
	case w.TapeOn == room.FaceLining && w.Inside.None:
		clash("lining, and lining inside: none", "studs, masonry, or the lining that is there")
	case w.TapeOn == room.FaceUnknown:
		r.warn(tape.value.at, on(w.Name), fault{
			rule: "tape unknown", what: "the face under the tape on wall " + w.Name + " is not known: it is taken as the face there now", found: unknownWord,
		})
	}
	if e, ok := w.said.get("made of"); ok && w.MadeOf == room.MakeUnknown {
		r.warn(e.value.at, on(w.Name), fault{
			rule: "make unknown", what: "what wall " + w.Name + " is made of is not known: no screws are placed in it", found: unknownWord,
		})
	}
	if w.Frame.Bearing == room.Unknown && (cut || w.MadeOf == room.NewStuds) {
		e, _ := w.frame.get("bearing")
		r.warn(e.value.at, on(w.Name), fault{
			rule: "bearing unknown", what: "whether wall " + w.Name + " is load-bearing is not known: it is presumed to be", found: unknownWord,
		})
	}
	if w.Frame.Studs.Unknown {
		r.warn(w.Frame.Studs.At, on(w.Name), fault{
			rule: "studs unknown", what: "where the studs of wall " + w.Name + " are is not known: no screws are placed in it", found: unknownWord,
		})
	}
	if len(w.frame.all) > 0 && w.MadeOf.Solid() {
		r.fail(w.frameAt, fault{
			rule: "frame", what: "a frame in a wall of " + string(w.MadeOf), found: "`frame` in wall " + w.Name,
			allowed: "made of: studs, or new studs",
		})
	}
	r.studsOnWall(w)
}

// studsOnWall checks that the studs as found lie on the wall.
func (r *reader) studsOnWall(w *wallText) {
	marks := w.Frame.Studs.Marks
	if len(marks) == 0 || !w.Length.Known() {
		return
	}
	most := w.Length.Value
	if last := marks[len(marks)-1]; last > most {
		r.fail(w.Frame.Studs.At, fault{
			rule: "marks", what: "a stud beyond the end of wall " + w.Name, found: "last mark " + r.say(last),
			allowed: "at most " + r.say(most) + ", the length of the wall",
		})
	}
}

// touch is a job that touches a wall, and how a question about it ends.
type touch struct {
	at   finding.Place
	when string // "asked before it is cut"
}

// askForJobs asks what the jobs of the file cannot be set out without.
func (r *reader) askForJobs(f *file) {
	if len(f.walls) > 24 {
		return // no room, and that was said
	}
	cut, hung := map[int]touch{}, map[int]touch{}
	for i := range f.things {
		o := &f.things[i]
		if o.Wall >= 0 && o.Wall < len(f.walls) {
			w := &f.walls[o.Wall]
			t := touch{o.At, "asked before it is cut, and not answered"}
			if w.MadeOf == room.NewStuds {
				t.when = "asked before it is built, and not answered"
			}
			if _, before := cut[o.Wall]; !before {
				cut[o.Wall] = t
			}
			r.askOpening(o, w)
		}
	}
	for i := range f.boards {
		if b := &f.boards[i]; b.Wall >= 0 && b.Wall < len(f.walls) {
			if _, before := hung[b.Wall]; !before {
				hung[b.Wall] = touch{b.At, "asked before boards are fixed, and not answered"}
			}
		}
	}
	ceiling := r.room.Ceiling
	for i := range f.walls {
		w := &f.walls[i]
		if w.said.all == nil || r.lost["every wall"] {
			continue
		}
		if _, is := cut[i]; !is && w.MadeOf == room.NewStuds {
			cut[i] = touch{w.At, "asked before it is built, and not answered"}
		}
		t, isCut := cut[i]
		h, isHung := hung[i]
		switch {
		case isCut:
			r.askMake(w, t)
			r.askFrame(w, t, true)
			r.askTape(w, t)
			r.askStructure(w, t)
		case isHung:
			r.askMake(w, h)
			if w.MadeOf.Framed() {
				r.askFrame(w, h, false)
			}
		}
		if isHung && isCut {
			r.askMake(w, h)
		}
		if ceiling != nil {
			c := touch{ceiling.At, "asked before a ceiling is hung, and not answered"}
			r.askMake(w, c)
			r.askStructure(w, c)
		}
		if w.MadeOf == room.Studs || w.Inside.Given() && !w.Inside.None {
			r.askTape(w, touch{w.At, "asked of a wall that is framed or lined, and not answered"})
		}
	}
	if ceiling != nil && r.room.Above.Joists == nil && !r.lost["above"] && !f.saidAbove(r) {
		r.fail(ceiling.At, fault{
			rule: "asked", what: "where are the joists overhead? asked before a ceiling is hung, and not answered",
			found: "no `joists` in `above`", allowed: "above: {joists: {run: A to C, spacing: 16, first centre from D: 10}}, or joists: unknown",
			hint: "add above: {joists: unknown} if you do not know: no hangers are placed then",
		})
	}
	if j := r.room.Above.Joists; j != nil && j.Unknown {
		r.warn(j.At, "ceiling", fault{
			rule: "joists unknown", what: "where the joists are is not known: no hangers are placed", found: unknownWord,
		})
	}
	for i := range f.things {
		if o := &f.things[i]; o.Up.Kind == room.TopFromCeiling && !f.topSaid.has("ceiling") && !r.lost["ceiling"] {
			r.fail(o.Up.At, fault{
				rule: "places", what: called("opening", o.Name) + " is placed from a ceiling, and there is none", found: "no `ceiling`",
				allowed: "bottom from floor, top from floor",
			})
		}
	}
}

// saidAbove reports whether the joists were written, even in a way that could
// not be read.
func (f *file) saidAbove(r *reader) bool {
	e, ok := f.topSaid.get("above")
	if !ok {
		return false
	}
	for _, p := range e.value.pairs {
		if ownSpelling(p.key.text) == "joists" {
			return true
		}
	}
	return false
}

// askOpening asks what an opening cannot be set out without.
func (r *reader) askOpening(o *openingText, w *wallText) {
	if w.MadeOf != room.MakeNotSaid && !w.MadeOf.Framed() {
		at := o.said.place("wall")
		if e, ok := o.said.get("wall"); ok {
			at = e.value.at
		}
		r.fail(at, fault{
			rule: "wall to cut", what: "openings are framed in stud walls, and wall " + w.Name + " is " + string(w.MadeOf),
			found: "wall " + w.Name + " made of " + string(w.MadeOf), allowed: "made of: studs, or new studs",
		})
		return
	}
	t := touch{o.At, "asked before it is cut, and not answered"}
	if w.MadeOf == room.NewStuds {
		t.when = "asked before it is built, and not answered"
	}
	if !o.said.has("glazing") {
		r.fail(o.At, fault{
			rule: "asked", what: "what goes into opening " + o.Name + "? " + t.when,
			found: "no `glazing`", allowed: "glazing: a sheet such as 3/16 acrylic, none or unknown", hint: "glazing: none for a doorway",
		})
	} else if o.Glazing.Sheet.Unknown {
		r.warn(o.Glazing.Sheet.At, on(w.Name), fault{
			rule: "glazing unknown", what: "the sheet in opening " + o.Name + " is not known: no pane is set out", found: unknownWord,
		})
	}
	if w.MadeOf == room.NewStuds && o.Glazing.Sheet.None {
		return // no liner whose depth the linings would give
	}
	at, in := w.At, "wall "+w.Name
	if e, ok := w.said.get("lining"); ok {
		at, in = e.key.at, "the lining of wall "+w.Name
	}
	for _, face := range [...]struct {
		name string
		on   room.Material
	}{{"inside", w.Inside}, {"outside", w.Outside}} {
		if face.on.Unknown {
			r.warn(face.on.At, on(w.Name), fault{
				rule: "lining unknown", what: "the lining of wall " + w.Name + " " + face.name + " is not known: no depth of a liner is given", found: unknownWord,
			})
		}
		if !face.on.Given() && !w.liningBroken(face.name) && !r.lost["every wall"] {
			r.ask(question{
				touch: t, key: "lining " + face.name, wall: w.Name,
				one: "what lining is on %s " + face.name, several: "what lining is on %s " + face.name,
				found: "no `" + face.name + "` lining in " + in, place: at,
				allowed: "lining: {inside: 1/2 gypsum, outside: none}",
				hint:    "add unknown for a face that you do not know: no depth of a liner is given then",
			})
		}
	}
}

// liningBroken reports whether a face of the lining was written in a way that
// could not be read.
func (w *wallText) liningBroken(face string) bool {
	e, ok := w.said.get("lining")
	if !ok {
		return false
	}
	if e.value.kind != mapping {
		return true
	}
	for _, p := range e.value.pairs {
		if p.key.text == face {
			return true
		}
	}
	return false
}
