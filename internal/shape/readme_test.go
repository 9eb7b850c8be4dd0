package shape

import (
	"go/ast"
	"regexp"
	"strings"
)

var quotedName = regexp.MustCompile("`([A-Za-z/.]+)`")

// readmeRule: the names in the table "Find it here" of README.md stand in the package that their row names.
func readmeRule(tr tree) []string {
	var wrong []string
	_, table, _ := strings.Cut(tr.texts["README.md"], "## Find it here")
	table, _, _ = strings.Cut(table, "\n## ")
	names := exportedByPackage(tr)
	for _, row := range strings.Split(table, "\n") {
		cells := strings.Split(row, "|")
		if len(cells) != 5 {
			continue
		}
		where := quotedName.FindStringSubmatch(cells[2])
		if where == nil || where[1] == "testdata" {
			continue
		}
		if names[where[1]] == nil {
			wrong = append(wrong, "README.md: "+where[1]+" is no package")
			continue
		}
		for _, name := range quotedName.FindAllStringSubmatch(cells[3], -1) {
			if !names[where[1]][name[1]] {
				wrong = append(wrong, "README.md: "+where[1]+" has no "+name[1])
			}
		}
	}
	return wrong
}

// exportedByPackage are the functions, types and methods of each product package: "Find", "Air", "Air.WetBulb".
func exportedByPackage(tr tree) map[string]map[string]bool {
	all := map[string]map[string]bool{}
	for _, f := range tr.code() {
		if all[f.dir] == nil {
			all[f.dir] = map[string]bool{}
		}
		for _, spec := range typesOf(f) {
			all[f.dir][spec.Name.Name] = spec.Name.IsExported()
		}
		for _, decl := range f.syntax.Decls {
			fn, ok := decl.(*ast.FuncDecl)
			if !ok || !public(fn) {
				continue
			}
			if of := receiver(fn); of != "" {
				all[f.dir][of+"."+fn.Name.Name] = true
			} else {
				all[f.dir][fn.Name.Name] = true
			}
		}
	}
	return all
}
