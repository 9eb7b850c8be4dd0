package yield

import (
	"math"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// row is one printed row of a table of shares.
type row struct {
	species Species
	stock   string
	from    Stage
	to      Stage
	figure
	citation cite.Citation
	note     cite.Caution // zero where there is none
}

// figure is what is printed in the row.
type figure struct {
	likely, low, high, factor units.Ratio
	spread                    Spread
}

func pct(x float64) units.Ratio { return units.Ratio(math.Round(float64(x * float64(units.Percent)))) }

// percent is a share printed by itself.
func percent(x float64) figure { return figure{likely: pct(x), low: pct(x), high: pct(x)} }

// meanAndSD is a share printed as mean and standard deviation.
func meanAndSD(mean, sd float64) figure {
	return figure{likely: pct(mean), low: pct(mean) - pct(sd), high: pct(mean) + pct(sd), spread: StandardDeviation}
}

// between is a share printed as a range.
func between(low, high float64) figure {
	return figure{likely: (pct(low) + pct(high)) / 2, low: pct(low), high: pct(high), spread: PrintedRange}
}

// judgedBetween is a range that nobody printed.
func judgedBetween(low, high float64) figure {
	f := between(low, high)
	f.spread = JudgedRange
	return f
}

// conversion is a printed conversion factor, the earlier mass for the later: the share is its inverse.
func conversion(factor float64) figure {
	f := figure{factor: pct(100 * factor)}
	f.likely, _ = units.RatioOf(units.One, f.factor)
	f.low, f.high = f.likely, f.likely
	return f
}

// weighed is a share that follows from two printed figures, such as grams of a part and of the fish.
func weighed(part, whole units.Mass) figure {
	share, _ := units.RatioOf(part, whole)
	return figure{likely: share, low: share, high: share}
}

func from(source cite.Source, where string, basis cite.Basis) cite.Citation {
	return cite.Citation{Source: source, Where: where, Basis: basis}
}
