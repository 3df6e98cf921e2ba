// Package ceiling sets out a suspended ceiling: the grid, its border panels,
// main tees with their splices and hangers, cross tees, wall angle, and the
// light panels on whole modules; and measures the space above it.
//
// In and out: a room and its surveyed plan in, a Ceiling out, with findings.
//
// Units and axes: plan axes of package geom (seen from above, not mirrored);
// heights from the finished floor. Borders run from wall face to tee centre.
//
// Errors: a ceiling above the structure, a light that fits no whole module.
package ceiling
