// Package marks draws the signs of the sheets: tie-on labels, letters of walls
// and sections, saw cuts, pieces taken out, hangers, lights, scale bars, and
// finds free places for labels and words.
//
// In and out: places in true size in, elements or groups of a drawing out.
//
// Units and axes: points are real lengths in the axes of the view, x right and
// y up; all sizes of signs are paper lengths taken through the scale. A scale
// bar alone is drawn in paper.
//
// Errors: none; a placer that finds no free place says so and draws nothing.
//
// Limits: the placer knows upright boxes; slanting lines are cut into small
// ones.
//
// Source: the forms and sizes are our own choice (common practice, no source).
package marks
