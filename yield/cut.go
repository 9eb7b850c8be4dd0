package yield

import "example.org/lakelarder/units"

// Cuts is a fish cut across into pieces of one length. Pieces of the cut, the Offcut towards the tail and the Ends
// (head and tail, not used) add up to the fish to the nanometre.
type Cuts struct {
	Fish   units.Length
	Cut    units.Length
	Pieces int
	Offcut units.Length
	Ends   units.Length
}

// CutAcross returns how a fish of a length is cut into steaks or jar pieces when a share of its length is usable: 65
// % as a rule, which is judged and not published, so measure. The tail offcut is shorter than a cut and fills gaps. A
// cut for jars is as long as the jar is high inside less the headspace (the published 3 1/2 in for pints at 1 in of
// headspace), one for steaks about 3/4 in. Pieces round down. The fish must be 100 mm to 3 m, the cut at least 5 mm
// and the share 0 to 100 %; otherwise a RangeError.
func CutAcross(fish units.Length, usable units.Ratio, cut units.Length) (Cuts, error) {
	if err := units.Check("length of the fish", fish, 100*units.Millimetre, 3*units.Metre); err != nil {
		return Cuts{}, err
	}
	if err := units.Check("usable share of the length", usable, 0, units.One); err != nil {
		return Cuts{}, err
	}
	if err := units.Check("length of cut", cut, 5*units.Millimetre, 3*units.Metre); err != nil {
		return Cuts{}, err
	}
	body, err := units.Prorate(fish, usable, units.One)
	if err != nil {
		return Cuts{}, err
	}
	return Cuts{Fish: fish, Cut: cut, Pieces: int(body / cut), Offcut: body % cut, Ends: fish - body}, nil
}
