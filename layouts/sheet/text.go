package sheet

import (
	"regexp"
	"strings"
	"unicode"

	"roomwright/geom"
	"roomwright/layouts/drawing"
	"roomwright/layouts/lettering"
	"roomwright/layouts/paper"
)

// tenth is a tenth of a millimetre on paper.
const tenth = paper.Length(geom.Millimetre / 10)

// The cap heights of a sheet.
const (
	capNumber  = 165 * tenth
	capAbout   = 95 * tenth
	capTitle   = 42 * tenth
	capKey     = 35 * tenth
	capHeading = 28 * tenth
	capWords   = 24 * tenth
)

// The longest lines: about 75 characters of words.
const widest = 1160 * geom.Length(tenth)

// mm returns so many millimetres of paper in the axes of a sheet.
func mm(v float64) geom.Length { return geom.Length(paper.MM(v)) }

// fraction finds a whole number and a fraction joined as a room file writes
// them.
var fraction = regexp.MustCompile(`\b(\d+)-(\d+/\d+)\b`)

// clean returns s without control characters, runs of white space as one
// space, and 1-1/4 as 1 1/4: a text as it may stand in one line of a drawing.
func clean(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case unicode.IsControl(r), unicode.Is(unicode.Cf, r), r == unicode.ReplacementChar:
			return -1
		}
		return r
	}, s)
	return fraction.ReplaceAllString(strings.Join(strings.Fields(s), " "), "$1 $2")
}

// pieces breaks a text of more than 700 characters, which no column may have
// room for, into several.
func pieces(s string) []string {
	const most = 700
	var out []string
	for len([]rune(s)) > most {
		head := string([]rune(s)[:most])
		if at := strings.LastIndex(head, " "); at > most/2 {
			head = head[:at]
		}
		out = append(out, head)
		s = strings.TrimSpace(s[len(head):])
	}
	return append(out, s)
}

// allPieces breaks the long ones of a list.
func allPieces(list []string) []string {
	var out []string
	for _, s := range list {
		out = append(out, pieces(s)...)
	}
	return out
}

// width returns the printed width of s.
func width(s string, cap paper.Length, bold bool) geom.Length {
	return geom.Length(lettering.Width(s, cap, bold))
}

// shorten cuts s so that it prints within w, an ellipsis at the end.
func shorten(s string, cap paper.Length, bold bool, w geom.Length) string {
	if width(s, cap, bold) <= w {
		return s
	}
	runes := []rune(s)
	for n := len(runes) - 1; n > 0; n-- {
		cut := strings.TrimRight(string(runes[:n]), " ,;.-") + "…"
		if width(cut, cap, bold) <= w {
			return cut
		}
	}
	return ""
}

// wrap breaks s into lines no wider than w; a word that is wider by itself is
// broken too.
func wrap(s string, cap paper.Length, bold bool, w geom.Length) []string {
	var out []string
	for _, line := range lettering.Wrap(s, cap, bold, paper.Length(w)) {
		for width(line, cap, bold) > w {
			runes := []rune(line)
			n := len(runes) - 1
			for n > 1 && width(string(runes[:n]), cap, bold) > w {
				n--
			}
			out = append(out, string(runes[:n]))
			line = string(runes[n:])
			if n <= 1 && len(runes) <= 2 {
				break
			}
		}
		out = append(out, line)
	}
	return out
}

// fit returns s in at most the given number of lines within w, at the first of
// sizes at which it fits; at the last size it is cut short.
func fit(s string, bold bool, w geom.Length, lines int, sizes ...paper.Length) ([]string, paper.Length) {
	for _, cap := range sizes {
		if width(s, cap, bold) <= w {
			return []string{s}, cap
		}
	}
	for _, cap := range sizes {
		if got := lettering.Wrap(s, cap, bold, paper.Length(w)); len(got) <= lines && within(got, cap, bold, w) {
			return got, cap
		}
	}
	cap := sizes[len(sizes)-1]
	got := wrap(s, cap, bold, w)
	if len(got) > lines {
		rest := strings.Join(got[lines-1:], " ")
		got = append(got[:lines-1:lines-1], shorten(rest, cap, bold, w))
	}
	return got, cap
}

func within(lines []string, cap paper.Length, bold bool, w geom.Length) bool {
	for _, l := range lines {
		if width(l, cap, bold) > w {
			return false
		}
	}
	return true
}

// words returns one line of text with its baseline at x, y.
func words(x, y geom.Length, s string, cap paper.Length, bold bool) drawing.Text {
	return drawing.Text{Layer: drawing.Words, At: geom.Pt(x, y), String: s, Cap: cap, Bold: bold}
}

// anchored returns t anchored at its middle or end.
func anchored(t drawing.Text, a drawing.Anchor) drawing.Text {
	t.Anchor = a
	return t
}

// rule returns a level line.
func rule(layer drawing.Layer, x0, x1, y geom.Length, pen drawing.Pen) drawing.Line {
	return drawing.Line{Style: drawing.Style{Layer: layer, Pen: pen}, A: geom.Pt(x0, y), B: geom.Pt(x1, y)}
}
