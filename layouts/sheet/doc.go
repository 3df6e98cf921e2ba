// Package sheet puts views on paper: the main view at the largest scale that
// fits, sections beside it, cautions, warnings, notes, the legend, tables, the
// key square and the title band. It knows no trade.
//
// In and out: a Spec in, one Sheet or more out. What finds no room beside the
// view goes on to a continuation sheet; nothing overlaps and nothing is lost.
//
// Units and axes: a sheet's elements are in paper lengths, x right and y up
// from the bottom left corner of the paper, at scale 1:1.
//
// Errors: none; what could not be done as asked (a fixed scale at which the
// view does not fit) is told in words.
//
// Limits: a text too long for its place in the title band is set smaller, then
// cut short with an ellipsis.
//
// Source: fields of the title band after ISO 7200:2004 (as reproduced in an
// electrical drafting help page); sizes, places and margins are our own choice
// (common practice, no source).
package sheet
