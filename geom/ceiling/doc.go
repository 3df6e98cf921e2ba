// Package ceiling sets out a suspended ceiling: the grid, its border panels,
// main tees with their splices and hangers, cross tees, wall angle, and the
// light panels on whole modules; and measures the space above it.
//
// The set-out is searched, not guessed: of all offsets of the lines only
// finitely many can be best, each is scored by aims in a stated order (places
// that must be, least border, wishes, lights, equal borders, fewest cuts,
// widest border), and the best and the runner-up are kept with their figures.
//
// In and out: a room and its surveyed plan in, a Ceiling out, with findings.
//
// Units and axes: plan axes of package geom (seen from above, not mirrored);
// heights from the finished floor. Borders run from wall face to tee centre.
// Joists and things overhead run from the faces under the tape, the grid from
// the finished faces; off a wall out of square, from its innermost place.
//
// Errors: a ceiling above the structure, a light that fits no whole module, a
// must that cannot be kept.
//
// Limits: four-sided rooms, out of square by less than half a module; the
// grid is parallel to the first wall; nothing is designed for earthquakes.
//
// Source: US Navy builder training manual 14044, pp. 5-16 to 5-19; the rest
// beside each figure in package rules.
package ceiling
