package roomfile

import (
	"strconv"
	"unicode/utf8"

	"roomwright/geom/finding"
)

// most is the size of the largest file that is read.
const most = 1 << 20

// source is the text of a room file, line by line, without line ends.
type source struct{ lines [][]rune }

// inside moves p into the text; a zero place stays zero.
func (s *source) inside(p finding.Place) finding.Place {
	if p == (finding.Place{}) || len(s.lines) == 0 {
		return finding.Place{}
	}
	p.Line = min(max(p.Line, 1), len(s.lines))
	p.Column = min(max(p.Column, 1), len(s.lines[p.Line-1])+1)
	return p
}

// bytes checks a file before it is taken apart: its size, its letters and its
// control characters. It reports false when the text is not fit to go on with.
func (r *reader) bytes(text []byte) (*source, bool) {
	if len(text) > most {
		r.fail(finding.Place{}, fault{
			rule: "size of the file", what: "the file is too large for a room file",
			found:   strconv.Itoa(len(text)) + " bytes",
			allowed: "at most " + strconv.Itoa(most) + " bytes",
		})
		return nil, false
	}
	s := &source{}
	var line []rune
	wrong := 0
	bad := func(f fault) {
		if wrong++; wrong <= 20 {
			r.fail(finding.Place{Line: len(s.lines) + 1, Column: len(line) + 1}, f)
		}
	}
	for i := 0; i < len(text); {
		c, n := utf8.DecodeRune(text[i:])
		switch {
		case c == '\ufeff' && i == 0:
			i += n
			continue
		case c == utf8.RuneError && n == 1:
			bad(fault{
				rule: "letters of the file", what: "a byte that is no letter in UTF-8",
				found: "byte " + strconv.Itoa(int(text[i])), allowed: "text saved as UTF-8",
				hint: "save the file again with the encoding UTF-8",
			})
		case c == '\r' || c == '\n':
			if c == '\r' && i+1 < len(text) && text[i+1] == '\n' {
				n = 2
			}
			s.lines = append(s.lines, line)
			line = nil
			i += n
			continue
		case c != '\t' && unprintable(c):
			bad(fault{
				rule: "letters of the file", what: "a control character",
				found: "character " + strconv.Itoa(int(c)), allowed: "text, tabs behind a value, line ends",
				hint: "delete it and type the line anew",
			})
		}
		line = append(line, c)
		i += n
	}
	s.lines = append(s.lines, line)
	return s, wrong == 0
}
