package roomfile

import (
	"strconv"
	"strings"

	"roomwright/geom"
	"roomwright/geom/measure"
)

// drawingSection lists the keys of the sheets.
func drawingSection() section[file] {
	keys := []key[file]{
		{name: "paper", star: true, form: "letter, tabloid, A4, A3", means: "the sheet", need: defaulted,
			read: func(r *reader, _ *file, e entry) {
				r.room.Drawing.Paper, _ = r.choice(e, "", "letter", "tabloid", "A4", "A3")
			}},
		{name: "orientation", form: "landscape, portrait", means: "how the sheet lies", need: defaulted,
			read: func(r *reader, _ *file, e entry) {
				s, _ := r.choice(e, "", "landscape", "portrait")
				r.room.Drawing.Portrait = s == "portrait"
			}},
		{name: "scale", form: "1/2 in to 1 ft, or 1:20", means: "left out, the largest standard scale that fits",
			read: func(r *reader, _ *file, e entry) {
				r.room.Drawing.Scale = r.scale(e.value)
			}},
		{name: "leave out", form: "a view, or a list of views: elevations, boards, ceiling plan, floor plan, section", means: "views not wanted",
			read: func(r *reader, _ *file, e entry) {
				items := []*node{e.value}
				if e.value.kind == list {
					items = e.value.items
				}
				for _, n := range items {
					s, ok := r.choice(entry{name: e.name, value: n}, "", "elevations", "boards", "ceiling plan", "floor plan", "section")
					if ok {
						r.room.Drawing.LeaveOut = append(r.room.Drawing.LeaveOut, s)
					}
				}
			}},
		noteKey(func(f *file) *string { return &f.note }),
	}
	keys = append(keys, later[file]("strips")...)
	return section[file]{name: "the drawing", word: "drawing", keys: keys}
}

// scale reads 1:20, or a paper length to a real one.
func (r *reader) scale(n *node) int64 {
	allowed := "a scale, such as 1/2 in to 1 ft, or 1:20"
	s, ok := r.word(n, allowed)
	if !ok {
		return 0
	}
	ratio := int64(0)
	if one, many, colon := strings.Cut(s, ":"); colon {
		if v, err := strconv.ParseInt(strings.TrimSpace(many), 10, 64); err == nil && strings.TrimSpace(one) == "1" {
			ratio = v
		}
	} else if paper, real, both := strings.Cut(s, " to "); both {
		p, err1 := measure.Parse(paper, r.units)
		t, err2 := measure.Parse(real, r.units)
		if err1 == nil && err2 == nil && p > 0 && t > 0 && t <= 100*geom.Metre && t%p == 0 {
			ratio = int64(t / p)
		}
	}
	if ratio < 1 || ratio > 1000 {
		r.fail(n.at, fault{
			rule: "scales", what: "not a scale", found: brief(s), allowed: allowed, hint: "from 1:1 to 1:1000, a whole number",
		})
		return 0
	}
	return ratio
}
