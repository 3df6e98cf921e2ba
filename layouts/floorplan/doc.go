// Package floorplan draws the room from above: walls cut about four feet up,
// with studs as found, openings wanted, doors and windows, and the marks of
// elevations and sections.
//
// In and out: a result and a scale in, a plate out. Units and axes: plan axes
// of package geom; the first wall across the top of the page.
//
// Beside the plan: the survey, each reading with what it was set out as and how
// far it is from what the others want.
//
// Errors: none. Limits: the thickness of masonry is not taped; such walls are
// drawn as a band of one width on paper and a note says so. Where words have no
// room in the plan, a note has them.
//
// Source: cut height and what is drawn heavy, common practice, no source.
package floorplan
