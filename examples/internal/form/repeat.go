package form

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
)

// once refuses a field that stands twice in one object, in whatever capitals: decoding would take the last and forget the other.
func once(path string, data []byte) error {
	type object struct {
		seen map[string]bool // nil in an array
		name bool            // the next token names a field
	}
	var open []object
	decoder := json.NewDecoder(bytes.NewReader(data))
	for {
		token, err := decoder.Token()
		if err != nil {
			return nil // the end, or a fault that decoding names
		}
		if at := len(open) - 1; at >= 0 && open[at].name {
			if name, is := token.(string); is {
				folded := strings.ToLower(strings.ToUpper(name)) // as the decoder folds: the long ſ is an s too
				if open[at].seen[folded] {
					return fmt.Errorf("%s: line %d: field %q stands twice", path, line(data, decoder, nil), name)
				}
				open[at].seen[folded], open[at].name = true, false
				continue
			}
		}
		switch token {
		case json.Delim('{'):
			open = append(open, object{seen: map[string]bool{}, name: true})
			continue
		case json.Delim('['):
			open = append(open, object{})
			continue
		case json.Delim('}'), json.Delim(']'):
			open = open[:len(open)-1]
		}
		if at := len(open) - 1; at >= 0 {
			open[at].name = open[at].seen != nil // a value is done
		}
	}
}
