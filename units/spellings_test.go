package units

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestSpellings holds every spelling to one unit: no name of one unit is another's in other letters, unless it is
// refused, and what is suggested is understood.
func TestSpellings(t *testing.T) {
	for _, k := range []kitchen{
		lengthsTyped, areasTyped, massesTyped, volumesTyped, pressuresTyped, temperaturesTyped, changesTyped, ratiosTyped,
		energiesTyped, densitiesTyped, speedsTyped, timesTyped,
	} {
		k := k
		owner := map[string]string{}
		own := func(symbol, name string) {
			name = strings.ToLower(name)
			for _, u := range k.unclear {
				if u.has(name) && !u.first {
					return
				}
			}
			require.Contains(t, []string{"", symbol}, owner[name], "%s: %s", k.name, name)
			owner[name] = symbol
		}
		strict := map[string]bool{}
		if k.measured() {
			for _, u := range k.strict.units {
				strict[u.names[0]] = true
			}
		}
		for _, a := range k.also {
			if k.measured() && k.name != changesTyped.name && k.name != ratiosTyped.name {
				require.True(t, strict[a.unit], "%s: %s is no symbol", k.name, a.unit)
			}
			for _, name := range a.names {
				own(a.unit, name)
			}
		}
		if asTyped := k.name == changesTyped.name || k.name == ratiosTyped.name; !asTyped { // °C and g/kg stay as typed
			for _, u := range k.strict.units {
				for _, name := range u.names {
					own(u.names[0], name)
				}
			}
		}
		suggested := append([]string{}, k.bare...)
		for unit, next := range k.next {
			suggested = append(suggested, unit, next)
		}
		for _, u := range k.unclear {
			suggested = append(suggested, u.units...)
		}
		for _, symbol := range suggested {
			found, ok := k.find(symbol)
			require.True(t, ok, "%s: %s", k.name, symbol)
			unsure := false // a symbol that is refused itself is suggested by its name
			for _, u := range k.unclear {
				unsure = unsure || u.has(found)
			}
			require.Equal(t, unsure, symbol != found, "%s: %s", k.name, symbol)
		}
	}
}
