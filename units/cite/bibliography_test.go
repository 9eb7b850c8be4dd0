package cite

import (
	"go/token"
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

const generated = "// Code generated from the bibliography by LAKELARDER_WRITE=1 go test ./units/cite -run Sources; DO NOT EDIT.\n"

// The constants are the keys of the bibliography, in its order: each name is written once, and sources.go made of it.
func TestSourcesAreTheKeysOfTheBibliography(t *testing.T) {
	var file strings.Builder
	file.WriteString("package cite\n\n" + generated + `
// The sources, one constant an edition of one document, under its key in the bibliography. Constants are numbered by the
// compiler and may move: what is stored or sent is the key.
const (
	_ Source = iota // not set

`)
	for _, d := range documents[1:] {
		require.Regexp(t, "^[A-Z][A-Za-z0-9]+$", d.Key)
		file.WriteString("\t" + d.Key + "\n")
	}
	file.WriteString(")\n")
	if os.Getenv("LAKELARDER_WRITE") != "" {
		require.NoError(t, os.WriteFile("sources.go", []byte(file.String()), 0o644))
	}
	written, err := os.ReadFile("sources.go")
	require.NoError(t, err)
	require.Empty(t, cmp.Diff(file.String(), string(written)), "write it anew by LAKELARDER_WRITE=1 go test ./units/cite -run Sources")
	for _, s := range Sources() {
		back, err := ParseSource(s.Key())
		require.NoError(t, err)
		require.Equal(t, s, back, s.Key())
	}
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
