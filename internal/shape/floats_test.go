package shape

import (
	"go/ast"
	"go/token"
	"strings"
)

// floatRule: no float64 or float32 in what a product package other than units and the internal ones exports, however deep it sits: parameters, results,
// type parameters, fields, methods of interfaces, types, variables, constants. An unexported type that an exported signature
// names is looked into.
func floatRule(tr tree) []string {
	var wrong []string
	packages := tr.packages()
	for _, dir := range sorted(packages) {
		if dir == "units" || strings.HasPrefix(dir, "internal/") {
			continue
		}
		look := floats{types: map[string]ast.Expr{}, consts: map[string]ast.Expr{}}
		for _, f := range packages[dir] {
			look.learn(f)
		}
		for _, f := range packages[dir] {
			for _, decl := range f.syntax.Decls {
				for _, pos := range look.exported(decl) {
					wrong = append(wrong, tr.at(pos, "float in an exported signature"))
				}
			}
		}
	}
	return wrong
}

// floats knows a package's own types and constants by name.
type floats struct {
	types, consts map[string]ast.Expr
}

func (l floats) learn(f file) {
	for _, decl := range f.syntax.Decls {
		gen, ok := decl.(*ast.GenDecl)
		if !ok {
			continue
		}
		for _, spec := range gen.Specs {
			switch s := spec.(type) {
			case *ast.TypeSpec:
				l.types[s.Name.Name] = s.Type
			case *ast.ValueSpec:
				for i, name := range s.Names {
					if gen.Tok == token.CONST && i < len(s.Values) && s.Type == nil {
						l.consts[name.Name] = s.Values[i]
					}
				}
			}
		}
	}
}

// exported are the places of floats in what a declaration exports.
func (l floats) exported(decl ast.Decl) []token.Pos {
	var found []token.Pos
	switch d := decl.(type) {
	case *ast.FuncDecl:
		if public(d) && l.holds(d.Type, nil) {
			found = append(found, d.Pos())
		}
	case *ast.GenDecl:
		for _, spec := range d.Specs {
			switch s := spec.(type) {
			case *ast.TypeSpec:
				if s.Name.IsExported() && (l.holds(s.Type, nil) || s.TypeParams != nil && l.holds(s.TypeParams, nil)) {
					found = append(found, s.Pos())
				}
			case *ast.ValueSpec:
				for i, name := range s.Names {
					if !name.IsExported() {
						continue
					}
					if s.Type != nil && l.holds(s.Type, nil) || s.Type == nil && i < len(s.Values) && l.value(s.Values[i], 0) {
						found = append(found, name.Pos())
					}
				}
			}
		}
	}
	return found
}

// holds reports whether a type expression holds a float that a caller can see. via are the unexported types on the way here.
func (l floats) holds(node ast.Node, via []string) bool {
	found := false
	ast.Inspect(node, func(node ast.Node) bool {
		switch n := node.(type) {
		case *ast.StructType:
			for _, field := range n.Fields.List {
				found = found || visible(field) && l.holds(field.Type, via)
			}
			return false
		case *ast.Field:
			found = found || n.Type != nil && l.holds(n.Type, via) // not the names: a parameter may be called as it likes
			return false
		case *ast.SelectorExpr:
			return false // a type of another package, where this rule looks as well
		case *ast.Ident:
			if n.Name == "float64" || n.Name == "float32" {
				found = true
			}
			if own, ok := l.types[n.Name]; ok && !n.IsExported() && !contains(via, n.Name) {
				found = found || l.holds(own, append(append([]string{}, via...), n.Name))
			}
		}
		return true
	})
	return found
}

// visible: an embedded field, or one with an exported name.
func visible(field *ast.Field) bool {
	for _, name := range field.Names {
		if name.IsExported() {
			return true
		}
	}
	return len(field.Names) == 0
}

// value reports whether a constant or variable without a declared type is a float: a literal with a point, or what is made of such and of nothing
// that has a type of its own (2.5*units.Inch is a length).
func (l floats) value(expr ast.Expr, depth int) bool {
	float, typed := l.kind(expr, depth)
	return float && !typed
}

func (l floats) kind(expr ast.Expr, depth int) (float, typed bool) {
	if depth > 100 {
		return false, false
	}
	switch e := expr.(type) {
	case *ast.BasicLit:
		return e.Kind == token.FLOAT, false
	case *ast.ParenExpr:
		return l.kind(e.X, depth+1)
	case *ast.UnaryExpr:
		return l.kind(e.X, depth+1)
	case *ast.BinaryExpr:
		leftFloat, leftTyped := l.kind(e.X, depth+1)
		rightFloat, rightTyped := l.kind(e.Y, depth+1)
		return leftFloat || rightFloat, leftTyped || rightTyped
	case *ast.Ident:
		if own, ok := l.consts[e.Name]; ok {
			return l.kind(own, depth+1)
		}
		return false, true
	case *ast.SelectorExpr:
		x, ok := e.X.(*ast.Ident)
		float = ok && x.Name == "math"
		return float, !float
	case *ast.CallExpr:
		float = l.holds(e.Fun, nil)
		return float, !float
	case *ast.CompositeLit:
		return e.Type != nil && l.holds(e.Type, nil), false
	}
	return false, true
}
