package shape

import (
	"go/ast"
	"path"
	"strings"
)

// topRule: what stands at the top is what the list says, no more and no less.
func topRule(tr tree) []string {
	var wrong []string
	for _, name := range tr.top {
		if !contains(topLevel, name) {
			wrong = append(wrong, name+": has no place at the top")
		}
	}
	for _, name := range topLevel {
		if !contains(tr.top, name) {
			wrong = append(wrong, name+": is missing at the top")
		}
	}
	return wrong
}

// packageRule: every package is in the table, an example, or a test helper, and is named after its directory.
func packageRule(tr tree) []string {
	var wrong []string
	for _, f := range tr.files {
		if !isProduct(f.dir) && !isExample(f.dir) && !contains(onlyTests, f.dir) {
			wrong = append(wrong, f.path+": package "+f.dir+" is not in the table of packages")
			continue
		}
		name := strings.TrimSuffix(f.syntax.Name.Name, "_test")
		if name != path.Base(f.dir) && !(isExample(f.dir) && name == "main") {
			wrong = append(wrong, f.path+": package "+f.syntax.Name.Name+" is not named after its directory")
		}
		if f.dir == "internal/shape" && !f.test() && f.name != "doc.go" {
			wrong = append(wrong, f.path+": shape is a test and has no code")
		}
	}
	return wrong
}

// importRule: ours by the table, the standard library by the list, third parties by name.
func importRule(tr tree) []string {
	var wrong []string
	for _, f := range tr.files {
		for _, spec := range f.syntax.Imports {
			target := strings.Trim(spec.Path.Value, `"`)
			if complaint := refused(f, target); complaint != "" {
				wrong = append(wrong, tr.at(spec.Pos(), "imports %s: %s", target, complaint))
			}
			if spec.Name != nil && (spec.Name.Name == "." || spec.Name.Name == "_") && isProduct(f.dir) && !f.test() {
				wrong = append(wrong, tr.at(spec.Pos(), "imports %s as %s", target, spec.Name.Name))
			}
		}
	}
	return wrong
}

// refused says why a file may not import a package, "" if it may.
func refused(f file, target string) string {
	first := strings.Split(target, "/")[0]
	switch {
	case target == module || strings.HasPrefix(target, module+"/"):
		return refusedOfOurs(f, strings.TrimPrefix(strings.TrimPrefix(target, module), "/"))
	case strings.Contains(first, "."):
		if within(codeModules, target) || f.test() && within(testModules, target) {
			return ""
		}
		return "a third-party module that is not allowed here"
	case !isProduct(f.dir) || f.test():
		return ""
	case contains(standard, target) || contains(readers[f.dir], target):
		return ""
	}
	return "not a standard package that a pure function needs"
}

func refusedOfOurs(f file, target string) string {
	switch {
	case contains(onlyTests, target):
		if !f.test() && !contains(helpersMayImport[f.dir], target) {
			return "only tests import it"
		}
	case isExample(f.dir) && strings.HasPrefix(target, "examples/internal/"): // what every example does alike
	case !isProduct(target):
		return "no package of ours that may be imported"
	case isExample(f.dir) || f.test() && (target == f.dir || contains(allPackages, f.dir)):
	case contains(mayImport[f.dir], target):
	case f.test() && contains(testsMayImport, target), contains(helpersMayImport[f.dir], target):
	default:
		return "not in the table of imports"
	}
	return ""
}

func within(modules []string, target string) bool {
	for _, m := range modules {
		if target == m || strings.HasPrefix(target, m+"/") {
			return true
		}
	}
	return false
}

// callRule: no clock, no waiting, no printing, no panic, no init.
func callRule(tr tree) []string {
	var wrong []string
	for _, f := range tr.code() {
		named := imports(f)
		ast.Inspect(f.syntax, func(node ast.Node) bool {
			switch n := node.(type) {
			case *ast.SelectorExpr:
				if x, ok := n.X.(*ast.Ident); ok && contains(forbidden[named[x.Name]], n.Sel.Name) {
					wrong = append(wrong, tr.at(n.Pos(), "%s.%s is not a pure function", named[x.Name], n.Sel.Name))
				}
			case *ast.CallExpr:
				if fn, ok := n.Fun.(*ast.Ident); ok && contains([]string{"panic", "print", "println"}, fn.Name) {
					wrong = append(wrong, tr.at(n.Pos(), "calls %s", fn.Name))
				}
			case *ast.FuncDecl:
				if n.Recv == nil && n.Name.Name == "init" {
					wrong = append(wrong, tr.at(n.Pos(), "has an init"))
				}
			}
			return true
		})
	}
	return wrong
}

// mathRule: of package math only what is exact.
func mathRule(tr tree) []string {
	var wrong []string
	for _, f := range tr.code() {
		named := imports(f)
		ast.Inspect(f.syntax, func(node ast.Node) bool {
			sel, ok := node.(*ast.SelectorExpr)
			if !ok {
				return true
			}
			if x, ok := sel.X.(*ast.Ident); ok && named[x.Name] == "math" && !contains(exactMath, sel.Sel.Name) {
				wrong = append(wrong, tr.at(sel.Pos(), "math.%s may differ between machines: use internal/portable", sel.Sel.Name))
			}
			return true
		})
	}
	return wrong
}
