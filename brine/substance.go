package brine

import "strconv"

// Substance is what an ingredient brings to a cure. The zero Substance is not set and is refused.
type Substance uint8

// The substances. Honey and sugar count as Sugar by their whole weight; neither enters water phase salt.
const (
	Salt Substance = iota + 1
	Sugar
)

// String is the substance in one word: "salt".
func (s Substance) String() string {
	switch s {
	case 0:
		return "no substance"
	case Salt:
		return "salt"
	case Sugar:
		return "sugar"
	}
	return "Substance(" + strconv.Itoa(int(s)) + ")"
}

// SubstanceError says that an ingredient is not what it is wanted for. Want is 0 when any substance would have done.
type SubstanceError struct {
	Name      string
	Got, Want Substance
}

// Error names the ingredient, its substance and the one expected.
func (e SubstanceError) Error() string {
	want := "salt or sugar"
	if e.Want != 0 {
		want = e.Want.String()
	}
	return "ingredient \"" + e.Name + "\" is " + e.Got.String() + ": expected " + want
}
