package shape

import (
	"fmt"
	"go/ast"
	"regexp"
)

// sizeRule: a file holds one idea and a function is read at one look.
func sizeRule(tr tree) []string {
	var wrong []string
	for _, f := range tr.files {
		if f.test() {
			continue
		}
		if f.lines > fileLines && !mayBeLong(f) {
			wrong = append(wrong, fmt.Sprintf("%s: %d lines, and a file has about 250", f.path, f.lines))
		}
		for _, decl := range f.syntax.Decls {
			fn, ok := decl.(*ast.FuncDecl)
			if !ok {
				continue
			}
			lines := tr.set.Position(fn.End()).Line - tr.set.Position(fn.Pos()).Line + 1
			if lines > functionLines {
				wrong = append(wrong, tr.at(fn.Pos(), "%s has %d lines, and a function has about 40", fn.Name.Name, lines))
			}
		}
	}
	return wrong
}

// Left-overs of work in hand. The words are put together here so that this file may hold them.
var leftOver = regexp.MustCompile(`/work` + `/|/tmp` + `/|\b(TO` + `DO|FIX` + `ME|XX` + `X)\b`)

// wordRule: no left-overs in any text file.
func wordRule(tr tree) []string {
	var wrong []string
	for _, name := range sorted(tr.texts) {
		if found := leftOver.FindString(tr.texts[name]); found != "" {
			wrong = append(wrong, name+": says "+found)
		}
	}
	return wrong
}
