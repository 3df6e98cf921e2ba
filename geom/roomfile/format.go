package roomfile

import (
	"strconv"
	"strings"
	"unicode"

	"roomwright/geom/finding"
)

// Format prints a finding as it is shown to people: its place, its kind and
// what it is, then the parts that have something to say, indented. Control
// characters and escape codes are left out.
func Format(f finding.Finding, file string) string {
	var b strings.Builder
	b.WriteString(clean(file) + ":")
	if f.Place != (finding.Place{}) {
		b.WriteString(Where(f.Place) + ":")
	}
	b.WriteString(" " + f.Kind.String() + ": " + clean(f.What) + "\n")
	for _, part := range [...]struct{ name, text string }{
		{"found:   ", f.Found},
		{"allowed: ", f.Allowed},
		{"hint:    ", f.Hint},
		{"source:  ", f.Source},
	} {
		if text := clean(part.text); text != "" {
			b.WriteString("  " + part.name + text + "\n")
		}
	}
	return b.String()
}

// Where prints a place as line:column.
func Where(p finding.Place) string {
	return strconv.Itoa(p.Line) + ":" + strconv.Itoa(p.Column)
}

// clean takes escape codes and control characters out of s, and puts a blank
// for each tab and line end.
func clean(s string) string {
	s = strings.ToValidUTF8(s, "?")
	if !strings.ContainsFunc(s, unprintable) {
		return s
	}
	var b strings.Builder
	chars := []rune(s)
	for i := 0; i < len(chars); i++ {
		switch c := chars[i]; {
		case c == 0x1b || c == 0x9b || c == 0x9d || c == 0x90:
			i = pastEscape(chars, i)
		case c == '\t' || c == '\n' || c == '\r':
			b.WriteByte(' ')
		case !unprintable(c):
			b.WriteRune(c)
		}
	}
	return b.String()
}

// pastEscape returns the index of the last character of the escape code that
// begins at i.
func pastEscape(chars []rune, i int) int {
	kind := chars[i]
	if kind == 0x1b {
		i++
		if i == len(chars) {
			return i
		}
		switch chars[i] {
		case '[':
			kind = 0x9b
		case ']', 'P', 'X', '^', '_':
			kind = 0x9d
		default:
			return i
		}
	}
	for i++; i < len(chars); i++ {
		c := chars[i]
		switch {
		case kind == 0x9b && c >= 0x40 && c <= 0x7e,
			kind != 0x9b && (c == 0x07 || c == 0x9c):
			return i
		case kind != 0x9b && c == 0x1b:
			if i+1 < len(chars) && chars[i+1] == '\\' {
				return i + 1
			}
			return i
		}
	}
	return i
}

// unprintable reports whether c steers a terminal or turns the direction of
// the text round it, rather than showing something.
func unprintable(c rune) bool {
	return unicode.IsControl(c) || c == '\u2028' || c == '\u2029' || c == '\ufeff' ||
		c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069'
}
