package golden

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

// root is the top of the module, seen from this package.
const root = ".."

// room is a part of the house: the packages under a path, and the rooms that
// they may import. A path further down the list may have a room of its own.
type room struct {
	path    string
	imports []string
}

// rooms lists the arrows of the house. Everything that is not here points back.
// MODEL is any other folder of models: each looks down, and at no other model.
var rooms = []room{
	{"fraction", nil},
	{"arithmetic", []string{"fraction"}},
	{"arithmetic/reading", []string{"fraction", "arithmetic"}},
	{"models/scene", []string{"fraction"}},
	{"models/notation", []string{"fraction", "models/scene"}},
	{"models/words", []string{"fraction", "arithmetic", "models/scene"}},
	{"models/telling", []string{"fraction", "arithmetic", "models/scene", "models/notation", "models/words"}},
	{"models/MODEL", []string{"fraction", "arithmetic", "models/scene", "models/notation", "models/words", "models/telling"}},
	{"models", []string{"fraction", "arithmetic", "arithmetic/reading", "models/scene", "models/notation", "models/words", "models/telling", "models/MODEL"}},
	{"svg", []string{"models/scene", "models/notation"}},
	{"svg/raster", nil}, // it reads the files, and nothing else
	{"api", []string{"fraction", "arithmetic", "arithmetic/reading", "models", "models/scene", "models/notation", "models/words", "svg", "svg/raster"}},
	{"cmd", []string{"fraction", "arithmetic", "arithmetic/reading", "models", "models/scene", "models/notation", "models/words", "svg", "api", "golden/problems"}},
	{"golden/problems", []string{"fraction", "arithmetic"}}, // dealt for the tests, and for the gallery's extremes
	{"golden", []string{"fraction", "arithmetic", "arithmetic/reading", "models", "models/scene", "models/notation", "models/words", "svg", "golden/problems"}},
}

// owners says which room alone may import a library.
var owners = map[string]string{
	"github.com/shopspring/decimal": "arithmetic",
	"golang.org/x/text":             "arithmetic/reading",
	"github.com/ajstarks/svgo":      "svg",
	"github.com/labstack/echo/v4":   "api",
	"github.com/spf13/pflag":        "cmd",

	"github.com/fogleman/gg":                   "svg/raster",
	"github.com/go-fonts/liberation":           "svg/raster",
	"golang.org/x/image":                       "svg/raster",
	"github.com/hashicorp/golang-lru/v2":       "api",
	"github.com/klauspost/compress":            "api",
	"golang.org/x/sync":                        "api",
	"golang.org/x/time":                        "api",
	"github.com/santhosh-tekuri/jsonschema/v6": "api",
	"github.com/prometheus/client_golang":      "api",
}

// topLevel are the names that may stand at the top of the repository.
var topLevel = []string{
	"fraction", "arithmetic", "models", "svg", "api", "cmd", "golden",
	"go.mod", "go.sum", "README.md", "LICENSE", "DEVELOPERS.md", ".gitignore", ".gitattributes", ".git", ".ci",
	"modeler", // the built program, which git ignores
}

func TestTheTopLevelHasOnlyItsRooms(t *testing.T) {
	entries, err := os.ReadDir(root)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !slices.Contains(topLevel, e.Name()) {
			t.Errorf("%s stands at the top level; it belongs in one of the rooms", e.Name())
		}
	}
}

func TestImportsFlowOneWay(t *testing.T) {
	files := 0
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && (d.Name() == ".git" || d.Name() == "node_modules" || d.Name() == "testdata") {
			return fs.SkipDir
		}
		if !strings.HasSuffix(path, ".go") {
			return nil
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		files++
		rel, _ := filepath.Rel(root, path)
		from := roomOf(filepath.ToSlash(filepath.Dir(rel)))
		for _, spec := range file.Imports {
			name, _ := strconv.Unquote(spec.Path.Value)
			if trouble := arrow(from, name, strings.HasSuffix(path, "_test.go")); trouble != "" {
				t.Errorf("%s: %s", rel, trouble)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if files < 20 {
		t.Errorf("only %d Go files were read", files)
	}
}

// arrow says what is wrong with an import, or nothing. A test may look down from
// above, as the users of its package do; a library has one owner even in tests.
func arrow(from, name string, test bool) string {
	if inside, ok := strings.CutPrefix(name, "modeler/"); ok {
		to := roomOf(inside)
		if to == from || test {
			return ""
		}
		for _, r := range rooms {
			if r.path == anyModel(from) && slices.Contains(r.imports, anyModel(to)) {
				return ""
			}
		}
		return from + " may not import " + to
	}
	if !strings.Contains(strings.Split(name, "/")[0], ".") {
		return "" // the standard library
	}
	for library, owner := range owners {
		if name == library || strings.HasPrefix(name, library+"/") {
			if owner == from {
				return ""
			}
			return library + " is imported by " + owner + " only, not by " + from
		}
	}
	return name + " has no owner"
}

// roomOf is the nearest room that a package stands in.
func roomOf(pkg string) string {
	best := pkg
	found := 0
	for _, r := range rooms {
		if (pkg == r.path || strings.HasPrefix(pkg, r.path+"/")) && len(r.path) > found {
			best, found = r.path, len(r.path)
		}
	}
	if name, ok := strings.CutPrefix(pkg, "models/"); ok && best == "models" {
		best = "models/" + strings.Split(name, "/")[0]
	}
	return best
}

// anyModel is a room as the list of rooms has it.
func anyModel(path string) string {
	if strings.HasPrefix(path, "models/") && !slices.ContainsFunc(rooms, func(r room) bool { return r.path == path }) {
		return "models/MODEL"
	}
	return path
}

// TestTheImportLawCanFail shows that the law would notice.
func TestTheImportLawCanFail(t *testing.T) {
	for _, c := range []struct {
		from, name string
		test       bool
		bad        bool
	}{
		{"fraction", "modeler/arithmetic", false, true},
		{"arithmetic", "modeler/arithmetic/reading", false, true},
		{"models/scene", "modeler/models/words", false, true},
		{"models", "modeler/svg", false, true},
		{"models", "modeler/svg", true, false},
		{"models", "github.com/ajstarks/svgo", true, true},
		{"svg", "github.com/ajstarks/svgo", false, false},
		{"cmd/modeler", "modeler/golden/problems", false, false},
		{"cmd/modeler", "modeler/golden/laws", false, true},
		{"models", "github.com/labstack/echo/v4/middleware", false, true},
		{"arithmetic", "example.org/thing", false, true},
		{"api", "modeler/api/web", false, false},
		{"models", "modeler/models/scene", false, false},
		{"models/array", "modeler/models/telling", false, false},
		{"models/array", "modeler/models/bars", false, true},
		{"models/telling", "modeler/models/line", false, true},
		{"models", "modeler/models/line", false, false},
		{"api", "modeler/models/line", false, true},
		{"models", "math/big", false, false},
	} {
		if got := arrow(roomOf(c.from), c.name, c.test); (got != "") != c.bad {
			t.Errorf("%s importing %s: %q", c.from, c.name, got)
		}
	}
}
