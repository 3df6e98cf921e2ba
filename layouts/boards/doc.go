// Package boards draws the layout of full boards on one wall: each sheet with
// its mark, the studs behind, the seams, the lines of fixings and the margins.
//
// In and out: a result, the index of a wall and a scale in; a plate out, with
// the drawing, tables of sheets and seams, notes and a legend.
//
// Units and axes: x to the right from the wall's left corner as taped, y up
// from the finished floor. Running marks and the chain of widths run from the
// finished face at the left corner, where the tape is hooked when boards are
// hung.
//
// Errors: none. Limits: where two rows of boards share a stretch of the wall
// the chain follows the lower one.
//
// Source: common practice, no source.
package boards
