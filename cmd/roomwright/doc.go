// Command roomwright draws what is to be built in a room from one room file.
//
// Verbs: draw writes the drawing set, check says what is found in a room file
// and what is built, new writes a room file to begin with. Each takes a room
// file, or - for standard input; draw without one draws the built-in example.
//
// In and out: findings go to standard error, results to files and standard
// output. With --json all findings go to standard output as one JSON value.
// When standard output is no terminal, draw says nothing there.
//
// Errors: exit status 0 done (warnings allowed; check --strict counts them), 1
// errors in the room file, 2 wrong use: flags, names, folders that cannot be
// used. Files are written all or none.
//
// Limits: room files up to 1 MiB. No network, no clock, no configuration.
package main
