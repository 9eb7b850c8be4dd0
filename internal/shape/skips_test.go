package shape

import "go/ast"

// skipRule: a test that may skip itself may pass without having run.
func skipRule(tr tree) []string {
	var wrong []string
	for _, f := range tr.files {
		if !f.test() {
			continue
		}
		ast.Inspect(f.syntax, func(node ast.Node) bool {
			call, ok := node.(*ast.CallExpr)
			if !ok {
				return true
			}
			sel, ok := call.Fun.(*ast.SelectorExpr)
			if !ok {
				return true
			}
			x, _ := sel.X.(*ast.Ident)
			short := sel.Sel.Name == "Short" && x != nil && x.Name == "testing"
			if short || contains([]string{"Skip", "Skipf", "SkipNow"}, sel.Sel.Name) {
				wrong = append(wrong, tr.at(call.Pos(), "calls %s: a test runs or is deleted", sel.Sel.Name))
			}
			return true
		})
	}
	return wrong
}
