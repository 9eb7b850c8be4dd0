package lethality

import (
	"math"
	"strconv"
	"time"

	"example.org/lakelarder/internal/portable"
	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Formula is Ball's formula method: a heating curve that is one straight line in the half-logarithmic plot, and a
// printed table for what comes before and after it. Medium is the steam, Start the uniform start, ComeUp how long the
// steam took. The table assumes z = 18 °F, a cooling lag jcc of 1.41, cooling as fast as heating, and cooling water
// 180 °F below the centre's highest; a solid's centre has a jcc near 2.
type Formula struct {
	Medium units.Temperature `wire:"required"`
	Start  units.Temperature `wire:"required"`
	Fh     time.Duration     `wire:"required"`
	Jch    Number            `wire:"required"`
	ComeUp time.Duration
}

// Answer is what the formula method makes of a process.
type Answer struct {
	Operator  time.Duration           // from steam at temperature to steam off
	B         time.Duration           // Ball's time, Operator and 0.42 of the come-up
	G         units.TemperatureChange // how far the centre still is below the medium at steam off
	FhOverU   Number
	F         time.Duration // against 250 °F and z 18 °F
	Cautions  []cite.Caution
	Citations []cite.Citation
}

func (b Formula) check() error {
	if err := units.CheckTemperature("medium", b.Medium, units.Celsius(90), hottest); err != nil {
		return err
	}
	if err := units.CheckTemperature("start", b.Start, units.Celsius(-1), b.Medium.Add(-units.Kelvins)); err != nil {
		return err
	}
	if err := units.CheckDuration("fh", b.Fh, time.Second, 100*time.Hour); err != nil {
		return err
	}
	if err := b.Jch.check("jch", One/10, 10*One); err != nil {
		return err
	}
	return units.CheckDuration("come-up", b.ComeUp, 0, 24*time.Hour)
}

// Lethality returns the F of a process of so much operator's time, rounded down: g = jch Ih 10^(−B/fh) from the
// heating curve, fh/U of that g from the table (GTable), F = U/Fi. The medium must be 90 to 150 °C; a g outside the
// printed table (fh/U 0.5 to 200) is a RangeError: the method has no answer there. It reads a fifth to a third under
// the exact answer for a solid that is cooled at once, and less than half of it for one in a canner that cools by
// itself (Follow).
func (b Formula) Lethality(operator time.Duration) (Answer, error) {
	if err := b.check(); err != nil {
		return Answer{}, err
	}
	if err := units.CheckDuration("operator's time", operator, 0, 100*time.Hour); err != nil {
		return Answer{}, err
	}
	ball := operator + credit(b.ComeUp)
	logG := b.logStart() - ball.Minutes()/b.Fh.Minutes()
	fhOverU, err := tableFhOverU(logG)
	if err != nil {
		return Answer{}, err
	}
	f, err := floored("F", float64(b.Fh)/fhOverU*b.rate())
	if err != nil {
		return Answer{}, err
	}
	return b.answer(operator, ball, logG, fhOverU, f)
}

// Process returns the process time that the method asks for an F, rounded up to the second. It is for comparing with
// a published process and never replaces one. Ranges as for Lethality.
func (b Formula) Process(f time.Duration) (Answer, error) {
	if err := b.check(); err != nil {
		return Answer{}, err
	}
	if err := units.CheckDuration("F", f, time.Millisecond, 100*time.Hour); err != nil {
		return Answer{}, err
	}
	fhOverU := float64(b.Fh) * b.rate() / float64(f) // U = F·Fi, Fi = 1/rate
	logG, err := tableLogG(fhOverU)
	if err != nil {
		return Answer{}, err
	}
	ns := float64(b.Fh) * (b.logStart() - logG)
	ball := time.Duration(math.Ceil(ns/float64(time.Second))) * time.Second // B = fh (log jch Ih − log g)
	return b.answer(ball-credit(b.ComeUp), ball, logG, fhOverU, f)
}

func (b Formula) answer(operator, ball time.Duration, logG, fhOverU float64, f time.Duration) (Answer, error) {
	if err := units.CheckDuration("operator's time", operator, 0, 200*time.Hour); err != nil {
		return Answer{}, err
	}
	g, err := units.OfFloat(portable.Exp10(logG), units.FahrenheitDegrees)
	if err != nil {
		return Answer{}, err
	}
	ratio, err := numberOf(fhOverU)
	return Answer{operator, ball, g, ratio, f, explainsSolid(), []cite.Citation{
		gCitation(), {Source: cite.BallOlson1957, Where: "equations of the formula method", Basis: cite.Recalled},
	}}, err
}

// credit is what the come-up counts for: 42 % of it. A straight come-up is worth a little more, up to half.
func credit(comeUp time.Duration) time.Duration { return comeUp * 42 / 100 }

// logStart is log10 of jch Ih in °F.
func (b Formula) logStart() float64 {
	below := float64(quanta(b.Medium)-quanta(b.Start)) / float64(units.FahrenheitDegrees)
	return portable.Log10(b.Jch.float() * below)
}

func (b Formula) rate() float64 { return F0Fahrenheit().scale().rate(quanta(b.Medium)) }

// GTable returns log10 g, g in °F, for an fh/U of 0.5 to 200, from eight printed points by straight lines of log g on
// log fh/U; outside a RangeError. The curve is hollow downward, so the lines read g low: a longer process and a
// smaller F, the safe side, by up to 0.1 between 0.5 and 2. The citation is of the printed points.
func GTable(fhOverU Number) (Number, cite.Citation, error) {
	logG, err := tableLogG(fhOverU.float())
	if err != nil {
		return 0, cite.Citation{}, err
	}
	n, err := numberOf(logG)
	return n, gCitation(), err
}

func tableLogG(fhOverU float64) (float64, error) {
	for i := 1; i < len(gTable); i++ {
		a, b := gTable[i-1], gTable[i]
		if fhOverU >= a.fhOverU && fhOverU <= b.fhOverU {
			share := portable.Log(fhOverU/a.fhOverU) / portable.Log(b.fhOverU/a.fhOverU)
			return a.logG + float64(share*(b.logG-a.logG)), nil
		}
	}
	return 0, outsideTable("fh/U", fhOverU, gTable[0].fhOverU, gTable[len(gTable)-1].fhOverU)
}

func tableFhOverU(logG float64) (float64, error) {
	for i := 1; i < len(gTable); i++ {
		a, b := gTable[i-1], gTable[i]
		if logG >= a.logG && logG <= b.logG {
			share := (logG - a.logG) / (b.logG - a.logG)
			return a.fhOverU * portable.Exp(share*portable.Log(b.fhOverU/a.fhOverU)), nil
		}
	}
	return 0, outsideTable("log g", logG, gTable[0].logG, gTable[len(gTable)-1].logG)
}

func outsideTable(what string, got, low, high float64) error {
	return units.RangeError{What: what, Got: short(got), Low: short(low), High: short(high)}
}

func short(x float64) string { return strconv.FormatFloat(x, 'g', 5, 64) }
