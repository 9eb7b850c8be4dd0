package series_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func addSpecimens(f *testing.F) {
	f.Helper()
	files, err := filepath.Glob(filepath.Join("..", "..", "testdata", "series", "formats", "*.txt"))
	require.NoError(f, err)
	for _, file := range files {
		text, err := os.ReadFile(file)
		require.NoError(f, err)
		f.Add(text, uint8(len(file)))
	}
	for _, odd := range []string{
		"2026-10-25 2:40,0,0001-10,0000:00,0000000000000000000\n0001-1-1 0000,00\n0001-1-1 0000,0", // a time beyond the usual width
		",nAme \n0:0:0,0,9\n0:0:0,00,9\n0:0:0,0,000000000000",                                      // a count alone that repeats
	} {
		f.Add([]byte(odd), uint8(15))
	}
}

// Whatever the bytes, Sniff ends in a bounded time with an error, with questions, or with a Format that its own
// lines can be read by; answering its questions comes to an end.
func FuzzSniff(f *testing.F) {
	addSpecimens(f)
	f.Fuzz(func(t *testing.T, text []byte, choice uint8) {
		began := time.Now()
		stated := series.Format{}
		for round := 0; ; round++ {
			p, err := series.Sniff[units.Temperature](text, stated)
			if err != nil {
				require.Less(t, len(err.Error()), 2000)
				return
			}
			if len(p.Questions) == 0 {
				require.NoError(t, p.Format.Check())
				log, err := series.ReadCSV[units.Temperature](bytes.NewReader(text), p.Format, nil)
				judgeRead(t, log.Series, err)
				break
			}
			require.Less(t, round, 40, "%v", p.Questions)
			q := p.Questions[0]
			require.NotEmpty(t, q.Text)
			require.Error(t, p.Format.Check(), "a Format with open questions is not read: %v", p.Questions)
			if len(q.Choices) == 0 {
				return
			}
			if stated, err = p.Answer(stated, q.Ask, q.Choices[int(choice)%len(q.Choices)].Answer); err != nil {
				return
			}
		}
		require.Less(t, time.Since(began), 10*time.Second)
	})
}

// Whatever the bytes and the Format, what is read is a record that New would have made, and every row without a
// reading names its line.
func FuzzReadCSV(f *testing.F) {
	addSpecimens(f)
	f.Fuzz(func(t *testing.T, text []byte, choice uint8) {
		format := dated()
		if choice&1 > 0 {
			format = counted()
		}
		format.Separator = series.Separator(1 + choice%5)
		format.Decimal = series.Decimal(1 + choice>>1&1)
		format.Order = series.DateOrder(choice >> 2 % 5)
		format.Encoding = series.Encoding(choice >> 3 % 5)
		format.Repeats = series.Repeats(choice >> 4 % 3)
		format.Comment = []string{"", "#"}[choice>>5&1]
		format.Header = int(choice >> 6)
		format.UnitInCells = choice&2 > 0
		log, err := series.ReadCSV[units.Temperature](bytes.NewReader(text), format, nil)
		if err != nil {
			judgeRead(t, log.Series, err)
			return
		}
		judgeRead(t, log.Series, nil)
		line := 0
		for _, row := range log.Rows {
			require.Greater(t, row.Line, line)
			require.NotZero(t, row.Why)
			line = row.Line
		}
	})
}
