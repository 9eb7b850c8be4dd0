package process_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/pressure/process"
	"example.org/lakelarder/units"
)

func ExampleRequest_strict() {
	var r process.Request
	err := json.Unmarshal([]byte(`{"product": "fish", "pack": "raw", "jar": "pint", "gauge": "dial", "altitude": "4,350 ft"}`), &r)
	fmt.Println(r, err)
	err = json.Unmarshal([]byte(`{"product": "fish", "pack": "raw", "jar": "pint", "gauge": "dial"}`), &r)
	fmt.Println(err)
	// Output:
	// raw fish in pint jars, dial gauge, at 4,350 ft <nil>
	// altitude (line 1, column 1): it is required and missing
}

func ExampleRequest_json() {
	text, err := json.Marshal(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial,
		Altitude: units.State(4_350 * units.Foot)})
	fmt.Println(string(text), err)
	// Output: {"product":"fish","pack":"raw","jar":"pint","gauge":"dial","altitude":"4350 ft"} <nil>
}

func ExampleSchedule() {
	s, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Weighted,
		Altitude: units.State(4_350 * units.Foot)})
	if err != nil {
		fmt.Println(err)
		return
	}
	text, err := json.MarshalIndent(s, "", "  ")
	fmt.Println(string(text), err)
	// Output:
	// {
	//   "product": "fish",
	//   "pack": "raw",
	//   "jar": "pint",
	//   "gauge": "weighted",
	//   "altitude": "4350 ft",
	//   "band": "above 1,000 ft",
	//   "pressure": "15 psi",
	//   "process": "100 min",
	//   "citation": {
	//     "document": "USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 2015)",
	//     "source": "USDAGuide5Rev2015",
	//     "place": "Fish in Pint Jars, p. 5-10",
	//     "basis": "read"
	//   },
	//   "vent": "10 min",
	//   "ventCitation": {
	//     "document": "USDA, Complete Guide to Home Canning, Guide 1 (AIB 539, rev. 2015)",
	//     "source": "USDAGuide1Rev2015",
	//     "place": "Pressure canners, p. 1-20, and Using pressure canners, step 3, p. 1-22",
	//     "basis": "read"
	//   },
	//   "headspace": "1 in",
	//   "headspaceCitation": {
	//     "document": "USDA, Complete Guide to Home Canning, Guide 5 (AIB 539, rev. 2015)",
	//     "source": "USDAGuide5Rev2015",
	//     "place": "Fish in Pint Jars, p. 5-10",
	//     "basis": "read"
	//   },
	//   "water": {
	//     "shallow": "2 in",
	//     "deep": "3 in"
	//   },
	//   "waterCitation": {
	//     "document": "USDA, Complete Guide to Home Canning, Guide 1 (AIB 539, rev. 2015)",
	//     "source": "USDAGuide1Rev2015",
	//     "place": "Using pressure canners, step 1, p. 1-21",
	//     "basis": "read"
	//   }
	// } <nil>
}

func ExampleSchedule_IsPublished() {
	s, err := process.Find(process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial,
		Altitude: units.State(4_350 * units.Foot)})
	fmt.Println(s.IsPublished(), err)
	s.Process = 90 * time.Minute
	fmt.Println(s.IsPublished())
	// Output:
	// true <nil>
	// false
}

func ExampleParseBand() {
	b, err := process.ParseBand("above 2,000 ft to 4,000 ft")
	fmt.Println(b.Contains(3_000*units.Foot), err)
	// Output: true <nil>
}

func ExampleParseMissing() {
	m, err := process.ParseMissing("jar")
	fmt.Println(m, err)
	// Output: jar <nil>
}

// Every schedule, found or listed, and every judged recipe survives being saved.
func TestJSONComesBack(t *testing.T) {
	for _, s := range process.Schedules() {
		requireBack(t, s)
		claim := of(s)
		requireBack(t, claim)
		found, err := process.Find(process.Request{Product: s.Product, Pack: s.Pack, Jar: s.Jar, Gauge: s.Gauge, Altitude: claim.Altitude})
		require.NoError(t, err)
		requireBack(t, found)
		claim.Process, claim.Vent.Given, claim.Pressure.Value = units.State(90*time.Minute), false, 20*units.PSI
		a, err := process.Check(claim)
		require.NoError(t, err)
		requireBack(t, a)
	}
	refused, err := process.Check(process.Claim{Product: process.Fish, Jar: process.PintAndHalf})
	require.NoError(t, err)
	requireBack(t, refused)
}

func requireBack[T any](t *testing.T, v T) {
	t.Helper()
	text, err := json.Marshal(v)
	require.NoError(t, err)
	var back T
	require.NoError(t, json.Unmarshal(text, &back), string(text))
	require.Empty(t, cmp.Diff(v, back))
}

// An app that loses the altitude, or a digit's unit, gets an error and not sea level.
func TestJSONRefuses(t *testing.T) {
	const whole = `"product": "fish", "pack": "raw", "jar": "pint", "gauge": "dial"`
	for text, field := range map[string]string{
		`{` + whole + `}`:                                      "altitude",
		`{` + whole + `, "altitude": ""}`:                      "altitude",
		`{` + whole + `, "altitude": null}`:                    "altitude",
		`{` + whole + `, "altitude": 4350}`:                    "altitude",
		`{` + whole + `, "altitude": "4350"}`:                  "altitude",
		`{` + whole + `, "altitude": "1 ft", "altitude": "2"}`: "altitude",
		`{` + whole + `, "altitude": "4,350 ft", "alt": "1"}`:  "alt",
		`{"product": "salmon"}`:                                "product",
		`{"jar": 3}`:                                           "jar",
	} {
		r := process.Request{Jar: process.Quart}
		err := json.Unmarshal([]byte(text), &r)
		var fault units.FieldError
		require.True(t, errors.As(err, &fault), "%s: %v", text, err)
		require.Equal(t, field, fault.Field, text)
		require.Equal(t, process.Request{Jar: process.Quart}, r, "stays as it was")
	}
}

// Sea level is stated, and is not the same as no altitude.
func TestAltitudeMustBeStated(t *testing.T) {
	r := process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial}
	for _, find := range []func(process.Request) (process.Schedule, error){process.Find, process.FindExtension} {
		s, err := find(r)
		require.ErrorIs(t, err, units.ErrUnset)
		require.NotErrorIs(t, err, process.ErrNotPublished)
		require.Equal(t, process.Schedule{}, s)
	}
	r.Altitude = units.State(units.Length(0))
	s, err := process.Find(r)
	require.NoError(t, err)
	require.Equal(t, 11*units.PSI, s.Pressure)
	require.Equal(t, "raw fish in pint jars, dial gauge, altitude not stated", process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial}.String())
}

// An untyped 4350 is 4,350 nm, and would be the setting of sea level.
func TestBareNumbersAreRefused(t *testing.T) {
	r := process.Request{Product: process.Fish, Pack: process.RawPack, Jar: process.Pint, Gauge: process.Dial}
	for _, bare := range []units.Length{1, 4350, units.Millimetre - 1} {
		r.Altitude = units.State(bare)
		s, err := process.Find(r)
		require.ErrorAs(t, err, new(units.UnitError))
		require.Equal(t, process.Schedule{}, s)
	}
	r.Altitude = units.State(units.Millimetre)
	_, err := process.Find(r)
	require.NoError(t, err)
	for _, c := range []process.Claim{
		{Altitude: units.State(units.Length(4350))}, {Pressure: units.State(units.Pressure(11))}, {Headspace: units.State(units.Length(1))},
		{Water: units.State(units.Volume(3))},
	} {
		_, err := process.Check(c)
		require.ErrorAs(t, err, new(units.UnitError))
	}
}

func TestBandsComeBack(t *testing.T) {
	for _, s := range process.Schedules() {
		text, err := s.Band.MarshalText()
		require.NoError(t, err)
		var back process.Band
		require.NoError(t, back.UnmarshalText(text))
		require.Equal(t, s.Band, back)
	}
	for _, text := range []string{"no altitude", "2,000 ft", "0 to", "above", "0 to 2,000 m", "above 4,000 ft to", "0 to 2,000 ft ", "over 1,000 ft"} {
		b := process.Band{Over: 1, UpTo: 2}
		require.ErrorIs(t, b.UnmarshalText([]byte(text)), units.ErrSyntax, text)
		require.Equal(t, process.Band{Over: 1, UpTo: 2}, b)
	}
}

func ExampleClaim() {
	var c process.Claim
	err := json.Unmarshal([]byte(`{"product": "fish", "jar": "pint", "process": "90 min"}`), &c)
	fmt.Println(c.Jar, units.Lasting(c.Process.Value), c.Altitude.Given, err)
	// Output: pint 90 min false <nil>
}
