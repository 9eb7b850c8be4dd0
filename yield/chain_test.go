package yield

import (
	"math"
	"testing"

	"example.org/lakelarder/internal/printed"
	"example.org/lakelarder/units"
	"github.com/stretchr/testify/require"
)

// Losses of 3, 6, 14 and 1.5 % leave the product of what each keeps, not what their sum leaves.
func TestStepsMultiply(t *testing.T) {
	printed.Table(t, "yield/step-losses.csv").Each(t, func(t *testing.T, r printed.Row) {
		var losses []units.Ratio
		sum := units.Ratio(0)
		for _, col := range []string{"loss1_percent", "loss2_percent", "loss3_percent", "loss4_percent"} {
			loss, err := units.Of(r.Decimal(col), units.Percent)
			require.NoError(t, err)
			losses = append(losses, loss)
			sum += loss
		}
		got, err := Remaining(losses...)
		require.NoError(t, err)
		printed.Within(t, r, "remaining", units.In(got, units.One, 12))
		printed.Within(t, r, "sum_would_say", units.In(units.One-sum, units.One, 12))
		require.Greater(t, got, units.One-sum)

		mass := units.Kilogram
		for _, loss := range losses {
			mass, err = AfterLoss(mass, loss)
			require.NoError(t, err)
		}
		printed.Within(t, r, "remaining", units.In(mass, units.Kilogram, 16))
	})
}

func TestSplitRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		whole units.Mass
		share units.Ratio
	}{
		"negative mass":      {-1, units.One},
		"most negative mass": {math.MinInt64, units.One},
		"negative share":     {units.Kilogram, -1},
		"more than all":      {units.Kilogram, units.One + 1},
		"a percentage as 1":  {units.Kilogram, 88 * units.One},
		"largest ratio":      {units.Kilogram, math.MaxInt64},
		"most negative":      {units.Kilogram, math.MinInt64},
	} {
		_, _, err := Split(c.whole, c.share)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
}

func TestSplitEnds(t *testing.T) {
	for _, c := range []struct {
		whole      units.Mass
		share      units.Ratio
		kept, rest units.Mass
	}{
		{0, units.One, 0, 0},
		{units.Pound, 0, 0, units.Pound},
		{units.Pound, units.One, units.Pound, 0},
		{math.MaxInt64, units.One, math.MaxInt64, 0},
		{3, units.One / 2, 1, 2}, // half a quantum goes to the rest
		{math.MaxInt64, 1, 9223372, math.MaxInt64 - 9223372},
		{5 * units.Kilogram, 75 * units.Percent, 3750 * units.Gram, 1250 * units.Gram},
	} {
		kept, rest, err := Split(c.whole, c.share)
		require.NoError(t, err)
		require.Equal(t, []units.Mass{c.kept, c.rest}, []units.Mass{kept, rest})
	}
}

func TestLossesRefuse(t *testing.T) {
	for name, loss := range map[string]units.Ratio{
		"negative": -1, "all": units.One, "more than all": units.One + 1, "a percentage as 1": 3 * units.One, "most negative": math.MinInt64,
	} {
		_, err := AfterLoss(units.Kilogram, loss)
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err := AfterLoss(-units.Gram, units.Percent)
	require.ErrorIs(t, err, units.ErrRange)
	for _, share := range []units.Ratio{-1, units.One + 1, math.MinInt64, math.MaxInt64} {
		_, err := Remaining(units.Percent, share)
		require.ErrorIs(t, err, units.ErrRange)
		_, err = Product(units.One, share)
		require.ErrorIs(t, err, units.ErrRange)
	}
	third, err := Product(333_333_333_333, units.One/2) // 0.1666666666665
	require.NoError(t, err)
	require.Equal(t, units.Ratio(166_666_666_667), third)
	none, err := Product()
	require.NoError(t, err)
	require.Equal(t, units.One, none)
}

func TestChainRefuses(t *testing.T) {
	good := Step{Name: "gut", Kept: 88 * units.Percent, Rest: Trim}
	for name, step := range map[string]Step{
		"share forgotten":      {Name: "gut", Rest: Trim},
		"negative share":       {Kept: -1},
		"more than all":        {Kept: units.One + 1},
		"low above likely":     {Kept: units.One / 2, Low: units.One, High: units.One},
		"negative low":         {Kept: units.One / 2, Low: -1, High: units.One},
		"high below likely":    {Kept: units.One / 2, Low: units.One / 4, High: units.One / 4},
		"high more than all":   {Kept: units.One / 2, Low: units.One / 4, High: units.One + 1},
		"only a low is given":  {Kept: units.One / 2, Low: units.One / 4},
		"ratio past all sense": {Kept: math.MaxInt64},
	} {
		_, err := Chain(units.Kilogram, good, step)
		require.ErrorIs(t, err, units.ErrRange, name)
		require.ErrorContains(t, err, "step 2", name)
	}
	_, err := Chain(-1, good)
	require.ErrorIs(t, err, units.ErrRange)
	_, err = Chain(units.Kilogram, good, Step{Name: "head", Kept: units.One / 2, Rest: 9})
	require.Equal(t, units.UnknownError{
		What: "destination of what step 2 (head) leaves", Got: "destination(9)", Known: []string{"loss", "trim", "food"},
	}, err)
	_, err = Chain(units.Kilogram, good, Step{Name: "head", Kept: units.One / 2})
	require.Equal(t, units.UnsetError{What: "destination of what step 2 (head) leaves"}, err)
}

func TestAfterRefuses(t *testing.T) {
	gutted := Share{From: Round, To: Gutted, Likely: 88 * units.Percent}
	for name, c := range map[string][2]Share{
		"later keeps more":       {{From: Round, To: Headed, Likely: 89 * units.Percent}, gutted},
		"earlier has no figure":  {gutted, {From: Round, To: Bled}},
		"counts from other fish": {{From: Live, To: Headed, Likely: units.Percent}, gutted},
		"a part of one gutted":   {{From: Round, To: Viscera, Likely: 12 * units.Percent}, gutted},
		"gutted after a part":    {{From: Round, To: Gonad, Likely: units.Percent}, {From: Round, To: Viscera, Likely: 12 * units.Percent}},
		"negative":               {{From: Round, To: Headed, Likely: -1}, gutted},
	} {
		_, err := c[0].After(c[1])
		require.ErrorIs(t, err, units.ErrRange, name)
	}
	_, err := gutted.Of(-1)
	require.ErrorIs(t, err, units.ErrRange)
}

func TestSpreadOfAChain(t *testing.T) {
	gutted, err := Find(RainbowTrout, Gutted) // 87.56 ± 3.43 %
	require.NoError(t, err)
	o, err := Chain(units.Kilogram,
		Step{Name: "gut", Kept: gutted.Likely, Low: gutted.Low, High: gutted.High, Rest: Trim},
		Step{Name: "dry", Kept: 90 * units.Percent, Rest: Loss})
	require.NoError(t, err)
	require.Equal(t, units.Range[units.Mass]{Low: 757170 * units.Milligram, Likely: 788040 * units.Milligram, High: 818910 * units.Milligram}, o.Kept)
	require.Equal(t, o.Share.String(), "78.804 %")
}

// Every quantum ends in exactly one place, kept never exceeds the exact share, and a larger share never keeps less.
func FuzzSplit(f *testing.F) {
	f.Add(int64(units.Kilogram), int64(88*units.Percent), int64(units.Percent))
	f.Add(int64(math.MaxInt64), int64(units.One-1), int64(1))
	f.Add(int64(7), int64(1), int64(0))
	f.Fuzz(func(t *testing.T, whole, share, more int64) {
		kept, rest, err := Split(units.Mass(whole), units.Ratio(share))
		if whole < 0 || share < 0 || share > int64(units.One) {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.NoError(t, err)
		require.Equal(t, units.Mass(whole), kept+rest)
		require.True(t, kept >= 0 && rest >= 0)
		nearest, err := units.Prorate(units.Mass(whole), units.Ratio(share), units.One)
		require.NoError(t, err)
		require.True(t, kept == nearest || kept == nearest-1)
		if more < 0 || more > int64(units.One)-share {
			return
		}
		larger, _, err := Split(units.Mass(whole), units.Ratio(share+more))
		require.NoError(t, err)
		require.GreaterOrEqual(t, larger, kept)
	})
}

func FuzzChainLosesNothing(f *testing.F) {
	f.Add(int64(4*units.Kilogram), int64(98*units.Percent), int64(90*units.Percent), int64(85*units.Percent))
	f.Add(int64(1), int64(1), int64(units.One), int64(units.One/3))
	f.Fuzz(func(t *testing.T, whole, a, b, c int64) {
		steps := []Step{
			{Name: "bleed", Kept: units.Ratio(a), Rest: Loss},
			{Name: "gut", Kept: units.Ratio(b), Rest: Trim},
			{Name: "head", Kept: units.Ratio(c), Rest: Food},
		}
		o, err := Chain(units.Mass(whole), steps...)
		if err != nil {
			require.ErrorIs(t, err, units.ErrRange)
			return
		}
		require.Equal(t, o.Whole, o.Kept.Likely+o.Left(Loss)+o.Left(Trim)+o.Left(Food))
		require.Equal(t, units.Range[units.Mass]{Low: o.Kept.Likely, Likely: o.Kept.Likely, High: o.Kept.Likely}, o.Kept)
		for i, p := range o.Steps {
			require.Equal(t, p.In, p.Kept+p.Left)
			if i > 0 {
				require.Equal(t, o.Steps[i-1].Kept, p.In)
			}
		}
		exact, err := units.Prorate(o.Whole, o.Share, units.One)
		require.NoError(t, err)
		require.LessOrEqual(t, o.Kept.Likely, exact+units.Mass(whole/int64(units.One))+1)
	})
}
