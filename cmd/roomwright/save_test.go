package main

import (
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"syscall"
	"testing"

	"roomwright/render"
)

// faulty is the disk of this machine, but the nth call fails.
type faulty struct {
	system
	calls, nth int
}

func (d *faulty) fails() error {
	d.calls++
	if d.calls == d.nth {
		return &fs.PathError{Op: "write", Path: "x", Err: syscall.ENOSPC}
	}
	return nil
}

func (d *faulty) mkdir(path string) error {
	if err := d.fails(); err != nil {
		return err
	}
	return d.system.mkdir(path)
}

func (d *faulty) write(path string, b []byte) error {
	if err := d.fails(); err != nil {
		return err
	}
	return d.system.write(path, b)
}

func (d *faulty) keep(from, to string) error {
	if err := d.fails(); err != nil {
		return err
	}
	return d.system.keep(from, to)
}

func (d *faulty) rename(from, to string) error {
	if err := d.fails(); err != nil {
		return err
	}
	return d.system.rename(from, to)
}

// tree returns every file under dir with what is in it, and every folder.
func tree(t *testing.T, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || path == dir {
			return err
		}
		rel, _ := filepath.Rel(dir, path)
		if d.IsDir() {
			out[rel+"/"] = ""
			return nil
		}
		b, err := os.ReadFile(path)
		out[rel] = string(b)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func put(t *testing.T, path, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// invented is a set of files.
func invented() []render.File {
	return []render.File{
		{Name: "01-plan.svg", Bytes: []byte("new plan")},
		{Name: "02-wall-a.svg", Bytes: []byte("new wall")},
		{Name: "room.dxf", Bytes: []byte("new model")},
	}
}

func TestSaveIsAllOrNothing(t *testing.T) {
	starts := map[string]func(dir string){
		"no folder": func(string) {},
		"empty folder": func(dir string) {
			if err := os.MkdirAll(filepath.Join(dir, "a", "b"), 0o755); err != nil {
				t.Fatal(err)
			}
		},
		"an earlier set": func(dir string) {
			put(t, filepath.Join(dir, "a", "b", "01-plan.svg"), "old plan")
			put(t, filepath.Join(dir, "a", "b", "room.dxf"), "old model")
			put(t, filepath.Join(dir, "a", "b", "notes.txt"), "mine")
		},
	}
	for name, start := range starts {
		failed := 0
		for nth := 1; ; nth++ {
			dir := t.TempDir()
			start(dir)
			before := tree(t, dir)
			d := &faulty{nth: nth}
			_, err := save(filepath.Join(dir, "a", "b"), invented(), nil, d)
			after := tree(t, dir)
			if d.calls < nth { // nothing failed any more
				if err != nil {
					t.Fatalf("%s: %v", name, err)
				}
				if after["a/b/01-plan.svg"] != "new plan" || after["a/b/room.dxf"] != "new model" {
					t.Errorf("%s: not written: %v", name, after)
				}
				break
			}
			failed++
			if err == nil {
				t.Errorf("%s: call %d failed and nobody was told", name, nth)
			}
			var v verdict
			if !errors.As(err, &v) || v.status != wrongUse {
				t.Errorf("%s: call %d: %v", name, nth, err)
			}
			if !maps.Equal(before, after) {
				t.Errorf("%s: call %d failed, and the folder changed\nbefore %v\nafter  %v", name, nth, before, after)
			}
		}
		if failed < 6 {
			t.Errorf("%s: only %d failures were tried", name, failed)
		}
	}
}

func TestSaveLeavesNoOtherFiles(t *testing.T) {
	dir := t.TempDir()
	put(t, filepath.Join(dir, "01-plan.svg"), "old")
	put(t, filepath.Join(dir, "09-ceiling.svg"), "of a larger set")
	put(t, filepath.Join(dir, "notes.txt"), "mine")
	left, err := save(dir, invented(), nil, system{})
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(left, []string{"09-ceiling.svg"}) {
		t.Errorf("older sheets: %q", left)
	}
	got := slices.Sorted(maps.Keys(tree(t, dir)))
	want := []string{"01-plan.svg", "02-wall-a.svg", "09-ceiling.svg", "notes.txt", "room.dxf"}
	if !slices.Equal(got, want) {
		t.Errorf("in the folder: %q, want %q", got, want)
	}
}

func TestSaveRefuses(t *testing.T) {
	dir := t.TempDir()
	put(t, filepath.Join(dir, "file"), "mine")
	put(t, filepath.Join(dir, "folders", "02-wall-a.svg", "mine.txt"), "mine")
	put(t, filepath.Join(dir, "input", "01-plan.svg"), "title: a room file with a strange name")
	info, err := os.Stat(filepath.Join(dir, "input", "01-plan.svg"))
	if err != nil {
		t.Fatal(err)
	}
	before := tree(t, dir)
	for _, c := range []struct {
		dir string
		in  fs.FileInfo
	}{{"file", nil}, {"file/deeper", nil}, {"folders", nil}, {"input", info}} {
		if _, err := save(filepath.Join(dir, c.dir), invented(), c.in, system{}); err == nil {
			t.Errorf("%s was accepted", c.dir)
		}
		if after := tree(t, dir); !maps.Equal(before, after) {
			t.Errorf("%s: the folder changed: %v", c.dir, after)
		}
	}
}
