// Package measure reads lengths as people write them and prints them.
//
// In and out: text to geom.Length (Parse, ParseSize), geom.Length to text
// (Show). Read are feet, inches and fractions (12' 6-1/2", 150 1/2, 6½″,
// 12 ft 6 1/2 in), decimals and mm, cm, m. A bare number takes the unit of the
// file and is never feet; after feet it is inches.
//
// Units: exact wherever 1/16 µm is; anything else is rounded once, to the
// nearest, halves away from zero. Printing rounds once, to the step of the
// Show, and carries after rounding.
//
// Errors: *ParseError says how far the text was understood, what stopped it,
// and shows two forms that work. Refused because they are likely slips:
// fractions of one or more (71/2), 12 inches or more after feet, commas.
//
// Limits: 1 km; nothing computes.
//
// Source: 1 in = 25.4 mm exactly (international inch). How figures are
// written - inches alone under a foot, zero inches kept, a hyphen between feet
// and inches, no zero before a fraction - is common practice, no source.
package measure
