package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// module is the name of this module.
const module = "roomwright"

// builders set things out; none knows another.
var builders = []string{"geom/framing", "geom/ceiling", "geom/lining", "geom/glazing", "geom/lighting"}

// results read what builders give, inside the wing that computes.
var results = []string{"geom/setout", "geom/check", "geom/takeoff"}

// tradeless packages draw and write without knowing what a stud is.
var tradeless = []string{
	"layouts/paper", "layouts/lettering", "layouts/drawing", "layouts/dimension", "layouts/marks", "layouts/sheet",
	"render/svg", "render/pdf", "render/dxf", "render/table",
}

// owners are the packages that alone touch a library.
var owners = map[string]string{
	"github.com/ajstarks/svgo":      "render/svg",
	"github.com/yofu/dxf":           "render/dxf",
	"go.yaml.in/yaml":               "geom/roomfile",
	"golang.org/x/image":            "layouts/lettering",
	"codeberg.org/go-pdf/fpdf":      "render/pdf",
	"github.com/spf13/cobra":        "cmd",
	"github.com/spf13/pflag":        "cmd",
	"github.com/fsnotify/fsnotify":  "cmd",
	"github.com/xuri/excelize":      "render/table",
	"github.com/jedib0t/go-pretty":  "render/table",
	"github.com/invopop/jsonschema": "geom/roomfile",
}

// under reports whether a package is dir or lies in it.
func under(pkg, dir string) bool { return pkg == dir || strings.HasPrefix(pkg, dir+"/") }

// backwards says why a package may not import another, or nothing. Packages of
// this module are named without it.
func backwards(from, to string) string {
	if strings.Contains(strings.SplitN(to, "/", 2)[0], ".") {
		for library, owner := range owners {
			if under(to, library) {
				if under(from, owner) {
					return ""
				}
				return "only " + owner + " touches " + library
			}
		}
		return "a library that no package of ours stands in front of"
	}
	own := slices.ContainsFunc([]string{"geom", "layouts", "render", "cmd"}, func(wing string) bool { return under(to, wing) })
	switch {
	case !own:
		return "" // standard library
	case under(to, "cmd"):
		return "nothing imports the command"
	case under(from, "geom") && !under(to, "geom"):
		return "geom computes and knows nothing of drawings or files"
	case under(from, "layouts") && under(to, "render"):
		return "layouts compose and know nothing of files"
	case under(from, "layouts") && from != "layouts" && to == "layouts":
		return "a part of layouts knows nothing of the whole set"
	case under(from, "render") && under(to, "geom") && to != "geom" && to != "geom/measure":
		return "render knows lengths and units of geom, and nothing else"
	case under(from, "render") && from != "render" && under(to, "render"):
		return "writers know nothing of each other"
	case from == "geom" || from == "geom/measure" && to != "geom":
		return "the numbers know nothing else"
	case slices.Contains(builders, to) && slices.Contains(builders, from):
		return "builders know nothing of each other"
	case slices.Contains(builders, to) && under(from, "geom") && !slices.Contains(results, from):
		return "only " + strings.Join(results, ", ") + " read results"
	case to == "geom/setout" && under(from, "geom"):
		return "set-out is the last stage of geom"
	case slices.Contains(tradeless, from) && under(to, "geom") && to != "geom" && to != "geom/measure":
		return "drawings, sheets and writers know no trade"
	case slices.Contains(tradeless, from) && under(to, "layouts") && to != "layouts" && !slices.Contains(tradeless, to):
		return "drawings, sheets and writers know no trade, and no view"
	}
	return ""
}

func TestNoArrowPointsBackwards(t *testing.T) {
	root := filepath.Join("..", "..")
	packages := map[string]bool{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		if d.IsDir() && rel != "." && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata") {
			return fs.SkipDir
		}
		if d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		from := filepath.ToSlash(filepath.Dir(rel))
		packages[from] = true
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, text, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, imp := range f.Imports {
			to, err := strconv.Unquote(imp.Path.Value)
			if err != nil {
				return err
			}
			if why := backwards(from, strings.TrimPrefix(to, module+"/")); why != "" {
				t.Errorf("%s imports %s: %s", filepath.ToSlash(rel), to, why)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"geom", "geom/setout", "layouts", "layouts/sheet", "render", "render/svg", "cmd/roomwright"} {
		if !packages[want] {
			t.Errorf("package %s was not looked at", want)
		}
	}
}

func TestArrowsThatPointBackwardsAreSeen(t *testing.T) {
	for _, c := range []struct {
		from, to string
		ok       bool
	}{
		{"geom/framing", "geom/ceiling", false},
		{"geom/framing", "geom/rules", true},
		{"geom/setout", "geom/framing", true},
		{"geom/check", "geom/lining", true},
		{"geom/survey", "geom/framing", false},
		{"geom/room", "layouts/paper", false},
		{"geom/measure", "geom", true},
		{"geom/measure", "geom/room", false},
		{"geom", "geom/measure", false},
		{"geom/roomfile", "go.yaml.in/yaml/v4", true},
		{"geom/room", "go.yaml.in/yaml/v4", false},
		{"layouts/elevation", "geom/framing", true},
		{"layouts/elevation", "layouts/sheet", true},
		{"layouts/elevation", "layouts", false},
		{"layouts/sheet", "geom/framing", false},
		{"layouts/sheet", "layouts/elevation", false},
		{"layouts/dimension", "geom/measure", true},
		{"layouts/drawing", "geom/room", false},
		{"layouts", "render", false},
		{"render", "layouts", true},
		{"render", "geom/setout", false},
		{"render/svg", "render/dxf", false},
		{"render/svg", "layouts/sheet", true},
		{"render/svg", "layouts/elevation", false},
		{"render/svg", "github.com/ajstarks/svgo", true},
		{"render/dxf", "github.com/ajstarks/svgo", false},
		{"cmd/roomwright", "github.com/spf13/cobra", true},
		{"layouts", "github.com/spf13/cobra", false},
		{"cmd/roomwright", "render", true},
		{"render", "cmd/roomwright", false},
		{"geom", "example.org/anything", false},
		{"geom", "strings", true},
	} {
		if why := backwards(c.from, c.to); (why == "") != c.ok {
			t.Errorf("%s to %s: allowed %v, said %q", c.from, c.to, why == "", why)
		}
	}
}
