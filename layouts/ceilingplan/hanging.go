package ceilingplan

import (
	"fmt"
	"strings"

	"roomwright/geom"
	"roomwright/geom/ceiling"
	"roomwright/layouts/drawing"
)

// mainTable says how each stick of main tee is cut: from which length, what
// comes off which end.
func (v *view) mainTable() drawing.Table {
	first, last, start := "left end", "right end", "wall "+v.start()
	if !v.c.MainsAlongX {
		first, last = "upper end", "lower end"
	}
	t := drawing.Table{
		Heading: "Cuts of the main tees",
		Columns: []drawing.Column{{Heading: "stick", Bold: true}, {Heading: "from length", Right: true}, {Heading: first}, {Heading: last}, {Heading: "splice, from " + start, Right: true}},
	}
	used := map[int]bool{} // lengths that a stick was cut from already
	for _, m := range v.c.Mains {
		for i, k := range m.Sticks {
			again := used[k.Stock]
			used[k.Stock] = true
			from, to := v.ends(m, i, again)
			splice := ""
			if i < len(m.Splices) {
				splice = v.show.Figure(v.along(m, m.Splices[i]))
			}
			t.Rows = append(t.Rows, []string{string(k.Mark), fmt.Sprint(k.Stock), from, to, splice})
		}
	}
	return t
}

// ends says how the two ends of a stick are cut.
func (v *view) ends(m ceiling.Main, i int, again bool) (from, to string) {
	const factory = "factory end"
	k, n := m.Sticks[i], len(m.Sticks)
	off := func(l geom.Length) string {
		if l <= 0 {
			return "factory end"
		}
		return "cut " + v.show.Figure(l) + " off"
	}
	from, to = factory, factory
	if i == 0 {
		from = off(m.StartCut)
		if again { // the factory end at the start is gone
			from = "cut to length"
		}
	}
	if i == n-1 {
		to = "cut to length"
		rest := v.c.MainStock - k.Length
		if i == 0 {
			rest -= m.StartCut
		}
		if i == 0 && again || rest <= 0 {
			to = off(rest)
		}
	}
	return from, to
}

// start names the wall at which the main tees start.
func (v *view) start() string {
	if v.c.MainsAlongX {
		return v.sides[3].Wall.Name
	}
	return v.sides[0].Wall.Name
}

// along returns how far along a main tee a place is, from the wall where it starts.
func (v *view) along(m ceiling.Main, p geom.Point) geom.Length {
	if v.c.MainsAlongX {
		return p.X - m.From.X
	}
	return m.From.Y - p.Y
}

// wires lists the hanger wires by main tee, where each hangs and how long it is
// cut, then the wires of the lights.
func (v *view) wires() drawing.Table {
	t := drawing.Table{
		Heading: "Hanger wires",
		Columns: []drawing.Column{{Heading: "on", Bold: true}, {Heading: "along it from wall " + v.start()}, {Heading: "no.", Right: true}, {Heading: "wire", Right: true, Bold: true}},
	}
	for _, m := range v.c.Mains {
		at := map[geom.Length][]string{}
		var lengths []geom.Length
		for _, h := range v.c.Hangers {
			if h.Main != m.Mark || h.Light != "" {
				continue
			}
			if at[h.Wire] == nil {
				lengths = append(lengths, h.Wire)
			}
			at[h.Wire] = append(at[h.Wire], v.show.Figure(v.along(m, h.At)))
		}
		for _, w := range lengths {
			t.Rows = append(t.Rows, []string{string(m.Mark), strings.Join(at[w], ",  "), fmt.Sprint(len(at[w])), v.show.Figure(w)})
		}
	}
	t.Rows = append(t.Rows, v.lightWires()...)
	return t
}

// lightWires lists the wires of the lights, alike ones together.
func (v *view) lightWires() [][]string {
	type kind struct {
		wires int
		long  geom.Length
	}
	var order []kind
	lights := map[kind][]string{}
	for _, l := range v.c.Lights {
		k := kind{}
		for _, h := range v.c.Hangers {
			if h.Light == l.Mark {
				k.wires++
				k.long = max(k.long, h.Wire)
			}
		}
		if k.wires == 0 {
			continue
		}
		if lights[k] == nil {
			order = append(order, k)
		}
		lights[k] = append(lights[k], string(l.Mark))
	}
	var out [][]string
	for _, k := range order {
		corners := map[int]string{1: "upper left corner", 2: "upper left and lower right corners"}[k.wires]
		if corners == "" {
			corners = "every corner"
		}
		list := lights[k]
		if len(list) > 1 {
			corners += " of each"
		}
		out = append(out, []string{strings.Join(list, ", "), corners, fmt.Sprint(k.wires * len(list)), v.show.Figure(k.long)})
	}
	return out
}
