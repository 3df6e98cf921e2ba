package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strconv"

	"roomwright/render"
)

// disk is what saving asks of a file system, so that a test can let any of it
// fail.
type disk interface {
	mkdir(path string) error
	write(path string, b []byte) error // a new file, on the disk when it returns
	keep(from, to string) error        // a second name, or a copy, of a file
	rename(from, to string) error
	remove(path string) error
	flush(dir string) error
}

// job is files being saved in a folder.
type job struct {
	disk  disk
	dir   string
	files []render.File
	made  []string // folders made, outermost first
	fresh []string // temporary name of each file
	kept  []string // name under which an older file is kept, empty when there was none
	done  int      // files that have their own name
}

// save writes all files into dir or none: first under temporary names, then
// each gets its own name. When anything fails, what was there before is there
// again, and nothing else. It returns the sheets of an earlier run that are
// not of this set; they are left alone.
func save(dir string, files []render.File, in fs.FileInfo, d disk) ([]string, error) {
	j := &job{disk: d, dir: dir, files: files, fresh: make([]string, len(files)), kept: make([]string, len(files))}
	if err := j.look(in); err != nil {
		return nil, err
	}
	if err := j.run(); err != nil {
		j.undo()
		return nil, wrong("nothing was changed there", "%s: the drawings could not be written: %s", dir, reason(err))
	}
	for _, name := range j.kept {
		if name != "" {
			d.remove(name) // the new files are in place; a name left over does no harm
		}
	}
	d.flush(dir)
	return older(dir, files), nil
}

// look refuses a folder in which the files cannot be.
func (j *job) look(in fs.FileInfo) error {
	info, err := os.Stat(j.dir)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return wrong("", "%s: %s", j.dir, reason(err))
	case !info.IsDir():
		return wrong("name a folder with --out", "%s is a file, not a folder", j.dir)
	}
	for _, f := range j.files {
		path := filepath.Join(j.dir, f.Name)
		info, err := os.Stat(path)
		switch {
		case errors.Is(err, fs.ErrNotExist):
		case err != nil:
			return wrong("", "%s: %s", path, reason(err))
		case info.IsDir():
			return wrong("name another folder with --out", "%s is a folder where a file is to go", path)
		case in != nil && os.SameFile(in, info):
			return wrong("name another folder with --out", "%s is the room file, and is not written over", path)
		}
	}
	return nil
}

// run does the work up to the first failure.
func (j *job) run() error {
	if err := j.folders(j.dir); err != nil {
		return err
	}
	for i, f := range j.files {
		name := j.name(i, "tmp")
		if err := j.disk.write(name, f.Bytes); err != nil {
			return err
		}
		j.fresh[i] = name
	}
	for i, f := range j.files {
		path := filepath.Join(j.dir, f.Name)
		if _, err := os.Lstat(path); errors.Is(err, fs.ErrNotExist) {
			continue
		}
		name := j.name(i, "old")
		if err := j.disk.keep(path, name); err != nil {
			return err
		}
		j.kept[i] = name
	}
	for i, f := range j.files {
		if err := j.disk.rename(j.fresh[i], filepath.Join(j.dir, f.Name)); err != nil {
			return err
		}
		j.done = i + 1
	}
	return nil
}

// name returns a name beside the files that no file of the folder has.
func (j *job) name(i int, end string) string {
	for n := 0; ; n++ {
		name := filepath.Join(j.dir, ".roomwright-"+strconv.Itoa(i+1)+"-"+strconv.Itoa(n)+"."+end)
		if _, err := os.Lstat(name); err != nil {
			return name
		}
	}
}

// folders makes dir and the folders it is in.
func (j *job) folders(dir string) error {
	if _, err := os.Stat(dir); err == nil {
		return nil
	}
	if up := filepath.Dir(dir); up != dir {
		if err := j.folders(up); err != nil {
			return err
		}
	}
	err := j.disk.mkdir(dir)
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	if err == nil {
		j.made = append(j.made, dir)
	}
	return err
}

// undo brings back what was there.
func (j *job) undo() {
	for i := j.done - 1; i >= 0; i-- {
		path := filepath.Join(j.dir, j.files[i].Name)
		if j.kept[i] != "" {
			j.disk.rename(j.kept[i], path)
			continue
		}
		j.disk.remove(path)
	}
	for i := range j.files {
		if j.fresh[i] != "" && i >= j.done {
			j.disk.remove(j.fresh[i])
		}
		if j.kept[i] != "" && i >= j.done {
			j.disk.remove(j.kept[i])
		}
	}
	for i := len(j.made) - 1; i >= 0; i-- {
		j.disk.remove(j.made[i])
	}
}

// older returns the sheets in dir that are not among files.
func older(dir string, files []render.File) []string {
	sheet := regexp.MustCompile(`^[0-9]{2,}-[a-z0-9-]+\.svg$`)
	list, err := os.ReadDir(dir)
	if err != nil {
		return nil
	}
	now := map[string]bool{}
	for _, f := range files {
		now[f.Name] = true
	}
	var out []string
	for _, e := range list {
		if sheet.MatchString(e.Name()) && !now[e.Name()] {
			out = append(out, e.Name())
		}
	}
	return out
}
