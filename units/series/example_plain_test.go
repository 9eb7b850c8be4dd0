package series_test

import (
	"errors"
	"fmt"
	"strings"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func ExampleReadColumn() {
	const file = `# invented: the big canner, second load
clock,gauge (psi),note
21:05,13,
21:20,13.5,windy
21:40,13,
22:25,12,burner ran out
`
	s, err := series.ReadColumn[units.Pressure](strings.NewReader(file), "gauge")
	if err != nil {
		fmt.Println(err)
		return
	}
	held, err := s.AtOrAbove(13 * units.PSI)
	fmt.Println(held, err)
	fmt.Println(s.LongestGap().Length())
	// Output:
	// 35m0s <nil>
	// 45m0s
}

func ExampleReadColumns() {
	const file = `time (min),upper rack (°C),lower rack (°C),humidity (%)
0,20,20,60
30,66,58,45
60,70,66,40
`
	racks, err := series.ReadColumns[units.Temperature](strings.NewReader(file))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, rack := range racks {
		held, err := rack.Series.AtOrAbove(units.Celsius(66))
		fmt.Println(rack.Name, held, err)
	}
	// Output:
	// upper rack 30m0s <nil>
	// lower rack 0s <nil>
}

func ExampleLineError() {
	const file = "# invented\ntime (min),core (°C)\n0,20\n5,\"21,5\"\n"
	_, err := series.ReadColumn[units.Temperature](strings.NewReader(file), "core")
	var fault series.LineError
	fmt.Println(errors.As(err, &fault), fault.Line, fault.Column)
	fmt.Println(errors.Is(err, series.ErrNotANumber))
	fmt.Println(err)
	// Output:
	// true 4 core
	// true
	// line 4, column "core", "21,5": not a number: a decimal mark is a point, and thousands are not grouped
}
