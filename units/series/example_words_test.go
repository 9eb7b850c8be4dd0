package series_test

import (
	"fmt"

	"example.org/lakelarder/units/series"
)

func ExampleEncoding() {
	text, err := series.UTF16LittleEndian.MarshalText()
	fmt.Println(string(text), err)
	// Output: UTF-16 little-endian <nil>
}

func ExampleParseEncoding() {
	fmt.Println(series.ParseEncoding("latin-1"))
	// Output: Latin-1 <nil>
}

func ExampleSeparator() {
	text, err := series.Semicolons.MarshalText()
	fmt.Println(string(text), err)
	// Output: semicolons <nil>
}

func ExampleParseSeparator() {
	_, err := series.ParseSeparator(";")
	fmt.Println(err)
	// Output:
	// unknown separator ";": expected commas, semicolons, tabs, bars or blanks
}

func ExampleDecimal() {
	text, err := series.DecimalComma.MarshalText()
	fmt.Println(string(text), err)
	// Output: comma <nil>
}

func ExampleParseDecimal() {
	fmt.Println(series.ParseDecimal("point"))
	// Output: point <nil>
}

func ExampleDateOrder() {
	text, err := series.DayFirst.MarshalText()
	fmt.Println(string(text), err)
	// Output: day first <nil>
}

func ExampleParseDateOrder() {
	fmt.Println(series.ParseDateOrder("month first"))
	// Output: month first <nil>
}

func ExamplePart() {
	text, err := series.ElapsedClock.MarshalText()
	fmt.Println(string(text), err)
	// Output: elapsed h:mm:ss <nil>
}

func ExampleParsePart() {
	fmt.Println(series.ParsePart("AM or PM"))
	// Output: AM or PM <nil>
}

func ExampleRepeats() {
	text, err := series.DropRepeats.MarshalText()
	fmt.Println(string(text), err)
	// Output: drop <nil>
}

func ExampleParseRepeats() {
	fmt.Println(series.ParseRepeats("refuse"))
	// Output: refuse <nil>
}

func ExampleWhy() {
	text, err := series.Fault.MarshalText()
	fmt.Println(string(text), err)
	// Output: fault code <nil>
}

func ExampleParseWhy() {
	fmt.Println(series.ParseWhy("missing"))
	// Output: missing <nil>
}

func ExampleAsk() {
	text, err := series.AskTimeUnit.MarshalText()
	fmt.Println(string(text), err)
	// Output: unit of time <nil>
}

func ExampleParseAsk() {
	fmt.Println(series.ParseAsk("date order"))
	// Output: date order <nil>
}
