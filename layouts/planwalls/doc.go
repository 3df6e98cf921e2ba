// Package planwalls draws the walls of a room as a plan cuts them, for the
// floor plan and the ceiling plan alike.
//
// In and out: a result and a scale in; sides, and from them elements, out.
// Units and axes: plan axes of package geom. Errors: none.
//
// Limits: where two walls meet, masonry runs past a stud wall, and of two
// alike the first runs past the second. The thickness of masonry is not taped:
// such a wall, and a stud wall whose studs are not known, is a band of one width
// on paper.
package planwalls
