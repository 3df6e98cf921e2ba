// Package check looks at a room and at what the builders made of it, across
// trades, for what can hurt somebody or does not go together: load, live
// cables, old paint and old ceilings, glass, headroom, and doors, openings and
// boards against the ceiling.
//
// In and out: a room, its walls, boards and ceiling as set out in; findings
// out, in no special order. Cautions are sentences for the sheets; the figures
// behind them stand beside them.
//
// Units and axes: those of the builders.
//
// Errors: a wall that is cut and of which nobody said whether it carries load.
//
// Limits: a caution is never a clearance to proceed. Local codes in the
// edition adopted, the inspector, and licensed engineers and electricians
// decide; nothing here sizes a member for a wall that carries load. Glass in
// existing doors and windows, wet places and stairs are not looked at.
//
// Sources: with each figure in package rules.
package check
