package pressure_test

import (
	"encoding/json"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure"
	"example.org/lakelarder/units"
)

// An Air that is saved comes back as the same, and knows where it is from.
func ExampleAir() {
	air, err := pressure.AirReading(917 * units.Hectopascal)
	if err != nil {
		fmt.Println(err)
		return
	}
	text, err := json.Marshal(air)
	fmt.Println(string(text), err)
	var back pressure.Air
	err = json.Unmarshal([]byte(`{"standard": "101.325 kPa"}`), &back)
	fmt.Println(back.Pressure(), err)
	// Output:
	// {"barometer":"91.7 kPa"} <nil>
	// 101.325 kPa <nil>
}

func TestAirComesBack(t *testing.T) {
	for ft := units.Length(-3280); ft <= 36_089; ft += 7 {
		requireBack(t, air(t, ft*units.Foot))
	}
	for _, end := range []units.Length{-1_000 * units.Metre, 11_000 * units.Metre, 1} {
		requireBack(t, air(t, end))
	}
	for p := 40 * units.Kilopascal; p <= 110*units.Kilopascal; p += 777_777_777_777_777 {
		read, err := pressure.AirReading(p)
		require.NoError(t, err)
		requireBack(t, read)
	}
}

func requireBack(t *testing.T, want pressure.Air) {
	t.Helper()
	text, err := json.Marshal(want)
	require.NoError(t, err)
	var back pressure.Air
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Equal(t, want, back, string(text))
}

func TestAirRefusesText(t *testing.T) {
	_, err := json.Marshal(pressure.Air{})
	require.ErrorIs(t, err, units.ErrUnset)
	before := air(t, 2_000*units.Foot)
	for name, text := range map[string]string{
		"nothing": `{}`, "null": `{"standard": null}`, "both": `{"standard": "90 kPa", "barometer": "90 kPa"}`,
		"bare number": `{"standard": 90}`, "no unit": `{"barometer": "90"}`, "unknown field": `{"altitude": "2000 ft"}`,
		"twice": `{"standard": "90 kPa", "standard": "91 kPa"}`, "empty": `{"standard": ""}`, "a list": `["90 kPa"]`,
		"vacuum": `{"standard": "0 Pa"}`, "above all altitudes": `{"standard": "20 kPa"}`, "below all": `{"standard": "2 bar"}`,
		"barometer of a canner": `{"barometer": "5.5 psi"}`, "finer than standard air": `{"standard": "90000.0000001 Pa"}`,
	} {
		a := before
		require.Error(t, json.Unmarshal([]byte(text), &a), name)
		require.Equal(t, before, a, "%s: stays as it was", name)
	}
}
