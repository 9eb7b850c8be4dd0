package shape

import "strings"

const module = "example.org/lakelarder"

// mayImport says which of our packages a product package may import, in its own code and in its tests. brine, smoke, pressure and yield
// never import each other: what passes between them is a quantity. Nothing imports pressure/lethality: it explains and never decides.
var mayImport = map[string][]string{
	"units":             {},
	"units/cite":        {"internal/wire", "internal/word", "units"},
	"units/series":      {"internal/wire", "internal/word", "units"},
	"units/verdict":     {"internal/word", "units/series", "units", "units/cite"},
	"internal/portable": {},
	"internal/root":     {},
	"internal/wire":     {"units"}, // and no domain type: those call it
	"internal/word":     {"units"},
	"pressure":          {"units", "units/cite", "internal/portable", "internal/wire"},
	"pressure/canner": {
		"pressure/process", "pressure", "units/verdict", "internal/wire", "internal/word", "units/series", "units",
		"units/cite",
	},
	"pressure/lethality": {"internal/wire", "internal/word", "units/series", "units", "units/cite", "internal/portable"},
	"pressure/process":   {"pressure", "units/verdict", "internal/wire", "internal/word", "units", "units/cite"},
	"brine": {
		"units", "units/cite", "internal/portable", "brine/solution", "units/verdict", "internal/wire",
		"internal/word",
	},
	"brine/solution": {"internal/portable", "internal/wire", "units", "units/cite"}, // what brine is by itself; it knows no fish
	"smoke": {
		"units/series", "units", "units/cite", "internal/portable", "smoke/moistair", "units/verdict",
		"internal/root", "internal/wire", "internal/word",
	},
	"smoke/moistair": {"internal/portable", "internal/root", "internal/wire", "units", "units/cite"},
	"yield":          {"internal/word", "units", "units/cite", "internal/portable", "internal/wire"},
	"yield/coldchain": {
		"internal/word", "units/series", "units", "units/cite", "internal/portable",
		"yield/coldchain/internal/chain", "internal/wire", "units/verdict",
	},
	"yield/coldchain/freezing": {
		"internal/portable", "yield/coldchain/internal/chain", "internal/wire", "internal/word", "units", "units/cite",
	},
	"yield/coldchain/growth":         {"internal/portable", "yield/coldchain/internal/chain", "internal/wire", "units/series", "units", "units/cite"},
	"yield/coldchain/ice":            {"internal/portable", "yield/coldchain/internal/chain", "internal/wire", "internal/word", "units", "units/cite"},
	"yield/coldchain/internal/chain": {"units/verdict", "units/series", "units", "units/cite"},
	"yield/coldchain/keeping": {
		"internal/portable", "yield/coldchain", "yield/coldchain/internal/chain", "internal/wire", "internal/word", "units/verdict",
		"units/series", "units", "units/cite",
	},
	"yield/coldchain/parasites": {
		"yield/coldchain/freezing", "yield/coldchain/internal/chain", "internal/wire", "internal/word",
		"units/verdict", "units/series", "units", "units/cite",
	},
	"yield/coldchain/spoilage": {
		"internal/portable", "yield/coldchain/internal/chain", "internal/wire", "internal/word", "units/series", "units", "units/cite",
	},
	"yield/season": {
		"yield", "yield/coldchain", "units/verdict", "units", "units/cite", "internal/wire", "internal/word",
	},
	"yield/timetable": {"internal/wire", "internal/word", "units", "units/cite"},
}

// testsMayImport comes on top of that in _test files.
var testsMayImport = []string{"units", "units/cite", "internal/printed", "yield/coldchain/internal/logged"}

// onlyTests are the packages of ours that only _test files import.
var onlyTests = []string{"internal/printed", "internal/shape", "internal/conformance", "yield/coldchain/internal/logged"}

// helpersMayImport says which of our packages a package that only tests import may import.
var helpersMayImport = map[string][]string{
	"yield/coldchain/internal/logged": {"internal/printed", "yield/coldchain/internal/chain", "units/series", "units", "units/cite"},
}

// allPackages are the test packages that look at every product package.
var allPackages = []string{"internal/conformance"}

// standard is what pure functions need of the standard library: no clock, randomness, network, file, process or shared state.
var standard = []string{
	"bytes", "cmp", "encoding", "errors", "fmt", "maps", "math", "math/big", "math/bits", "regexp", "slices", "sort", "strconv", "strings",
	"time", "unicode", "unicode/utf8",
}

// readers is what a package that reads a caller's text may import as well; the caller opens and closes it. JSON is read and written in one
// place, by reflection, so that it has one form.
var readers = map[string][]string{
	"units/series":  {"bufio", "encoding/csv", "io"},
	"internal/wire": {"encoding/json", "reflect", "unicode/utf16"},
	"yield/season":  {"encoding/csv"}, // a household's ledger, as text that the caller read
}

// forbidden are the names in allowed standard packages that read a clock, wait, look at the machine or print.
var forbidden = map[string][]string{
	"time": {"Now", "Since", "Until", "Sleep", "Tick", "After", "AfterFunc", "NewTimer", "NewTicker", "Local", "LoadLocation"},
	"fmt":  {"Print", "Printf", "Println", "Scan", "Scanf", "Scanln"},
}

// exactMath is what product packages use of package math: numbers, and functions whose result has one right value on every machine. What is left
// out differs in the last digit from one kind of processor to the next: internal/portable has it. FMA is exact, and slow where no processor
// has it.
var exactMath = []string{
	"Abs", "Ceil", "Copysign", "Float64bits", "Float64frombits", "Floor", "Inf", "IsInf", "IsNaN", "Max", "Min", "NaN", "Round", "RoundToEven", "Signbit",
	"Sqrt", "Trunc", "Ln10", "Ln2", "MaxFloat64", "MaxInt64", "MaxUint64", "MinInt64", "Pi", "SmallestNonzeroFloat64", "SqrtPi",
}

// Third-party modules: what code may import, and what tests may import as well.
var (
	codeModules = []string{"github.com/shopspring/decimal"}
	testModules = []string{"github.com/stretchr/testify", "github.com/google/go-cmp"}
)

// ownModules are directories with a module of their own: a check that needs a third party which no importer of this module is to have in
// its module graph. icstest reads the calendar with a parser that others keep; browsertest drives a browser.
var ownModules = []string{"examples/internal/calendar/icstest", "examples/page/browsertest"}

// topLevel is everything that stands at the top; there is no root package, which would be a second name for everything.
var topLevel = []string{
	".ci", ".gitignore", "CHANGELOG.md", "DEVELOPERS.md", "LICENSE", "README.md", "brine", "examples", "go.mod", "go.sum", "internal", "pressure",
	"smoke", "testdata", "units", "yield",
}

// Code files run to about 250 lines and functions to about 40; these are the lines at which that is no longer so. A printed
// table and the bibliography are as long as they are.
const (
	fileLines     = 260
	functionLines = 60
)

func mayBeLong(f file) bool {
	return strings.HasPrefix(f.name, "table_") || strings.HasPrefix(f.path, "units/cite/bibliography_") || f.path == "units/cite/sources.go"
}

// sharesExample are the small methods that their type's Example may show.
var sharesExample = []string{"String", "MarshalText", "UnmarshalText", "MarshalJSON", "UnmarshalJSON", "Error", "Is", "Unwrap", "Key"}

func isProduct(dir string) bool {
	_, ok := mayImport[dir]
	return ok
}

func isExample(dir string) bool { return strings.HasPrefix(dir, "examples/") }
