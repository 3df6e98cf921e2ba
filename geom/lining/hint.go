package lining

import (
	"fmt"
	"strings"

	"roomwright/geom"
)

// sayDown prints a length rounded down to what can be printed, for a greatest
// value that is to work when it is typed back.
func (j *job) sayDown(l geom.Length) string {
	return j.say(l.RoundDown(j.step()))
}

// step returns the step of printed figures.
func (j *job) step() geom.Length { return max(j.room.Show.To, 1) }

// always is no condition on a spot.
func always(spot) bool { return true }

// typeable says, in the words of the room file, the place nearest to start
// that printed figures can give, at which the row is whole and hangs over
// nothing, and that works; ok is false when none of the nearest does.
func (j *job) typeable(s strip, y geom.Span, start geom.Length, works func(spot) bool) (text string, ok bool) {
	whole := s.whole()
	key, value := j.typed(start, whole)
	rounded := value.Round(j.step())
	for _, v := range []geom.Length{rounded, rounded + j.step(), rounded - j.step()} {
		at := j.wall.Finished.From + v
		if strings.HasPrefix(key, "right") {
			at = j.wall.Finished.To - v - whole
		}
		p, fits := s.put(at, j.wall.Finished)
		if fits && v >= 0 && s.cuts(p) == 0 && len(j.over(p, y, true)) == 0 && works(p) {
			return key + j.say(v), true
		}
	}
	return "", false
}

// hintSeams gives the nearest whole row and the least cut of the first sheet
// at which every seam bears.
func (j *job) hintSeams(p placed) string {
	var hints []string
	spans := freeSpans(j.wall.Finished, p.y, j.keep(true))
	if q, ok := p.nearest(p.start, spans); ok && p.cuts(p.spot) == 0 {
		borne := func(at spot) bool { return p.score(at).seams == 0 }
		if text, ok := j.typeable(p.strip, p.y, q.start, borne); ok {
			hints = append(hints, text+" bears every seam")
		}
	}
	for _, free := range spans {
		if !free.Holds(p.from) || p.searched {
			continue
		}
		if q, ok := p.trimmed(p.from, free); ok {
			var on []string
			for _, s := range p.seams(q) {
				if !s.End {
					on = append(on, j.say(s.X))
				}
			}
			hints = append(hints, fmt.Sprintf("first sheet cut to %s puts the seams on %s; a row without a place across is cut so where it has to be",
				j.say(min(q.start+p.w, q.to)-q.from), and(on)))
		}
		break
	}
	if len(hints) == 0 {
		return "no place across bears every seam: nail a block behind each, or have the sheets cut to the studs"
	}
	return strings.Join(hints, "; ")
}
