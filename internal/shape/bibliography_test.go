package shape

import (
	"encoding/csv"
	"go/ast"
	"strings"
)

// bibliographyRule: every document of the bibliography is named by code outside it or by a row of testdata.
func bibliographyRule(tr tree) []string {
	used := map[string]bool{}
	for _, f := range tr.files {
		if f.dir == "units/cite" {
			continue
		}
		named := imports(f)
		ast.Inspect(f.syntax, func(node ast.Node) bool {
			if sel, ok := node.(*ast.SelectorExpr); ok {
				if x, ok := sel.X.(*ast.Ident); ok && named[x.Name] == module+"/units/cite" {
					used[sel.Sel.Name] = true
				}
			}
			return true
		})
	}
	for name, text := range tr.texts {
		if !strings.HasPrefix(name, "testdata/") || !strings.HasSuffix(name, ".csv") {
			continue
		}
		rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
		if err != nil {
			continue // the test of the printed tables says so
		}
		for _, row := range rows {
			for _, cell := range row {
				for _, key := range strings.FieldsFunc(cell, func(r rune) bool { return r == ',' || r == ';' || r == ' ' }) {
					used[key] = true
				}
			}
		}
	}
	var wrong []string
	for _, f := range tr.code() {
		if f.path != "units/cite/sources.go" {
			continue
		}
		ast.Inspect(f.syntax, func(node ast.Node) bool {
			if spec, ok := node.(*ast.ValueSpec); ok && spec.Names[0].Name != "_" && !used[spec.Names[0].Name] {
				wrong = append(wrong, tr.at(spec.Pos(), "no code and no row of testdata names %s", spec.Names[0].Name))
			}
			return true
		})
	}
	return wrong
}
