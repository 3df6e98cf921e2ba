package lining

import (
	"roomwright/geom"
	"roomwright/geom/rules"
)

// strip is a row of sheets that is not placed yet.
type strip struct {
	n     int
	w     geom.Length // of a sheet as bought
	gap   geom.Length
	bars  bars
	judge bool // what it bears on is known and not everywhere
}

// spot is a place for a strip: start is the left edge of the first sheet before
// anything is cut off it; from and to are the ends of the row as hung.
type spot struct{ start, from, to geom.Length }

// whole returns the length of the row when nothing is cut.
func (s strip) whole() geom.Length {
	return geom.Length(s.n)*s.w + geom.Length(s.n-1)*s.gap
}

// put lays the strip at start within free and cuts what stands out at either
// end; ok is false when an end sheet would be left narrower than is hung, or
// when one sheet fewer would reach as far.
func (s strip) put(start geom.Length, free geom.Span) (p spot, ok bool) {
	p = spot{start: start, from: max(start, free.From), to: min(start+s.whole(), free.To)}
	if p.from >= p.to || s.lost(p) >= s.w+s.gap {
		return p, false
	}
	least := min(s.w, rules.BoardLeastStrip)
	first := min(start+s.w, p.to) - p.from
	last := p.to - max(start+s.whole()-s.w, p.from)
	return p, first >= least && last >= least
}

// lost returns how much is cut off the row.
func (s strip) lost(p spot) geom.Length { return s.whole() - (p.to - p.from) }

// cuts returns how many sheets are narrower than as bought.
func (s strip) cuts(p spot) int {
	first, last := p.from > p.start, p.to < p.start+s.whole()
	switch {
	case first && last && s.n > 1:
		return 2
	case first || last:
		return 1
	}
	return 0
}

// sheets returns the sheets as hung, left to right.
func (s strip) sheets(p spot) []geom.Span {
	out := make([]geom.Span, s.n)
	for i := range out {
		left := p.start + geom.Length(i)*(s.w+s.gap)
		out[i] = geom.Span{From: max(left, p.from), To: min(left+s.w, p.to)}
	}
	return out
}

// seams returns both ends and all seams of the strip, left to right.
func (s strip) seams(p spot) []Seam {
	out := make([]Seam, 0, s.n+1)
	out = append(out, s.end(p.from, false))
	for k := 1; k < s.n; k++ {
		left := p.start + geom.Length(k)*(s.w+s.gap) - s.gap
		out = append(out, s.seam(left))
	}
	return append(out, s.end(p.to, true))
}

// seam judges the seam whose left sheet ends at left.
func (s strip) seam(left geom.Length) Seam {
	seam := Seam{X: left + s.gap/2, Borne: !s.judge}
	if s.judge {
		seam.OnLeft, seam.OnRight = s.bars.leftOf(left), s.bars.rightOf(left+s.gap)
		seam.Borne = seam.OnLeft >= rules.BoardBearing && seam.OnRight >= rules.BoardBearing
		seam.StudNo = s.studAt(seam.X)
	}
	return seam
}

// end judges an outer edge at x.
func (s strip) end(x geom.Length, right bool) Seam {
	seam := Seam{X: x, End: true, Borne: !s.judge}
	if s.judge {
		if right {
			seam.OnLeft = s.bars.leftOf(x)
		} else {
			seam.OnRight = s.bars.rightOf(x)
		}
		seam.Borne = max(seam.OnLeft, seam.OnRight) >= rules.BoardBearing
		seam.StudNo = s.studAt(x)
	}
	return seam
}

// studAt returns the number of the stud at x, 0 when none is numbered.
func (s strip) studAt(x geom.Length) int {
	if b, ok := s.bars.at(x); ok {
		return b.stud
	}
	return 0
}
