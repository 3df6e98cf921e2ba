package roomfile

import (
	"strconv"
	"strings"
	"time"
	"unicode"

	"roomwright/geom/finding"
	"roomwright/geom/room"
)

// word gives the text of a node that must be a lone value; want says what is
// wanted there.
func (r *reader) word(n *node, want string) (string, bool) {
	switch n.kind {
	case word:
		return strings.Join(strings.Fields(n.text), " "), true
	case refused:
		return "", false
	case list, mapping:
		what := map[kind]string{list: "a list", mapping: "a map"}[n.kind]
		r.fail(n.at, fault{
			rule: "kind of value", what: what + " where one value is wanted",
			allowed: want,
		})
	case nothing:
		r.fail(n.at, fault{
			rule: "empty value", what: "nothing where a value is wanted", found: "no value", allowed: want,
		})
	}
	return "", false
}

// text reads free text.
func (r *reader) text(n *node) (string, bool) {
	s, ok := r.word(n, "text")
	if !ok {
		return "", false
	}
	if i := strings.IndexFunc(n.text, func(c rune) bool { return c != '\n' && unprintable(c) }); i >= 0 {
		c := []rune(n.text[i:])[0]
		r.fail(n.at, fault{
			rule: "letters of the file", what: "a control character in a text",
			found: "character " + strconv.Itoa(int(c)), allowed: "letters, digits and signs that can be printed",
		})
		return "", false
	}
	if count := len([]rune(s)); count > 400 {
		r.fail(n.at, fault{
			rule: "length of a text", what: "a text too long for a sheet",
			found: strconv.Itoa(count) + " letters", allowed: "at most 400",
		})
		return "", false
	}
	return s, true
}

// name reads a name that is the person's own.
func (r *reader) name(n *node) (string, bool) {
	s, ok := r.word(n, "a name")
	if !ok {
		return "", false
	}
	why := ""
	switch strings.ToLower(s) {
	case "left", "right", "floor", "wall":
		why = "a word of the language cannot be a name"
	}
	count := 0
	for _, c := range n.text {
		count++
		if !unicode.IsLetter(c) && !unicode.IsDigit(c) && !unicode.IsMark(c) && !strings.ContainsRune(" -._", c) {
			why = "a sign that a name cannot hold"
		}
	}
	switch {
	case count == 0 || count > 24:
		why = "a name of " + strconv.Itoa(count) + " letters"
	case s != n.text:
		why = "a name with blanks at an end or two in a row"
	}
	for _, part := range []string{" to ", " and ", " from "} {
		if strings.Contains(strings.ToLower(s), part) {
			why = "a name with" + part + "in it"
		}
	}
	if why != "" {
		r.fail(n.at, fault{
			rule: "names", what: why, found: quote(n.text),
			allowed: "1 to 24 letters, digits, spaces, - . _; not left, right, floor or wall; without to, and, from between blanks",
		})
		return "", false
	}
	return s, true
}

// once reports whether a name is new among those of its kind, and complains
// when it is not.
func (r *reader) once(what, name string, at finding.Place) bool {
	id := what + "\x00" + name
	if first, twice := r.doubles[id]; twice {
		r.fail(at, fault{
			rule: "names", what: "two of the name " + quote(name),
			found: quote(name) + " again (first at " + Where(first) + ")", allowed: "a name of its own for each " + what,
		})
		return false
	}
	r.doubles[id] = at
	return true
}

// choice reads one of the words that are answers to a key.
func (r *reader) choice(e entry, hint string, words ...string) (string, bool) {
	s, ok := r.word(e.value, strings.Join(words, ", "))
	if !ok {
		return "", false
	}
	for _, w := range words {
		if strings.EqualFold(s, w) {
			return w, true
		}
	}
	if hint == "" {
		hint = meant(s, words, false)
	}
	r.fail(e.value.at, fault{
		rule: "words", what: "not an answer to " + quote(e.name),
		found: brief(e.value.text), allowed: strings.Join(words, ", "), hint: hint,
	})
	return "", false
}

// answer reads yes, no or unknown.
func (r *reader) answer(e entry, hint string, unknown bool) (room.Answer, bool) {
	words := []string{"yes", "no", "unknown"}
	if !unknown {
		words = words[:2]
	}
	s, ok := r.choice(e, hint, words...)
	switch s {
	case "yes":
		return room.Yes, ok
	case "no":
		return room.No, ok
	case "unknown":
		return room.Unknown, ok
	}
	return room.NotSaid, false
}

// whole reads a whole number between two bounds.
func (r *reader) whole(e entry, least, greatest int) (int, bool) {
	allowed := "a whole number, " + strconv.Itoa(least) + " to " + strconv.Itoa(greatest)
	s, ok := r.word(e.value, allowed)
	if !ok {
		return 0, false
	}
	v, err := strconv.Atoi(s)
	if err != nil || v < least || v > greatest || strings.HasPrefix(s, "+") {
		r.fail(e.value.at, fault{
			rule: "numbers", what: "not a number for " + quote(e.name), found: brief(s), allowed: allowed,
		})
		return 0, false
	}
	return v, true
}

// date reads a day such as 2026-03-14 and gives it as written.
func (r *reader) date(e entry) (string, bool) {
	s, ok := r.word(e.value, "a date, such as 2026-03-14")
	if !ok {
		return "", false
	}
	if _, err := time.Parse(time.DateOnly, s); err != nil {
		r.fail(e.value.at, fault{
			rule: "dates", what: "not a date", found: brief(s),
			allowed: "year, month and day, such as 2026-03-14",
		})
		return "", false
	}
	return s, true
}

// things reads a list, one thing after the other.
func (r *reader) things(e entry, of string, read func(n *node)) {
	switch e.value.kind {
	case list:
		for _, n := range e.value.items {
			if n.kind == nothing {
				r.fail(n.at, fault{
					rule: "empty value", what: "nothing behind the dash", found: "no value", allowed: of,
				})
				continue
			}
			read(n)
		}
	case refused:
	default:
		r.fail(e.value.at, fault{
			rule: "kind of value", what: "no list after " + quote(e.name),
			found: found(e.value), allowed: "a list, each " + of + " behind a dash",
			hint: "put `- ` before the first word of each " + of,
		})
	}
}

// found says what a node is, for a message.
func found(n *node) string {
	switch n.kind {
	case mapping:
		return "a map"
	case list:
		return "a list"
	case word:
		return brief(n.text)
	}
	return "no value"
}

// wall gives the index of the wall called name; it reports false, and says so
// once, when there is none.
func (r *reader) wall(name string, at finding.Place) (int, bool) {
	for i, w := range r.walls {
		if w == name {
			return i, true
		}
	}
	if r.known {
		r.fail(at, fault{
			rule: "names", what: "no wall " + quote(name), found: quote(name),
			allowed: r.wallNames(), hint: meant(name, r.walls, false),
		})
	}
	return -1, false
}

// wallNames lists the walls.
func (r *reader) wallNames() string {
	var out []string
	for _, w := range r.walls {
		if w != "" {
			out = append(out, w)
		}
	}
	return listed(out)
}

// listed puts names behind one another, the first dozen of many.
func listed(names []string) string {
	const shown = 12
	if len(names) > shown {
		return strings.Join(names[:shown], ", ") + ", ..."
	}
	return strings.Join(names, ", ")
}

// called names a thing in a message.
func called(what, name string) string {
	if name == "" {
		return "the " + what + " without a name"
	}
	return what + " " + name
}
