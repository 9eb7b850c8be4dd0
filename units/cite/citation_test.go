package cite

import (
	"encoding/json"
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

func TestCitationCheckAccepts(t *testing.T) {
	for _, c := range []Citation{
		{Source: USDAGuide5Rev1994, Where: "Fish, table 1", Basis: Read},
		{Source: AFDOModelCode1991, Where: "cooling", Basis: Recalled},
		{Source: AFDOModelCode1991, Basis: Recalled},
		{Source: TradeJarSizes, Where: "size charts", Basis: Practice},
		{Where: "height of the lid", Basis: Practice},
		{Source: IAPWSR797, Where: "region 4, eq. 30", Basis: Computed},
		{Source: SkinnerLarkin1998, Basis: Computed},
		{Where: "10^((T - Tref)/z), 121.1 °C", Basis: Computed},
	} {
		require.NoError(t, c.Check(), "%v", c)
	}
}

func TestCitationCheckRefuses(t *testing.T) {
	unknown := Source(len(documents))
	for name, c := range map[string]Citation{
		"zero":                        {},
		"no basis":                    {Source: PNW450, Where: "p. 1"},
		"place alone":                 {Where: "p. 1"},
		"source alone":                {Source: PNW450},
		"basis beyond the last":       {Source: PNW450, Where: "p. 1", Basis: Computed + 1},
		"read without source":         {Where: "table 1", Basis: Read},
		"read without place":          {Source: PNW450, Basis: Read},
		"read of what nobody read":    {Source: AFDOModelCode1991, Where: "s. 1", Basis: Read},
		"recalled without source":     {Where: "table 1", Basis: Recalled},
		"practice of nothing":         {Basis: Practice},
		"computed from nothing":       {Basis: Computed},
		"unknown source, read":        {Source: unknown, Where: "p. 1", Basis: Read},
		"unknown source, practice":    {Source: unknown, Where: "p. 1", Basis: Practice},
		"unknown source, computed":    {Source: unknown, Where: "p. 1", Basis: Computed},
		"place of two lines":          {Source: PNW450, Where: "p. 1\np. 2", Basis: Read},
		"place with a line separator": {Source: PNW450, Where: "p. 1\u2028p. 2", Basis: Read},
		"place with a tab":            {Source: PNW450, Where: "p.\t1", Basis: Read},
		"place of one space":          {Source: PNW450, Where: " ", Basis: Read},
		"place with space after":      {Source: PNW450, Where: "p. 1 ", Basis: Read},
		"place that is not text":      {Source: PNW450, Where: "p. \xff", Basis: Read},
	} {
		err := c.Check()
		var incomplete IncompleteError
		require.ErrorAs(t, err, &incomplete, name)
		require.Equal(t, c, incomplete.Citation, name)
		require.NotEmpty(t, incomplete.Reason, name)
		require.True(t, oneLine(err.Error()), "%s: %q", name, err.Error())
	}
}

// A document of which nothing was read supports no Read citation; every other
// does, wherever the place.
func TestReadNeedsADocumentThatWasRead(t *testing.T) {
	fromMemory := 0
	for _, s := range Sources() {
		err := Citation{Source: s, Where: "table 1", Basis: Read}.Check()
		if s.Document().HowRead == FromMemory {
			fromMemory++
			require.Error(t, err, s.Key())
			continue
		}
		require.NoError(t, err, s.Key())
	}
	require.NotZero(t, fromMemory)
}

func TestUnverified(t *testing.T) {
	want := map[Basis]bool{Unstated: true, Read: false, Recalled: true, Practice: true, Computed: false, Computed + 1: true}
	got := map[Basis]bool{}
	for b := range want {
		got[b] = Citation{Source: PNW450, Where: "p. 1", Basis: b}.Unverified()
	}
	require.Empty(t, cmp.Diff(want, got))
}

func TestUnverifiedFiguresAreMarkedInText(t *testing.T) {
	for _, s := range append(Sources(), 0, Source(len(documents))) {
		require.Contains(t, Citation{s, "table 1", Recalled}.String(), "check the document")
		require.Contains(t, Citation{s, "table 1", Practice}.String(), "no published source")
		require.Contains(t, Citation{s, "table 1", Unstated}.String(), "do not rely on it")
		read := Citation{s, "table 1", Read}.String()
		require.Equal(t, s.Document().Kind == KindUnofficial, strings.Contains(read, "unofficial source)"), read)
	}
}

func TestCitationJSON(t *testing.T) {
	want := Citation{Source: USDAGuide5Rev1994, Where: "Fish, table 1", Basis: Read}
	text, err := json.Marshal(want)
	require.NoError(t, err)
	require.JSONEq(t, `{"document":"USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 1994)",
		"source":"USDAGuide5Rev1994","place":"Fish, table 1","basis":"read"}`, string(text))
	for _, c := range []Citation{want, {}, {Where: "height of the lid", Basis: Practice}} {
		text, err := json.Marshal(c)
		require.NoError(t, err)
		var got Citation
		require.NoError(t, json.Unmarshal(text, &got))
		require.Equal(t, c, got)
	}
	for _, text := range []string{
		`{"source":"PNW","place":"p. 1","basis":"read"}`, `{"source":7,"basis":"read"}`, `{"basis":1}`,
		`{"source":"PNW450","basis":"sure"}`, `{"source":["PNW450"]}`,
	} {
		require.Error(t, json.Unmarshal([]byte(text), new(Citation)), text)
	}
}

func FuzzCitationText(f *testing.F) {
	f.Add(uint16(USDAGuide5Rev1994), "Fish, table 1", uint8(Read))
	f.Add(uint16(0), "height of the lid", uint8(Practice))
	f.Add(uint16(0), "", uint8(Unstated))
	f.Add(uint16(65535), "a\nb", uint8(9))
	f.Fuzz(func(t *testing.T, source uint16, where string, basis uint8) {
		c := Citation{Source(source), where, Basis(basis)}
		line := c.String()
		require.NotEmpty(t, line)
		require.Negative(t, strings.IndexFunc(line, func(r rune) bool { return !unicode.IsPrint(r) }), "%q", line)
		if c.Check() != nil {
			return
		}
		text, err := json.Marshal(c)
		require.NoError(t, err)
		var back Citation
		require.NoError(t, json.Unmarshal(text, &back))
		require.Equal(t, c, back)
		require.Contains(t, line, where)
	})
}

func BenchmarkCitationString(b *testing.B) {
	c := Citation{Source: USDAGuide5Rev1994, Where: "Fish, table 1", Basis: Recalled}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if c.String() == "" {
			b.Fatal("empty")
		}
	}
}

func BenchmarkCitationUnverified(b *testing.B) {
	c := Citation{Source: USDAGuide5Rev1994, Where: "Fish, table 1", Basis: Recalled}
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		if copied := c; !copied.Unverified() {
			b.Fatal("verified")
		}
	}
}
