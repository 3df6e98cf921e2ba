package roomfile

import (
	"strings"

	"roomwright/geom"
	"roomwright/geom/measure"
)

// span reads both edges of a thing: `0 to 14`. Each end may be about when the
// thing is there.
func (r *reader) span(n *node, there bool) (from, to geom.Length, about, ok bool) {
	allowed := "both edges, such as 0 to 14"
	s, ok := r.word(n, allowed)
	if !ok {
		return 0, 0, false, false
	}
	a, b, both := strings.Cut(s, " to ")
	if !both {
		hint := ""
		if x, y, dash := strings.Cut(s, "-"); dash && digits(strings.TrimSpace(x)) && digits(strings.TrimSpace(y)) {
			hint = "write " + strings.TrimSpace(x) + " to " + strings.TrimSpace(y)
		}
		r.fail(n.at, fault{
			rule: "spans", what: "one edge where both are wanted", found: brief(s), allowed: allowed, hint: hint,
		})
		return 0, 0, false, false
	}
	one := func(s string) (geom.Length, bool) {
		if !there {
			if r.hedged(s, n) {
				return 0, false
			}
			return r.figure(s, n, fromZero)
		}
		l, near, within, ok := r.taped(s, n, fromZero)
		about = about || near || within > 0
		return l, ok
	}
	from, ok1 := one(a)
	to, ok2 := one(b)
	if ok1 && ok2 && to <= from {
		r.fail(n.at, fault{
			rule: "spans", what: "the far edge is not beyond the near one", found: brief(s), allowed: allowed,
		})
		return 0, 0, false, false
	}
	return from, to, about, ok1 && ok2
}

// marks reads a run of marks, each beyond the one before; end is where they
// run from.
func (r *reader) marks(n *node, end string) (marks []geom.Length, about, ok bool) {
	if n.kind != list {
		r.fail(n.at, fault{
			rule: "marks", what: "no list of marks", found: found(n),
			allowed: "each mark as read, such as [0, 15-1/4, 31-3/8]",
		})
		return nil, false, false
	}
	ok = true
	var texts []string
	for _, c := range n.items {
		s, good := r.word(c, "a mark")
		if !good {
			ok = false
			continue
		}
		l, near, within, good := r.taped(s, c, fromZero)
		if !good {
			ok = false
			continue
		}
		about = about || near || within > 0
		if k := len(marks); k > 0 && l <= marks[k-1] && ok {
			r.fail(c.at, fault{
				rule: "marks", what: "marks do not run on", found: brief(s) + " after " + brief(texts[k-1]),
				allowed: "each mark greater than the one before it", hint: r.gaps(n, end),
			})
			ok = false
		}
		marks, texts = append(marks, l), append(texts, s)
	}
	if len(n.items) == 0 {
		r.fail(n.at, fault{rule: "marks", what: "an empty list of marks", found: "no value", allowed: "each mark as read, such as [0, 15-1/4, 31-3/8]"})
		ok = false
	}
	return marks, about, ok
}

// gaps is the hint for marks that are perhaps the gaps between the studs: the
// marks that they would make.
func (r *reader) gaps(n *node, end string) string {
	var sum geom.Length
	var out []string
	bare := measure.Show{Form: measure.InchesOnly, To: r.show.To}
	if r.units == measure.Millimetres {
		bare = measure.DefaultShow(measure.Millimetres)
	} else if bare.To <= 0 || bare.To%(geom.Inch/64) != 0 {
		bare.To = geom.Inch / 16
	}
	for _, c := range n.items {
		l, err := measure.Parse(strings.TrimPrefix(c.text, aboutMark), r.units)
		if c.kind != word || err != nil || l < 0 || l > longest || sum > longest {
			return "the marks run from " + end
		}
		sum += l
		out = append(out, bare.Say(sum))
	}
	const shown = 12
	if len(out) > shown {
		out = append(out[:shown], "...")
	}
	return "these look like gaps; read them from " + end + " without moving the tape: " + strings.Join(out, ", ")
}
