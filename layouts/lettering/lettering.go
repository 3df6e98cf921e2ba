package lettering

import (
	_ "embed"
	"regexp"
	"strings"

	"roomwright/layouts/paper"
)

//go:embed regular.ttf
var regularTTF []byte

//go:embed bold.ttf
var boldTTF []byte

// Family is the name under which the fonts are embedded.
const Family = "Roomwright Drawing"

// CapShare is the height of a capital as a share of the em, times 1000.
const CapShare = 729

// Font returns the TrueType file of a weight.
func Font(bold bool) []byte {
	if bold {
		return boldTTF
	}
	return regularTTF
}

// Run is a stretch of text of one size.
type Run struct {
	Text  string
	At    paper.Length // from the start of the whole text
	Cap   paper.Length // cap height of this run
	Raise paper.Length // above the baseline
}

// fraction finds the fractions that are set small.
var fraction = regexp.MustCompile(`(\d+ )?\b(\d+)/(\d+)\b`)

// Set breaks s into runs: a fraction gets a raised small numerator and a small
// denominator, and the space before it is half a space.
func Set(s string, cap paper.Length, bold bool) []Run {
	var runs []Run
	at := paper.Length(0)
	put := func(text string, size paper.Length, raise, pull paper.Length) {
		if text == "" {
			return
		}
		at -= pull
		runs = append(runs, Run{Text: text, At: at, Cap: size, Raise: raise})
		at += advance(text, size, bold) - pull
	}
	em := cap * 1000 / CapShare
	if !strings.Contains(s, "/") {
		put(s, cap, 0, 0)
		return runs
	}
	last := 0
	for _, m := range fraction.FindAllStringSubmatchIndex(s, -1) {
		head := s[last:m[0]]
		if m[2] >= 0 {
			put(head+s[m[2]:m[3]-1], cap, 0, 0)
			put(" ", cap/2, 0, 0)
		} else {
			put(head, cap, 0, 0)
		}
		put(s[m[4]:m[5]], cap*76/100, cap*27/100, 0)
		put("/", cap*9/10, 0, em*6/100)
		put(s[m[6]:m[7]], cap*76/100, 0, 0)
		last = m[7]
	}
	put(s[last:], cap, 0, 0)
	return runs
}

// Width returns the printed width of s.
func Width(s string, cap paper.Length, bold bool) paper.Length {
	runs := Set(s, cap, bold)
	if len(runs) == 0 {
		return 0
	}
	last := runs[len(runs)-1]
	return last.At + advance(last.Text, last.Cap, bold)
}

// Wrap breaks s into lines no wider than width; a single word that is wider
// stays whole. A whole number is never parted from its fraction.
func Wrap(s string, cap paper.Length, bold bool, width paper.Length) []string {
	var lines []string
	line := ""
	for _, word := range Words(s) {
		next := word
		if line != "" {
			next = line + " " + word
		}
		if line != "" && Width(next, cap, bold) > width {
			lines = append(lines, line)
			next = word
		}
		line = next
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// bare is a fraction at the head of a word, and number a whole number at the
// end of the word before it: "132 13/16," is one figure.
var (
	bare   = regexp.MustCompile(`^\d+/\d+`)
	number = regexp.MustCompile(`(^|[^/\d])\d+$`)
)

// Words returns the parts of a text between which a line may end.
func Words(s string) []string {
	var out []string
	for _, word := range strings.Fields(s) {
		if n := len(out); n > 0 && bare.MatchString(word) && number.MatchString(out[n-1]) {
			out[n-1] += " " + word
			continue
		}
		out = append(out, word)
	}
	return out
}

// Has reports whether the fonts have a glyph for r.
func Has(r rune) bool { return parsed(false).has(r) }

// advance returns the width of plain text at one size.
func advance(s string, cap paper.Length, bold bool) paper.Length {
	f := parsed(bold)
	units := int64(0)
	for _, r := range s {
		units += f.advance(r)
	}
	// units are sixty-fourths of a font unit; the em is cap/0.729.
	return paper.Length(units * int64(cap) / 64 * 1000 / CapShare / f.upem)
}
