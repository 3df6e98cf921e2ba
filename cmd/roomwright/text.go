package main

import (
	"strings"
	"unicode"
)

// visible returns s without anything that would steer a terminal or turn the
// direction of its text.
func visible(s string) string {
	return strings.Map(func(r rune) rune {
		if steers(r) {
			return '?'
		}
		return r
	}, strings.ToValidUTF8(s, "?"))
}

// steers reports whether r is no letter but an order to a terminal.
func steers(r rune) bool {
	return unicode.IsControl(r) || r == '\u2028' || r == '\u2029' || r == '\ufeff' ||
		r >= '\u202a' && r <= '\u202e' || r >= '\u2066' && r <= '\u2069'
}

// nearest returns the word of list that is most like s, or "" when none is
// near enough to be meant: one letter in three may be wrong.
func nearest(s string, list []string) string {
	best, least := "", max(len([]rune(s))/3, 1)+1
	for _, w := range list {
		if d := distance(strings.ToLower(s), w); d < least {
			best, least = w, d
		}
	}
	return best
}

// distance counts the letters to put in, take out, change or swap with their
// neighbour to make b of a.
func distance(a, b string) int {
	x, y := []rune(a), []rune(b)
	if len(x) > 40 || len(y) > 40 {
		return max(len(x), len(y))
	}
	d := make([][]int, len(x)+1)
	for i := range d {
		d[i] = make([]int, len(y)+1)
		d[i][0] = i
	}
	for j := range d[0] {
		d[0][j] = j
	}
	for i := 1; i <= len(x); i++ {
		for j := 1; j <= len(y); j++ {
			cost := 1
			if x[i-1] == y[j-1] {
				cost = 0
			}
			d[i][j] = min(d[i-1][j]+1, d[i][j-1]+1, d[i-1][j-1]+cost)
			if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
				d[i][j] = min(d[i][j], d[i-2][j-2]+1)
			}
		}
	}
	return d[len(x)][len(y)]
}
