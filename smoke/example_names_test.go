package smoke_test

import (
	"fmt"

	"example.org/lakelarder/smoke"
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
