// Package lining fixes full sheets on walls: where a row of boards goes, which
// sheets are cut, on what the seams and edges bear, and where they are fixed.
//
// In and out: a room, the surveyed plan and what each wall offers to fix to
// in; rows of boards out, one for each board of the room, with findings.
//
// A place across that is given is kept, and what does not bear is reported
// with the nearest place that works. Without one it is searched: every seam
// borne, then fewest cuts, then borne ends, then the most equal ends. The
// search is exact: it tries each place at which a seam or an edge begins or
// ceases to bear, centres on a stud, or touches an end.
//
// Units and axes: as on the wall: x right from the left corner as taped, y up
// from the finished floor. Places of boards run from the finished faces.
//
// Errors: a row longer than its wall by more than its end sheets can lose, a
// sheet taller than the space, a row across a door, a window or an opening.
//
// Limits: sheets keep one level and one size; a row is never notched. What an
// anchor in masonry holds is not judged.
//
// Sources: with each figure in package rules.
package lining
