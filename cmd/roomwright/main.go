package main

import (
	"io"
	"os"
)

// streams are what a run reads and writes besides files.
type streams struct {
	in       io.Reader
	out, err io.Writer
	terminal bool // out is a terminal
}

func main() {
	terminal := false
	if info, err := os.Stdout.Stat(); err == nil {
		terminal = info.Mode()&os.ModeCharDevice != 0
	}
	os.Exit(run(os.Args[1:], streams{in: os.Stdin, out: os.Stdout, err: os.Stderr, terminal: terminal}))
}
