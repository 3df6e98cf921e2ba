// Package framing sets out the sticks of stud walls: the studs as found or as
// laid out, the plates, and openings framed into them with kings, jacks, a
// header, a rough sill and cripples; which studs are cut, at what heights, and
// what is taken out.
//
// In and out: a room, the index of a wall and the surveyed plan in; a Wall
// out, with findings. A masonry wall gives a Wall without members.
//
// Units and axes: x to the right from the wall's left corner as taped, y up
// from the finished floor.
//
// Errors: an opening wider or taller than its wall allows, across a door, a
// header that does not fit, no room for a jack.
//
// Limits: it never sizes a header for a wall that carries load; the room file
// names the header.
package framing
