package logged

import (
	"testing"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// Drawn makes a record of the bytes: for each reading an even number of quanta from 25 °F to 135 °F, often
// exactly on an edge, and a time an even number of nanoseconds later.
func Drawn(data []byte) []series.Reading[units.Temperature] {
	var all []series.Reading[units.Temperature]
	at := time.Duration(0)
	for i := 0; i+1 < len(data) && len(all) < 300; i += 2 {
		value := units.Fahrenheit(25 + float64(float64(data[i]%221)/2))
		if data[i] >= 221 {
			value = units.Fahrenheit([...]float64{37.9, 41.4, 43.7, 46.4, 50, 70, 80, 134.99}[data[i]%8])
		}
		all = append(all, series.Reading[units.Temperature]{At: at, Value: value})
		at += 2 * (1 + time.Duration(data[i+1])*7_777_777_777)
	}
	return all
}

// Made is the series of readings that must be one.
func Made(t testing.TB, readings []series.Reading[units.Temperature]) series.Series[units.Temperature] {
	t.Helper()
	s, err := series.New(readings)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Weather makes a record of the bytes as Drawn does, but from -40 °C up to 70 °C and often on -10 °C, so that lines
// cross the temperature at which spoilage stops.
func Weather(data []byte) []series.Reading[units.Temperature] {
	all := Drawn(data)
	for i := range all {
		c := -40 + float64(float64(data[2*i]%221)/2)
		if data[2*i] >= 221 {
			c = -10
		}
		all[i].Value = units.Celsius(c)
	}
	return all
}
