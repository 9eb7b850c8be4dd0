package series_test

import (
	"encoding/json"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// A plain record says gauge or absolute, and its remarks do not contradict its headings.
func TestPlainReference(t *testing.T) {
	for text, c := range map[string]struct {
		column  string
		refused error
	}{
		"time (s),Absolute pressure (kPa)\n0,101\n":               {"", series.ErrUnit},
		"time (s),absolute pressure (kPa)\n0,101\n":               {"absolute pressure", nil},
		"time (s),vacuum (inHg)\n0,20\n":                          {"", series.ErrUnit},
		"time (s),Vacuum (kPa)\n0,20\n":                           {"Vacuum", series.ErrUnit},
		"time (s),gauge (kPa)\n0,20\n":                            {"", nil},
		"# all pressures in psi\ntime (s),gauge (kPa)\n0,20\n":    {"", series.ErrUnit},
		"time (s),gauge (kPa)\n0,20\n# now in psi\n1,3\n":         {"", series.ErrUnit},
		"time (s),gauge (kPa)\n0,20\n# vent shut at 2 psi\n1,3\n": {"", nil},
		"time (s),gauge (kPa)\n0,20\n# all in kPa\n1,3\n":         {"", nil},
	} {
		_, err := series.ReadColumn[units.Pressure](strings.NewReader(text), c.column)
		if c.refused != nil {
			require.ErrorIs(t, err, c.refused, text)
		} else {
			require.NoError(t, err, text)
		}
	}
	f := series.Format{Encoding: series.UTF8, Separator: series.Commas, Decimal: series.DecimalPoint, Header: 1, Unit: "inHg",
		Value: series.Heading{Number: 2}, Time: []series.TimeColumn{{Column: series.Heading{Number: 1}, Part: series.Elapsed, Unit: "s"}}, Repeats: series.RefuseRepeats}
	_, err := series.ReadCSV[units.Pressure](strings.NewReader("t,Vacuum (inHg)\n0,20\n1,21\n"), f, nil)
	require.ErrorIs(t, err, series.ErrUnit)
}

// A reading is written by encoding/json as the rest of the library writes it.
func TestReadingJSON(t *testing.T) {
	r := series.Reading[units.Temperature]{At: 10 * time.Minute, Value: units.Celsius(60)}
	text, err := json.Marshal(r)
	require.NoError(t, err)
	require.JSONEq(t, `{"at":"10 min","value":"60 °C"}`, string(text))
	var back series.Reading[units.Temperature]
	require.NoError(t, json.Unmarshal(text, &back))
	require.Equal(t, r, back)
	for _, bad := range []string{`{"At":0,"Value":"60 °C"}`, `{"at":600,"value":"60 °C"}`, `{"at":"10m","value":60}`, `null`, `{"at":"10m","at":"10m"}`} {
		require.Error(t, back.UnmarshalJSON([]byte(bad)), bad)
		require.Equal(t, r, back)
	}
}
