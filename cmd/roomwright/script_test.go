package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// A script is a text file in testdata/scripts. A line that begins in the first
// column is an order; indented lines after it are its text. The orders:
//
//	file NAME      writes a file (the text below it)
//	fill NAME N    writes a file of N bytes
//	folder NAME    makes a folder
//	link NAME TO   makes a second name for a file
//	stdin          gives the text to the next run
//	terminal       the next run prints to a terminal
//	run ARGS       runs the command; "..." keeps blanks together
//	status N       the exit status of the last run
//	stdout, stderr what it printed, exactly
//	stdout has X   what it printed has X in it; lacks X: has not; \e is escape
//	               (likewise stderr)
//	list DIR       the names in a folder, exactly
//	has FILE X     a file has X in it
//	same FILE      a file is as a script's file order wrote it
//	missing NAME   there is no such file
//	# ...          says something
type script struct {
	t        *testing.T
	line     int
	stdin    string
	terminal bool
	status   int
	out, err bytes.Buffer
	wrote    map[string]string
	checked  bool // the status of the last run was looked at
}

func TestScripts(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "testdata", "scripts", "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no scripts: %v", err)
	}
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		t.Run(strings.TrimSuffix(filepath.Base(f), ".txt"), func(t *testing.T) {
			t.Chdir(t.TempDir())
			s := &script{t: t, wrote: map[string]string{}, checked: true}
			s.play(string(text))
		})
	}
}

// play carries out all orders of a script.
func (s *script) play(text string) {
	lines := strings.Split(strings.TrimRight(text, "\n"), "\n")
	for i := 0; i < len(lines); {
		order := lines[i]
		s.line = i + 1
		i++
		var below []string
		for i < len(lines) && (strings.HasPrefix(lines[i], "  ") || lines[i] == "" && follows(lines, i)) {
			below = append(below, strings.TrimPrefix(lines[i], "  "))
			i++
		}
		body := strings.Join(below, "\n")
		if len(below) > 0 {
			body += "\n"
		}
		if order = strings.TrimRight(order, " "); order == "" || strings.HasPrefix(order, "#") {
			continue
		}
		s.do(order, unescape(body))
	}
	if !s.checked {
		s.fail("the last run's status is not looked at")
	}
}

// follows reports whether an empty line is inside an indented text.
func follows(lines []string, i int) bool {
	for ; i < len(lines); i++ {
		if lines[i] != "" {
			return strings.HasPrefix(lines[i], "  ")
		}
	}
	return false
}

// unescape puts control characters in place of their names.
func unescape(s string) string {
	return strings.NewReplacer(`\e`, "\x1b", `\b`, "\a", `\r`, "\r").Replace(s)
}

func (s *script) fail(format string, a ...any) {
	s.t.Errorf("line %d: %s", s.line, fmt.Sprintf(format, a...))
}

var argument = regexp.MustCompile(`"[^"]*"|\S+`)

// do carries out one order.
func (s *script) do(order, body string) {
	word, rest, _ := strings.Cut(order, " ")
	switch word {
	case "file":
		put(s.t, rest, body)
		s.wrote[rest] = body
	case "fill":
		var name string
		var n int
		if _, err := fmt.Sscan(rest, &name, &n); err != nil {
			s.t.Fatalf("line %d: %v", s.line, err)
		}
		put(s.t, name, strings.Repeat("#", n-1)+"\n")
	case "folder":
		if err := os.MkdirAll(rest, 0o755); err != nil {
			s.t.Fatal(err)
		}
	case "link":
		name, to, _ := strings.Cut(rest, " ")
		if err := os.Link(to, name); err != nil {
			s.t.Fatal(err)
		}
	case "stdin":
		s.stdin = body
	case "terminal":
		s.terminal = true
	case "run":
		s.run(rest)
	case "status":
		s.checked = true
		if got := fmt.Sprint(s.status); got != rest {
			s.fail("status %s, want %s\nstdout: %s\nstderr: %s", got, rest, s.out.String(), s.err.String())
		}
	case "stdout":
		s.printed(s.out.String(), rest, body)
	case "stderr":
		s.printed(s.err.String(), rest, body)
	case "list":
		entries, err := os.ReadDir(rest)
		if err != nil {
			s.fail("%v", err)
		}
		var names strings.Builder
		for _, e := range entries {
			names.WriteString(e.Name() + "\n")
		}
		if names.String() != body {
			s.fail("in %s there is\n%swant\n%s", rest, names.String(), body)
		}
	case "has":
		name, want, _ := strings.Cut(rest, " ")
		b, err := os.ReadFile(name)
		if err != nil || !strings.Contains(string(b), want) {
			s.fail("%s has no %q (%v)", name, want, err)
		}
	case "same":
		b, err := os.ReadFile(rest)
		if err != nil || string(b) != s.wrote[rest] {
			s.fail("%s is not as it was (%v)", rest, err)
		}
	case "missing":
		if _, err := os.Lstat(rest); err == nil {
			s.fail("%s is there", rest)
		}
	default:
		s.t.Fatalf("line %d: no order %q", s.line, word)
	}
}

// run carries out a command line in this process.
func (s *script) run(line string) {
	if !s.checked {
		s.fail("the status of the run before is not looked at")
	}
	s.checked = false
	var args []string
	for _, a := range argument.FindAllString(line, -1) {
		args = append(args, unescape(strings.Trim(a, `"`)))
	}
	s.out.Reset()
	s.err.Reset()
	s.status = run(args, streams{in: strings.NewReader(s.stdin), out: &s.out, err: &s.err, terminal: s.terminal})
	s.stdin, s.terminal = "", false
	for _, c := range s.out.String() + s.err.String() {
		if c != '\n' && steers(c) {
			s.fail("the control character %q reached the terminal", c)
		}
	}
}

// printed compares what a run printed.
func (s *script) printed(got, how, body string) {
	word, want, _ := strings.Cut(how, " ")
	want = unescape(want)
	switch word {
	case "":
		if got != body {
			s.fail("printed\n%swant\n%s", got, body)
		}
	case "has":
		if !strings.Contains(got, want) {
			s.fail("no %q in\n%s", want, got)
		}
	case "lacks":
		if strings.Contains(got, want) {
			s.fail("%q in\n%s", want, got)
		}
	default:
		s.t.Fatalf("line %d: no order %q", s.line, how)
	}
}
