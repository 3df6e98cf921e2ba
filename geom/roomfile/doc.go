// Package roomfile reads the room file: the one package that knows the text.
//
// In and out: Read takes the bytes of a room file and gives the room, with
// every default of the language filled in, and all findings of one run:
// errors, warnings for answers of "unknown", and a note for each value that
// was assumed. Sections lists every key, from the same tables that the reader
// works with. Starter gives a file to begin with.
//
// Units and axes: a bare number takes the unit of the file's `units` and is
// never feet. Lines and columns count from 1; a column counts characters, so
// that a tab or an accented letter is one.
//
// Errors: only findings, never an error value. A part of the file that cannot
// be taken apart is passed over and the rest is still read, so that one run
// reports what is wrong everywhere. When a finding is an error the room is
// partial or nil.
//
// Limits: files of up to 1 MiB, nested up to 50 deep; rooms of four walls,
// each turning right. Anchors, aliases, tags, merge keys and several documents
// are refused. Keys of the language that this edition does not read yet answer
// as unknown keys, and say so.
//
// Source: the text is YAML 1.2; the language is this project's own. Figures
// that are assumed come from package rules, which names where each is from.
package roomfile
