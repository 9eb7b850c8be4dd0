package shape

import (
	"go/ast"
	"go/token"
	"regexp"
	"strconv"
	"strings"
	"unicode"
)

// languageRule: a judgement is a verdict.Report, or embeds one.
func languageRule(tr tree) []string {
	var wrong []string
	for _, f := range tr.code() {
		if f.dir == "units/verdict" {
			continue
		}
		for _, spec := range typesOf(f) {
			if contains([]string{"Verdict", "Finding", "Report", "Assessment"}, spec.Name.Name) && !embedsReport(spec.Type) {
				wrong = append(wrong, tr.at(spec.Pos(), "type %s is no verdict.Report and embeds none", spec.Name.Name))
			}
			if embedsReport(spec.Type) {
				wrong = append(wrong, besideReport(tr, f, spec)...)
			}
		}
	}
	return wrong
}

// besideReport: what a report has is not said a second time beside it.
func besideReport(tr tree, f file, spec *ast.TypeSpec) []string {
	var wrong []string
	for _, field := range spec.Type.(*ast.StructType).Fields.List {
		for _, name := range field.Names {
			if contains([]string{"Verdict", "Findings", "Cautions"}, name.Name) {
				wrong = append(wrong, tr.at(name.Pos(), "%s.%s hides that of its report", spec.Name.Name, name.Name))
			}
		}
	}
	for _, other := range tr.code() {
		for _, decl := range other.syntax.Decls {
			fn, ok := decl.(*ast.FuncDecl)
			if ok && other.dir == f.dir && receiver(fn) == spec.Name.Name && contains([]string{"Cautions", "Report", "Findings", "Verdict"}, fn.Name.Name) {
				wrong = append(wrong, tr.at(fn.Pos(), "method %s.%s hides what its report has", spec.Name.Name, fn.Name.Name))
			}
		}
	}
	return wrong
}

func embedsReport(expr ast.Expr) bool {
	structure, ok := expr.(*ast.StructType)
	if !ok {
		return false
	}
	for _, field := range structure.Fields.List {
		if len(field.Names) > 0 {
			continue
		}
		if sel, ok := field.Type.(*ast.SelectorExpr); ok && sel.Sel.Name == "Report" {
			if x, ok := sel.X.(*ast.Ident); ok && x.Name == "verdict" {
				return true
			}
		}
	}
	return false
}

// enumRule: an exported integer type has a text form in both directions, so that no bare number leaves the process.
func enumRule(tr tree) []string {
	var wrong []string
	packages := tr.packages()
	for _, dir := range sorted(packages) {
		methods := map[string]bool{}
		for _, f := range packages[dir] {
			for _, decl := range f.syntax.Decls {
				if fn, ok := decl.(*ast.FuncDecl); ok && fn.Recv != nil {
					methods[receiver(fn)+"."+fn.Name.Name] = true
				}
			}
		}
		for _, f := range packages[dir] {
			for _, spec := range typesOf(f) {
				if !spec.Name.IsExported() || !isInteger(spec.Type) || spec.Name.Name == "Count" && dir == "units" {
					continue
				}
				for _, method := range []string{"String", "MarshalText", "UnmarshalText"} {
					if !methods[spec.Name.Name+"."+method] {
						wrong = append(wrong, tr.at(spec.Pos(), "integer type %s has no %s", spec.Name.Name, method))
					}
				}
			}
		}
	}
	return wrong
}

func isInteger(expr ast.Expr) bool {
	name, ok := expr.(*ast.Ident)
	return ok && (strings.HasPrefix(name.Name, "int") || strings.HasPrefix(name.Name, "uint") || name.Name == "byte" || name.Name == "rune")
}

func typesOf(f file) []*ast.TypeSpec {
	var all []*ast.TypeSpec
	for _, decl := range f.syntax.Decls {
		gen, ok := decl.(*ast.GenDecl)
		if !ok || gen.Tok != token.TYPE {
			continue
		}
		for _, spec := range gen.Specs {
			all = append(all, spec.(*ast.TypeSpec))
		}
	}
	return all
}

var cautionID = regexp.MustCompile(`^[a-z]+(\.[a-z0-9]+(-[a-z0-9]+)*)+$`)

// cautionRule: every caution has an ID of its own, begins with the name of its package, and is said in whole sentences to
// whoever stands at the stove, without names of Go.
func cautionRule(tr tree) []string {
	var wrong []string
	seen := map[string]string{}
	exported := exportedNames(tr)
	for _, f := range tr.code() {
		ast.Inspect(f.syntax, func(node ast.Node) bool {
			lit, ok := node.(*ast.CompositeLit)
			if !ok {
				return true
			}
			for _, c := range cautionsIn(lit) {
				place := tr.at(c.Pos(), "")
				id, said, text := cautionFields(c)
				switch {
				case text == "" && !said:
					continue // the zero caution, or one made of another
				case id == "":
					wrong = append(wrong, place+"a caution has no ID")
					continue
				case !cautionID.MatchString(id) || !strings.HasPrefix(id, f.syntax.Name.Name+"."):
					wrong = append(wrong, place+"caution ID "+id+" is not "+f.syntax.Name.Name+". and a few words")
				case seen[id] != "":
					wrong = append(wrong, place+"caution ID "+id+" stands at "+seen[id]+" too")
				}
				seen[id] = strings.TrimSuffix(place, ": ")
				if text != "" {
					wrong = append(wrong, sentence(place, text, exported)...)
				}
			}
			return true
		})
	}
	return wrong
}

// cautionsIn are the cautions that a literal is or lists.
func cautionsIn(lit *ast.CompositeLit) []*ast.CompositeLit {
	if isCaution(lit.Type) {
		return []*ast.CompositeLit{lit}
	}
	list, ok := lit.Type.(*ast.ArrayType)
	if !ok || !isCaution(list.Elt) {
		return nil
	}
	var all []*ast.CompositeLit
	for _, element := range lit.Elts {
		if pair, ok := element.(*ast.KeyValueExpr); ok {
			element = pair.Value
		}
		if inner, ok := element.(*ast.CompositeLit); ok && inner.Type == nil {
			all = append(all, inner)
		}
	}
	return all
}

func isCaution(expr ast.Expr) bool {
	switch e := expr.(type) {
	case *ast.SelectorExpr:
		return e.Sel.Name == "Caution"
	case *ast.Ident:
		return e.Name == "Caution"
	}
	return false
}

// cautionFields are the ID, whether a Text is given at all, and the Text where it is a constant.
func cautionFields(lit *ast.CompositeLit) (id string, said bool, text string) {
	for _, element := range lit.Elts {
		pair, ok := element.(*ast.KeyValueExpr)
		if !ok {
			return "", true, ""
		}
		key, ok := pair.Key.(*ast.Ident)
		switch {
		case !ok:
		case key.Name == "ID":
			id, _ = constantText(pair.Value)
		case key.Name == "Text":
			said = true
			text, _ = constantText(pair.Value)
		}
	}
	return id, said, text
}

// constantText is a string literal, or several joined.
func constantText(expr ast.Expr) (string, bool) {
	switch e := expr.(type) {
	case *ast.BasicLit:
		s, err := strconv.Unquote(e.Value)
		return s, err == nil
	case *ast.BinaryExpr:
		left, ok := constantText(e.X)
		right, more := constantText(e.Y)
		return left + right, ok && more
	}
	return "", false
}

// sentence complains of a text that does not begin with a capital or a figure, does not end with a full stop, or names Go.
func sentence(place, text string, exported map[string]bool) []string {
	var wrong []string
	first := []rune(text)[0]
	if !unicode.IsUpper(first) && !unicode.IsDigit(first) || !strings.HasSuffix(text, ".") {
		wrong = append(wrong, place+"a caution is no sentence: "+text)
	}
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return !unicode.IsLetter(r) && r != '.' && r != '_' }) {
		if word = strings.Trim(word, "."); exported[word] {
			wrong = append(wrong, place+"a caution names "+word+": "+text)
		}
	}
	return wrong
}

// exportedNames are the exported functions and types whose names no sentence has by chance: with a capital inside.
func exportedNames(tr tree) map[string]bool {
	names := map[string]bool{}
	add := func(name string) {
		if ast.IsExported(name) && strings.IndexFunc(name[1:], unicode.IsUpper) >= 0 && strings.IndexFunc(name, unicode.IsLower) >= 0 {
			names[name] = true
		}
	}
	for _, f := range tr.code() {
		for _, spec := range typesOf(f) {
			add(spec.Name.Name)
		}
		for _, decl := range f.syntax.Decls {
			if fn, ok := decl.(*ast.FuncDecl); ok {
				add(fn.Name.Name)
			}
		}
	}
	return names
}
