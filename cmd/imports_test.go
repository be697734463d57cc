// Package cmd holds the commands; here only the test of who may import whom.
package cmd

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const module = "bunkwright"

// every stands for all packages of ours but the ones named after it.
const every = "*"

// mayImport is the table of the design: which packages of ours each may import. What is not listed is forbidden.
var mayImport = map[string]string{
	"room/length":           "",
	"room/geom":             "room/length",
	"room":                  "room/length room/geom",
	"room/misread":          "room/length",
	"room/survey":           "room room/length room/geom room/misread",
	"furniture":             "room/length room/geom",
	"furniture/timber":      "room/length furniture",
	"furniture/yardstick":   "room/length",
	"furniture/people":      "room/length",
	"furniture/bunk":        "room/length room/geom furniture furniture/timber",
	"furniture/job":         "room room/survey room/misread room/length room/geom furniture furniture/bunk furniture/yardstick",
	"furniture/job/jobfile": "furniture/job room room/misread room/survey room/length room/geom furniture furniture/bunk furniture/timber furniture/yardstick",
	"furniture/fit": "room room/survey room/length room/geom furniture furniture/bunk furniture/job furniture/steps furniture/yardstick " +
		"furniture/people furniture/timber",
	"furniture/place":  "furniture/fit furniture/job furniture/bunk furniture/people room room/survey room/geom room/length",
	"furniture/ask":    "furniture/fit furniture/job furniture/job/jobfile furniture/yardstick room/survey room room/length",
	"furniture/worked": "furniture/fit furniture/people furniture/timber furniture/yardstick room/survey room/misread room/geom room/length",
	"render":           "room/length",
	"render/raster":    "render",
	"render/svg":       "render",
	"render/pdf":       "render",
	"render/phone":     "furniture/ask furniture/fit furniture/job render render/svg render/view room/length",
	"render/view":      every + " render/raster render/svg render/pdf ui cmd",
	"ui/session":       every + " ui ui/control cmd",
	"ui/control":       "render render/raster",
	"ui":               every + " cmd",
	"cmd/bunkwright":   every + " cmd/bunkfit",
	"cmd":              "",
	"cmd/bunkfit":      every + " ui cmd/bunkwright",
	"samples":          "",
}

// testsAlso may be imported by any test.
var testsAlso = []string{"furniture/job/jobfile", "samples", "render/view"}

// onlyThere names packages that only the folders after them may import.
var onlyThere = map[string][]string{
	"fyne.io/fyne/v2/app": {"cmd/bunkwright"},
	"fyne.io/fyne/v2":     {"ui", "cmd/bunkwright"},
}

// TestImports holds every package to the table, and the table to the packages.
func TestImports(t *testing.T) {
	seen := map[string]bool{}
	walk(t, func(pkg, file string, imports []string) {
		seen[pkg] = true
		allowed, ok := mayImport[pkg]
		if !ok {
			t.Errorf("%s: the package has no row in the import table", pkg)
			return
		}
		for _, imp := range imports {
			checkImport(t, pkg, file, allowed, imp)
		}
	})
	for pkg := range mayImport {
		if !seen[pkg] {
			t.Errorf("%s: the import table has a row but there is no such package", pkg)
		}
	}
}

func checkImport(t *testing.T, pkg, file, allowed, imp string) {
	for outside, where := range onlyThere {
		if (imp == outside || strings.HasPrefix(imp, outside+"/")) && !slices.ContainsFunc(where, func(w string) bool { return under(pkg, w) }) {
			t.Errorf("%s imports %s, which belongs to %v", file, imp, where)
		}
	}
	own, ok := strings.CutPrefix(imp, module+"/")
	if !ok || own == pkg {
		return
	}
	if strings.HasSuffix(file, "_test.go") && slices.Contains(testsAlso, own) {
		return
	}
	if !permits(strings.Fields(allowed), own) {
		t.Errorf("%s imports %s, which the table of package %s does not list", file, own, pkg)
	}
}

// permits reads one row: packages by name, or every package but those named.
func permits(row []string, pkg string) bool {
	if len(row) > 0 && row[0] == every {
		return !slices.ContainsFunc(row[1:], func(not string) bool { return under(pkg, not) })
	}
	return slices.Contains(row, pkg)
}

func under(pkg, folder string) bool { return pkg == folder || strings.HasPrefix(pkg, folder+"/") }

// walk calls f for every Go file of the module.
func walk(t *testing.T, f func(pkg, file string, imports []string)) {
	t.Helper()
	root := os.DirFS("..")
	err := fs.WalkDir(root, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == "testdata" || strings.HasPrefix(d.Name(), ".") && name != ".") {
			return fs.SkipDir
		}
		if path.Ext(name) != ".go" {
			return nil
		}
		f(path.Dir(name), name, importsOf(t, filepath.Join("..", name)))
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

func importsOf(t *testing.T, file string) []string {
	t.Helper()
	parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ImportsOnly)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, i := range parsed.Imports {
		p, err := strconv.Unquote(i.Path.Value)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, p)
	}
	return out
}

// TestTopLevel holds the repository to the folders and files of the design.
func TestTopLevel(t *testing.T) {
	want := []string{"DEVELOPERS.md", "FyneApp.toml", "README.md", "cmd", "furniture", "go.mod", "go.sum", "render", "room", "samples", "ui"}
	entries, err := os.ReadDir("..")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") && !slices.Contains(want, e.Name()) {
			t.Errorf("%s does not belong at the top level", e.Name())
		}
	}
}
