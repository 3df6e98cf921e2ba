// Package anyroom writes room files that nobody thought of, for tests of views.
//
// In and out: a function that chooses numbers in; the text of a room file out.
// The same choices give the same text.
//
// Units and axes: those of room files, inches or millimetres. Errors: none;
// some of the files contradict themselves, and the reader or the set-out says so.
package anyroom
