// Package dimension turns dimensions into lines, ticks and figures: chains
// beside a view, single ones inside it, the ladder of heights and the stick
// with its running marks.
//
// In and out: positions in true size in, elements of a drawing out. Positions
// are rounded once, from the datum; every figure of a chain is the difference
// of two rounded positions, so that the figures of a chain add up to its
// overall.
//
// Units and axes: positions are real lengths in the axes of the view; all
// sizes of figures, ticks and distances are paper lengths taken through the
// scale. Along a chain is to the right or up, out is away from the object.
//
// Errors: none; an empty chain draws nothing, and positions that coincide give
// no dimension.
//
// Limits: only linear dimensions, across or up. Positions must be ascending.
//
// Source: extension line 1/16 in off the object, text above the line, vertical
// figures read from the right, positions rounded from the datum, ticks at 45
// degrees: common drafting practice as taught (ISO 129-1 public excerpt for
// the reading direction). Sizes in millimetres are our own choice (common
// practice, no source).
package dimension
