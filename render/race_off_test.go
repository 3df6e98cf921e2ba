//go:build !race

package render_test

// underRace says that the race detector is on.
const underRace = false
