package roomfile

import (
	"strings"

	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// question is one question about a wall that was not answered.
type question struct {
	touch
	key           string
	wall          string
	one, several  string // the question about one wall and about more; %s stands for them
	found         string // what is missing, and where it could stand
	place         finding.Place
	allowed, hint string
}

// ask notes a question that was not answered. Each is asked once of a wall.
func (r *reader) ask(q question) {
	id := "asked\x00" + q.wall + "\x00" + q.key
	if _, before := r.doubles[id]; before {
		return
	}
	r.doubles[id] = q.at
	r.questions = append(r.questions, q)
}

// putQuestions reports the questions, those that are alike as one.
func (r *reader) putQuestions() {
	done := make([]bool, len(r.questions))
	for i, q := range r.questions {
		if done[i] {
			continue
		}
		walls, missing := []string{q.wall}, []string{q.found + " (" + Where(q.place) + ")"}
		for j := i + 1; j < len(r.questions); j++ {
			if p := r.questions[j]; p.at == q.at && p.key == q.key && p.when == q.when && p.one == q.one {
				done[j] = true
				walls, missing = append(walls, p.wall), append(missing, p.found+" ("+Where(p.place)+")")
			}
		}
		what := strings.Replace(q.one, "%s", "wall "+q.wall, 1)
		if n := len(walls); n > 1 {
			what = strings.Replace(q.several, "%s", "walls "+strings.Join(walls[:n-1], ", ")+" and "+walls[n-1], 1)
		}
		r.fail(q.at, fault{
			rule: "asked", what: what + "? " + q.when,
			found: strings.Join(missing, "; "), allowed: q.allowed, hint: q.hint,
		})
	}
}

// askMake asks what a wall is made of.
func (r *reader) askMake(w *wallText, t touch) {
	if w.said.has("made of") {
		return
	}
	r.ask(question{
		touch: t, key: "made of", wall: w.Name, one: "what is %s made of", several: "what are %s made of",
		found: "no `made of` in wall " + w.Name, place: w.At,
		allowed: "made of: studs, new studs, block, brick, stone, concrete, masonry or unknown",
		hint:    "add made of: unknown if you do not know: no screws are placed then",
	})
}

// askTape asks which face the tape touched.
func (r *reader) askTape(w *wallText, t touch) {
	if w.said.has("tape on") {
		return
	}
	r.ask(question{
		touch: t, key: "tape on", wall: w.Name,
		one: "which face of %s does the tape touch", several: "which face of %s does the tape touch",
		found: "no `tape on` in wall " + w.Name, place: w.At,
		allowed: "tape on: studs, lining, masonry or unknown",
		hint:    "add tape on: unknown if you do not know: the face there now is taken then",
	})
}

// askStructure asks how high the structure is.
func (r *reader) askStructure(w *wallText, t touch) {
	q := question{
		touch: t, key: "floor to structure", wall: w.Name,
		one: "how high is the structure over %s", several: "how high is the structure over %s",
		found: "no `floor to structure` in wall " + w.Name, place: w.At,
		allowed: "floor to structure: a length", hint: "floor up to the underside of the joists or the slab",
	}
	switch {
	case w.Structure.Unknown:
		q.found, q.place, q.hint = "unknown", w.Structure.At, "write about 96 if it cannot be taped well"
	case w.said.has("floor to structure"):
		return
	}
	r.ask(q)
}

// askFrame asks how a wall is framed; a wall that is cut or new is asked more.
func (r *reader) askFrame(w *wallText, t touch, cut bool) {
	if w.MadeOf != room.MakeNotSaid && !w.MadeOf.Framed() {
		return
	}
	at, in := w.frameAt, "the frame of wall "+w.Name
	if zero(at) {
		at, in = w.At, "wall "+w.Name+", which has no `frame`"
	}
	q := question{touch: t, wall: w.Name, place: at}
	if !w.frame.has("stud") {
		q.key, q.found = "stud", "no `stud` in "+in
		q.one, q.several = "what are the studs of %s", "what are the studs of %s"
		q.allowed = "stud: 2x4, or a true size such as 38 x 89"
		q.hint = "take a switch plate off and measure at the edge of the hole"
		r.ask(q)
	}
	q.key, q.one, q.several = "studs", "where are the studs of %s", "where are the studs of %s"
	q.allowed = "studs: {left edges from left: [0, 15-1/4]}, or studs: 16 from left"
	if !w.frame.has("studs") {
		q.found, q.hint = "no `studs` in "+in, "find each edge with a fine nail; record each stud where it is"
		r.ask(q)
	} else if w.Frame.Studs.Unknown && cut {
		q.found, q.place = "unknown", w.Frame.Studs.At
		q.hint = "an opening cannot be set out between studs that were not found"
		r.ask(q)
	}
	if !cut {
		return
	}
	if !w.frame.has("bearing") || w.Frame.Bearing == room.NotSaid && w.saidNoAnswer() {
		r.ask(question{
			touch: t, key: "bearing", wall: w.Name, one: "is %s load-bearing", several: "are %s load-bearing",
			found: "no `bearing` in " + in, place: at,
			allowed: "bearing: yes, no or unknown", hint: "add bearing: unknown if you do not know",
		})
	}
}

// saidNoAnswer reports whether `bearing` is a map without an answer.
func (w *wallText) saidNoAnswer() bool {
	e, _ := w.frame.get("bearing")
	if e.value == nil || e.value.kind != mapping {
		return false
	}
	for _, p := range e.value.pairs {
		if p.key.text == "answer" {
			return false
		}
	}
	return true
}
