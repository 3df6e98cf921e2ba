// Package render is the face of the wing that writes: a drawing set in, files
// with names and bytes out. It opens no file itself.
//
// In and out: every sheet becomes an SVG file, named by its number and what it
// is about ("02-wall-a.svg"); the drawings in true size become one DXF file,
// named after the room file. Names hold lower case letters, digits, hyphens and
// one dot, and no two are alike.
//
// Errors: those of the writers; then there are no files at all.
//
// Limits: same set, same bytes; nothing reads the clock.
package render
