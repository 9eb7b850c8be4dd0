package conformance

import (
	"time"

	"github.com/shopspring/decimal"

	"example.org/lakelarder/units"
)

var unitsExempt = map[string]string{
	"As": build, "Amount.IsStated": build, "Amount.Equal": build, "Amount.Comparable": build, "Exactly": build, "AtLeast": build, "MoreThan": build, "AtMost": build,
	"LessThan": build, "Between": build, "InWords": build, "Figure.Also": build, "Figure.With": build, "Figure.IsStated": build, "Figure.IsExact": build, "State": build,
	"Parts.IsSet": build, "Temperature.IsSet": build, "FromAbsoluteZero": build,
	"RangeError.Is": faults, "UnsetError.Is": faults, "FieldError.Unwrap": faults, "ParseError.Is": faults, "UnknownError.Is": faults, "UnitError.Is": faults,
	"Check": faults, "CheckTemperature": faults, "CheckDuration": faults, "CheckUnit": faults,
}

func unitsGrid(r *results) {
	masses := stepped(1, 3_000, 311, 1_234_567*units.Microgram)
	lengths := stepped(1, 3_000, 419, 1_234*units.Micrometre)
	r.sweep("Prorate", units.Prorate[units.Mass, units.Length], masses, lengths, these(977*units.Millimetre))
	r.sweep("ProrateDown", units.ProrateDown[units.Mass, units.Length], masses, lengths, these(977*units.Millimetre))
	r.sweep("ProrateUp", units.ProrateUp[units.Mass, units.Length], masses, lengths, these(977*units.Millimetre))
	r.sweep("RatioOf", units.RatioOf[units.Mass], masses, these(7*units.Pound))
	r.sweep("Times", units.Times[units.Mass], masses, these(int64(3), int64(-7)))
	r.sweep("Sum", units.Sum[units.Mass], masses, masses)
	r.sweep("RoundTo", units.RoundTo[units.Mass], masses, these(7*units.Gram, units.Ounce))
	r.sweep("FloorTo", units.FloorTo[units.Mass], masses, these(7*units.Gram, units.Ounce))
	r.sweep("CeilTo", units.CeilTo[units.Mass], masses, these(7*units.Gram, units.Ounce))
	r.sweep("Ratio.Of", units.Ratio.Of, stepped(3, 99, 13, units.PerMille), masses)
	r.sweep("Float", units.Float[units.Mass], masses, these(units.Ounce))
	r.sweep("In", units.In[units.Mass], masses, these(units.Ounce, units.Gram), these(int32(3)))
	r.sweep("Text", units.Text[units.Mass], masses, these(units.Ounce, units.Gram), these(int32(1)))
	r.sweep("Kitchen", units.Kitchen[units.Volume], stepped(1, 97, 8, 7_777*units.Microlitre), these(int64(4)), these(units.Cup), these(units.Tablespoon), these(units.Teaspoon))
	r.sweep("Lasting", units.Lasting, stepped(1, 1_000_000, 77_777, time.Second))
	for i := int64(1); i <= 60; i++ {
		d := decimal.New(i*i*i*7_919+i, -3)
		r.sweep("Of", units.Of[units.Length], these(d), these(units.Inch, units.Millimetre))
		r.sweep("OfFloat", units.OfFloat[units.Length], these(float64(i*i)*0.37), these(units.Inch, units.Foot))
		r.sweep("TemperatureOf", units.TemperatureOf, these(decimal.New(i*37, -1)), these(units.CelsiusScale, units.FahrenheitScale, units.KelvinScale))
	}
	rangesGrid(r)
	temperatureGrid(r)
	amountGrid(r)
}

func rangesGrid(r *results) {
	ranges := r.sweep("RangeOf", units.RangeOf[units.Mass], these("mass"), stepped(1, 4, 1, units.Gram), these(5*units.Gram), stepped(5, 9, 2, units.Gram))
	r.sweep("SumRanges", units.SumRanges[units.Mass], ranges, some(ranges, 3))
	r.sweep("Range.Holds", units.Range[units.Mass].Holds, ranges, stepped(2, 8, 3, units.Gram))
	r.sweep("Range.Figure", units.Range[units.Mass].Figure, ranges)
	r.sweep("Range.Text", units.Range[units.Mass].Text, ranges, these(units.Both, units.US, units.Metric))
}

func temperatureGrid(r *results) {
	for i := int64(-400); i <= 3_000; i += 57 {
		x := these(float64(i) / 10)
		r.sweep("Celsius", units.Celsius, x)
		r.sweep("Fahrenheit", units.Fahrenheit, x)
		r.sweep("Kelvin", units.Kelvin, these(float64(i+500)/10))
		t := these(tenths(i))
		r.sweep("Temperature.Celsius", units.Temperature.Celsius, t)
		r.sweep("Temperature.Fahrenheit", units.Temperature.Fahrenheit, t)
		r.sweep("Temperature.Kelvin", units.Temperature.Kelvin, t)
		r.sweep("Temperature.In", units.Temperature.In, t, these(units.FahrenheitScale), these(int32(2)))
		r.sweep("Temperature.Text", units.Temperature.Text, t, these(units.FahrenheitScale), these(int32(1)))
		r.sweep("Temperature.AboveAbsoluteZero", units.Temperature.AboveAbsoluteZero, t)
		other := these(tenths(371))
		r.sweep("Temperature.Equal", units.Temperature.Equal, t, other)
		r.sweep("Temperature.AtLeast", units.Temperature.AtLeast, t, other)
		r.sweep("Temperature.Above", units.Temperature.Above, t, other)
		r.sweep("Temperature.Below", units.Temperature.Below, t, other)
		r.sweep("Temperature.Sub", units.Temperature.Sub, t, other)
		r.sweep("Temperature.Add", units.Temperature.Add, t, these(7*units.Kelvins/3))
	}
}

func amountGrid(r *results) {
	systems := these(units.Both, units.US, units.Metric)
	amounts := r.sweep("AmountOf", units.AmountOf[units.Mass], stepped(1, 2_000, 191, 777*units.Milligram))
	warm := r.sweep("AmountOf", units.AmountOf[units.Temperature], degrees(-205, 1_211, 59))
	long := r.sweep("AmountOf", units.AmountOf[units.Length], stepped(1, 2_000, 191, 777*units.Micrometre))
	for _, same := range [][]any{amounts, warm, long} {
		r.sweep("Amount.Compare", units.Amount.Compare, same, some(same, 4))
		r.sweep("Amount.Minus", units.Amount.Minus, same, some(same, 4))
		r.sweep("Amount.Text", units.Amount.Text, same, systems, these(units.Nearest, units.Down, units.Up))
	}
	figures := these(units.AtLeast(tenths(823)), units.AtMost(units.Fahrenheit(38)), units.Between(tenths(600), tenths(711)), units.MoreThan(tenths(44)))
	r.sweep("Figure.Admits", units.Figure.Admits, figures, warm)
	r.sweep("Figure.Text", units.Figure.Text, figures, systems)
	for _, t := range warm {
		value, _ := units.As[units.Temperature](t.(units.Amount))
		r.sweep("Apart", units.Apart, these(units.Exactly(value)), figures, systems)
	}
	r.sweep("ReadTyped", units.ReadTyped[units.Mass], these("3 lb", "1.5 kg", "250 g"))
}
