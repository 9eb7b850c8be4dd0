package conformance

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// grid works out the results of one package.
type grid struct {
	of func(*results)
	// What is exported and computes nothing, with the reason.
	exempt map[string]string
}

// grids are the packages that are compared, each in a file of its own.
var grids = map[string]grid{
	"brine":                     {brineGrid, brineExempt},
	"brine/solution":            {solutionGrid, solutionExempt},
	"internal/portable":         {portableGrid, nil},
	"pressure":                  {pressureGrid, pressureExempt},
	"pressure/canner":           {cannerGrid, cannerExempt},
	"pressure/lethality":        {lethalityGrid, lethalityExempt},
	"pressure/process":          {processGrid, processExempt},
	"smoke":                     {smokeGrid, smokeExempt},
	"smoke/moistair":            {moistairGrid, moistairExempt},
	"units":                     {unitsGrid, unitsExempt},
	"units/series":              {seriesGrid, seriesExempt},
	"yield":                     {yieldGrid, yieldExempt},
	"yield/coldchain":           {coldchainGrid, coldchainExempt},
	"yield/coldchain/freezing":  {freezingGrid, freezingExempt},
	"yield/coldchain/growth":    {growthGrid, growthExempt},
	"yield/coldchain/ice":       {iceGrid, iceExempt},
	"yield/coldchain/keeping":   {keepingGrid, keepingExempt},
	"yield/coldchain/parasites": {parasitesGrid, parasitesExempt},
	"yield/coldchain/spoilage":  {spoilageGrid, spoilageExempt},
	"yield/season":              {seasonGrid, seasonExempt},
	"yield/timetable":           {timetableGrid, timetableExempt},
}

const kept = "../../testdata/conformance"

func fileOf(pkg string) string {
	return filepath.Join(kept, strings.ReplaceAll(pkg, "/", "-")+".txt")
}

// TestConformance compares every result with the one that is kept. LAKELARDER_WRITE=1 writes them instead.
func TestConformance(t *testing.T) {
	var all []string
	lines := 0
	for _, pkg := range names(grids) {
		r := work(t, pkg)
		text := strings.Join(r.lines, "\n") + "\n"
		all = append(all, digest(text)+"  "+pkg)
		lines += r.good
		compare(t, fileOf(pkg), "sha256 "+digest(text)+"\n"+text)
	}
	list := strings.Join(all, "\n") + "\n"
	compare(t, filepath.Join(kept, "all.txt"), list+digest(list)+"  all\n")
	require.GreaterOrEqual(t, lines, 10_000, "results that are no errors")
}

var worked = map[string]*results{}

// work returns the results of a package, worked out once.
func work(t *testing.T, pkg string) *results {
	if worked[pkg] == nil {
		r := &results{t: t, named: map[string]bool{}}
		grids[pkg].of(r)
		worked[pkg] = r
	}
	return worked[pkg]
}

// compare names the first lines that differ.
func compare(t *testing.T, file, text string) {
	t.Helper()
	if os.Getenv("LAKELARDER_WRITE") != "" {
		require.NoError(t, os.WriteFile(file, []byte(text), 0o644))
	}
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	if string(data) == text {
		return
	}
	for _, complaint := range differences(strings.Split(string(data), "\n"), strings.Split(text, "\n")) {
		t.Errorf("%s: %s", filepath.Base(file), complaint)
	}
}

const most = 20 // complaints a file

func differences(want, got []string) []string {
	var wrong []string
	if len(want) != len(got) {
		wrong = append(wrong, fmt.Sprintf("%d lines are kept and %d were worked out", len(want), len(got)))
	}
	for i := 0; i < len(want) && i < len(got) && len(wrong) < most; i++ {
		if want[i] != got[i] {
			call, value, _ := strings.Cut(want[i], " = ")
			here, other, _ := strings.Cut(got[i], " = ")
			if call != here {
				other = here + " = " + other
			}
			wrong = append(wrong, fmt.Sprintf("line %d, %s: kept %s, here %s", i+1, call, value, other))
		}
	}
	return wrong
}

// A mismatch names the function, its arguments and both values.
func TestDifferences(t *testing.T) {
	require.Empty(t, differences([]string{"F(1) = 2"}, []string{"F(1) = 2"}))
	require.Equal(t, []string{"line 2, F(2, 3): kept 5, here 6"}, differences([]string{"", "F(2, 3) = 5"}, []string{"", "F(2, 3) = 6"}))
	require.Equal(t, []string{"line 1, F(1): kept 2, here G(1) = 2"}, differences([]string{"F(1) = 2"}, []string{"G(1) = 2"}))
	require.Contains(t, differences([]string{"a"}, []string{"a", "b"})[0], "1 lines are kept and 2 were worked out")
	many := strings.Split(strings.Repeat("x\n", 100), "\n")
	require.Len(t, differences(many, strings.Split(strings.Repeat("y\n", 100), "\n")), most)
}

// Every exported function of a package that is compared has results, or is named as one that computes nothing.
func TestEveryFunctionIsCompared(t *testing.T) {
	for _, pkg := range names(grids) {
		name := pkg // one a loop, for the closure
		t.Run(strings.ReplaceAll(name, "/", "-"), func(t *testing.T) { everyFunction(t, name) })
	}
}

func everyFunction(t *testing.T, pkg string) {
	r := work(t, pkg)
	has := map[string]bool{}
	for name, good := range r.named {
		require.True(t, good, "every result of %s is an error", name)
		has[name] = !ofText(name[strings.LastIndex(name, ".")+1:])
		if !has[name] {
			delete(has, name)
		}
	}
	for name, why := range grids[pkg].exempt {
		require.NotEmpty(t, why, name)
		require.False(t, has[name], "%s has results and is exempt", name)
		has[name] = true
	}
	require.Equal(t, exportedBy(t, filepath.Join("../..", pkg)), names(has))
	require.Less(t, len(r.lines)-r.good, len(r.lines)/10, "the arguments are valid ones")
}

// ofText reports whether a function writes or reads words: that computes nothing.
func ofText(name string) bool {
	for _, one := range []string{"String", "Error", "MarshalText", "UnmarshalText", "MarshalJSON", "UnmarshalJSON"} {
		if name == one {
			return true
		}
	}
	return strings.HasPrefix(name, "Parse")
}

// exportedBy are the exported functions and methods of a package.
func exportedBy(t *testing.T, dir string) []string {
	t.Helper()
	found := map[string]bool{}
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	require.NoError(t, err)
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		syntax, err := parser.ParseFile(token.NewFileSet(), file, nil, 0)
		require.NoError(t, err)
		for _, decl := range syntax.Decls {
			fn, ok := decl.(*ast.FuncDecl)
			if !ok || !fn.Name.IsExported() || ofText(fn.Name.Name) {
				continue
			}
			name := fn.Name.Name
			if fn.Recv != nil {
				of := receiver(fn.Recv.List[0].Type)
				if !ast.IsExported(of) {
					continue
				}
				name = of + "." + name
			}
			found[name] = true
		}
	}
	require.NotEmpty(t, found)
	return names(found)
}

func receiver(expr ast.Expr) string {
	switch e := expr.(type) {
	case *ast.StarExpr:
		return receiver(e.X)
	case *ast.IndexExpr:
		return receiver(e.X)
	case *ast.Ident:
		return e.Name
	}
	return ""
}

func names[T any](m map[string]T) []string {
	var all []string
	for name := range m {
		all = append(all, name)
	}
	sort.Strings(all)
	return all
}
