// Package survey turns tape readings into corner positions and says how well
// the readings agree.
//
// In and out: a room in, a Plan out, with findings. Units and axes: plan axes
// of package geom; the first wall runs along +x from the origin.
//
// Errors: readings that miss closing by more than the room's tolerance,
// readings that no room can have. Limits: four walls, each turning right.
package survey
