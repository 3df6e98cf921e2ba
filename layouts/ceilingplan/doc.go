// Package ceilingplan draws the reflected ceiling plan: the grid with its
// borders figured, main tees with hangers and splices, light panels, and the
// joists, ducts and pipes above.
//
// In and out: a result with a ceiling and a scale in, a plate out.
//
// Units and axes: plan axes of package geom. The plan is the ceiling as in a
// mirror lying on the floor, so it is not turned over: left stays left.
//
// Every side bears the figures of its own wall, so that they hold in rooms out
// of square. Beside the plan: the list of pieces with the places where they go,
// how main tees are cut, and where each hanger wire hangs.
//
// Errors: none; a result without a ceiling gives an empty plate.
//
// Limits: at small scales a plan has no room for every mark; its notes then say
// which ones the list alone places.
//
// Source: orientation as in articles on reading reflected ceiling plans; line
// weights and names of panels are our own choice (common practice, no source).
package ceilingplan
