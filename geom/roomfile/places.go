package roomfile

import (
	"strconv"
	"strings"

	"roomwright/geom"
	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// placed gathers how a thing on a wall was placed, each way as often as it was
// written.
type placed struct {
	across []acrossAs
	up     []upAs
}

// acrossAs is one place across, and how it reads.
type acrossAs struct {
	room.Across
	key finding.Place
	say string
}

// upAs is one height, and how it reads.
type upAs struct {
	room.Up
	key finding.Place
	say string
}

// spotKeys are the keys that place an edge or the centre from an end of the
// wall.
func spotKeys[T any](get func(*T) *placed, there bool) []key[T] {
	var out []key[T]
	for _, edge := range [...]struct {
		name string
		edge room.Edge
	}{{"left edge", room.LeftEdge}, {"right edge", room.RightEdge}, {"centre", room.Centre}} {
		for _, end := range [...]struct {
			name string
			end  room.End
		}{{"left", room.Left}, {"right", room.Right}} {
			out = append(out, key[T]{
				name: edge.name + " from " + end.name, form: lengthForm(there),
				means: "its " + edge.name + ", from the " + end.name + " end of the wall",
				read: func(r *reader, t *T, e entry) {
					l, about, wish, ok := r.spot(e.value, there)
					if ok {
						p := get(t)
						p.across = append(p.across, acrossAs{room.Across{
							Kind: room.EdgeFromEnd, Edge: edge.edge, From: end.end,
							Value: l, About: about, Wish: wish, At: e.value.at,
						}, e.key.at, e.name + " " + brief(e.value.text)})
					}
				},
			})
		}
	}
	return out
}

// lengthForm says what may follow a key that takes a length.
func lengthForm(there bool) string {
	if there {
		return "a length, about a length"
	}
	return "a length, or a length if it fits"
}

// spot reads a place along a line: something there may be about, something
// wanted may be a wish.
func (r *reader) spot(n *node, there bool) (l geom.Length, about, wish, ok bool) {
	if !there {
		w, ok := r.want(n, fromZero)
		return w.Value, false, w.IfFits, ok
	}
	s, ok := r.word(n, lengthForm(true))
	if !ok {
		return 0, false, false, false
	}
	if s == unknownWord {
		r.fail(n.at, fault{
			rule: "measured or wanted", what: "a place that is not known", found: "unknown",
			allowed: lengthForm(true), hint: "write position: unknown for a thing whose place is not known",
		})
		return 0, false, false, false
	}
	l, about, within, ok := r.taped(s, n, fromZero)
	return l, about || within > 0, false, ok
}

// spanKeys are the keys that give both edges of a thing that is there, across.
func spanKeys[T any](get func(*T) *placed) []key[T] {
	var out []key[T]
	for _, end := range [...]struct {
		name string
		end  room.End
	}{{"left", room.Left}, {"right", room.Right}} {
		out = append(out, key[T]{
			name: "from " + end.name, form: "both edges, such as 16 to 18",
			means: "both its edges, from the " + end.name + " end of the wall",
			read: func(r *reader, t *T, e entry) {
				from, to, about, ok := r.span(e.value, true)
				if ok {
					p := get(t)
					p.across = append(p.across, acrossAs{room.Across{
						Kind: room.SpanFromEnd, From: end.end, Value: from, To: to, About: about, At: e.value.at,
					}, e.key.at, e.name + " " + brief(e.value.text)})
				}
			},
		})
	}
	return out
}

// centredKeys are the keys that place the centre of a thing by another one.
func centredKeys[T any](get func(*T) *placed) []key[T] {
	return []key[T]{{
		name: "centred on", form: "wall, stud 5, opening NAME or door NAME",
		means: "its centre on the middle of the wall, of a stud or of another thing",
		read: func(r *reader, t *T, e entry) {
			s, ok := r.word(e.value, "wall, stud 5, opening NAME or door NAME")
			if !ok {
				return
			}
			a := room.Across{At: e.value.at}
			s, a.Wish = strings.CutSuffix(s, fitsMark)
			say := "centred on " + brief(s)
			kind, name, _ := strings.Cut(s, " ")
			switch {
			case s == "wall":
				a.Kind = room.CentredOnWall
			case kind == "stud" || kind == "studs":
				a.Kind = room.CentredOnStud
				a.Stud, ok = r.stud(s, e.value)
			case (kind == "opening" || kind == "door") && name != "":
				a.Kind, a.Thing = room.CentredOnThing, name
			default:
				ok = false
				r.fail(e.value.at, fault{
					rule: "places", what: "nothing that a thing can be centred on", found: brief(s),
					allowed: "wall, stud 5, stud at 48, opening NAME, door NAME",
				})
			}
			if ok {
				p := get(t)
				p.across = append(p.across, acrossAs{a, e.key.at, say})
			}
		},
	}, {
		name: "centred between", form: "stud 4 and stud 7",
		means: "its centre midway between two studs",
		read: func(r *reader, t *T, e entry) {
			s, ok := r.word(e.value, "stud 4 and stud 7")
			if !ok {
				return
			}
			a := room.Across{Kind: room.CentredBetween, At: e.value.at}
			s, a.Wish = strings.CutSuffix(s, fitsMark)
			one, two, both := strings.Cut(s, " and ")
			if !both {
				r.fail(e.value.at, fault{
					rule: "places", what: "one stud where two are wanted", found: brief(s), allowed: "stud 4 and stud 7",
				})
				return
			}
			var ok1, ok2 bool
			a.Stud, ok1 = r.stud(strings.TrimSpace(one), e.value)
			a.Stud2, ok2 = r.stud(strings.TrimSpace(two), e.value)
			if ok1 && ok2 {
				p := get(t)
				p.across = append(p.across, acrossAs{a, e.key.at, "centred between " + brief(s)})
			}
		},
	}}
}

// kingKeys are the keys that name the stud that is to serve as king.
func kingKeys[T any](get func(*T) *placed) []key[T] {
	var out []key[T]
	for _, k := range [...]struct {
		name string
		kind room.AcrossKind
	}{{"left king", room.KingLeft}, {"right king", room.KingRight}} {
		out = append(out, key[T]{
			name: k.name, form: "stud 4, or stud at 48", means: "the stud that is to serve as the " + k.name,
			read: func(r *reader, t *T, e entry) {
				s, ok := r.word(e.value, "stud 4, or stud at 48")
				if !ok {
					return
				}
				ref, ok := r.stud(s, e.value)
				if ok {
					p := get(t)
					p.across = append(p.across, acrossAs{
						room.Across{Kind: k.kind, Stud: ref, At: e.value.at}, e.key.at, e.name + " " + brief(s),
					})
				}
			},
		})
	}
	return out
}

// stud reads `stud 4` or `stud at 48`.
func (r *reader) stud(s string, n *node) (room.StudRef, bool) {
	ref := room.StudRef{At: n.at}
	behind, ok := strings.CutPrefix(s, "stud ")
	if mark, at := strings.CutPrefix(behind, "at "); ok && at {
		ref.Mark, ok = r.figure(mark, n, fromZero)
		return ref, ok
	}
	no, err := strconv.Atoi(strings.TrimSpace(behind))
	if !ok || err != nil || no < 1 || no > 1000 || !digits(strings.TrimSpace(behind)) {
		r.fail(n.at, fault{
			rule: "studs", what: "no stud", found: brief(s), allowed: "stud 4 (from the left, the end stud is 1) or stud at 48",
		})
		return ref, false
	}
	ref.Number = no
	return ref, true
}

// upKeys are the keys that give a height, those of names.
func upKeys[T any](get func(*T) *placed, there bool, names ...string) []key[T] {
	kinds := map[string]room.UpKind{
		"bottom from floor": room.BottomFromFloor, "top from floor": room.TopFromFloor,
		"centre from floor": room.CentreFromFloor, "top from ceiling": room.TopFromCeiling,
	}
	var out []key[T]
	for _, name := range names {
		edge, datum, _ := strings.Cut(name, " from ")
		out = append(out, key[T]{
			name: name, form: lengthForm(there), means: "its " + edge + ", from the " + datum,
			read: func(r *reader, t *T, e entry) {
				l, about, wish, ok := r.spot(e.value, there)
				if ok {
					p := get(t)
					p.up = append(p.up, upAs{
						room.Up{Kind: kinds[name], Value: l, About: about, Wish: wish, At: e.value.at},
						e.key.at, e.name + " " + brief(e.value.text),
					})
				}
			},
		})
	}
	return out
}

// heightSpanKey gives both edges of a thing that is there, up.
func heightSpanKey[T any](get func(*T) *placed) key[T] {
	return key[T]{
		name: "from floor", form: "both edges, such as 0 to 48", means: "its bottom and its top, from the floor",
		read: func(r *reader, t *T, e entry) {
			from, to, about, ok := r.span(e.value, true)
			if ok {
				p := get(t)
				p.up = append(p.up, upAs{
					room.Up{Kind: room.SpanFromFloor, Value: from, To: to, About: about, At: e.value.at},
					e.key.at, e.name + " " + brief(e.value.text),
				})
			}
		},
	}
}

// positionKey says that the place of a thing that is there is not known.
func positionKey[T any](get func(*T) *placed) key[T] {
	return key[T]{
		name: "position", form: unknownWord, means: "for a thing whose place is not known: it is taken to be everywhere in the wall",
		read: func(r *reader, t *T, e entry) {
			if _, ok := r.choice(e, "a place is written with its edge: left edge from left: 16", unknownWord); !ok {
				return
			}
			p := get(t)
			p.across = append(p.across, acrossAs{room.Across{Kind: room.UnknownPlace, At: e.value.at}, e.key.at, "position unknown"})
			p.up = append(p.up, upAs{room.Up{Kind: room.UnknownHeight, At: e.value.at}, e.key.at, "position unknown"})
		},
	}
}

// settle gives the one place and the one height of a thing, and complains of
// more. What is missing stays zero; who is the thing, wall its wall.
func (p *placed) settle(r *reader, who, wall string) (room.Across, room.Up) {
	var across room.Across
	var up room.Up
	for i, a := range p.across {
		if i == 0 {
			across = a.Across
			continue
		}
		first, second := p.across[0], a
		if before(second.key, first.key) {
			first, second = second, first
		}
		r.twice(who+" is placed twice across", onePlace, sayOn(second.say, wall), sayOn(first.say, wall), second.key, first.key)
	}
	for i, u := range p.up {
		if i == 0 {
			up = u.Up
			continue
		}
		first, second := p.up[0], u
		if before(second.key, first.key) {
			first, second = second, first
		}
		r.twice(who+" is placed twice up", onePlace, second.say, first.say, second.key, first.key)
	}
	return across, up
}

// before reports whether a stands before b in the file.
func before(a, b finding.Place) bool {
	return a.Line < b.Line || a.Line == b.Line && a.Column < b.Column
}

// onePlace is how a thing on a wall is placed.
const onePlace = "one place across, one up"

// twice complains of two places one way.
func (r *reader) twice(what, allowed, second, first string, at, firstAt finding.Place) {
	r.fail(at, fault{
		rule: "places", what: what, found: second + "; " + first + " (" + Where(firstAt) + ")",
		allowed: allowed, hint: "delete one of the two lines",
	})
}

// sayOn names the wall in a place that is centred on it.
func sayOn(say, wall string) string {
	if say == "centred on wall" {
		return say + " " + wall
	}
	return say
}
