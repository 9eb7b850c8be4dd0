package cite

import (
	"go/ast"
	"go/parser"
	"go/token"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// bibliographyNames reads bibliography.go and returns the names of the Source
// constants and the names that index the table of documents, both as written.
func bibliographyNames(t *testing.T) (constants, entries []string) {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "bibliography.go", nil, 0)
	require.NoError(t, err)
	for _, decl := range file.Decls {
		for _, spec := range decl.(*ast.GenDecl).Specs {
			value := spec.(*ast.ValueSpec)
			if decl.(*ast.GenDecl).Tok == token.CONST {
				constants = append(constants, value.Names[0].Name)
				continue
			}
			for _, element := range value.Values[0].(*ast.CompositeLit).Elts {
				entries = append(entries, element.(*ast.KeyValueExpr).Key.(*ast.Ident).Name)
			}
		}
	}
	return constants, entries
}

func TestEveryConstantHasADocumentUnderItsOwnName(t *testing.T) {
	constants, entries := bibliographyNames(t)
	require.Equal(t, "_", constants[0], "the zero Source stays unnamed")

	var keys []string
	for _, s := range Sources() {
		keys = append(keys, s.Key())
	}
	require.Empty(t, cmp.Diff(constants[1:], keys), "constants against keys")
	require.Empty(t, cmp.Diff(constants[1:], entries), "constants against the order of the table")
}

func TestDocumentsCanBeToldApart(t *testing.T) {
	byText := map[string]Source{}
	for _, s := range Sources() {
		other, taken := byText[s.String()]
		require.False(t, taken, "%s and %s both read %q", s.Key(), other.Key(), s.String())
		byText[s.String()] = s
	}
}

func TestDocumentsAreComplete(t *testing.T) {
	kinds := map[Kind]bool{
		KindStandard: true, KindRegulation: true, KindGuidance: true, KindBook: true,
		KindStudy: true, KindData: true, KindSoftware: true, KindUnofficial: true,
	}
	for _, s := range Sources() {
		d := s.Document()
		require.True(t, kinds[d.Kind], "%s is of kind %q", d.Key, d.Kind)
		require.NotEmpty(t, d.Title, d.Key)
		require.NotEmpty(t, d.HowRead, d.Key)
		for _, field := range []string{d.Author, d.Title, d.Publisher, d.Edition, d.Year, d.HowRead} {
			require.True(t, oneLine(field), "%s: %q", d.Key, field)
		}
		require.False(t, strings.EqualFold(d.HowRead, FromMemory) && d.HowRead != FromMemory, d.Key)
	}
}

func TestKeysAreGoNamesOfASCIILetters(t *testing.T) {
	for _, s := range Sources() {
		key := s.Key()
		require.True(t, token.IsIdentifier(key) && token.IsExported(key), key)
		for _, r := range key {
			ascii := 'A' <= r && r <= 'Z' || 'a' <= r && r <= 'z' || '0' <= r && r <= '9'
			require.True(t, ascii, "%s holds %q", key, r)
		}
	}
}

// A year or an edition in a key is the one of the document.
func TestYearsInKeysAreTheDocuments(t *testing.T) {
	year := regexp.MustCompile(`(18|19|20)\d\d`)
	for _, s := range Sources() {
		d := s.Document()
		for _, printed := range year.FindAllString(d.Key, -1) {
			require.Contains(t, d.Title+d.Edition+d.Year, printed, d.Key)
		}
	}
}
