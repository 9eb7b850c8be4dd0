package keeping_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/keeping"
)

func ExampleSpoilageSigns() {
	for _, s := range keeping.SpoilageSigns()[1:3] {
		fmt.Println(s.Sign.String()+":", s.Action)
	}
	// Output:
	// the lid bulges: discard shut
	// streaks of dried food from the top of the jar: discard shut
}

// A lid that did not seal, found the morning after and found a month later.
func ExampleCheckJar() {
	for _, since := range []time.Duration{14 * time.Hour, 30 * 24 * time.Hour} {
		j, err := keeping.CheckJar(units.State(since), keeping.LidUnsealed)
		fmt.Println(j.Verdict, "|", j.Action.Instruction(), err)
	}
	// Output:
	// not met | Process it again with a new lid for the full time, or freeze it, or refrigerate it and eat it within several days. <nil>
	// not met | Do not taste it: boil jar and food for 30 min under an inch (2.5 cm) of water, then discard both. <nil>
}

func ExampleJarSign() {
	fmt.Println(keeping.LidBulging, "|", keeping.Mould)
	// Output: the lid bulges | mould
}

func ExampleJarAction() {
	fmt.Println(keeping.DiscardShut)
	// Output:
	// discard shut
}

func ExampleJarAction_Instruction() {
	fmt.Println(keeping.DiscardShut.Instruction())
	// Output: Do not open or taste it: bag the jar and put it in the bin, out of reach of people and animals.
}

func ExampleParseJarSign() {
	_, err := keeping.ParseJarSign("rust")
	fmt.Println(err != nil)
	// Output: true
}

func ExampleParseJarAction() {
	a, err := keeping.ParseJarAction("discard shut")
	fmt.Println(a, err)
	// Output: discard shut <nil>
}
