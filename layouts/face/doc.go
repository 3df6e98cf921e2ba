// Package face draws what views of one wall share: the structure, floor and
// neighbours round it, the sticks of its framing, its doors, windows and
// services, the margin at its left; and finds free places for words and marks.
//
// In and out: a result, the index of a wall and a scale in; drawing elements
// in true size out. Views put them together and add their own.
//
// Units and axes: x to the right from the wall's left corner as taped, y up
// from the finished floor; sizes of symbols, gaps and text are paper lengths
// multiplied by the scale.
//
// Errors: none; what has no size is not drawn. Limits: one wall, seen square
// on from inside the room.
//
// Source: line widths and their meaning follow the classic rules for visible,
// hidden and cut edges as taught with ISO 128; sizes of symbols are our own
// choice (common practice, no source).
package face
