package shape

import "strings"

type refusal struct {
	files map[string]string
	want  string
}

// yieldCode is one more file of package yield.
func yieldCode(text, want string) refusal {
	return refusal{map[string]string{"yield/more.go": "package yield\n\n" + text + "\n"}, want}
}

// yieldUses is one more function body of package yield, beside two globals.
func yieldUses(body, want string) refusal {
	return yieldCode("import (\n\t\"slices\"\n\t\"sort\"\n)\n\nvar list = []int{2, 1}\n\nvar byName = map[string]int{}\n\n"+
		"// F is F.\nfunc F(i int, found map[string]int) []int {\n"+body+"\n}\n", want)
}

// saved is a result as it is saved.
func saved(text, want string) refusal {
	return refusal{map[string]string{"testdata/golden/x.json": text}, want}
}

func importing(path, target, want string) refusal {
	pkg := strings.Split(path, "/")
	return refusal{map[string]string{path: "package " + pkg[len(pkg)-2] + "\n\nimport \"" + target + "\"\n"}, want}
}

// refusals names each case by its rule.
func refusals() map[string]refusal {
	const ours = module + "/"
	return map[string]refusal{
		"top: another directory":  {map[string]string{"cmd/x/main.go": "package main\n"}, "cmd: has no place at the top"},
		"top: a root package":     {map[string]string{"lakelarder.go": "package lakelarder\n"}, "lakelarder.go: has no place"},
		"top: a file is missing":  {map[string]string{"LICENSE": ""}, "LICENSE: is missing at the top"},
		"top: an area is missing": {map[string]string{"brine/README.md": ""}, "brine: is missing at the top"},

		"packages: unknown":          {map[string]string{"yield/extra/x.go": "package extra\n"}, "yield/extra is not in the table"},
		"packages: unknown test":     {map[string]string{"yield/extra/x_test.go": "package extra\n"}, "yield/extra is not in the table"},
		"packages: unknown internal": {map[string]string{"internal/util/x.go": "package util\n"}, "internal/util is not in the table"},
		"packages: other name":       {map[string]string{"brine/x.go": "package salt\n"}, "package salt is not named after its directory"},
		"packages: product main":     {map[string]string{"brine/x.go": "package main\n"}, "package main is not named"},
		"packages: code in shape":    {map[string]string{"internal/shape/x.go": "package shape\n"}, "shape is a test and has no code"},

		"imports: a sister":            importing("brine/x.go", ours+"smoke", "imports example.org/lakelarder/smoke: not in the table of imports"),
		"imports: a sister, in a test": importing("brine/x_test.go", ours+"smoke", "not in the table of imports"),
		"imports: upwards":             importing("units/x.go", ours+"units/cite", "not in the table of imports"),
		"imports: lethality":           importing("pressure/canner/x.go", ours+"pressure/lethality", "not in the table of imports"),
		"imports: a test helper":       importing("brine/x.go", ours+"internal/printed", "only tests import it"),
		"imports: helper in example":   importing("examples/plan/x.go", ours+"internal/printed", "only tests import it"),
		"imports: an example":          importing("brine/x_test.go", ours+"examples/plan", "no package of ours that may be imported"),
		"imports: examples' own":       importing("brine/x_test.go", ours+"examples/internal/sheet", "no package of ours that may be imported"),
		"imports: the root":            importing("examples/plan/x.go", module, "no package of ours that may be imported"),
		"imports: third party":         importing("brine/x.go", "gonum.org/v1/gonum/mat", "third-party module"),
		"imports: third party, test":   importing("brine/x_test.go", "github.com/stretchr/testifyx", "third-party module"),
		"imports: testify in code":     importing("brine/x.go", "github.com/stretchr/testify/require", "third-party module"),
		"imports: cmp in an example":   importing("examples/plan/x.go", "github.com/google/go-cmp/cmp", "third-party module"),
		"imports: testify in a helper": importing("internal/printed/x.go", "github.com/stretchr/testify/require", "third-party module"),
		"imports: os":                  importing("brine/x.go", "os", "imports os: not a standard package that a pure function needs"),
		"imports: os/exec":             importing("brine/x.go", "os/exec", "pure function"),
		"imports: net/http":            importing("brine/x.go", "net/http", "pure function"),
		"imports: math/rand":           importing("brine/x.go", "math/rand", "pure function"),
		"imports: crypto/rand":         importing("brine/x.go", "crypto/rand", "pure function"),
		"imports: log":                 importing("brine/x.go", "log", "pure function"),
		"imports: unsafe":              importing("brine/x.go", "unsafe", "pure function"),
		"imports: C":                   importing("brine/x.go", "C", "pure function"),
		"imports: sync":                importing("brine/x.go", "sync", "pure function"),
		"imports: io outside series":   importing("yield/coldchain/x.go", "io", "pure function"),
		"imports: dot":                 yieldCode("import . \"math\"", "imports math as ."),
		"imports: blank":               yieldCode("import _ \"math\"", "imports math as _"),

		"calls: time.Now":         yieldCode("import \"time\"\n\nfunc f() time.Time { return time.Now() }", "yield/more.go:5: time.Now is not a pure function"),
		"calls: renamed":          yieldCode("import clock \"time\"\n\nfunc f() { clock.Sleep(1) }", "time.Sleep is not"),
		"calls: not even called":  yieldCode("import \"time\"\n\nvar now = time.Now", "time.Now is not"),
		"calls: time.Local":       yieldCode("import \"time\"\n\nvar zone = time.Local", "time.Local is not"),
		"calls: fmt.Println":      yieldCode("import \"fmt\"\n\nfunc f() { fmt.Println() }", "fmt.Println is not"),
		"calls: panic":            yieldCode("func f() { panic(1) }", "calls panic"),
		"calls: built-in println": yieldCode("func f() { println(1) }", "calls println"),
		"calls: init":             yieldCode("func init() {}", "yield/more.go:3: has an init"),

		"math: exponential":     yieldCode("import \"math\"\n\nfunc f() float64 { return math.Exp(1) }", "yield/more.go:5: math.Exp may differ between machines"),
		"math: renamed":         yieldCode("import m \"math\"\n\nfunc f() float64 { return m.Pow(1, 2) }", "math.Pow may differ"),
		"math: not even called": yieldCode("import \"math\"\n\nvar sine = math.Sin", "math.Sin may differ"),
		"math: fused":           yieldCode("import \"math\"\n\nvar x = math.FMA(1, 2, 3)", "math.FMA may differ"),

		"globals: exported":               yieldCode("// Limits are limits.\nvar Limits = [2]int{1, 2}", "package-level variable Limits is exported and no sentinel"),
		"globals: error of other make":    yieldCode("// ErrX is X.\nvar ErrX = f()", "ErrX is exported and no sentinel"),
		"globals: sentinel of other name": yieldCode("import \"errors\"\n\n// NotFound is X.\nvar NotFound = errors.New(\"\")", "NotFound is exported"),
		"globals: sentinel replaced":      yieldCode("import \"errors\"\n\n// ErrX is X.\nvar ErrX = errors.New(\"\")\n\nfunc f() { ErrX = nil }", "ErrX (or a local that hides it) is assigned"),
		"globals: pointer":                yieldCode("var cache = &Share{}", "cache is of a kind made to be changed"),
		"globals: pointer type":           yieldCode("var cache *Share", "cache is of a kind made"),
		"globals: made":                   yieldCode("var cache = make(map[string]int)", "cache is of a kind made"),
		"globals: new":                    yieldCode("var cache = new(int)", "cache is of a kind made"),
		"globals: nil map":                yieldCode("var cache map[string]int", "cache is of a kind made"),
		"globals: channel":                yieldCode("var queue chan int", "queue is of a kind made"),
		"globals: assigned":               yieldUses("list = nil\nreturn nil", "list (or a local that hides it) is assigned"),
		"globals: element":                yieldUses("list[i] = 3\nreturn nil", "list (or a local that hides it) is assigned"),
		"globals: map element":            yieldUses("byName[\"a\"] += 3\nreturn nil", "byName (or a local that hides it) is assigned"),
		"globals: counted up":             yieldUses("list[0]++\nreturn nil", "list (or a local that hides it) is assigned"),
		"globals: ranged into":            yieldUses("for list[0] = range list {\n}\nreturn nil", "is assigned"),
		"globals: pointed to":             yieldUses("p := &list[0]\n*p = 1\nreturn nil", "is pointed to"),
		"globals: in another file":        yieldCode("func f() { table[0].Part = 1 }", "table (or a local that hides it) is assigned"),
		"globals: deleted from":           yieldUses("delete(byName, \"a\")\nreturn nil", "byName (or a local that hides it) is changed"),
		"globals: copied into":            yieldUses("copy(list[1:], list)\nreturn nil", "is changed"),
		"globals: sorted":                 yieldUses("sort.Ints(list)\nreturn nil", "is changed"),
		"globals: reversed":               yieldUses("slices.Reverse(list)\nreturn nil", "is changed"),
		"globals: handed out":             yieldUses("return list", "list (or a local that hides it) is handed out"),
		"globals: a part handed out":      yieldUses("return list[1:]", "is handed out"),
		"globals: map handed out":         yieldCode("var byName = map[string]int{}\n\n// F is F.\nfunc F() map[string]int { return byName }", "is handed out"),

		"floats: parameter":         yieldCode("// F is F.\nfunc F(x float64) {}", "yield/more.go:4: float in an exported signature"),
		"floats: result":            yieldCode("// F is F.\nfunc F() (int, float32) { return 0, 0 }", "float in"),
		"floats: variadic":          yieldCode("// F is F.\nfunc F(x ...float64) {}", "float in"),
		"floats: slice":             yieldCode("// F is F.\nfunc F(x []float64) {}", "float in"),
		"floats: map value":         yieldCode("// F is F.\nfunc F(x map[string]float64) {}", "float in"),
		"floats: function":          yieldCode("// F is F.\nfunc F(x func() func(float64)) {}", "float in"),
		"floats: channel":           yieldCode("// F is F.\nfunc F(x <-chan float64) {}", "float in"),
		"floats: pointer":           yieldCode("// F is F.\nfunc F(x *float64) {}", "float in"),
		"floats: type argument":     yieldCode("// F is F.\nfunc F(x series.Series[float64]) {}", "float in"),
		"floats: type parameter":    yieldCode("// F is F.\nfunc F[T ~float64](x T) {}", "float in"),
		"floats: method":            yieldCode("// F is F.\nfunc (s *Share) F(x float64) {}", "float in"),
		"floats: field":             yieldCode("// T is T.\ntype T struct{ a, X float64 }", "float in"),
		"floats: deep field":        yieldCode("// T is T.\ntype T struct{ X []struct{ Y float64 } }", "float in"),
		"floats: embedded":          yieldCode("type inner struct{ X float64 }\n\n// T is T.\ntype T struct{ inner }", "float in"),
		"floats: type":              yieldCode("// T is T.\ntype T float64", "float in"),
		"floats: alias":             yieldCode("// T is T.\ntype T = float64", "float in"),
		"floats: generic type":      yieldCode("// T is T.\ntype T[E float32 | int] struct{}", "float in"),
		"floats: interface":         yieldCode("// T is T.\ntype T interface{ F() float64 }", "float in"),
		"floats: unexported type":   yieldCode("type hidden float64\n\n// F is F.\nfunc F(x hidden) {}", "float in"),
		"floats: by two types":      yieldCode("type a []b\n\ntype b float64\n\n// F is F.\nfunc F(x a) {}", "float in"),
		"floats: constant":          yieldCode("// X is X.\nconst X float64 = 1", "float in"),
		"floats: literal":           yieldCode("// X is X.\nconst X = -(2 * 1.5)", "float in"),
		"floats: by a constant":     yieldCode("const x = 1.5\n\n// X is X.\nconst X = x * 2", "float in"),
		"floats: of math":           yieldCode("import \"math\"\n\n// X is X.\nconst X = math.Pi / 2", "float in"),
		"floats: converted":         yieldCode("// X is X.\nconst X = float64(3)", "float in"),
		"floats: variable":          yieldCode("// X is X.\nvar X = []float64{1}", "float in"),
		"floats: in series as well": {map[string]string{"units/series/x.go": "package series\n\n// F is F.\nfunc F() float64 { return 0 }\n"}, "units/series/x.go:4: float"},

		"sizes: file":                 yieldCode(strings.Repeat("// line\n", 260), "yield/more.go: 263 lines"),
		"sizes: file of an example":   {map[string]string{"examples/plan/x.go": "package main\n" + strings.Repeat("// line\n", 260)}, "261 lines"},
		"sizes: function":             yieldCode("func f() {\n"+strings.Repeat("\t_ = 1\n", 59)+"}", "f has 61 lines"),
		"sizes: function in a table":  {map[string]string{"yield/table_x.go": "package yield\n\nfunc f() {\n" + strings.Repeat("\t_ = 1\n", 59) + "}\n"}, "f has 61 lines"},
		"sizes: bibliography by name": {map[string]string{"yield/bibliography.go": "package yield\n" + strings.Repeat("// line\n", 260)}, "261 lines"},

		"skips: by hand":    {map[string]string{"yield/x_test.go": "package yield\n\nfunc f(t T) { t.Sk" + "ip() }\n"}, "yield/x_test.go:3: calls Skip"},
		"skips: when short": {map[string]string{"yield/x_test.go": "package yield\n\nfunc f() bool { return testing.Short() }\n"}, "calls Short"},

		"words: a place of work":         {map[string]string{"README.md": "see /work" + "/main\n"}, "README.md: says /work"},
		"words: a scratch place":         {map[string]string{"testdata/x/y.csv": "a\n/tmp" + "/x\n"}, "says /tmp"},
		"words: work to do":              yieldCode("// TO"+"DO", "yield/more.go: says TO"),
		"words: work to mend":            {map[string]string{"examples/plan/x.json": "\"FIX" + "ME\"\n"}, "says FIX"},
		"words: three crosses":           yieldCode("// XX"+"X: hm", "says XX"),
		"language: a verdict of its own": yieldCode("// Verdict is another.\ntype Verdict uint8", "type Verdict is no verdict.Report"),
		"language: a finding":            yieldCode("// Finding is another.\ntype Finding struct{ What string }", "type Finding is no verdict.Report"),
		"language: by name only":         yieldCode("// Report is another.\ntype Report struct{ verdict other.Report }", "type Report is no verdict.Report"),
		"language: cautions twice":       yieldCode("// Hold is a judgement.\ntype Hold struct {\n\tverdict.Report\n\tCautions []string\n}", "Hold.Cautions hides"),
		"language: a method beside it": yieldCode("// Hold is a judgement.\ntype Hold struct{ verdict.Report }\n\n// Cautions are cautions.\nfunc (h Hold) Cautions() []string { return nil }",
			"method Hold.Cautions hides"),

		"enums: bare":          yieldCode("// T is T.\ntype T uint8", "integer type T has no String"),
		"enums: one way":       yieldCode("// T is T.\ntype T int\n\nfunc (T) String() string { return \"\" }\n\nfunc (T) MarshalText() ([]byte, error) { return nil, nil }", "integer type T has no UnmarshalText"),
		"cautions: no ID":      yieldCode("var c = cite.Caution{Text: \"Weigh it.\"}", "a caution has no ID"),
		"cautions: unkeyed":    yieldCode("var c = cite.Caution{\"yield.a\", \"Weigh it.\", false, from}", "a caution has no ID"),
		"cautions: in a list":  yieldCode("var c = []cite.Caution{{ID: \"yield.a\", Text: \"A.\"}, {Text: \"B.\"}}", "a caution has no ID"),
		"cautions: of another": yieldCode("var c = cite.Caution{ID: \"brine.weigh\", Text: \"Weigh it.\"}", "caution ID brine.weigh is not yield."),
		"cautions: odd ID":     yieldCode("var c = cite.Caution{ID: \"yield.Weigh it\", Text: \"Weigh it.\"}", "is not yield. and a few words"),
		"cautions: twice": yieldCode("var c = cite.Caution{ID: \"yield.weigh\", Text: \"Weigh it.\"}\n\nvar d = cite.Caution{ID: \"yield.weigh\", Text: \"Weigh it again.\"}",
			"yield.weigh stands at yield/more.go:3 too"),
		"cautions: small letter":  yieldCode("var c = cite.Caution{ID: \"yield.a\", Text: \"weigh it.\"}", "a caution is no sentence"),
		"cautions: no stop":       yieldCode("var c = cite.Caution{ID: \"yield.a\", Text: \"Weigh \" + \"it\"}", "a caution is no sentence"),
		"cautions: names Go":      yieldCode("// WeighIt weighs.\nfunc WeighIt() {}\n\nvar c = cite.Caution{ID: \"yield.a\", Text: \"Weigh it by WeighIt.\"}", "a caution names WeighIt"),
		"readme: no such name":    {map[string]string{"README.md": "## Find it here\n\n| a question | `yield` | `Shares`, `Chain` |\n"}, "README.md: yield has no Chain"},
		"readme: no such package": {map[string]string{"README.md": "## Find it here\n\n| a question | `yields` | `Shares` |\n"}, "yields is no package"},
		"bibliography: unused": {map[string]string{"units/cite/sources.go": "package cite\n\n// The sources.\nconst (\n\t_ Source = iota\n\tPNW238\n)\n"},
			"units/cite/sources.go:6: no code and no row of testdata names PNW238"},
		"golden: empty object":   saved(`{"held":{}}`, ".held is {}"),
		"golden: bare number":    saved(`{"findings":[{"verdict":2}]}`, ".findings[0].verdict is a bare number"),
		"golden: nanoseconds":    saved(`{"held":"6000000000000ns"}`, ".held is 6000000000000ns"),
		"golden: null":           saved(`{"findings":null}`, ".findings is null"),
		"golden: no JSON":        saved(`{"findings":`, "testdata/golden/x.json: unexpected EOF"),
		"docs: no doc.go":        {map[string]string{"yield/doc.go": ""}, "yield: has no doc.go with a package comment"},
		"docs: empty doc.go":     {map[string]string{"yield/doc.go": "package yield\n"}, "yield: has no doc.go with a package comment"},
		"docs: a second comment": {map[string]string{"yield/more.go": "// Package yield again.\npackage yield\n"}, "the package comment stands in doc.go alone"},
		"docs: function":         yieldCode("func F() {}", "yield/more.go:3: F has no doc comment"),
		"docs: method":           yieldCode("func (Share) F() {}", "F has no doc comment"),
		"docs: type":             yieldCode("type T int", "T has no doc comment"),
		"docs: types in a group": yieldCode("// Some types.\ntype (\n\tT int\n)", "T has no doc comment"),
		"docs: constant":         yieldCode("const X = 1", "X has no doc comment"),
		"docs: one of a group":   yieldCode("const (\n\tX = 1 // is X\n\tY = 2\n)", "Y has no doc comment"),
		"docs: only a directive": yieldCode("//go:noinline\nfunc F() {}", "F has no doc comment"),
		"examples: function":     yieldCode("// F is F.\nfunc F() {}", "yield/more.go:4: no runnable ExampleF"),
		"examples: method":       yieldCode("// F is F.\nfunc (*Share) F() {}", "no runnable ExampleShare_F"),
		"examples: generic":      yieldCode("// T is T.\ntype T[E any] struct{}\n\n// F is F.\nfunc (T[E]) F() {}", "no runnable ExampleT_F"),
		"examples: small method": yieldCode("// T is T.\ntype T int\n\n// String is String.\nfunc (T) String() string { return \"\" }", "no runnable ExampleT_String"),
		"examples: without output": {map[string]string{"yield/share_test.go": "package yield\n\nfunc ExampleShare() {\n\t// Output: whole\n}\n\nfunc ExampleShares() {}\n"},
			"no runnable ExampleShares"},
		"examples: empty output": {map[string]string{"yield/share_test.go": "package yield\n\nfunc ExampleShare() {\n\t// Output: whole\n}\n\nfunc ExampleShares() {\n\t// Output:\n}\n"},
			"no runnable ExampleShares"},
		"examples: in other package": {map[string]string{"units/length_test.go": "", "yield/length_test.go": "package yield\n\nfunc ExampleFloat() {\n\t// Output: 1\n}\n"},
			"units/length.go"},
		"examples: of another name": {map[string]string{"units/length_test.go": "package units_test\n\nfunc ExampleFloat_In() {\n\t// Output: 1\n}\n"}, "no runnable ExampleFloat"},
	}
}
