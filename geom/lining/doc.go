// Package lining fixes full sheets on walls: where a row of boards goes, which
// sheets are cut, on what the seams and edges bear, and where they are fixed.
//
// In and out: a room, the surveyed plan and what each wall offers to fix to in;
// rows of boards out, with findings.
//
// Units and axes: as on the wall: x right from the left corner as taped, y up
// from the finished floor.
//
// Errors: a row longer than its wall, a sheet taller than the space.
package lining
