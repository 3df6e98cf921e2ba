// Package elevation draws one wall seen from inside the room: its framing with
// the openings to be framed in, or the wall as it is with its doors, windows
// and boards.
//
// In and out: a result, the index of a wall and a scale in; a plate out, with
// the drawing, a table of its pieces, notes and a legend of what is on it.
//
// Units and axes: as on the wall: x to the right from the left corner as
// taped, y up from the finished floor. Running marks are left edges, as a tape
// hooked at that corner reads them; heights run from the finished floor.
//
// Errors: none; a result with errors is not to be drawn. Limits: what found no
// free place at a small scale is told by table and running marks alone.
//
// Source: what is drawn strong, thin and dashed follows the classic line rules
// as taught with ISO 128; a chain of dimensions stands nearest the smallest
// parts and the whole stands outermost (Architectural Working Drawings, 1983,
// list of dimensioning standards); the rest is common practice, no source.
package elevation
