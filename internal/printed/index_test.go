package printed

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A directory of specimens holds files as programs write them, byte for byte, which are no tables: testdata/<area>/formats beside the table
// <area>/formats.csv that lists each of them with what it must come to.
const specimens = "formats"

// TestIndex holds testdata/README.md to the files beside it, to the bibliography and to the tests. It prints the lines that are missing or wrong.
func TestIndex(t *testing.T) {
	root, err := moduleRoot()
	require.NoError(t, err)
	library := library{files: map[string]string{}, tests: map[string]suite{}}
	err = filepath.WalkDir(root, func(full string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			if err == nil && entry.Name() == ".git" {
				return fs.SkipDir
			}
			return err
		}
		name, err := filepath.Rel(root, full)
		if err != nil {
			return err
		}
		name = filepath.ToSlash(name)
		if strings.HasPrefix(name, "testdata/") && path.Base(path.Dir(name)) == specimens {
			return nil
		}
		if !strings.HasPrefix(name, "testdata/") && !strings.HasSuffix(name, "_test.go") {
			return nil
		}
		text, err := os.ReadFile(full)
		if err != nil {
			return err
		}
		switch {
		case strings.HasPrefix(name, "testdata/golden/"): // results as they are saved, no printed tables
			return nil
		case name == "testdata/README.md":
			library.index = string(text)
		case strings.HasPrefix(name, "testdata/conformance/"): // what the library answers, not what was printed: package conformance holds it
		case strings.HasPrefix(name, "testdata/"):
			library.files[strings.TrimPrefix(name, "testdata/")] = string(text)
		default:
			return library.learn(name, string(text))
		}
		return nil
	})
	require.NoError(t, err)
	for _, complaint := range library.audit() {
		t.Error(complaint)
	}
}

// A suite is what the tests of one package are called and which string literals they hold; "" holds those outside every test.
type suite map[string]map[string]bool

// learn adds one _test file to the suites.
func (l library) learn(name, text string) error {
	syntax, err := parser.ParseFile(token.NewFileSet(), name, text, 0)
	if err != nil {
		return err
	}
	dir := path.Dir(name)
	if l.tests[dir] == nil {
		l.tests[dir] = suite{"": {}}
	}
	for _, decl := range syntax.Decls {
		test := ""
		if fn, ok := decl.(*ast.FuncDecl); ok && fn.Recv == nil {
			for _, kind := range []string{"Test", "Fuzz", "Example"} {
				if strings.HasPrefix(fn.Name.Name, kind) && fn.Name.Name != "TestMain" {
					test = fn.Name.Name
				}
			}
		}
		if l.tests[dir][test] == nil {
			l.tests[dir][test] = map[string]bool{}
		}
		ast.Inspect(decl, func(node ast.Node) bool {
			if literal, ok := node.(*ast.BasicLit); ok && literal.Kind == token.STRING {
				if value, err := strconv.Unquote(literal.Value); err == nil {
					l.tests[dir][test][value] = true
				}
			}
			return true
		})
	}
	return nil
}
