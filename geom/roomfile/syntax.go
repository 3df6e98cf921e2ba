package roomfile

import (
	"errors"
	"strings"

	"go.yaml.in/yaml/v4"

	"roomwright/geom/finding"
)

// badTextOf takes the loader's error apart.
func badTextOf(err error) *badText {
	one := new(yaml.LoadError)
	many := new(yaml.LoadErrors)
	switch {
	case errors.As(err, &many) && len(many.Errors) > 0:
		one = many.Errors[0]
	case !errors.As(err, &one):
		one = &yaml.LoadError{Message: err.Error()}
	}
	return &badText{
		at:      finding.Place{Line: one.Mark.Line, Column: one.Mark.Column},
		from:    finding.Place{Line: one.ContextMark.Line, Column: one.ContextMark.Column},
		says:    one.Message,
		within:  one.ContextMsg,
		several: strings.Contains(one.Message, "found multiple"),
		empty:   strings.Contains(one.Message, "no documents in stream"),
	}
}

// margins reports tabs in the margin, and gives the lines without the sections
// that they spoil.
func (r *reader) margins(src *source) [][]rune {
	text := make([][]rune, len(src.lines))
	copy(text, src.lines)
	var tabbed []int
	for i, line := range src.lines {
		rest := strings.TrimLeft(string(line), " ")
		switch {
		case strings.TrimSpace(rest) == "":
			text[i] = nil
		case rest[0] == '\t':
			tabbed = append(tabbed, i+1)
			r.fail(finding.Place{Line: i + 1, Column: len(line) - len([]rune(rest)) + 1}, fault{
				rule: "tab in the margin", what: "a tab in the margin",
				found: "tab", allowed: "spaces",
				hint: "two spaces for each step; set your editor to put spaces for tabs",
			})
		}
	}
	for _, line := range tabbed {
		if len(text[line-1]) > 0 { // its section is not lost yet
			r.lose(text, line)
		}
	}
	return text
}

// lose leaves out the section of the file that holds a line, and notes it as
// lost. It reports false when there was nothing to leave out.
func (r *reader) lose(text [][]rune, line int) bool {
	if line < 1 || line > len(text) {
		return false
	}
	first := line - 1
	for first > 0 && !heads(text[first]) {
		first--
	}
	name, _, _ := strings.Cut(string(text[first]), ":")
	r.lost[ownSpelling(strings.TrimSpace(name))] = true
	any := false
	for i := first; i < len(text) && (i == first || !heads(text[i])); i++ {
		any = any || len(text[i]) > 0
		text[i] = nil
	}
	return any
}

// heads reports whether a section of the file begins on the line: a key stands
// in its first column.
func heads(line []rune) bool {
	return len(line) > 0 && !strings.ContainsRune(" \t#-]}[{,'\"", line[0])
}

// severalDocuments reports where a second document begins.
func (r *reader) severalDocuments(text [][]rune) {
	content := false
	at := finding.Place{Line: 1, Column: 1}
	for i, line := range text {
		s := string(line)
		if content && (s == "---" || strings.HasPrefix(s, "--- ") || s == "..." || strings.HasPrefix(s, "... ")) {
			at.Line = i + 1
			break
		}
		s = strings.TrimSpace(s)
		content = content || s != "" && s[0] != '#' && s != "---"
	}
	r.fail(at, fault{
		rule: "left out of the language", what: "a second document in a room file",
		found: quote(string(text[at.Line-1])), allowed: "one room in one file",
		hint: "delete the line, or put the other room in a file of its own",
	})
}

// explain says in our words why the text could not be taken apart, and where.
func explain(text [][]rune, bad *badText) (finding.Place, fault) {
	has := func(part string) bool { return strings.Contains(bad.says, part) }
	line := ""
	if n := bad.at.Line; n >= 1 && n <= len(text) {
		line = string(text[n-1])
	}
	switch {
	case has("max depth"):
		return bad.at, tooDeep()
	case has("mapping values are not allowed"):
		if strings.Count(line, ": ")+strings.Count(line+"\n", ":\n") > 1 {
			return bad.at, fault{
				rule: "two keys on a line", what: "a second colon in the value",
				found: quote(line), allowed: "one `key: value` on a line, or several in { }",
				hint: "put quotes round a text that holds a colon",
			}
		}
		return startOf(text, bad.at.Line), margin(line)
	case has("did not find expected ',' or '}'"):
		return bad.from, fault{
			rule: "brackets", what: "a { is not closed, or a comma is missing after it",
			found: quote(rest(text, bad.from)), allowed: "{key: value, key: value}",
			hint: "stopped at " + Where(bad.at),
		}
	case has("did not find expected ',' or ']'"):
		return bad.from, fault{
			rule: "brackets", what: "a [ is not closed, or a comma is missing after it",
			found: quote(rest(text, bad.from)), allowed: "[0, 15-1/4, 31-3/8]",
			hint: "stopped at " + Where(bad.at),
		}
	case has("did not find expected key"), has("did not find expected '-' indicator"):
		if bad.at.Line >= 1 && startOf(text, bad.at.Line).Column < bad.at.Column {
			return bad.at, fault{
				rule: "after the value", what: "something behind a closed quote or bracket",
				found: quote(rest(text, bad.at)), allowed: "nothing more on the line, or a comment after a space and #",
				hint: "lengths need no quotes: write 12' 6-1/2\" as it is",
			}
		}
		return startOf(text, bad.at.Line), margin(line)
	case has("block sequence entries are not allowed"):
		return bad.at, fault{
			rule: "list on the line of its key", what: "a list begins behind its key",
			found: quote(line), allowed: "the first `- ` on a line of its own, below the key",
		}
	case has("could not find expected ':'"):
		at := bad.from
		if at.Line == 0 {
			at = bad.at
		}
		at = startOf(text, at.Line)
		return at, fault{
			rule: "no colon", what: "a line that is no key and no value",
			found: quote(rest(text, at)), allowed: "`key: value`",
			hint: "a key needs a colon and a space behind it",
		}
	case has("cannot start any token"), has("did not find expected node content"):
		return bad.at, fault{
			rule: "first letter of a value", what: "a value cannot begin with this sign",
			found: quote(rest(text, bad.at)), allowed: "a word or a number",
			hint: "put the value in quotes if the sign belongs to it",
		}
	case has("unknown escape"), has("did not find expected hexdecimal"), has("escape"):
		return bad.at, fault{
			rule: "quotes", what: "a backslash in a text in double quotes",
			found: quote(rest(text, bad.at)), allowed: "text in single quotes",
			hint: "in double quotes a backslash is not itself; use single quotes",
		}
	case has("anchor"), has("alias"):
		return bad.at, fault{
			rule: "left out of the language", what: "an alias in a room file",
			found: quote(rest(text, bad.at)), allowed: "plain keys and values",
			hint: "a text that begins with * or & needs quotes",
		}
	case has("incompatible YAML"), has("directive"):
		return bad.at, fault{
			rule: "left out of the language", what: "a line for the reader of the text in a room file",
			found: quote(line), allowed: "plain keys and values", hint: "delete the line",
		}
	}
	at := bad.at
	if at.Line == 0 {
		at = finding.Place{Line: 1, Column: 1}
	}
	return at, fault{
		rule: "not a room file", what: "the reader cannot make out this line",
		found: quote(line), allowed: "`key: value`, `- ` before each thing of a list, comments after #",
	}
}

// margin is the answer to a line that starts in no column of those above it.
func margin(line string) fault {
	return fault{
		rule: "margin", what: "this line does not line up with those above it",
		found: quote(line), allowed: "keys of one thing in one column",
		hint: "two spaces for each step inwards; behind `- ` the keys stand under the first one",
	}
}

// noSpace is the answer to a key that is stuck to its value.
func noSpace(written string) fault {
	key, value, _ := strings.Cut(written, ":")
	return fault{
		rule: "no space after the colon", what: "no space after the colon",
		found: quote(written), allowed: "`key: value`", hint: "write " + brief(key+": "+value),
	}
}

// startOf is the place of the first letter of a line.
func startOf(text [][]rune, line int) finding.Place {
	if line < 1 || line > len(text) {
		return finding.Place{Line: max(line, 1), Column: 1}
	}
	for i, c := range text[line-1] {
		if c != ' ' {
			return finding.Place{Line: line, Column: i + 1}
		}
	}
	return finding.Place{Line: line, Column: 1}
}

// rest is what stands on a line from a place on.
func rest(text [][]rune, at finding.Place) string {
	if at.Line < 1 || at.Line > len(text) {
		return ""
	}
	line := text[at.Line-1]
	return string(line[min(max(at.Column-1, 0), len(line)):])
}

// tightColon looks for a key of the language that is stuck to its value, on
// the line of an error or the one above it.
func tightColon(text [][]rune, line int) (finding.Place, string, bool) {
	for n := line; n >= 1 && n >= line-1; n-- {
		if n > len(text) {
			continue
		}
		s := strings.TrimLeft(string(text[n-1]), " ")
		column := len(text[n-1]) - len([]rune(s)) + 1
		for strings.HasPrefix(s, "- ") {
			t := strings.TrimLeft(s[2:], " ")
			column += len(s) - len(t)
			s = t
		}
		first, _, _ := strings.Cut(s, " #")
		first = strings.TrimSpace(first)
		key, value, ok := strings.Cut(first, ":")
		if ok && value != "" && value[0] != ' ' && isKey(key) {
			return finding.Place{Line: n, Column: column}, first, true
		}
	}
	return finding.Place{}, "", false
}

// openQuote looks for a value that opens a quote and does not close it on its
// line, up to the line at which the loader stopped.
func openQuote(text [][]rune, bad *badText) (finding.Place, rune, bool) {
	last := min(bad.at.Line, len(text))
	for n := 1; n <= last; n++ {
		line := text[n-1]
		starts := true // a value may start here
		deep := 0      // brackets open
		for i := 0; i < len(line); i++ {
			c := line[i]
			blank := i == 0 || line[i-1] == ' '
			switch {
			case c == '#' && blank:
				i = len(line)
			case starts && (c == '\'' || c == '"'):
				end := closing(line, i)
				if end < 0 {
					return finding.Place{Line: n, Column: i + 1}, c, true
				}
				i, starts = end, false
			case c == ' ':
			case starts && (c == '[' || c == '{'):
				deep++
			case deep > 0 && (c == ']' || c == '}'):
				deep--
				starts = false
			case c == ':' && (i+1 == len(line) || line[i+1] == ' '),
				c == '-' && starts && (i+1 == len(line) || line[i+1] == ' '),
				c == ',' && deep > 0:
				starts = true
			default:
				starts = false
			}
		}
	}
	return finding.Place{}, 0, false
}

// closing gives the index of the quote that closes the one at i, or -1.
func closing(line []rune, i int) int {
	mark := line[i]
	for j := i + 1; j < len(line); j++ {
		switch {
		case mark == '"' && line[j] == '\\':
			j++
		case line[j] == mark && mark == '\'' && j+1 < len(line) && line[j+1] == mark:
			j++
		case line[j] == mark:
			return j
		}
	}
	return -1
}
