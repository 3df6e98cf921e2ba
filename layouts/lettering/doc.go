// Package lettering knows the fonts of the drawings: how wide a text prints,
// how fractions are set, where lines break.
//
// In and out: text, cap height and weight in; runs and widths out. A fraction
// after a whole number, as in "14 3/4", is set with a half space, a small
// raised numerator, a slash on the baseline and a small denominator.
//
// Units: paper lengths; sizes are cap heights, 0.729 of the em in this font.
//
// Errors: none; a character that the fonts lack has the width of the mark for
// a missing glyph.
//
// Source: a renamed subset of DejaVu Sans Condensed 2.37 (LICENSE-fonts.txt);
// widths are plain advances without kerning, as the drawings are written.
// Sizes of fractions are our own choice (common practice, no source).
package lettering
