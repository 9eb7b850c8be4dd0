//go:build js && wasm

// Wasm is the library in a browser: it takes a request as JSON and gives the answer as JSON, and touches nothing of the
// page. The page finds it as the object lakelarder.
package main

import (
	"encoding/json"
	"syscall/js"

	"example.org/lakelarder/examples/internal/answers"
)

// version is written in when the page is built.
var version = "of development"

func main() {
	var tables []answers.Table
	js.Global().Set("lakelarder", js.ValueOf(map[string]any{"version": version}))
	for name, do := range map[string]func(string) any{
		"sections": func(string) any { return answers.Sections() },
		"answer": func(text string) any {
			var request answers.Request
			if err := json.Unmarshal([]byte(text), &request); err != nil {
				return answers.Answer{Faults: []answers.Fault{{Text: err.Error()}}}
			}
			request.Tables = tables
			return answers.Of(request)
		},
		"load": func(text string) any {
			if err := json.Unmarshal([]byte(text), &tables); err != nil {
				return err.Error()
			}
			tables = answers.Prepared(tables)
			return ""
		},
	} {
		js.Global().Get("lakelarder").Set(name, asText(do))
	}
	if ready := js.Global().Get("lakelarderReady"); ready.Type() == js.TypeFunction {
		ready.Invoke()
	}
	select {}
}

// asText is a function from text to JSON, as JavaScript calls it.
func asText(do func(string) any) js.Func {
	return js.FuncOf(func(_ js.Value, args []js.Value) any {
		text := ""
		if len(args) > 0 {
			text = args[0].String()
		}
		out, err := json.Marshal(do(text))
		if err != nil {
			return `{"faults": [{"field": "", "text": "the answer cannot be written"}]}`
		}
		return string(out)
	})
}
