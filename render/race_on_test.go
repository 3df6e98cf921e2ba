//go:build race

package render_test

// underRace says that the race detector is on: it makes everything some eight
// times slower, and looks for races, which a few rooms show as well as all.
const underRace = true
