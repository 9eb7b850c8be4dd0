package printed

import (
	"testing"

	"github.com/shopspring/decimal"
	"github.com/stretchr/testify/require"
)

// rowOf is the only row of a table with these two lines.
func rowOf(t *testing.T, header, cells string) Row {
	t.Helper()
	rows, err := read("testdata/x/y.csv", []byte(header+"\n"+cells+"\n"))
	require.NoError(t, err)
	require.Len(t, rows, 1)
	return rows[0].In(t)
}

func TestHalfOfTheLastPrintedDigit(t *testing.T) {
	for _, c := range []struct{ text, value, half string }{
		{"0", "0", "0.5"},
		{"11", "11", "0.5"},
		{"100", "100", "0.5"},
		{"-40", "-40", "0.5"},
		{"+0.3", "0.3", "0.05"},
		{"113.2743", "113.2743", "0.00005"},
		{"845.560", "845.56", "0.0005"},
		{"845.56", "845.56", "0.005"},
		{".91", "0.91", "0.005"},
		{"1,000", "1000", "0.5"},
		{"12,345,678.90", "12345678.9", "0.005"},
		{"1.4e-7", "0.00000014", "0.000000005"},
		{"1.4E-7", "0.00000014", "0.000000005"},
		{"0.353658941e-2", "0.00353658941", "0.000000000005"},
		{"1.40e5", "140000", "500"},
		{"2e3", "2000", "500"},
	} {
		r := rowOf(t, "x", `"`+c.text+`"`)
		value, half := r.Decimal("x"), r.Tolerance("x")
		require.True(t, value.Equal(decimal.RequireFromString(c.value)), "%s: value %s", c.text, value)
		require.True(t, half.Equal(decimal.RequireFromString(c.half)), "%s: half digit %s", c.text, half)
	}
}

func TestNumberRefuses(t *testing.T) {
	for _, text := range []string{
		"", "-", ".", "5.", "e3", "1e", "1e1000", "8 %", "8%", "1/2", "1-2", "<0.01", "~3", "\u22123", "1 000", "1,00", "1,0000", ",100", "1,000,",
		"1000,000", "1.000,5", "007", "0,100", "1..2", "1.2.3", "0x10", "1_000", "NaN", "Inf", "ten", "--1", "1e-", "1.4x10-7", "٣",
	} {
		_, _, err := number(text)
		require.Error(t, err, "%q", text)
	}
}

func TestCellsComeOutAsPrinted(t *testing.T) {
	r := rowOf(t, "text,empty,whole,negative,thousands,small", `845.560,,25,-3,"2,000",1.4e-7`)
	require.Equal(t, "845.560", r.Text("text"))
	require.Equal(t, "", r.Text("empty"))
	require.True(t, r.Has("text"))
	require.False(t, r.Has("empty"))
	require.Equal(t, int64(25), r.Int("whole"))
	require.Equal(t, int64(-3), r.Int("negative"))
	require.Equal(t, int64(2000), r.Int("thousands"))
	require.Equal(t, 2000.0, r.Float("thousands"))
	require.Equal(t, 1.4e-7, r.Float("small"))
	require.Equal(t, 845.56, r.Float("text"))
	require.Equal(t, "845.560", r.Decimal("text").StringFixed(3))
}

func TestBadCellsFailWithTheirPlace(t *testing.T) {
	for name, c := range map[string]struct {
		use  func(r Row)
		want string
	}{
		"text of no column":      {func(r Row) { r.Text("gone") }, `testdata/x/y.csv:2: the table has no column "gone"`},
		"has of no column":       {func(r Row) { r.Has("gone") }, `no column "gone"`},
		"decimal of no column":   {func(r Row) { r.Decimal("gone") }, `no column "gone"`},
		"tolerance of no column": {func(r Row) { r.Tolerance("gone") }, `no column "gone"`},
		"decimal of nothing":     {func(r Row) { r.Decimal("empty") }, "testdata/x/y.csv:2: column empty: not printed"},
		"int of nothing":         {func(r Row) { r.Int("empty") }, "not printed"},
		"float of nothing":       {func(r Row) { r.Float("empty") }, "not printed"},
		"tolerance of nothing":   {func(r Row) { r.Tolerance("empty") }, "not printed"},
		"decimal of words":       {func(r Row) { r.Decimal("words") }, `testdata/x/y.csv:2: column words: "8 %" is not a printed number`},
		"float of words":         {func(r Row) { r.Float("words") }, "is not a printed number"},
		"tolerance of words":     {func(r Row) { r.Tolerance("words") }, "is not a printed number"},
		"int of a fraction":      {func(r Row) { r.Int("fraction") }, `testdata/x/y.csv:2: column fraction: "2.0" is not a whole number`},
		"int of an exponent":     {func(r Row) { r.Int("exponent") }, "is not a whole number"},
		"int too large":          {func(r Row) { r.Int("large") }, "is not a whole number"},
		"float too large":        {func(r Row) { r.Float("huge") }, "out of range"},
	} {
		r := rowOf(t, "empty,words,fraction,exponent,large,huge", ",8 %,2.0,1e3,9223372036854775808,1e999")
		said, ended := told(func(tb testing.TB) { c.use(r.In(tb)) })
		require.True(t, ended, name)
		require.Contains(t, said, c.want, name)
	}
}

func TestOwnToleranceGoesFirst(t *testing.T) {
	for name, c := range map[string]struct{ header, cells, want string }{
		"none":                   {"x,note", "1.5,", "0.05"},
		"empty":                  {"x,tolerance,note", "1.5,,", "0.05"},
		"wider":                  {"x,tolerance,note", "1.5,0.3,the table and its text disagree", "0.3"},
		"narrower":               {"x,tolerance,note", "1.5,0.01,given beside the value", "0.01"},
		"of this column":         {"x,tolerance_x,note", "1.5,0.2,reason", "0.2"},
		"of another column":      {"x,tolerance_y,note", "1.5,0.2,reason", "0.05"},
		"of this before of both": {"x,tolerance,tolerance_x,note", "1.5,0.3,0.2,reason", "0.2"},
		"of both":                {"x,tolerance,tolerance_x,note", "1.5,0.3,,reason", "0.3"},
	} {
		got := rowOf(t, c.header, c.cells).Tolerance("x")
		require.True(t, got.Equal(decimal.RequireFromString(c.want)), "%s: %s", name, got)
	}
}

func TestOwnToleranceIsRefused(t *testing.T) {
	for name, c := range map[string]struct{ header, cells, want string }{
		"without a reason":       {"x,tolerance,note", "1.5,0.3,", "testdata/x/y.csv:2: column x: its own tolerance 0.3 has no reason in the column note"},
		"without a note column":  {"x,tolerance", "1.5,0.3", "has no reason"},
		"zero":                   {"x,tolerance,note", "1.5,0,reason", `"0" is not a number above zero`},
		"negative":               {"x,tolerance,note", "1.5,-0.3,reason", "is not a number above zero"},
		"words":                  {"x,tolerance,note", "1.5,about 0.3,reason", "is not a number above zero"},
		"of the column, no note": {"x,tolerance_x", "1.5,0.3", "has no reason"},
	} {
		r := rowOf(t, c.header, c.cells)
		said, ended := told(func(tb testing.TB) { r.In(tb).Tolerance("x") })
		require.True(t, ended, name)
		require.Contains(t, said, c.want, name)
	}
}
