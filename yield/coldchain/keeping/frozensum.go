package keeping

import (
	"math"
	"time"

	"example.org/lakelarder/internal/portable"
)

// knot is a point of a storage life: at degrees Celsius a share of the life is used in a second, and up to the next
// warmer one the logarithm of that rises by slope a degree.
type knot struct{ celsius, rate, slope float64 }

// knots stand coldest first.
type knots []knot

func (s FrozenLife) knots() knots {
	all := make(knots, len(s.Points))
	for i, p := range s.Points {
		k := &all[len(all)-1-i]
		k.celsius, k.rate = p.At.Celsius(), 1/p.Life.Seconds()
		if i > 0 {
			warmer := all[len(all)-i]
			k.slope = portable.Log(warmer.rate/k.rate) / (warmer.celsius - k.celsius)
		}
	}
	return all
}

// rate is the share used in a second at degrees Celsius between the coldest and the warmest knot.
func (n knots) rate(celsius float64) float64 {
	i := 0
	for i < len(n)-2 && celsius > n[i+1].celsius {
		i++
	}
	return n[i].rate * portable.Exp(n[i].slope*(celsius-n[i].celsius))
}

// frozenSum is a share of a life and the seconds outside its table.
type frozenSum struct{ share, warm, cold float64 }

// add enters a straight stretch of seconds from a to b, cut at the knots. Beyond the ends of the table the rate is that
// of the end; exactly on its warmest knot is within it.
func (sum *frozenSum) add(n knots, seconds, a, b float64) {
	low, high := min(a, b), max(a, b)
	cold, warm := n[0], n[len(n)-1]
	switch {
	case low == high:
		sum.still(n, seconds, low)
		return
	case low < cold.celsius:
		part := seconds * (min(high, cold.celsius) - low) / (high - low)
		sum.cold += part
		sum.share += float64(part * cold.rate)
	}
	if high > warm.celsius {
		part := seconds * (high - max(low, warm.celsius)) / (high - low)
		sum.warm += part
		sum.share += float64(part * warm.rate)
	}
	for i := 0; i < len(n)-1; i++ {
		if x, y := max(low, n[i].celsius), min(high, n[i+1].celsius); x < y {
			sum.share += float64(seconds * (y - x) / (high - low) * n[i].mean(x, y))
		}
	}
}

// still enters seconds at one temperature.
func (sum *frozenSum) still(n knots, seconds, celsius float64) {
	cold, warm := n[0], n[len(n)-1]
	switch {
	case celsius < cold.celsius:
		sum.cold += seconds
		celsius = cold.celsius
	case celsius > warm.celsius:
		sum.warm += seconds
		celsius = warm.celsius
	}
	sum.share += float64(seconds * n.rate(celsius))
}

// mean is the mean rate on a straight way from x up to y above the knot: the logarithmic mean of the rates at both.
func (k knot) mean(x, y float64) float64 {
	at := k.rate * portable.Exp(k.slope*(x-k.celsius))
	if rise := k.slope * (y - x); rise > 0 {
		return at * portable.Expm1(rise) / rise
	}
	return at
}

func roundedUp(seconds float64) time.Duration {
	return time.Duration(math.Ceil(seconds * float64(time.Second)))
}
