// Package geom holds the numbers everything else is made of: exact lengths,
// points, spans, rectangles and polygons in true size.
//
// Units and axes: a Length is a whole number of sixteenths of a micrometre,
// so that 1 mm (16,000), 1/64 in (6,350) and half of it are exact
// (arithmetic from 1 in = 25.4 mm exactly). In plan, x runs right and y up the
// page; the origin is the left end of the first wall, so that the first wall
// runs along +x and the room lies below it (y negative). On a wall, x runs
// right from its left end as seen from inside the room and y up from the
// finished floor.
//
// Errors: none; the zero value of every type is empty and safe to use.
//
// Limits: products of two lengths fit in 64 bits up to about 190 m by 190 m.
package geom
