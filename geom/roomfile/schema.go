package roomfile

import (
	"strings"

	"roomwright/geom/finding"
)

// need says what happens when a key is left out.
type need int

// The needs.
const (
	optional  need = iota // left out is left out
	needed                // an error without it
	asked                 // an error without it where the job touches it; `unknown` is an answer
	defaulted             // taken from the rules, and noted
)

// key is one key of a section. `<wall>` in its name stands for the name of a
// wall.
type key[T any] struct {
	name  string
	form  string // what may follow it
	means string
	need  need
	star  bool                           // a lone value stands for it
	read  func(r *reader, t *T, e entry) // nil: in the language, but not read by this edition
}

// section is a map of the room file and its keys.
type section[T any] struct {
	name string // "a wall"
	word string // "wall", as a person asks for it
	keys []key[T]
}

// entry is one key as written.
type entry struct {
	name  string // as in the table
	key   *node
	value *node
	wall  string // what stood for <wall>
}

// said is what one map said.
type said struct {
	at  finding.Place
	all []entry // in the order of the file
}

// get gives the first entry of a key.
func (s said) get(name string) (entry, bool) {
	for _, e := range s.all {
		if e.name == name {
			return e, true
		}
	}
	return entry{}, false
}

// has reports whether a key was written.
func (s said) has(name string) bool {
	_, ok := s.get(name)
	return ok
}

// place gives the place of a key, or that of the map when it was not written.
func (s said) place(name string) finding.Place {
	if e, ok := s.get(name); ok {
		return e.key.at
	}
	return s.at
}

// ownSpelling puts the spelling of the tables for other spellings of a key.
func ownSpelling(name string) string {
	words := strings.Fields(name)
	for i, w := range words {
		switch w {
		case "center":
			words[i] = "centre"
		case "centers":
			words[i] = "centres"
		case "centered":
			words[i] = "centred"
		}
	}
	return strings.Join(words, " ")
}

// match reports whether a key as written is k, and what stands for <wall>.
func (k key[T]) match(written string) (wall string, ok bool) {
	head, tail, open := strings.Cut(k.name, "<wall>")
	if !open {
		return "", k.name == written
	}
	if tail != "" || !strings.HasPrefix(written, head) || len(written) == len(head) {
		return "", false
	}
	return written[len(head):], true
}

// find gives the key of the section that was written.
func (s section[T]) find(written string) (key[T], string, bool) {
	for _, k := range s.keys {
		if wall, ok := k.match(written); ok {
			return k, wall, true
		}
	}
	return key[T]{}, "", false
}

// lone gives the key that a lone value stands for.
func (s section[T]) lone() (key[T], bool) {
	for _, k := range s.keys {
		if k.star {
			return k, true
		}
	}
	return key[T]{}, false
}

// names lists the keys that are read.
func (s section[T]) names() []string {
	var out []string
	for _, k := range s.keys {
		if k.read != nil {
			out = append(out, k.name)
		}
	}
	return out
}

// readMap reads the map n into t by the keys of s, in the order of the table.
// It reports unknown and doubled keys, keys without a value, and keys that are
// needed and missing. For the latter, who is the thing meant, with its place.
func readMap[T any](r *reader, n *node, s section[T], t *T, who func(*T) string) said {
	out := said{at: n.at}
	switch n.kind {
	case refused:
		return out
	case word:
		k, ok := s.lone()
		if !ok || k.read == nil {
			r.fail(n.at, fault{
				rule: "kind of value", what: "a lone value where the keys of " + s.name + " are wanted",
				found: quote(n.text), allowed: allowedKeys(s), hint: sample(s),
			})
			return out
		}
		out.all = []entry{{name: k.name, key: n, value: n}}
	case list:
		r.fail(n.at, fault{
			rule: "kind of value", what: "a list where " + s.name + " is wanted",
			allowed: allowedKeys(s), hint: sample(s),
		})
		return out
	case nothing:
		r.fail(n.at, fault{
			rule: "empty value", what: "nothing where " + s.name + " is wanted",
			found: "no value", allowed: allowedKeys(s), hint: sample(s),
		})
		return out
	case mapping:
		out.all = gather(r, n, s)
	}
	for _, k := range s.keys {
		for _, e := range out.all {
			switch {
			case e.name != k.name:
			case k.read == nil:
				r.fail(e.key.at, fault{
					rule: "unknown key", what: "no key " + quote(e.key.text) + " in " + s.name,
					found: quote(e.key.text), allowed: allowedKeys(s),
					hint: quote(e.key.text) + " is a word of the language, but not read by this edition",
				})
			case e.value.kind == nothing:
				r.fail(e.key.at, fault{
					rule: "empty value", what: "nothing after " + quote(e.key.text),
					found: "no value", allowed: k.form,
					hint: "a value beginning with # is a comment to the reader",
				})
			case e.value.kind == refused:
			default:
				k.read(r, t, e)
			}
		}
	}
	for _, k := range s.keys {
		if k.need == needed && !out.has(k.name) && !(s.word == roomWord && r.lost[k.name]) {
			r.fail(out.at, fault{
				rule: "key needed", what: who(t) + " has no " + quote(k.name),
				found: "no " + quote(k.name), allowed: k.name + ": " + k.form, hint: k.means,
			})
		}
	}
	return out
}

// gather goes through the pairs of a map and keeps those that the section
// knows.
func gather[T any](r *reader, n *node, s section[T]) []entry {
	var out, meant []entry
	seen := map[string]finding.Place{}
	for i, p := range n.pairs {
		p = r.untie(s.knows, p)
		written := ownSpelling(p.key.text)
		k, wall, ok := s.find(written)
		if !ok {
			r.fail(p.key.at, unknownKey(s, n, i))
			if name := nearest(written, s.names()); name != "" {
				meant = append(meant, entry{name: name, key: p.key, value: &node{kind: refused, at: p.value.at}})
			}
			continue
		}
		full := k.name + "\x00" + wall
		if first, twice := seen[full]; twice {
			r.fail(p.key.at, fault{
				rule: "doubled key", what: quote(written) + " is written twice in " + s.name,
				found: quote(p.key.text) + " again (first at " + Where(first) + ")", allowed: "each key once",
				hint: "delete one of the two",
			})
			continue
		}
		seen[full] = p.key.at
		out = append(out, entry{name: k.name, key: p.key, value: p.value, wall: wall})
	}
	for _, m := range meant { // a key misspelt is not missing as well
		if !(said{all: out}).has(m.name) {
			out = append(out, m)
		}
	}
	return out
}

// knows reports whether the section has a key as written.
func (s section[T]) knows(written string) bool {
	_, _, ok := s.find(ownSpelling(written))
	return ok
}

// untie takes a key apart that is stuck to its value, `wall:B`, and complains
// of it.
func (r *reader) untie(known func(string) bool, p pair) pair {
	head, tail, ok := strings.Cut(p.key.text, ":")
	if !ok || p.value.kind != nothing || tail == "" || known(p.key.text) || !known(head) {
		return p
	}
	r.fail(p.key.at, noSpace(p.key.text))
	at := p.key.at
	at.Column += len([]rune(head)) + 1
	return pair{key: &node{kind: word, text: head, at: p.key.at}, value: &node{kind: word, text: tail, at: at}}
}

// unknownKey answers the key of pair i of n, which s does not know.
func unknownKey[T any](s section[T], n *node, i int) fault {
	written := n.pairs[i].key.text
	f := fault{
		rule: "unknown key", what: "no key " + quote(written) + " in " + s.name,
		found: quote(written), allowed: allowedKeys(s), hint: meant(ownSpelling(written), s.names(), true),
	}
	if written == "" {
		f.what, f.found = "no key before the colon", "no key"
	}
	if n.flow && i > 0 && n.pairs[i].value.kind == nothing && written != "" && digits(written[:1]) {
		if before := n.pairs[i-1]; digits(before.value.text) {
			f.found = brief(before.key.text+" "+before.value.text) + ", then " + quote(written)
			f.allowed = "digits without a comma"
			f.hint = "a decimal has a point: write " + brief(before.value.text+"."+written)
			if digits(written) && len(written) == 3 {
				f.hint = "write " + brief(before.value.text+written)
			}
		}
	}
	return f
}

// digits reports whether s is all digits.
func digits(s string) bool { return s != "" && strings.Trim(s, "0123456789") == "" }

// allowedKeys says where the keys of a section are listed.
func allowedKeys[T any](s section[T]) string {
	return "the keys of " + s.name + " (roomwright explain " + s.word + ")"
}

// sample lists the first keys of a section.
func sample[T any](s section[T]) string {
	names := s.names()
	if len(names) > 6 {
		names = append(names[:6], "...")
	}
	return "keys: " + strings.Join(names, ", ")
}

// noteKey is the key `note`, which every map has.
func noteKey[T any](into func(*T) *string) key[T] {
	return key[T]{
		name: "note", form: "text", means: "printed where the thing is drawn",
		read: func(r *reader, t *T, e entry) {
			text, ok := r.text(e.value)
			if !ok {
				return
			}
			p := into(t)
			*p = joined(*p, text)
		},
	}
}

// joined puts two notes together.
func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}

// later is a key of the language that this edition does not read.
func later[T any](names ...string) []key[T] {
	var out []key[T]
	for _, n := range names {
		out = append(out, key[T]{name: n})
	}
	return out
}
