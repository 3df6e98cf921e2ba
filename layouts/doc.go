// Package layouts is the face of the wing that composes: what was computed
// becomes views, and views become a set of sheets.
//
// In and out: a result and options in; a Set out, with findings about the
// paper. A set is a floor plan, an elevation of every wall, the reflected
// ceiling plan and a board layout for each wall with boards, each with the
// sections that belong to it, and with the cautions, warnings and assumed
// values that concern it. The findings of reading the room file are taken from
// the result, where the command puts them.
//
// Units and axes: sheets in paper lengths; the drawings of Model in true size,
// placed side by side: elevations and boards stand on one line at their
// finished floor, plans on the same line at their lowest corner.
//
// Errors: only findings: a scale asked for at which a view does not fit.
//
// Limits: one room a set.
package layouts
