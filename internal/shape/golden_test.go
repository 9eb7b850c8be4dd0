package shape

import (
	"bytes"
	"encoding/json"
	"fmt"
	"regexp"
	"sort"
	"strings"
)

// counts are the members whose value may be a bare number: they count things.
var counts = []string{
	"all", "alternative", "anglers", "annual", "caught", "containers", "count", "daily", "days", "expected",
	"explained", "failed", "fish", "food", "fresh", "kept", "lag", "last", "lastLoad", "left", "load", "loads",
	"makings", "meals", "moved", "number", "ofFish", "omegaSamples", "people", "possession", "possible", "preserved",
	"samples", "spared", "stage", "taken", "unchecked", "used", "week", "weeks",
}

// goldenRule: a result as it is saved has no empty object and no list of nothing, no bare number that is not a count, and no time in
// nanoseconds.
func goldenRule(tr tree) []string {
	var wrong []string
	for _, name := range sorted(tr.texts) {
		if !strings.HasPrefix(name, "testdata/golden/") {
			continue
		}
		decoder := json.NewDecoder(bytes.NewReader([]byte(tr.texts[name])))
		decoder.UseNumber()
		var saved any
		if err := decoder.Decode(&saved); err != nil {
			wrong = append(wrong, fmt.Sprintf("%s: %v", name, err))
			continue
		}
		walkSaved(saved, "", func(path, what string) { wrong = append(wrong, name+": "+path+" "+what) })
	}
	return wrong
}

var nanoseconds = regexp.MustCompile(`^-?[0-9]+(\.[0-9]+)?(ns|µs|ms)$`)

func walkSaved(v any, path string, complain func(path, what string)) {
	switch v := v.(type) {
	case map[string]any:
		if len(v) == 0 {
			complain(path, "is {}")
		}
		keys := make([]string, 0, len(v))
		for key := range v {
			keys = append(keys, key)
		}
		sort.Strings(keys)
		for _, key := range keys {
			if _, number := v[key].(json.Number); number && !contains(counts, key) {
				complain(path+"."+key, "is a bare number that is not in the list of counts")
				continue
			}
			walkSaved(v[key], path+"."+key, complain)
		}
	case []any:
		for i, element := range v {
			walkSaved(element, fmt.Sprintf("%s[%d]", path, i), complain)
		}
	case string:
		if nanoseconds.MatchString(v) {
			complain(path, "is "+v)
		}
	case nil:
		complain(path, "is null")
	}
}
