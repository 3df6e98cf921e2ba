// Package section draws sections in the manner of a carpenter's detail: what
// is cut stands out strong, what is seen beyond is thin, and callouts name
// every part.
//
// In and out: a result, a cut and a scale in; a plate out.
//
// Units and axes: y is the height from the finished floor. Across, the side of
// the wall that faces the room is at the left when the cut looks left along
// the wall, and at the right when it looks right, as one standing in the cut
// would see it; x is 0 at the left face of the wall's core. In the section of a
// ceiling x is a place of the plan along the cut, less than zero where it is
// looked at from the other side.
//
// Errors: none; a cut of an opening or ceiling that is not there gives an empty
// drawing; where the height of the structure is not known, none is drawn.
// Limits: the parts are straight sticks and flat sheets; a lining whose
// thickness is not known is not drawn.
//
// Source: crossed diagonals for cut lumber and hatching for cut sheets are
// common practice, no source.
package section
