// Package svg writes a sheet as an SVG file at true size.
//
// In and out: a composed sheet in, bytes out; the same sheet gives the same
// bytes. Fonts of the weights that are used are embedded; every run of a text
// stands at its own place, so that widths agree where the fonts are missing.
//
// Units and axes: the sheet is in paper lengths with y up; the file is in
// whole hundredths of a paper millimetre with y down, and its width and height
// are given in millimetres. Here, and only here, y is turned over.
//
// Errors: a sheet without size. Empty and zero elements draw nothing.
//
// Limits: text is written as text, not as outlines; a viewer without the
// embedded fonts falls back to DejaVu Sans Condensed, then to sans-serif.
// All text goes through xml.EscapeText; none goes into attributes or styles.
//
// Source: SVG 1.1 (W3C Recommendation, second edition); the accent colour is
// our own choice (common practice, no source).
package svg
