// Package survey turns tape readings into corner positions and says how well
// the readings agree.
//
// In and out: a room in, a Plan out, with findings: the corners as taped, the
// rough and the finished outline, and the misfit of each reading, which is the
// reading less what all the others want.
//
// How: with five or more different distances the corners are those that suit
// all readings best (least squares, each weighted by 1/tolerance²); with
// fewer, or where the room says so, corners are square, and opposite walls
// share their weighted mean. Outlines move each wall's line square off itself
// by its lining and cut neighbours with each other.
//
// Units and axes: plan axes of package geom; the first wall runs along +x from
// the origin. Lengths are whole; a square room stays exact, others are rounded
// once, to the nearest 1/16 µm.
//
// Errors: a misfit greater than the survey closes within (or than rough
// readings explain), tapings of one length that do not agree, readings that no
// room can have, lengths that nothing gives, linings that leave no room.
//
// Limits: four walls, each turning right; readings to 100 m. One spare reading
// shows that something is wrong, not what: the reading named is then a guess
// that favours square corners.
//
// Source: Pythagoras and the method of least squares; the tolerances taken
// where a room gives none are common practice, no source.
package survey
