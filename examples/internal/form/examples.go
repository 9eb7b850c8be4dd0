package form

import (
	"encoding"
	"encoding/json"
	"reflect"
	"time"

	"example.org/lakelarder/units"
)

// typical are example values where neither the demo nor a tag has one.
var typical = map[reflect.Type]string{
	reflect.TypeOf(units.Length(0)):     `"1 in"`,
	reflect.TypeOf(units.Mass(0)):       `"500 g"`,
	reflect.TypeOf(units.Volume(0)):     `"1 qt"`,
	reflect.TypeOf(units.Pressure(0)):   `"13 psi"`,
	reflect.TypeOf(units.Ratio(0)):      `"3 %"`,
	reflect.TypeOf(units.Temperature{}): `"38 °F"`,
	reflect.TypeOf(units.Area(0)):       `"500 cm²"`,
	reflect.TypeOf(units.Energy(0)):     `"1 kWh"`,
	reflect.TypeOf(units.Density(0)):    `"1055 kg/m³"`,
	reflect.TypeOf(units.Speed(0)):      `"0.5 m/s"`,
	reflect.TypeOf(time.Duration(0)):    `"30 min"`,
	reflect.TypeOf(Clock{}):             `"21:05"`,
	reflect.TypeOf(false):               `true`,
	reflect.TypeOf(0):                   `2`,
	reflect.TypeOf(""):                  `"a few words"`,
}

// exampleOf is an example of a type: of an enumeration its first word; empty for none.
func exampleOf(of reflect.Type) string {
	if text, known := typical[of]; known {
		return text
	}
	if of.Kind() < reflect.Uint8 || of.Kind() > reflect.Uint64 {
		return ""
	}
	first := reflect.New(of)
	first.Elem().SetUint(1)
	word, ok := first.Interface().(encoding.TextMarshaler)
	if !ok {
		return ""
	}
	text, err := word.MarshalText()
	if err != nil {
		return ""
	}
	quoted, err := json.Marshal(string(text))
	if err != nil {
		return ""
	}
	return string(quoted)
}
