// Package measure reads lengths as people write them and prints them.
//
// In and out: text to geom.Length (Parse), geom.Length to text (Show). Read
// are feet, inches and fractions (12' 6-1/2", 150 1/2, 6½″, 12 ft 6 1/2 in),
// decimals and mm, cm, m. A bare number takes the unit of the file and is
// never feet.
//
// Units: exact wherever 1/16 µm is; anything else is rounded once, to the
// nearest. Printing rounds once, to the step of the Show.
//
// Errors: *ParseError says how far the text was understood, what stopped it,
// and shows two forms that work.
//
// Source: 1 in = 25.4 mm exactly (international inch). How figures are written
// on drawings follows the handbook of common drafting practice: no space-less
// fractions, zero inches kept, a hyphen between feet and inches (common
// practice, no source).
package measure
