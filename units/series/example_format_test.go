package series_test

import (
	"errors"
	"fmt"
	"strings"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// The file of an invented logger, with its preamble, decimal commas and a probe that fell out.
const invented = `Logger: invented
Interval: 10 min
Zeit;Kern (°C);Feuchte (%)
13.08.2026 23:50;4,5;60
14.08.2026 00:00;-127;61
14.08.2026 00:10;5,25;61
`

func ExampleSniff() {
	p, err := series.Sniff[units.Temperature]([]byte(invented), series.Format{})
	if err != nil {
		fmt.Println(err)
		return
	}
	f := p.Format
	fmt.Println(f.Separator, f.Decimal, f.Preamble, f.Header, f.Order)
	fmt.Println(f.Time[0].Column, f.Time[0].Part)
	fmt.Println(f.Value, f.Unit, len(p.Questions))
	for _, e := range p.Evidence {
		fmt.Println(e.Field+":", e.Why)
	}
	// Output:
	// semicolons comma 2 1 day first
	// column 1 "Zeit" date and clock
	// column 2 "Kern (°C)" °C 0
	// Separator: 3 rows of 3 cells parted by semicolons
	// Decimal: 2 numbers have a comma
	// Header: line 3 holds the headings: Zeit;Kern (°C);Feuchte (%)
	// Time: column 1 "Zeit" holds the date and clock
	// Order: day first: in another order they are no dates or run backward
	// Value: column 2 "Kern (°C)" is the only one that can hold the temperature
	// Unit: column 2 "Kern (°C)" says °C
}

func ExampleProposal_Answer() {
	file := []byte("when,left,right\n5/6/2026 21:00,4.5,20\n5/8/2026 9:00,5,21\n")
	var stated series.Format
	for _, answer := range []string{"day first", "right", "°C"} {
		p, err := series.Sniff[units.Temperature](file, stated)
		if err != nil {
			fmt.Println(err)
			return
		}
		q := p.Questions[0]
		fmt.Println(q.Text, q.Choices)
		if stated, err = p.Answer(stated, q.Ask, answer); err != nil {
			fmt.Println(err)
			return
		}
	}
	p, err := series.Sniff[units.Temperature](file, stated)
	fmt.Println(len(p.Questions), err)
	// Output:
	// In the dates of column 1, "5/6/2026 21:00" for one, what comes first? [{day first 5/6/2026 21:00 is 5 June 2026} {month first 5/6/2026 21:00 is 6 May 2026}]
	// Which column holds the wanted temperature? [{2 left: 4.5 … 5} {3 right: 20 … 21}]
	// In which unit is column 3 "right"? The first number is 20, and the file does not say. [{°C 20 °C} {°F 20 °F} {K 20 K} {0.1 °C 20 × 0.1 °C} {0.1 °F 20 × 0.1 °F}]
	// 0 <nil>
}

func ExampleReadCSV() {
	format := series.Format{
		Separator: series.Semicolons, Decimal: series.DecimalComma, Preamble: 2, Header: 1,
		Time:  []series.TimeColumn{{Column: series.Heading{Name: "Zeit"}, Part: series.DateAndClock}},
		Order: series.DayFirst, Value: series.Heading{Name: "Kern"}, Unit: "°C",
	}
	log, err := series.ReadCSV[units.Temperature](strings.NewReader(invented), format, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(log.Series.Len(), log.Series.LongestGap().Length(), log.Series.Origin().Clock.Format("2 Jan 15:04"))
	for _, row := range log.Rows {
		fmt.Println(row.Line, row.At, row.Why, row.Text)
	}
	// Output:
	// 2 20m0s 13 Aug 23:50
	// 5 10m0s fault code -127
}

func ExampleLog_Dropouts() {
	const file = "time (min),core (°C)\n0,4\n60,\n120,5\n"
	format := series.Format{
		Separator: series.Commas, Decimal: series.DecimalPoint, Header: 1,
		Time:  []series.TimeColumn{{Column: series.Heading{Number: 1}, Part: series.Elapsed, Unit: "min"}},
		Value: series.Heading{Number: 2, Name: "core"}, Unit: "°C",
	}
	log, err := series.ReadCSV[units.Temperature](strings.NewReader(file), format, nil)
	fmt.Println(log.Dropouts(), err)
	// Output: [{0s 2h0m0s}] <nil>
}

func ExampleFormat_Check() {
	f := series.Format{Separator: series.Commas, Decimal: series.DecimalPoint}
	f.Time = []series.TimeColumn{{Column: series.Heading{Number: 1}, Part: series.DateAndClock}}
	f.Value = series.Heading{Number: 2}
	fmt.Println(f.Check())
	f.Unit = "°F"
	fmt.Println(f.Check())
	// Output:
	// format, Unit: something is not stated: expected the unit of the numbers
	// <nil>
}

func ExampleFormatError() {
	_, err := series.ReadCSV[units.Temperature](strings.NewReader(invented), series.Format{}, nil)
	var fault series.FormatError
	fmt.Println(errors.As(err, &fault), errors.Is(err, series.ErrOpen), fault.Field)
	fmt.Println(err)
	// Output:
	// true true Separator
	// format, Separator: something is not stated: expected commas, semicolons, tabs, bars or blanks
}

func ExampleHeading_String() {
	fmt.Println(series.Heading{Number: 3}, series.Heading{Name: "core"}, series.Heading{Number: 3, Name: "core"})
	// Output: column 3 column "core" column 3 "core"
}

// nightWatch is an invented record from five to midnight on, a reading every five minutes.
func nightWatch() series.Series[units.Temperature] {
	const file = "time,core (°C)\n2026-08-13 23:55,4\n2026-08-14 00:00,4.5\n2026-08-14 00:05,5\n"
	p, err := series.Sniff[units.Temperature]([]byte(file), series.Format{})
	if err != nil {
		return series.Series[units.Temperature]{}
	}
	log, _ := series.ReadCSV[units.Temperature](strings.NewReader(file), p.Format, nil)
	return log.Series
}

func ExampleSeries_Origin() {
	o := nightWatch().Origin()
	fmt.Println(o.Clock.Format("2006-01-02 15:04"), o.Known, o.Dated, o.Zoned)
	// Output: 2026-08-13 23:55 true true false
}

func ExampleSeries_WithOrigin() {
	s := nightWatch().WithOrigin(series.Origin{Known: true, Clock: time.Date(1, 1, 1, 6, 0, 0, 0, time.UTC)})
	fmt.Println(s.TimeOfDay(6*time.Hour + 5*time.Minute))
	// Output: 5m0s <nil>
}

func ExampleSeries_TimeOfDay() {
	s := nightWatch()
	fmt.Println(s.TimeOfDay(2 * time.Minute)) // two minutes past midnight
	_, err := s.TimeOfDay(21 * time.Hour)
	fmt.Println(err)
	// Output:
	// 7m0s <nil>
	// the clock is not known: the record does not show that time of day
}

func ExampleSeries_Shift() {
	s, err := nightWatch().Shift(time.Hour)
	first, _ := s.First()
	fmt.Println(first.At, s.Origin().Clock.Format("15:04"), err)
	// Output: 1h0m0s 22:55 <nil>
}

func ExampleSeries_Join() {
	before := nightWatch()
	after, err := before.Shift(0)
	if err != nil {
		fmt.Println(err)
		return
	}
	o := after.Origin()
	o.Clock = o.Clock.Add(time.Hour) // the same readings an hour later
	joined, err := before.Join(after.WithOrigin(o))
	fmt.Println(joined.Len(), joined.Span(), joined.LongestGap().Length(), err)
	_, err = before.Join(before)
	fmt.Println(err)
	// Output:
	// 6 1h10m0s 50m0s <nil>
	// reading 0 at 0s: the time runs backward
}
