package layouts

import (
	"slices"
	"strings"
	"unicode"

	"roomwright/geom/finding"
)

// said is what the findings say to one sheet.
type said struct {
	cautions, warnings, remarks, assumed []string
}

// about gathers the findings that concern any of the things named; the empty
// name stands for the whole room.
func about(list []finding.Finding, on ...string) said {
	var s said
	for _, f := range joinedByHint(list, on) {
		switch {
		case f.Kind == finding.Caution:
			s.cautions = append(s.cautions, caution(f))
		case f.Kind == finding.Warning:
			s.warnings = append(s.warnings, sentence(f.What, f.Hint))
		case f.Kind == finding.Note && f.Rule == assumedRule:
			s.assumed = append(s.assumed, sentence(f.What, ""))
		case f.Kind == finding.Note:
			s.remarks = append(s.remarks, sentence(f.What, f.Hint))
		}
	}
	return s
}

// assumedRule is the rule under which the reader notes a value it assumed.
const assumedRule = "default"

// joinedByHint returns the findings on the things named, warnings of one rule
// with one hint as one.
func joinedByHint(list []finding.Finding, on []string) []finding.Finding {
	var out []finding.Finding
next:
	for _, f := range list {
		if !slices.Contains(on, f.On) {
			continue
		}
		if f.Kind == finding.Warning && f.Hint != "" {
			for i := range out {
				g := &out[i]
				if g.Kind == f.Kind && g.Rule == f.Rule && g.Hint == f.Hint {
					if !strings.Contains(g.What, f.What) {
						g.What += "; " + f.What
					}
					continue next
				}
			}
		}
		out = append(out, f)
	}
	return out
}

// caution returns a caution in full: what it says, what was found, what to do.
func caution(f finding.Finding) string {
	s := sentence(f.What, f.Hint)
	if f.Found != "" {
		s += " Found: " + strings.TrimRight(f.Found, ". ") + "."
	}
	return s
}

// sentence returns a sentence with its capital and full stop, a hint after a
// colon.
func sentence(what, hint string) string {
	what, hint = strings.TrimSpace(what), strings.TrimSpace(hint)
	if what == "" {
		return ""
	}
	if hint != "" {
		what = strings.TrimRight(what, ".") + ": " + hint
	}
	r := []rune(what)
	r[0] = unicode.ToUpper(r[0])
	if last := r[len(r)-1]; last != '.' && last != '!' && last != '?' {
		r = append(r, '.')
	}
	return string(r)
}
