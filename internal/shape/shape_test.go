package shape

import (
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

type rule func(tree) []string

var rules = map[string]rule{
	"top":          topRule,
	"packages":     packageRule,
	"imports":      importRule,
	"calls":        callRule,
	"math":         mathRule,
	"globals":      globalRule,
	"floats":       floatRule,
	"sizes":        sizeRule,
	"skips":        skipRule,
	"words":        wordRule,
	"docs":         docRule,
	"language":     languageRule,
	"enums":        enumRule,
	"cautions":     cautionRule,
	"golden":       goldenRule,
	"bibliography": bibliographyRule,
	"readme":       readmeRule,
	"examples":     exampleRule,
}

// TestShape holds this module to every rule.
func TestShape(t *testing.T) {
	module := onDisk(t)
	for _, name := range sorted(rules) {
		check := rules[name]
		t.Run(name, func(t *testing.T) {
			for _, complaint := range check(module) {
				t.Error(complaint)
			}
		})
	}
}

// The table of packages has no edge to a package that is not in it, and none that leads back.
func TestTableOfImportsHasNoCycle(t *testing.T) {
	var follow func(from string, via []string)
	follow = func(from string, via []string) {
		require.NotContains(t, via, from, "%s leads back to itself by %v", from, via)
		for _, to := range mayImport[from] {
			require.Contains(t, mayImport, to, "%s may import an unknown package", from)
			follow(to, append(append([]string{}, via...), from))
		}
	}
	for _, from := range sorted(mayImport) {
		follow(from, nil)
		require.NotContains(t, mayImport[from], "pressure/lethality", "lethality explains and never decides")
	}
}

// A module of its own inside this one is known, exists, and is not held to the rules of this one.
func TestOwnModules(t *testing.T) {
	module := onDisk(t)
	for _, dir := range ownModules {
		require.FileExists(t, filepath.Join("..", "..", filepath.FromSlash(dir), "go.mod"))
		for _, f := range module.files {
			require.NotEqual(t, dir, f.dir)
		}
	}
}

// whole is a small module that every rule accepts.
func whole() map[string]string {
	texts := map[string]string{
		"units/doc.go": "// Package units is a test.\npackage units\n",
		"units/length.go": `package units

import "errors"

// ErrRange is a sentinel.
var ErrRange = errors.New("out of range")

var names = map[string]Length{"inch": 1}

// Length is whole.
type Length int64

// Inch and Foot are units.
const (
	Inch Length = 1
	Foot        = 12 * Inch
)

// String shares the type's example.
func (l Length) String() string { return "" }

// MarshalText too.
func (l Length) MarshalText() ([]byte, error) { return nil, nil }

// UnmarshalText too.
func (l *Length) UnmarshalText(text []byte) error { return nil }

// Float may say float64: it is the door.
func Float(l Length) float64 { return float64(l) * 1.0 }

// In has an example of its own.
func (l Length) In(unit Length) Length { n := names["inch"]; n++; return n * l / unit }
`,
		"units/length_test.go": `package units_test

import (
	"os"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
)

func ExampleFloat() {
	// Output: 1
}

func ExampleLength_In_feet() {
	// Output: 2
}
`,
		"yield/doc.go": "// Package yield is a test.\npackage yield\n",
		"yield/share.go": `package yield

import (
	"fmt"
	"time"

	"github.com/shopspring/decimal"
	"example.org/lakelarder/units"
)

// Half of an inch, and Day.
const (
	Half = 0.5 * units.Inch
	Day  = 24 * time.Hour
)

var _ fmt.Stringer = Share{}

var table = []Share{{}}

// Share has a hidden part.
type Share struct {
	Part   units.Length
	hidden float64
}

// String shares the type's example.
func (s Share) String() string { return fmt.Sprint(s.hidden) }

func (s Share) factor(x float64) float64 { return x }

// Shares returns a copy.
func Shares(float64s decimal.Decimal) []Share { return append([]Share(nil), table...) }
`,
		"yield/share_test.go": `package yield

func ExampleShare() {
	// Output: whole
}

func ExampleShares() {
	// Unordered output:
	// one
	// two
}
`,
		"examples/plan/main.go":            "// Plan is a demo.\npackage main\n\nimport (\n\t\"os\"\n\n\t\"example.org/lakelarder/examples/internal/sheet\"\n\t\"example.org/lakelarder/yield\"\n)\n\nfunc init() { os.Exit(0) }\n",
		"examples/internal/sheet/sheet.go": "// Package sheet prints.\npackage sheet\n",
		"internal/shape/doc.go":            "package shape\n",
	}
	for _, name := range topLevel {
		if !strings.Contains("brine examples internal pressure smoke testdata units yield", name) {
			texts[name] = "text\n"
		}
	}
	for _, name := range []string{"brine", "pressure", "smoke", "testdata"} {
		texts[name+"/README.md"] = "text\n"
	}
	return texts
}

func TestRulesAccept(t *testing.T) {
	module := plant(t, whole())
	for _, name := range sorted(rules) {
		require.Empty(t, rules[name](module), name)
	}
}

// Each case puts files into the module that every rule accepts (an empty text takes one away) and must be refused.
func TestRulesRefuse(t *testing.T) {
	for name, c := range refusals() {
		texts := whole()
		for path, text := range c.files {
			texts[path] = text
			if text == "" {
				delete(texts, path)
			}
		}
		ruleName := strings.SplitN(name, ":", 2)[0]
		require.Contains(t, rules, ruleName)
		complaints := rules[ruleName](plant(t, texts))
		require.Contains(t, strings.Join(complaints, "\n"), c.want, name)
	}
}

func TestEveryRuleRefusesSomething(t *testing.T) {
	for rule := range rules {
		found := false
		for name := range refusals() {
			found = found || strings.HasPrefix(name, rule+":")
		}
		require.True(t, found, rule)
	}
}

// What lies just inside a limit is accepted, on top of the whole module.
func TestRulesAcceptTheEdge(t *testing.T) {
	long := strings.Repeat("// line\n", 300)
	for name, files := range map[string]map[string]string{
		"sizes: 260 lines":          {"yield/more.go": "package yield\n" + strings.Repeat("// line\n", 259)},
		"sizes: a function of 60":   {"yield/more.go": "package yield\n\nfunc f() {\n" + strings.Repeat("\t_ = 1\n", 58) + "}\n"},
		"sizes: a table":            {"yield/table_x.go": "package yield\n" + long},
		"sizes: a test":             {"yield/x_test.go": "package yield\n" + long},
		"sizes: the bibliography":   {"units/cite/bibliography_smoke.go": "package cite\n" + long},
		"imports: a reader":         {"units/series/x.go": "package series\n\nimport \"io\"\n"},
		"imports: anything in test": {"yield/x_test.go": "package yield\n\nimport \"math/rand\"\n"},
		"math: exact":               {"yield/more.go": "package yield\n\nimport \"math\"\n\nvar x = math.Sqrt(math.Pi)\n"},
		"math: another's":           {"yield/more.go": "package yield\n\nimport math \"example.org/lakelarder/internal/portable\"\n\nvar x = math.Exp(1)\n"},
		"math: in a test":           {"yield/x_test.go": "package yield\n\nimport \"math\"\n\nvar x = math.Exp(1)\n"},
		"calls: of a method":        {"yield/more.go": "package yield\n\nfunc f(t interface{ Now() }) { t.Now() }\n"},
		"words: inside a word":      {"README.md": "/workshop/ XX" + "XL\n"},
		"globals: read":             {"yield/more.go": "package yield\n\nfunc f() []Share {\n\tfor _, s := range table {\n\t\treturn []Share{s, table[0]}\n\t}\n\treturn nil\n}\n"},
		"language: it embeds one":   {"yield/more.go": "package yield\n\n// Report is one.\ntype Report struct {\n\tverdict.Report\n\tJars int\n}\n"},
		"cautions: a whole one": {"yield/more.go": "package yield\n\nvar all = []cite.Caution{{ID: \"yield.weigh-it\", Text: \"Weigh your own \" +\n\t\"fish.\"}}\n\n" +
			"var none = cite.Caution{}\n"},
		"docs: one comment a group": {"yield/more.go": "package yield\n\n// Some numbers.\nconst (\n\tX = 1\n\tY = 2\n)\n"},
	} {
		texts := whole()
		for path, text := range files {
			texts[path] = text
		}
		require.Empty(t, rules[strings.SplitN(name, ":", 2)[0]](plant(t, texts)), name)
	}
}
