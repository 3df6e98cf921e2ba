package main

import (
	"io"
	"os"
)

// system is the file system of this machine.
type system struct{}

func (system) mkdir(path string) error      { return os.Mkdir(path, 0o777) }
func (system) rename(from, to string) error { return os.Rename(from, to) }
func (system) remove(path string) error     { return os.Remove(path) }

func (system) write(path string, b []byte) error {
	return fill(path, func(f *os.File) error {
		_, err := f.Write(b)
		return err
	})
}

func (system) keep(from, to string) error {
	if os.Link(from, to) == nil {
		return nil
	}
	old, err := os.Open(from) // a file system without second names
	if err != nil {
		return err
	}
	defer old.Close()
	return fill(to, func(f *os.File) error {
		_, err := io.Copy(f, old)
		return err
	})
}

// flush puts the names of a folder on the disk, where that can be asked for.
func (system) flush(dir string) error {
	f, err := os.Open(dir)
	if err != nil {
		return err
	}
	defer f.Close()
	return f.Sync()
}

// fill makes a new file; when that fails there is none.
func fill(path string, put func(*os.File) error) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	err = put(f)
	if err2 := f.Sync(); err == nil {
		err = err2
	}
	if err2 := f.Close(); err == nil {
		err = err2
	}
	if err != nil {
		os.Remove(path)
	}
	return err
}
