// Package framing sets out the sticks of stud walls: the studs as found or as
// laid out, the plates, and openings framed into them with kings, jacks, a
// header, a rough sill and cripples; which studs are cut, at what heights, and
// what is taken out.
//
// In and out: a room, the index of a wall and the surveyed plan in; a Wall
// out, with findings. A masonry wall gives a Wall without members, as does one
// whose studs are not known.
//
// Units and axes: x to the right from the wall's left corner as taped, y up
// from the finished floor, on which the bottom plate lies.
//
// Errors: an opening wider or taller than its wall allows, across a door or
// another opening, a header that does not fit, no room for a jack, a stud that
// is not there. One that is only a wish goes to the nearest place that works.
//
// Limits: it never sizes a header for a wall that carries load; the room file
// names the header. The framing round doors that are there is not known and
// is drawn plain.
//
// Source: layout by US Navy builder training manual 14044; lengths of members
// and saw cuts derived and checked by worked examples computed for this
// project; the figures and their sources are in package rules.
package framing
