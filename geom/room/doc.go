// Package room is the model of one room: what is there and what is wanted, in
// trade terms, as plain data. It knows nothing of the text it was read from
// but the place of each value, and nothing of how things are set out.
//
// In and out: roomfile makes a Room; survey, the builders and the checks read
// it. Defaults of the language are already filled in, and noted as findings,
// by the reader.
//
// Units and axes: on a wall, places across run from its left or right end, the
// corner as taped, seen from inside the room; heights run up from the finished
// floor. In plan a wall's name is a datum: square off that wall's face into
// the room.
//
// Errors: none. A value that was not written has a zero At; one answered with
// the word unknown has Unknown set.
package room
