package series_test

import (
	"encoding/json"
	"fmt"
	"math/rand"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/series"
)

func ExampleSeries() {
	s, err := series.New([]series.Reading[units.Temperature]{
		{At: 0, Value: units.Celsius(4)}, {At: 10 * time.Minute, Value: units.Celsius(3.5)},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	text, err := json.Marshal(s)
	fmt.Println(string(text), err)
	var back series.Series[units.Temperature]
	err = json.Unmarshal([]byte(`{"readings": [{"at": "10 min", "value": "4 °C"}, {"at": "10 min", "value": "4 °C"}]}`), &back)
	fmt.Println(err)
	// Output:
	// {"readings":[{"at":"0 min","value":"4 °C"},{"at":"10 min","value":"3.5 °C"}]} <nil>
	// reading 1 at 10m0s: the time repeats the one before
}

// A watch that is saved goes on as if it had not been away.
func ExampleRunning() {
	r, err := series.Watch(units.Celsius(82.2))
	if err != nil {
		fmt.Println(err)
		return
	}
	r, err = r.Next(series.Reading[units.Temperature]{At: time.Minute, Value: units.Celsius(85)})
	if err != nil {
		fmt.Println(err)
		return
	}
	text, err := json.Marshal(r)
	fmt.Println(string(text), err)
	var back series.Running[units.Temperature]
	if err := json.Unmarshal(text, &back); err != nil {
		fmt.Println(err)
		return
	}
	back, err = back.Next(series.Reading[units.Temperature]{At: 31 * time.Minute, Value: units.Celsius(84)})
	fmt.Println(back.Total(), err)
	// Output:
	// {"limit":"82.2 °C","readings":1,"last":{"at":"1 min","value":"85 °C"},"from":"1 min"} <nil>
	// 30m0s <nil>
}

// Series and watches come back from their text at every reading, and the watch goes on to the same answers.
func TestFormsComeBack(t *testing.T) {
	rng := rand.New(rand.NewSource(4))
	for i := 0; i < 200; i++ {
		var readings []series.Reading[units.Temperature]
		running, err := series.Watch(units.Celsius(10))
		require.NoError(t, err)
		at := time.Duration(rng.Int63n(2))
		for n := rng.Intn(30); n >= 0; n-- {
			reading := series.Reading[units.Temperature]{At: at, Value: units.Celsius(20 * rng.Float64())}
			at += 1 + time.Duration(rng.Int63n(int64(time.Hour)))
			readings = append(readings, reading)
			text, err := json.Marshal(running)
			require.NoError(t, err)
			var back series.Running[units.Temperature]
			require.NoError(t, json.Unmarshal(text, &back), string(text))
			running, err = running.Next(reading)
			require.NoError(t, err)
			back, err = back.Next(reading)
			require.NoError(t, err)
			require.Equal(t, answers(running), answers(back), string(text))
		}
		s, err := series.New(readings)
		require.NoError(t, err)
		s = s.WithOrigin(series.Origin{Known: true, Clock: time.Date(2031, 9, 27, 6, 30, 0, 0, time.UTC), Dated: true, Zoned: i%2 == 0})
		text, err := json.Marshal(s)
		require.NoError(t, err)
		var back series.Series[units.Temperature]
		require.NoError(t, json.Unmarshal(text, &back))
		require.Equal(t, s, back)
	}
	for _, empty := range []series.Series[units.Mass]{{}} {
		text, err := json.Marshal(empty)
		require.NoError(t, err)
		require.Equal(t, `{"readings":[]}`, string(text))
		back, err := series.New([]series.Reading[units.Mass]{{Value: units.Gram}})
		require.NoError(t, err)
		require.NoError(t, json.Unmarshal(text, &back))
		require.Zero(t, back.Len())
	}
}

func answers(r series.Running[units.Temperature]) []any {
	last, ok := r.Last()
	return []any{r.Limit(), r.Len(), last, ok, r.Total(), r.Current(), r.Longest(), r.LongestGap()}
}

func TestFormsRefuse(t *testing.T) {
	for _, text := range []string{
		`{}`, `null`, `{"readings": null}`, `{"readings": {}}`, `{"readings": [{"at": "1 min"}]}`, `{"readings": [{"value": "4 °C"}]}`,
		`{"readings": [{"at": 60, "value": "4 °C"}]}`, `{"readings": [{"at": "1 min", "value": 4}]}`, `{"readings": [{"at": "1 min", "value": "4"}]}`,
		`{"readings": [{"at": "1 min", "value": "4 g"}]}`, `{"readings": [{"at": "-1 min", "value": "4 °C"}]}`,
		`{"readings": [{"at": "2 min", "value": "4 °C"}, {"at": "1 min", "value": "4 °C"}]}`, `{"readings": [], "unit": "°C"}`,
		`{"readings": [], "readings": []}`, `{"readings": [{"at": "1 min", "value": "not set"}]}`,
	} {
		s, err := series.New([]series.Reading[units.Temperature]{{At: 1, Value: units.Celsius(1)}})
		require.NoError(t, err)
		require.Error(t, json.Unmarshal([]byte(text), &s), text)
		require.Equal(t, 1, s.Len(), "stays as it was")
	}
	_, err := json.Marshal(series.Running[units.Temperature]{})
	require.ErrorIs(t, err, units.ErrUnset)
	const last = `"last": {"at": "1 min", "value": "4 °C"}`
	for _, text := range []string{
		`{}`, `{"readings": 1}`, `{"limit": "10 °C", "readings": 1}`, `{"limit": "10 °C", "readings": 0, ` + last + `}`,
		`{"limit": "10 °C", "readings": -1, ` + last + `}`, `{"limit": "10 °C", "total": "1 min"}`,
		`{"limit": "10 °C", "readings": 2, ` + last + `, "total": "2 min"}`, `{"limit": "10 °C", "readings": 2, ` + last + `, "from": "2 min"}`,
		`{"limit": "10 °C", "readings": 2, ` + last + `, "total": "-1 min"}`,
		`{"limit": "10 °C", "readings": 2, ` + last + `, "longest": {"from": "1 min", "to": "30 s"}}`,
		`{"limit": "10 °C", "readings": 2, ` + last + `, "longestGap": {"to": "2 min"}}`,
		`{"limit": "10 °C", "readings": 1, "last": {"at": "-1 min", "value": "4 °C"}}`,
	} {
		r, err := series.Watch(units.Celsius(3))
		require.NoError(t, err)
		require.Error(t, json.Unmarshal([]byte(text), &r), text)
		require.Equal(t, units.Celsius(3), r.Limit(), "stays as it was")
	}
}
