// Package setout turns a room into a Result: the one place that knows the
// builders and their order.
//
// In and out: a room in, a Result out with every finding, sorted by place.
// When a finding is an error the Result is not fit to be drawn.
//
// Units and axes: those of the builders. Errors: only as findings.
package setout
