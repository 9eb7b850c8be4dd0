package units

// SumRanges returns what several ranges of a quantity come to together: the sum of the least, of the likely and of the
// greatest, each exact; none gives zero. So the ends lie wider than those of independent estimates together will. A sum
// past the range of the quantity is a RangeError.
func SumRanges[Q Quantity](ranges ...Range[Q]) (Range[Q], error) {
	var sum Range[Q]
	for _, r := range ranges {
		var err error
		if sum.Low, err = Sum(sum.Low, r.Low); err != nil {
			return Range[Q]{}, err
		}
		if sum.Likely, err = Sum(sum.Likely, r.Likely); err != nil {
			return Range[Q]{}, err
		}
		if sum.High, err = Sum(sum.High, r.High); err != nil {
			return Range[Q]{}, err
		}
	}
	return sum, nil
}
