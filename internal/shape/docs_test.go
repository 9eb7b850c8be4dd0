package shape

import (
	"go/ast"
	"go/doc"
	"go/token"
	"strings"
)

// docRule: the package comment stands in doc.go, and every exported name of a product package has a comment.
func docRule(tr tree) []string {
	var wrong []string
	packages := tr.packages()
	for _, dir := range sorted(packages) {
		described := false
		for _, f := range packages[dir] {
			switch {
			case f.name == "doc.go":
				described = strings.HasPrefix(f.syntax.Doc.Text(), "Package "+f.syntax.Name.Name+" ")
			case f.syntax.Doc != nil:
				wrong = append(wrong, f.path+": the package comment stands in doc.go alone")
			}
			for _, decl := range f.syntax.Decls {
				for _, name := range undocumented(decl) {
					wrong = append(wrong, tr.at(name.Pos(), "%s has no doc comment", name.Name))
				}
			}
		}
		if !described {
			wrong = append(wrong, dir+": has no doc.go with a package comment")
		}
	}
	return wrong
}

func undocumented(decl ast.Decl) []*ast.Ident {
	var bare []*ast.Ident
	switch d := decl.(type) {
	case *ast.FuncDecl:
		if public(d) && d.Doc.Text() == "" {
			bare = append(bare, d.Name)
		}
	case *ast.GenDecl:
		for _, spec := range d.Specs {
			switch s := spec.(type) {
			case *ast.TypeSpec: // a group comment speaks for constants and variables, not for types
				if s.Name.IsExported() && s.Doc.Text() == "" && (d.Lparen.IsValid() || d.Doc.Text() == "") {
					bare = append(bare, s.Name)
				}
			case *ast.ValueSpec:
				for _, name := range s.Names {
					if name.IsExported() && s.Doc.Text() == "" && s.Comment.Text() == "" && d.Doc.Text() == "" {
						bare = append(bare, name)
					}
				}
			}
		}
	}
	return bare
}

// exampleRule: every exported function and method has an Example that go test runs and compares; small methods may share one of their type.
// What lies in internal is not a caller's.
func exampleRule(tr tree) []string {
	var wrong []string
	packages := tr.packages()
	for _, dir := range sorted(packages) {
		if strings.HasPrefix(dir, "internal/") || strings.Contains(dir, "/internal/") {
			continue
		}
		shown := examplesIn(tr, dir)
		for _, f := range packages[dir] {
			for _, decl := range f.syntax.Decls {
				fn, ok := decl.(*ast.FuncDecl)
				if !ok || !public(fn) {
					continue
				}
				if name := exampleName(fn); !shows(shown, name, fn) {
					wrong = append(wrong, tr.at(fn.Pos(), "no runnable Example%s", name))
				}
			}
		}
	}
	return wrong
}

// examplesIn are the names of a package's examples that have an output to compare.
func examplesIn(tr tree, dir string) []string {
	var syntax []*ast.File
	for _, f := range tr.files {
		if f.dir == dir && f.test() {
			syntax = append(syntax, f.syntax)
		}
	}
	var names []string
	for _, example := range doc.Examples(syntax...) {
		if example.Output != "" {
			names = append(names, example.Name)
		}
	}
	return names
}

func exampleName(fn *ast.FuncDecl) string {
	if of := receiver(fn); of != "" {
		return of + "_" + fn.Name.Name
	}
	return fn.Name.Name
}

func shows(examples []string, name string, fn *ast.FuncDecl) bool {
	for _, example := range examples {
		rest := strings.TrimPrefix(example, name)
		if example == name || rest != example && strings.HasPrefix(rest, "_") && !token.IsExported(rest[1:]) {
			return true
		}
		of := receiver(fn)
		if of != "" && contains(sharesExample, fn.Name.Name) && (example == of || strings.HasPrefix(example, of+"_")) {
			return true
		}
	}
	return false
}
