package render_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"roomwright/render"
)

// tool returns the path of a program that reads our files. Where it is missing
// the test is skipped, but under CI every check from outside is required.
func tool(t *testing.T, name, pkg string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		missing(t, name, pkg)
	}
	return path
}

// interpreter is the Python that Debian's ezdxf is installed for.
const interpreter = "/usr/bin/python3"

// python checks that ezdxf is there.
func python(t *testing.T) {
	t.Helper()
	if err := exec.Command(interpreter, "-c", "import ezdxf").Run(); err != nil {
		missing(t, "ezdxf", "python3-ezdxf")
	}
}

func missing(t *testing.T, name, pkg string) {
	t.Helper()
	if os.Getenv("CI") != "" {
		t.Fatalf("%s (Debian: %s) is not installed, and checks from outside are required here", name, pkg)
	}
	t.Skipf("%s (Debian: %s) is not installed", name, pkg)
}

// save writes files to a folder of their own and returns their paths.
func save(t *testing.T, files ...render.File) []string {
	t.Helper()
	dir := t.TempDir()
	var out []string
	for _, f := range files {
		path := filepath.Join(dir, f.Name)
		if err := os.WriteFile(path, f.Bytes, 0o600); err != nil {
			t.Fatal(err)
		}
		out = append(out, path)
	}
	return out
}

// least returns how many of something a test has to meet at the least: fewer
// under the race detector, where few rooms are drawn.
func least(n int) int {
	if underRace {
		return n / 4
	}
	return n
}
