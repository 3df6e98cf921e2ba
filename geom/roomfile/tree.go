package roomfile

import (
	"slices"
	"strings"

	"go.yaml.in/yaml/v4"
	"go.yaml.in/yaml/v4/plugin/loaderlimits"

	"roomwright/geom/finding"
)

// deepest is how far maps and lists may lie in one another.
const deepest = 50

// kind tells the nodes of the tree apart.
type kind int

// The kinds.
const (
	nothing kind = iota // no value was written
	word                // a text
	list
	mapping
	refused // an error was reported already
)

// node is one value of the file and where it stands.
type node struct {
	kind   kind
	text   string
	quoted bool
	flow   bool
	at     finding.Place
	items  []*node
	pairs  []pair
}

// pair is one key of a map and its value.
type pair struct{ key, value *node }

// parse takes the text apart. A part that cannot be taken apart is reported,
// noted as lost and left out; nil is given when nothing is left.
func (r *reader) parse(src *source) *node {
	text := r.margins(src)
	for range 25 {
		doc, bad := load(text)
		if bad == nil {
			if doc == nil {
				break
			}
			return r.convert(doc, 0)
		}
		if bad.several {
			r.severalDocuments(text)
			return r.convert(doc, 0)
		}
		if bad.empty {
			break
		}
		if at, mark, ok := openQuote(text, bad); ok {
			r.fail(at, fault{
				rule: "quotes", what: "a quote left open",
				found: string(mark) + " with no " + string(mark) + " behind it on its line", allowed: "quotes in pairs",
				hint: "lengths need no quotes: write 12' 6-1/2\" as it is",
			})
			line := slices.Clone(text[at.Line-1])
			line[at.Column-1] = ' '
			text[at.Line-1] = line
			continue
		}
		if at, key, ok := tightColon(text, bad.at.Line); ok {
			r.fail(at, noSpace(key))
			head, _, _ := strings.Cut(key, ":")
			text[at.Line-1] = slices.Insert(slices.Clone(text[at.Line-1]), at.Column+len([]rune(head)), ' ')
			continue
		}
		at, f := explain(text, bad)
		r.fail(at, f)
		if !r.lose(text, at.Line) {
			return nil
		}
	}
	if len(r.findings) == 0 {
		r.fail(finding.Place{}, fault{
			rule: "empty file", what: "there is nothing in the file",
			found: "no `title`, no `walls`", hint: "a starter file: roomwright new",
		})
	}
	return nil
}

// badText is what the loader could not take apart.
type badText struct {
	at, from       finding.Place // where it stopped; where the thing it was reading began
	says, within   string
	several, empty bool
}

// load reads the lines as one document. Should the library fail in a way of
// its own, that is an error of the text too.
func load(text [][]rune) (doc *yaml.Node, bad *badText) {
	defer func() {
		if recover() != nil {
			doc, bad = nil, &badText{at: finding.Place{Line: 1, Column: 1}}
		}
	}()
	var b strings.Builder
	for _, line := range text {
		b.WriteString(string(line))
		b.WriteByte('\n')
	}
	var n yaml.Node
	err := yaml.Load([]byte(b.String()), &n, yaml.WithPlugin(loaderlimits.New(loaderlimits.DepthValue(deepest))))
	if err == nil {
		if len(n.Content) == 0 {
			return nil, &badText{empty: true}
		}
		return n.Content[0], nil
	}
	bad = badTextOf(err)
	if bad.several {
		if len(n.Content) == 0 {
			return nil, &badText{empty: true}
		}
		return n.Content[0], bad
	}
	return nil, bad
}

// convert makes our own tree of the loader's, and refuses what the language
// leaves out.
func (r *reader) convert(n *yaml.Node, depth int) *node {
	out := &node{
		at:     finding.Place{Line: n.Line, Column: n.Column},
		flow:   n.Style&yaml.FlowStyle != 0,
		quoted: n.Style&(yaml.SingleQuotedStyle|yaml.DoubleQuotedStyle) != 0,
	}
	if depth > 2*deepest {
		r.fail(out.at, tooDeep())
		out.kind = refused
		return out
	}
	if n.Anchor != "" {
		r.refuse(out.at, "an anchor", "&"+n.Anchor)
	}
	if n.Style&yaml.TaggedStyle != 0 {
		r.refuse(out.at, "a tag", n.Tag)
	}
	switch n.Kind {
	case yaml.AliasNode:
		r.refuse(out.at, "an alias", "*"+n.Value)
		out.kind = refused
	case yaml.SequenceNode:
		out.kind = list
		for _, c := range n.Content {
			out.items = append(out.items, r.convert(c, depth+1))
		}
	case yaml.MappingNode:
		out.kind = mapping
		for i := 0; i+1 < len(n.Content); i += 2 {
			key, value := r.convert(n.Content[i], depth+1), r.convert(n.Content[i+1], depth+1)
			switch {
			case key.kind == word && key.text == "<<" && !key.quoted:
				r.refuse(key.at, "a merge key", "<<")
				continue
			case key.kind == list || key.kind == mapping:
				r.fail(key.at, fault{
					rule: "kind of key", what: "a map or a list where a key is wanted",
					allowed: "`key: value`, the key a plain word",
				})
				continue
			case key.kind == nothing:
				key.kind = word
			}
			out.pairs = append(out.pairs, pair{key, value})
		}
	default:
		out.text = n.Value
		if n.Value != "" || out.quoted {
			out.kind = word
		}
	}
	return out
}

// refuse reports a part of YAML that the language leaves out.
func (r *reader) refuse(at finding.Place, what, found string) {
	r.fail(at, fault{
		rule: "left out of the language", what: what + " in a room file",
		found: quote(found), allowed: "plain keys and values",
		hint: "write the value where it is wanted; `every wall` gives keys to all walls; a text that begins with & * ! needs quotes",
	})
}

// tooDeep is the answer to maps and lists nested beyond sense.
func tooDeep() fault {
	return fault{
		rule: "depth", what: "maps and lists lie too deep in one another",
		allowed: "at most 50 deep",
	}
}
