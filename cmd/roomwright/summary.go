package main

import (
	"fmt"
	"strings"

	"roomwright/geom/ceiling"
	"roomwright/geom/framing"
	"roomwright/geom/lining"
	"roomwright/geom/measure"
	"roomwright/geom/room"
	"roomwright/geom/setout"
)

// summary says in words what is built, and its sizes.
func summary(r setout.Result) []string {
	show := r.Room.Show
	out := []string{r.Room.Title, "  room: " + roomSize(r)}
	for i, w := range r.Walls {
		out = append(out, wallLines(r.Room, w, i)...)
	}
	if r.Ceiling != nil {
		out = append(out, "  ceiling: "+ceilingSize(r.Ceiling, show))
	}
	for _, b := range r.Boards {
		out = append(out, "  boards: "+boardSize(r.Room, b))
	}
	return out
}

// roomSize says how large the room is between its finished faces.
func roomSize(r setout.Result) string {
	show := r.Room.Show
	var sides []string
	for _, s := range r.Plan.Sides {
		sides = append(sides, s.Wall+" "+show.Say(s.Finished))
	}
	return "between finished faces, " + unitWords(show) + ": " + strings.Join(sides, ", ")
}

// unitWords returns the units that figures without a unit are in.
func unitWords(s measure.Show) string {
	switch s.Form {
	case measure.MillimetresOnly:
		return "millimetres"
	case measure.InchesOnly:
		return "inches"
	}
	return "feet and inches"
}

func wallLines(rm *room.Room, w framing.Wall, i int) []string {
	show := rm.Show
	var out []string
	if w.Make == room.NewStuds {
		out = append(out, fmt.Sprintf("  wall %s: new stud wall, %s long, %s high", w.Name, show.Say(w.Length), show.Say(w.Top)))
	}
	for _, o := range w.Openings {
		h := rm.Openings[o.Index].Header
		cut := 0
		for _, c := range o.Cuts {
			if c.Upper {
				cut++
			}
		}
		line := fmt.Sprintf("  opening %s in wall %s: rough %s x %s, clear %s x %s, rough left edge %s from the left, rough bottom %s from the floor",
			o.Name, w.Name, show.Say(o.Rough.W()), show.Say(o.Rough.H()), show.Say(o.Clear.W()), show.Say(o.Clear.H()),
			show.Say(o.Rough.Min.X), show.Say(o.Rough.Min.Y))
		line += fmt.Sprintf("; header %d of %s", h.Plies, h.Timber.Name)
		if h.Flat {
			line += " laid flat"
		}
		if cut > 0 {
			line += fmt.Sprintf("; %d studs cut", cut)
		}
		out = append(out, line)
	}
	return out
}

func ceilingSize(c *ceiling.Ceiling, show measure.Show) string {
	s := fmt.Sprintf("face %s from the floor, grid %s x %s", show.Say(c.Face), show.Say(c.ModuleX), show.Say(c.ModuleY))
	if len(c.Strategy) > 0 {
		b := c.Strategy[0]
		s += fmt.Sprintf(", borders left %s, right %s, top %s, bottom %s",
			show.Say(b.LeftBorder), show.Say(b.RightBorder), show.Say(b.TopBorder), show.Say(b.BottomBorder))
	}
	s += fmt.Sprintf("; %d main tees, %d whole panels, %d cut, %d lights, %d hangers",
		len(c.Mains), c.Panels.Whole, c.Panels.Cut, len(c.Lights), len(c.Hangers))
	return s + "; least free height above the tees " + show.Say(c.Clear)
}

func boardSize(rm *room.Room, b lining.Row) string {
	show := rm.Show
	cut := 0
	for _, s := range b.Sheets {
		if s.CutW || s.CutH {
			cut++
		}
	}
	return fmt.Sprintf("%s on wall %s: %d sheets, %d of them cut, %s x %s in all, left edge %s from the left, bottom %s from the floor",
		b.Name, rm.Walls[b.Wall].Name, len(b.Sheets), cut, show.Say(b.Box.W()), show.Say(b.Box.H()), show.Say(b.Box.Min.X), show.Say(b.Box.Min.Y))
}
