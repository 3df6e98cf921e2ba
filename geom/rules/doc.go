// Package rules holds the trade figures that the rest works with: each with
// its value, its unit and where it is from, and no logic.
//
// In and out: constants, and the table of dressed lumber by name. A figure's
// source stands beside it, as a constant ending in Source where people are
// shown it, else in its comment.
//
// Units: lengths are geom.Length, so that inches and millimetres are exact.
// Where a figure is written twice, the one ending in Metric is for room files
// in millimetres: the round figure of the metric trade, not the inch figure
// converted.
//
// Errors: none. Limits: figures of codes are quoted to print them as cautions;
// the locally adopted edition and the inspector decide.
//
// Source: a published standard, manual or guide, named beside the figure; or
// the words of Habit, common practice without a source; or "from memory"
// where a figure was remembered and not found again.
package rules
