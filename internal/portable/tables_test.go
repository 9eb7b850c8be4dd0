package portable

import (
	"fmt"
	"go/format"
	"math"
	"math/big"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/stretchr/testify/require"
)

// The tables in the code are what this file works out, to the last digit. LAKELARDER_WRITE=1 writes them.
func TestTables(t *testing.T) {
	for name, text := range map[string]string{
		"table_exp.go": expTableText(), "table_log.go": logTableText(), "table_sin.go": sinTableText(), "table_bessel.go": besselTableText(),
		"table_erfc.go": erfcTableText(),
	} {
		if os.Getenv("LAKELARDER_WRITE") != "" {
			require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
		}
		kept, err := os.ReadFile(name)
		require.NoError(t, err)
		if diff := cmp.Diff(strings.Split(text, "\n"), strings.Split(string(kept), "\n")); diff != "" {
			t.Errorf("%s (-worked out +kept):\n%s", name, diff)
		}
	}
}

func rounded(x *big.Float) float64 {
	f, _ := x.Float64()
	return f
}

func digits(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

func listed(xs ...float64) string {
	var all []string
	for _, x := range xs {
		all = append(all, digits(x))
	}
	return strings.Join(all, ", ")
}

// lines puts each number on a line of its own.
func lines(xs []float64) string {
	var b strings.Builder
	for _, x := range xs {
		b.WriteString(digits(x) + ",\n")
	}
	return b.String()
}

// words splits a number into parts: the first ones with so many digits, the last one rounded.
func words(x *big.Float, bits ...uint) []float64 {
	var parts []float64
	rest := zero(precision).Set(x)
	for _, b := range bits {
		part := rounded(new(big.Float).SetPrec(b).SetMode(big.ToZero).Set(rest))
		parts, rest = append(parts, part), sub(rest, number(part))
	}
	return append(parts, rounded(rest))
}

func ratio(a, b int64) *big.Float { return quo(whatIs(a, precision), whatIs(b, precision)) }

const generated = "package portable\n\n// Worked out by tables_test.go.\n\n"

func expTableText() string {
	ln2 := refLn2(precision)
	ten := refLog(number(10))
	step := quo(ln2, number(steps))
	tenStep := quo(step, ten)
	e, tens := words(step, 34), words(tenStep, 34)
	var b strings.Builder
	b.WriteString(generated)
	fmt.Fprintf(&b, "const (\n\tstepsPerE = %s // 128/ln 2\n\tstepHigh = %s // ln 2/128 in two words\n\tstepLow = %s\n", digits(rounded(quo(number(1), step))), digits(e[0]), digits(e[1]))
	fmt.Fprintf(&b, "\tstepsPerTen = %s // 128/log10 2\n\ttenHigh = %s // log10 2/128 in two words\n\ttenLow = %s\n)\n\n", digits(rounded(quo(number(1), tenStep))), digits(tens[0]), digits(tens[1]))
	b.WriteString("// expTable is 2^(j/128): the bits of the nearest float64, and what is missing as a share of it.\n")
	b.WriteString("var expTable = [steps]struct {\n\tscale uint64\n\ttail  float64\n}{\n")
	for j := int64(0); j < steps; j++ {
		exact := refExp(mul(ln2, ratio(j, steps)))
		scale := rounded(exact)
		tail := sub(quo(exact, number(scale)), number(1))
		fmt.Fprintf(&b, "\t{%#016x, %s},\n", math.Float64bits(scale), digits(rounded(tail)))
	}
	b.WriteString("}\n")
	return aligned(b.String())
}

func logTableText() string {
	ln2 := refLn2(precision)
	grid := func(x *big.Float) float64 { // to 2^-42, so that 1100 of them and one more are a float64
		return math.Ldexp(math.RoundToEven(math.Ldexp(rounded(x), 42)), -42)
	}
	high := grid(ln2)
	perTen := words(quo(number(1), refLog(number(10))), 53)
	var b strings.Builder
	b.WriteString(generated)
	fmt.Fprintf(&b, "const (\n\tln2High = %s // ln 2 in two words\n\tln2Low = %s\n", digits(high), digits(rounded(sub(ln2, number(high)))))
	fmt.Fprintf(&b, "\tperTenHigh = %s // 1/ln 10 in two words\n\tperTenLow = %s\n)\n\n", digits(perTen[0]), digits(perTen[1]))
	b.WriteString("// logTable is, for each interval of an octave, a short number near the inverse of its middle, and minus the logarithm\n// of that in two words.\n")
	b.WriteString("var logTable = [steps]struct{ inverse, high, low float64 }{\n")
	for j := uint64(0); j < steps; j++ {
		left := math.Float64frombits(logOrigin + j<<45)
		right := math.Float64frombits(logOrigin + (j+1)<<45)
		inverse := math.RoundToEven(512/((left+right)/2)) / 512
		if left == 1 || right == 1 {
			inverse = 1
		}
		minus := refLog(number(inverse))
		minus.Neg(minus)
		top := grid(minus)
		fmt.Fprintf(&b, "\t{%s},\n", listed(inverse, top+0, rounded(sub(minus, number(top)))+0))
	}
	b.WriteString("}\n")
	return aligned(b.String())
}

func sinTableText() string {
	half := quo(refPi(precision), whatIs(2, precision))
	parts := words(half, 33, 33)
	var b strings.Builder
	b.WriteString(generated)
	fmt.Fprintf(&b, "const (\n\tquarterHigh = %s // π/2 in three words\n\tquarterMiddle = %s\n\tquarterLow = %s\n", digits(parts[0]), digits(parts[1]), digits(parts[2]))
	fmt.Fprintf(&b, "\thalfPiLow = %s // what math.Pi/2 leaves\n)\n\n", digits(rounded(sub(half, number(math.Pi/2)))))
	b.WriteString("// quarterTurns are the digits of 2/π after 64 zeros.\nvar quarterTurns = [20]uint64{\n\t0,\n")
	rest := quo(whatIs(2, 1500), refPi(1500))
	for i := 1; i < 20; i++ {
		rest = mul(rest, zero(1500).SetMantExp(whatIs(1, 1500), 64))
		word, _ := rest.Int(nil)
		rest = sub(rest, zero(1500).SetInt(word))
		fmt.Fprintf(&b, "\t%#016x,\n", word.Uint64())
	}
	b.WriteString("}\n")
	return aligned(b.String())
}

// besselZeroOf finds a zero of J0 (order 0) or J1 near a place by Newton's steps.
func besselZeroOf(order int64, near float64) *big.Float {
	z := number(near)
	for i := 0; i < 9; i++ {
		j0, j1 := refBessel(0, z), refBessel(1, z)
		slope := zero(precision).Neg(j1) // J0' = −J1
		value := j0
		if order == 1 {
			value, slope = j1, sub(j0, quo(j1, z)) // J1' = J0 − J1/x
		}
		z = sub(z, quo(value, slope))
	}
	return z
}

// besselSeries are the coefficients of J0 around a place, from x y” + y' + x y = 0.
func besselSeries(at *big.Float, n int) []*big.Float {
	a := []*big.Float{refBessel(0, at), zero(precision).Neg(refBessel(1, at))}
	for k := int64(0); len(a) < n; k++ {
		sum := add(mul(whatIs((k+1)*(k+1), precision), a[k+1]), mul(at, a[k]))
		if k > 0 {
			sum = add(sum, a[k-1])
		}
		a = append(a, quo(sum.Neg(sum), mul(at, whatIs((k+2)*(k+1), precision))))
	}
	return a
}

func besselTableText() string {
	var b strings.Builder
	b.WriteString(generated)
	factorial := func(k int64) *big.Float { return zero(precision).SetInt(new(big.Int).MulRange(1, k)) }
	var j0, j1 []float64
	for k := int64(0); k < 12; k++ {
		four := zero(precision).SetMantExp(whatIs(1-k%2*2, precision), int(2*k))
		four = quo(whatIs(1, precision), four)
		j0 = append(j0, rounded(quo(four, mul(factorial(k), factorial(k)))))
		j1 = append(j1, rounded(quo(four, mul(factorial(k), factorial(k+1)))))
	}
	fmt.Fprintf(&b, "// j0Series and j1Series are J0 and 2 J1/x by powers of x² (Abramowitz and Stegun 9.1.10).\nvar (\n\tj0Series = [...]float64{\n%s}\n\tj1Series = [...]float64{\n%s}\n)\n\n", lines(j0), lines(j1))
	b.WriteString("// besselTable is J0 around the first zeros of J0 and of J1.\nvar besselTable = [...]besselPiece{\n")
	for m := int64(1); m < 16; m++ {
		at := besselZeroOf((m+1)%2, (float64(m)/2+0.25)*math.Pi)
		place := words(at, 53)
		var series []float64
		for k, a := range besselSeries(at, besselTerms) {
			if k == int((m+1)%2) {
				a = number(0)
			}
			series = append(series, rounded(a))
		}
		fmt.Fprintf(&b, "\t{%s, [besselTerms]float64{\n%s\t}},\n", listed(place...), lines(series))
	}
	b.WriteString("}\n\n// hankelTable are the coefficients of P and Q for J0 and J1, by powers of 1/x² (9.2.9 and 9.2.10), signs included.\nvar hankelTable = [hankelTerms]struct{ p0, q0, p1, q1 float64 }{\n")
	for i := int64(0); i < hankelTerms; i++ {
		fmt.Fprintf(&b, "\t{%s},\n", listed(hankel(0, 2*i), hankel(0, 2*i+1), hankel(4, 2*i), hankel(4, 2*i+1)))
	}
	b.WriteString("}\n")
	return aligned(b.String())
}

// hankel is term k of P or Q without its power of x, mu = 4ν².
func hankel(mu, k int64) float64 {
	term := big.NewRat(1, 1)
	for j := int64(1); j <= k; j++ {
		odd := 2*j - 1
		term.Mul(term, big.NewRat(mu-odd*odd, 8*j))
	}
	if k/2%2 == 1 {
		term.Neg(term)
	}
	f, _ := term.Float64()
	return f
}

func erfcTableText() string {
	var b strings.Builder
	b.WriteString(generated)
	lead := quo(whatIs(2, 1200), zero(1200).Sqrt(refPi(1200)))
	var series, falling []float64
	for k := int64(0); k < 14; k++ {
		factorial := zero(1200).SetInt(new(big.Int).MulRange(1, k))
		term := quo(lead, mul(factorial, whatIs((2*k+1)*(1-k%2*2), 1200)))
		series = append(series, rounded(term))
		double := int64(1)
		for j := int64(1); j < 2*k; j += 2 {
			double *= j
		}
		falling = append(falling, float64(double*(1-k%2*2)))
	}
	fmt.Fprintf(&b, "// erfSeries is erf(x)/x by powers of x² (Abramowitz and Stegun 7.1.5).\nvar erfSeries = [...]float64{\n%s}\n\n", lines(series))
	fmt.Fprintf(&b, "// erfcFalling is √π x exp(x²) erfc(x) by powers of 1/2x² (7.1.23).\nvar erfcFalling = [...]float64{\n%s}\n\n", lines(falling))
	b.WriteString("// erfcTable is exp(x²) erfc(x) by powers of the distance from 0.75, 1.25 and so on.\nvar erfcTable = [erfcPieces][erfcTerms]float64{\n")
	for i := int64(1); i <= erfcPieces; i++ {
		at := zero(1200).SetFloat64(float64(i)/2 + 0.25)
		value := mul(refExp(mul(at, at)), refErfc(at))
		a := []*big.Float{value, sub(mul(mul(whatIs(2, 1200), at), value), lead)} // y' = 2xy − 2/√π
		for k := int64(1); len(a) < erfcTerms; k++ {
			sum := mul(whatIs(2, 1200), add(mul(at, a[k]), a[k-1]))
			a = append(a, quo(sum, whatIs(k+1, 1200)))
		}
		var piece []float64
		for _, x := range a {
			piece = append(piece, rounded(x))
		}
		fmt.Fprintf(&b, "\t{\n%s\t},\n", lines(piece))
	}
	b.WriteString("}\n")
	return aligned(b.String())
}

// aligned is the text as gofmt has it.
func aligned(text string) string {
	out, err := format.Source([]byte(text))
	if err != nil {
		return err.Error() + "\n" + text
	}
	return string(out)
}
