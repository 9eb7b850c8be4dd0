package shape

import (
	"go/ast"
	"go/token"
	"strings"
)

// A global is one package-level variable.
type global struct {
	name  *ast.Ident
	kind  ast.Expr // declared type, or nil
	value ast.Expr // or nil
}

// globalRule: a package-level variable is a sentinel error, or unexported and never written, never handed out, and no
// pointer, channel or empty map that only writing would make useful.
func globalRule(tr tree) []string {
	var wrong []string
	packages := tr.packages()
	for _, dir := range sorted(packages) {
		globals := map[string]global{}
		for _, f := range packages[dir] {
			for _, g := range globalsOf(f) {
				globals[g.name.Name] = g
				if g.name.IsExported() && !sentinel(g) {
					wrong = append(wrong, tr.at(g.name.Pos(), "package-level variable %s is exported and no sentinel error", g.name.Name))
				}
				if changeable(g) {
					wrong = append(wrong, tr.at(g.name.Pos(), "package-level variable %s is of a kind made to be changed", g.name.Name))
				}
			}
		}
		for _, f := range packages[dir] {
			wrong = append(wrong, writes(tr, f, globals)...)
		}
	}
	return wrong
}

func globalsOf(f file) []global {
	var found []global
	for _, decl := range f.syntax.Decls {
		gen, ok := decl.(*ast.GenDecl)
		if !ok || gen.Tok != token.VAR {
			continue
		}
		for _, spec := range gen.Specs {
			spec := spec.(*ast.ValueSpec)
			for i, name := range spec.Names {
				g := global{name: name, kind: spec.Type}
				if i < len(spec.Values) {
					g.value = spec.Values[i]
				}
				if name.Name != "_" {
					found = append(found, g)
				}
			}
		}
	}
	return found
}

// sentinel: Err… = errors.New(…).
func sentinel(g global) bool {
	call, ok := g.value.(*ast.CallExpr)
	if !ok || !strings.HasPrefix(g.name.Name, "Err") {
		return false
	}
	sel, ok := call.Fun.(*ast.SelectorExpr)
	if !ok {
		return false
	}
	x, ok := sel.X.(*ast.Ident)
	return ok && x.Name == "errors" && sel.Sel.Name == "New"
}

func changeable(g global) bool {
	switch kind := g.kind.(type) {
	case *ast.StarExpr, *ast.ChanType:
		return true
	case *ast.MapType, *ast.ArrayType:
		if array, ok := kind.(*ast.ArrayType); ok && array.Len != nil {
			break
		}
		return g.value == nil
	}
	switch value := g.value.(type) {
	case *ast.UnaryExpr:
		return value.Op == token.AND
	case *ast.CallExpr:
		fn, ok := value.Fun.(*ast.Ident)
		return ok && (fn.Name == "new" || fn.Name == "make")
	}
	return false
}

// writes finds what changes a global or hands it out. A local of the same name is taken for it: give the local its own name.
func writes(tr tree, f file, globals map[string]global) []string {
	var wrong []string
	complain := func(expr ast.Expr, what string) {
		if name := rootOf(expr); name != nil {
			if _, ok := globals[name.Name]; ok {
				wrong = append(wrong, tr.at(expr.Pos(), "package-level variable %s (or a local that hides it) is %s", name.Name, what))
			}
		}
	}
	named := imports(f)
	for _, decl := range f.syntax.Decls {
		fn, ok := decl.(*ast.FuncDecl)
		if !ok {
			continue
		}
		ast.Inspect(fn, func(node ast.Node) bool {
			switch n := node.(type) {
			case *ast.AssignStmt:
				for _, left := range n.Lhs {
					if n.Tok != token.DEFINE {
						complain(left, "assigned")
					}
				}
			case *ast.RangeStmt:
				if n.Tok == token.ASSIGN {
					complain(n.Key, "assigned")
					complain(n.Value, "assigned")
				}
			case *ast.IncDecStmt:
				complain(n.X, "assigned")
			case *ast.UnaryExpr:
				if n.Op == token.AND {
					complain(n.X, "pointed to")
				}
			case *ast.CallExpr:
				if len(n.Args) > 0 && changesArgument(n.Fun, named) {
					complain(n.Args[0], "changed")
				}
			case *ast.ReturnStmt:
				for _, result := range n.Results {
					if public(fn) && handsOut(result, globals) {
						complain(result, "handed out: return a copy")
					}
				}
			}
			return true
		})
	}
	return wrong
}

// rootOf is x in x, x.f, x[i], x[i:j], *x and (x).
func rootOf(expr ast.Expr) *ast.Ident {
	switch e := expr.(type) {
	case *ast.Ident:
		return e
	case *ast.SelectorExpr:
		return rootOf(e.X)
	case *ast.IndexExpr:
		return rootOf(e.X)
	case *ast.SliceExpr:
		return rootOf(e.X)
	case *ast.StarExpr:
		return rootOf(e.X)
	case *ast.ParenExpr:
		return rootOf(e.X)
	}
	return nil
}

// changesArgument: clear, copy and delete, and what sorts or edits in place.
func changesArgument(fn ast.Expr, named map[string]string) bool {
	switch f := fn.(type) {
	case *ast.Ident:
		return f.Name == "clear" || f.Name == "copy" || f.Name == "delete"
	case *ast.SelectorExpr:
		x, ok := f.X.(*ast.Ident)
		if !ok {
			return false
		}
		switch named[x.Name] {
		case "sort":
			return contains([]string{"Sort", "Stable", "Slice", "SliceStable", "Strings", "Ints", "Float64s"}, f.Sel.Name)
		case "slices":
			return contains([]string{
				"Sort", "SortFunc", "SortStableFunc", "Reverse", "Delete", "DeleteFunc", "Insert", "Replace", "Compact", "CompactFunc",
			}, f.Sel.Name)
		case "maps":
			return contains([]string{"Copy", "DeleteFunc"}, f.Sel.Name)
		}
	}
	return false
}

// handsOut: the result is a global slice or map itself, or a part of a global slice.
func handsOut(result ast.Expr, globals map[string]global) bool {
	if slice, ok := result.(*ast.SliceExpr); ok {
		result = slice.X
	}
	name, ok := result.(*ast.Ident)
	if !ok {
		return false
	}
	g, ok := globals[name.Name]
	if !ok {
		return false
	}
	kind := g.kind
	if literal, ok := g.value.(*ast.CompositeLit); ok && kind == nil {
		kind = literal.Type
	}
	switch kind := kind.(type) {
	case *ast.MapType:
		return true
	case *ast.ArrayType:
		return kind.Len == nil
	}
	return false
}
