package lining

import (
	"cmp"
	"slices"

	"roomwright/geom"
	"roomwright/geom/rules"
)

// score tells how good a spot is; each figure is better when it is less, and
// an earlier one outweighs all later ones.
type score struct {
	seams int         // seams that are not borne
	short int         // 1 for a row that is cut and yet does not fill its space
	cuts  int         // sheets cut in width
	ends  int         // outer edges that are not borne
	fine  int         // 0 for a place that a person would choose: centred, or touching
	lost  geom.Length // cut off the row
	away  geom.Length // from the place asked for, or unequal ends
	least geom.Length // least bearing, less than zero, so that more is better
	at    geom.Length
}

// compare orders scores, the better first.
func (a score) compare(b score) int {
	return cmp.Or(
		cmp.Compare(a.seams, b.seams),
		cmp.Compare(a.short, b.short),
		cmp.Compare(a.cuts, b.cuts),
		cmp.Compare(a.ends, b.ends),
		cmp.Compare(a.fine, b.fine),
		cmp.Compare(a.lost, b.lost),
		cmp.Compare(a.away, b.away),
		cmp.Compare(a.least, b.least),
		cmp.Compare(a.at, b.at),
	)
}

// same reports whether a is as good as b in what is a need or an aim, the
// place aside.
func (a score) same(b score) bool {
	return a.seams == b.seams && a.short == b.short && a.cuts == b.cuts && a.ends == b.ends
}

// score judges spot p.
func (s strip) score(p spot) score {
	out := score{cuts: s.cuts(p), lost: s.lost(p), at: p.start}
	if !s.judge {
		return out
	}
	least := geom.Length(1 << 62)
	count := func(seam Seam) {
		if !seam.Borne && seam.End {
			out.ends++
		} else if !seam.Borne {
			out.seams++
		}
		if !seam.End {
			least = min(least, seam.OnLeft, seam.OnRight)
		}
	}
	for k := 1; k < s.n; k++ {
		count(s.seam(p.start + geom.Length(k)*(s.w+s.gap) - s.gap))
	}
	count(s.end(p.from, false))
	count(s.end(p.to, true))
	out.least = -least
	return out
}

// starts returns every place of the strip's start at which something changes:
// the fine ones first, where a seam or an outer edge centres on an upright or
// the row touches or halves free; then those where an edge begins or ceases to
// bear. They are unique within each kind and in order.
func (s strip) starts(free geom.Span) (fine, edge []geom.Length) {
	whole := s.whole()
	fine = []geom.Length{free.From, free.To - whole, free.From + (free.Len()-whole)/2}
	if !s.judge {
		return unique(fine), nil
	}
	for k := 0; k <= s.n; k++ {
		off := geom.Length(k) * (s.w + s.gap) // from the start to the sheet right of seam k
		for _, b := range s.bars.parts {
			mid := s.gap / 2
			if k == 0 {
				mid = 0
			} else if k == s.n {
				mid = s.gap
			}
			fine = append(fine, b.x.Mid()+mid-off)
		}
		for _, r := range s.bars.runs {
			if k < s.n {
				edge = append(edge, r.From-off, r.To-rules.BoardBearing-off)
			}
			if k > 0 {
				edge = append(edge, r.From+rules.BoardBearing+s.gap-off, r.To+s.gap-off)
			}
		}
	}
	return unique(fine), unique(edge)
}

// unique sorts list and drops doubles.
func unique(list []geom.Length) []geom.Length {
	slices.Sort(list)
	return slices.Compact(list)
}

// search returns the best spot for the strip in any of the free spans: the one
// nearest to near when that is given, else the one with the most equal ends.
func (s strip) search(free []geom.Span, near *geom.Length) (best spot, in geom.Span, ok bool) {
	var bestScore score
	for _, f := range free {
		fine, edge := s.starts(f)
		try := func(start geom.Length, rank int) {
			p, fits := s.put(start, f)
			if !fits {
				return
			}
			got := s.score(p)
			got.fine, got.away = rank, s.unequal(p, f)
			if near != nil {
				got.ends, got.fine, got.lost, got.away = 0, 0, 0, (start - *near).Abs()
			} else if got.lost > 0 && p.to-p.from < f.Len() {
				got.short = 1
			}
			if !ok || got.compare(bestScore) < 0 {
				best, bestScore, in, ok = p, got, f, true
			}
		}
		if near != nil {
			try(*near, 0)
		}
		for _, start := range fine {
			try(start, 0)
		}
		for _, start := range edge {
			try(start, 1)
		}
	}
	return best, in, ok
}

// unequal returns by how much the ends of a row in free differ.
func (s strip) unequal(p spot, free geom.Span) geom.Length {
	return (2*p.start + s.whole() - free.From - free.To).Abs()
}

// nearest returns the whole row nearest to start, and within limits, at which
// every seam is borne; uprights that a seam centres on come before any other.
func (s strip) nearest(start geom.Length, free []geom.Span) (spot, bool) {
	var best spot
	var bestScore score
	ok := false
	for _, f := range free {
		fine, edge := s.starts(f)
		for rank, list := range [][]geom.Length{fine, edge} {
			for _, at := range list {
				p, fits := s.put(at, f)
				got := s.score(p)
				if !fits || got.seams > 0 || got.cuts > 0 {
					continue
				}
				got = score{ends: got.ends, fine: rank, away: (at - start).Abs(), at: at}
				if !ok || got.compare(bestScore) < 0 {
					best, bestScore, ok = p, got, true
				}
			}
		}
	}
	return best, ok
}

// trimmed returns the row that keeps its left end at from, with so much cut
// off the first sheet that every seam is borne; the least cut first.
func (s strip) trimmed(from geom.Length, free geom.Span) (spot, bool) {
	free.From = from
	fine, edge := s.starts(free)
	for _, list := range [][]geom.Length{fine, edge} {
		for i := len(list) - 1; i >= 0; i-- {
			if list[i] >= from {
				continue
			}
			if p, fits := s.put(list[i], free); fits && s.score(p).seams == 0 {
				return p, true
			}
		}
	}
	return spot{}, false
}

// freeSpans returns what is left of span when the rectangles of keep that
// reach into the heights y are taken out.
func freeSpans(span geom.Span, y geom.Span, keep []geom.Rect) []geom.Span {
	var taken []geom.Span
	for _, k := range keep {
		if k.Y().Overlaps(y) && k.X().Overlaps(span) {
			taken = append(taken, k.X())
		}
	}
	slices.SortFunc(taken, func(a, b geom.Span) int { return cmp.Compare(a.From, b.From) })
	var out []geom.Span
	from := span.From
	for _, t := range taken {
		if from < t.From {
			out = append(out, geom.Span{From: from, To: t.From})
		}
		from = max(from, t.To)
	}
	if from < span.To {
		out = append(out, geom.Span{From: from, To: span.To})
	}
	return out
}
