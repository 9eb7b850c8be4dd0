package shape

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A file is one Go file, its path from the module root.
type file struct {
	path, dir, name string
	lines           int
	syntax          *ast.File
}

func (f file) test() bool { return strings.HasSuffix(f.name, "_test.go") }

// A tree is the module as the rules see it.
type tree struct {
	set   *token.FileSet
	files []file            // Go files in order of their paths
	texts map[string]string // every text file by its path
	top   []string          // names at the top
}

// plant grows a tree from texts by path; a path with another ending than a text file's counts for its name alone.
func plant(t *testing.T, texts map[string]string) tree {
	t.Helper()
	grown := tree{set: token.NewFileSet(), texts: map[string]string{}}
	top := map[string]bool{}
	for name := range texts {
		top[strings.Split(name, "/")[0]] = true
	}
	for name := range top {
		grown.top = append(grown.top, name)
	}
	sort.Strings(grown.top)
	for _, name := range sorted(texts) {
		switch path.Ext(name) {
		case ".go":
			syntax, err := parser.ParseFile(grown.set, name, texts[name], parser.ParseComments)
			require.NoError(t, err)
			grown.files = append(grown.files, file{
				path: name, dir: path.Dir(name), name: path.Base(name), lines: strings.Count(texts[name], "\n"), syntax: syntax,
			})
			grown.texts[name] = texts[name]
		case ".md", ".csv", ".json":
			grown.texts[name] = texts[name]
		}
	}
	return grown
}

// onDisk is this module. What .gitignore names is not part of it, nor are the modules that ownModules allows inside.
func onDisk(t *testing.T) tree {
	t.Helper()
	root, err := filepath.Abs(filepath.Join("..", ".."))
	require.NoError(t, err)
	ignored, err := os.ReadFile(filepath.Join(root, ".gitignore"))
	require.NoError(t, err)
	texts := map[string]string{}
	err = filepath.WalkDir(root, func(full string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		for _, pattern := range append(strings.Fields(string(ignored)), ".git") {
			if match, err := path.Match(pattern, entry.Name()); err != nil || match {
				if entry.IsDir() {
					return fs.SkipDir
				}
				return err
			}
		}
		if entry.IsDir() {
			return ownModule(t, root, full)
		}
		text, err := os.ReadFile(full)
		if err != nil {
			return err
		}
		name, err := filepath.Rel(root, full)
		texts[filepath.ToSlash(name)] = string(text)
		return err
	})
	require.NoError(t, err)
	require.Contains(t, texts, "go.mod")
	return plant(t, texts)
}

// ownModule passes over a directory below the root that is a module of its own, and refuses one that is not in the list.
func ownModule(t *testing.T, root, full string) error {
	if _, err := os.Stat(filepath.Join(full, "go.mod")); err != nil || full == root {
		return nil
	}
	name, err := filepath.Rel(root, full)
	require.NoError(t, err)
	require.Contains(t, ownModules, filepath.ToSlash(name), "a module inside this one that is not in the list")
	return fs.SkipDir
}

// at is a complaint about a place.
func (tr tree) at(pos token.Pos, format string, args ...any) string {
	place := tr.set.Position(pos)
	return fmt.Sprintf("%s:%d: ", place.Filename, place.Line) + fmt.Sprintf(format, args...)
}

// code are the Go files of the product packages, tests left out.
func (tr tree) code() []file {
	var code []file
	for _, f := range tr.files {
		if isProduct(f.dir) && !f.test() {
			code = append(code, f)
		}
	}
	return code
}

// packages are the product packages that exist, each with its code files.
func (tr tree) packages() map[string][]file {
	packages := map[string][]file{}
	for _, f := range tr.code() {
		packages[f.dir] = append(packages[f.dir], f)
	}
	return packages
}

// imports are a file's imports by the name they have in it.
func imports(f file) map[string]string {
	named := map[string]string{}
	for _, spec := range f.syntax.Imports {
		target := strings.Trim(spec.Path.Value, `"`)
		name := path.Base(target)
		if spec.Name != nil {
			name = spec.Name.Name
		}
		named[name] = target
	}
	return named
}

// receiver is the name of a method's type, "" for a function.
func receiver(fn *ast.FuncDecl) string {
	if fn.Recv == nil || len(fn.Recv.List) == 0 {
		return ""
	}
	expr := fn.Recv.List[0].Type
	for {
		switch e := expr.(type) {
		case *ast.StarExpr:
			expr = e.X
		case *ast.ParenExpr:
			expr = e.X
		case *ast.IndexExpr:
			expr = e.X
		case *ast.IndexListExpr:
			expr = e.X
		case *ast.Ident:
			return e.Name
		default:
			return ""
		}
	}
}

// public reports whether a function, or a method and its type, are exported.
func public(fn *ast.FuncDecl) bool {
	return fn.Name.IsExported() && (fn.Recv == nil || ast.IsExported(receiver(fn)))
}

func sorted[T any](m map[string]T) []string {
	keys := make([]string, 0, len(m))
	for key := range m {
		keys = append(keys, key)
	}
	sort.Strings(keys)
	return keys
}

func contains(list []string, item string) bool {
	for _, one := range list {
		if one == item {
			return true
		}
	}
	return false
}
