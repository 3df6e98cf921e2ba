package main

import (
	_ "embed"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

//go:embed examples/bow-makers-room.yaml
var example []byte

// exampleName is what the built-in example is called in findings.
const exampleName = "bow-makers-room.yaml"

// largest is the size of the largest room file that is read.
const largest = 1 << 20

// input is a room file as it was read.
type input struct {
	name string // as shown in findings
	file string // name without folders, for the title band
	text []byte
	info fs.FileInfo // nil when it is no file
}

// read returns the room file that an argument names; - is standard input.
func read(arg string, in io.Reader) (input, error) {
	if arg == "-" {
		text, err := limited(in)
		if err != nil {
			return input{}, wrong("", "standard input: %s", err)
		}
		return input{name: "standard input", file: "standard input", text: text}, nil
	}
	info, err := os.Stat(arg)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return input{}, wrong("roomwright new writes a room file to begin with", "%s: no such file", arg)
	case err != nil:
		return input{}, wrong("", "%s: %s", arg, reason(err))
	case info.IsDir():
		return input{}, wrong("name the room file in it", "%s is a folder, not a room file", arg)
	}
	f, err := os.Open(arg)
	if err != nil {
		return input{}, wrong("", "%s: %s", arg, reason(err))
	}
	defer f.Close()
	text, err := limited(f)
	if err != nil {
		return input{}, wrong("", "%s: %s", arg, reason(err))
	}
	return input{name: arg, file: filepath.Base(arg), text: text, info: info}, nil
}

// limited reads all of in, or refuses it.
func limited(in io.Reader) ([]byte, error) {
	text, err := io.ReadAll(io.LimitReader(in, largest+1))
	if err == nil && len(text) > largest {
		err = errors.New("more than 1 MiB, too large for a room file")
	}
	return text, err
}

// reason returns an error without the name of the file and the call, which
// the message around it gives.
func reason(err error) string {
	var path *fs.PathError
	if errors.As(err, &path) {
		return path.Err.Error()
	}
	var link *os.LinkError
	if errors.As(err, &link) {
		return link.Err.Error()
	}
	return err.Error()
}
