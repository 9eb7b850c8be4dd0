package keeping_test

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/yield/coldchain/keeping"
)

func ExampleSpoilageSigns() {
	for _, s := range keeping.SpoilageSigns()[1:3] {
		fmt.Println(s.Text+":", s.Action)
	}
	// Output:
	// the lid bulges: do not open or taste: bag the jar and put it in the bin, out of reach of people and animals
	// streaks of dried food from the top of the jar: do not open or taste: bag the jar and put it in the bin, out of reach of people and animals
}

// A lid that did not seal, found the morning after and found a month later.
func ExampleCheckJar() {
	for _, since := range []time.Duration{14 * time.Hour, 30 * 24 * time.Hour} {
		j, err := keeping.CheckJar(units.State(since), keeping.LidUnsealed)
		fmt.Println(j.Action, err)
	}
	// Output:
	// process again with a new lid for the full time, or freeze, or refrigerate and eat within several days <nil>
	// do not taste: boil jar and food for 30 min under an inch of water, then discard both <nil>
}

func ExampleJarSign() {
	fmt.Println(keeping.LidBulging, "|", keeping.Mould)
	// Output: the lid bulges | mould
}

func ExampleJarAction() {
	fmt.Println(keeping.DiscardShut)
	// Output: do not open or taste: bag the jar and put it in the bin, out of reach of people and animals
}
