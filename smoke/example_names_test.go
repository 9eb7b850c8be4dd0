package smoke_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/smoke"
	"example.org/lakelarder/units"
)

func ExampleCoreLimitID() {
	fmt.Println(smoke.Hot160PNW, smoke.CoreLimitID(0))
	// Output: HOT-160-PNW not stated
}

func ExampleCoolingRuleID() {
	fmt.Println(smoke.Cool2And4)
	// Output: COOL-2-4
}

func ExampleParseCoolingRuleID() {
	id, err := smoke.ParseCoolingRuleID("COOL-FOODCODE")
	fmt.Println(id == smoke.CoolFoodCode, err)
	// Output: true <nil>
}

func ExampleFindCoolingRule() {
	r, err := smoke.FindCoolingRule(smoke.CoolFrance)
	fmt.Println(r.Steps[0].From, "to", r.Steps[0].To, r.Steps[0].Within, err)
	// Output: 63 °C to 10 °C 2h0m0s <nil>
}

func ExampleStorageRuleID() {
	fmt.Println(smoke.Store36, smoke.Life14)
	// Output: STORE-36 LIFE-14
}

func ExampleParseStorageRuleID() {
	id, err := smoke.ParseStorageRuleID("STORE-38")
	fmt.Println(id == smoke.Store38, err)
	// Output: true <nil>
}

func ExampleFindStorageRule() {
	r, err := smoke.FindStorageRule(smoke.Store38)
	fmt.Println(r.AtMost, r.Home, err)
	// Output:
	// 38 °F false <nil>
}

func ExampleChamberRuleID() {
	fmt.Println(smoke.Cold90, smoke.LightSmoke)
	// Output: COLD-90-20 LIGHT-140-160
}

func ExampleParseChamberRuleID() {
	id, err := smoke.ParseChamberRuleID("TIME-12")
	fmt.Println(id == smoke.WholeFish12, err)
	// Output: true <nil>
}

func ExampleFindChamberRule() {
	r, err := smoke.FindChamberRule(smoke.ToOven)
	fmt.Println(r.Of, r.Within, err)
	// Output: from the smoker to the finishing oven 2h0m0s <nil>
}

func ExampleParseFaces() {
	f, err := smoke.ParseFaces("two faces")
	fmt.Println(f == smoke.TwoFaces, err)
	// Output: true <nil>
}

func ExampleParseSmoking() {
	s, err := smoke.ParseSmoking("Hot-smoked")
	fmt.Println(s, err)
	// Output: hot-smoked <nil>
}

func ExampleParseEvent() {
	e, err := smoke.ParseEvent("baste")
	fmt.Println(e, err)
	// Output: baste <nil>
}

func ExampleParseSite() {
	s, err := smoke.ParseSite("near bone")
	fmt.Println(s == smoke.NearBone, err)
	// Output: true <nil>
}

// The probe shows what the air shows, from the first reading on: it lies beside the fish.
func ExampleRunningHold_NextInAir() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), smoke.Record{MaxGap: 15 * time.Minute})
	for i, f := range []float64{70, 185, 190, 190} {
		h, _ = h.NextInAir(time.Duration(i)*15*time.Minute, units.Fahrenheit(f), units.Fahrenheit(f))
	}
	fmt.Println(h.Met(), h)
	// Output:
	// false a probe is not in the core; 30 minutes still owed
}

// From 70 to 185 °F in a minute: no fish does that.
func ExampleRunningHold_Doubted() {
	h, _ := smoke.WatchHold(smoke.DefaultCoreLimit(), smoke.Record{MaxGap: 10 * time.Minute})
	h, _ = h.Next(0, units.Fahrenheit(70))
	h, _ = h.Next(time.Minute, units.Fahrenheit(185))
	fmt.Println(h.Doubted(), h)
	// Output:
	// true a probe is not in the core; 30 minutes still owed
}

func ExampleSite() {
	fmt.Println(smoke.InThickest, "or", smoke.InTail)
	// Output: thickest part or thin tail
}
