package roomfile

import "strings"

// nearest returns the word of list that is most like s, or "" when none is
// near enough to be meant.
func nearest(s string, list []string) string {
	few := len([]rune(s)) / 3 // letters that may be wrong; a short word only in its case
	best, least := "", 1+few
	for _, w := range list {
		if d := distance(strings.ToLower(s), strings.ToLower(w)); d < least {
			best, least = w, d
		}
	}
	return best
}

// meant is the hint that offers the nearest word of list, or "".
func meant(s string, list []string, quoted bool) string {
	w := nearest(s, list)
	switch {
	case w == "":
		return ""
	case quoted:
		return "did you mean " + quote(w) + "?"
	}
	return "did you mean " + w + "?"
}

// distance counts the letters to put in, take out, change or swap with their
// neighbour to make b of a.
func distance(a, b string) int {
	x, y := []rune(a), []rune(b)
	if len(x) > 80 || len(y) > 80 {
		return max(len(x), len(y))
	}
	before, last, row := make([]int, len(y)+1), make([]int, len(y)+1), make([]int, len(y)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(x); i++ {
		row[0] = i
		for j := 1; j <= len(y); j++ {
			change := 1
			if x[i-1] == y[j-1] {
				change = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+change)
			if i > 1 && j > 1 && x[i-1] == y[j-2] && x[i-2] == y[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(y)]
}
