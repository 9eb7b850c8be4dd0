package lethality_test

import (
	"encoding/json"
	"fmt"
	"time"

	"example.org/lakelarder/pressure/lethality"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

// tenMinutes is an invented record: ten minutes at 116 °C.
func tenMinutes() series.Series[units.Temperature] {
	s, _ := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(116)}, {At: 10 * time.Minute, Value: units.Celsius(116)},
	})
	return s
}

// saved writes a result and reads it back.
func saved[T any](v T) (T, error) {
	var back T
	text, err := json.Marshal(v)
	if err == nil {
		err = json.Unmarshal(text, &back)
	}
	return back, err
}

func ExampleLethality() {
	f, _ := lethality.F(tenMinutes(), lethality.F0())
	f, err := saved(f)
	fmt.Printf("%.2f min at %v, %d cautions, %v\n", f.F.Minutes(), f.Reference, len(f.Cautions), err)
	// Output:
	// 3.09 min at 121.1 °C, z 10 K, 2 cautions, <nil>
}

func ExampleEquivalent() {
	e, _ := lethality.F0().TimeAt(units.Celsius(111.1), 3*time.Minute)
	e, err := saved(e)
	fmt.Println(units.Lasting(e.Time), err)
	// Output:
	// 30 min <nil>
}

func ExampleSurvival() {
	s, _ := lethality.Survivors(1_000, lethality.Logs(5*lethality.One))
	s, err := saved(s)
	fmt.Println(s.Left, err)
	// Output:
	// 0.01 <nil>
}

func ExampleParts() {
	p, _ := lethality.Divide(tenMinutes(), lethality.F0(), series.Stretch{From: time.Minute, To: 9 * time.Minute})
	back, err := saved(p)
	fmt.Println(back.Hold == p.Hold, back.Total == p.Total, err)
	// Output:
	// true true <nil>
}

func ExampleValue() {
	v, _ := lethality.Listeria().Value(tenMinutes(), lethality.Moist)
	v, err := saved(v)
	fmt.Println(units.Lasting(v.P), v.Above.Time, err)
	// Output:
	// 0 min 10m0s <nil>
}

func ExampleBand() {
	slow, quick := units.SquareMillimetrePerSecond*13/100, units.SquareMillimetrePerSecond*15/100
	b, _ := pint.FollowBand(slow, quick, pintRun, lethality.F0())
	b, err := saved(b)
	fmt.Println(b.Low.F.Total < b.High.F.Total, err)
	// Output:
	// true <nil>
}

func ExampleFactors() {
	f, _ := pint.Factors(lethality.Point{})
	f, err := saved(f)
	fmt.Println(f.Fh.Round(time.Second), f.Jch, err)
	// Output:
	// 56m25s 2.039697533794 <nil>
}

func ExampleAnswer() {
	f, _ := pint.Factors(lethality.Point{})
	formula := lethality.Formula{Medium: units.Celsius(116), Start: units.Celsius(10), Fh: f.Fh, Jch: f.Jch}
	a, _ := formula.Process(6 * time.Minute)
	a, err := saved(a)
	fmt.Println(units.Lasting(a.Operator), err)
	// Output:
	// 119 min 11 s <nil>
}

func ExampleKillTime() {
	row := lethality.KillTimesAt(units.Celsius(70), lethality.ListeriaA3)[0]
	row, err := saved(row)
	fmt.Println(row.Table, row.Temperature, row.Time, row.Reductions, err)
	// Output:
	// Listeria, US FDA A-3 70 °C 2m0s 6.0 <nil>
}

func ExampleParseHeat() {
	h, err := lethality.ParseHeat("moist heat")
	fmt.Println(h == lethality.Moist, err)
	// Output:
	// true <nil>
}

func ExampleParseKillTable() {
	k, err := lethality.ParseKillTable("listeria, us fda a-3")
	fmt.Println(k, err)
	// Output:
	// Listeria, US FDA A-3 <nil>
}

func ExampleParseNumber() {
	n, err := lethality.ParseNumber("2.04")
	fmt.Println(n, err)
	// Output:
	// 2.04 <nil>
}

func ExampleParseLogs() {
	l, err := lethality.ParseLogs("12")
	fmt.Println(l, err)
	// Output:
	// 12.0 <nil>
}

func ExampleRule() {
	text, err := lethality.Trapezoid.MarshalText()
	fmt.Println(string(text), lethality.Rule(0), err)
	// Output:
	// trapezoid not stated <nil>
}

func ExampleParseRule() {
	r, err := lethality.ParseRule("simpson")
	fmt.Println(r, err)
	// Output:
	// Simpson <nil>
}

func ExampleParseShape() {
	s, err := lethality.ParseShape("sphere")
	fmt.Println(s, err)
	// Output:
	// sphere <nil>
}
