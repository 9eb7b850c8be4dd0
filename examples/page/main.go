// Page is the library in a browser: one static page around a small program for js/wasm. It builds the page into a folder
// and serves it on this machine; a browser that has loaded it needs neither again.
//
//	go run ./examples/page [-listen ADDRESS] [-out DIR] [-answer ADDRESS]
//
// With -out it writes the files and ends. With -answer it prints what the page answers to an address of it, such as
// 'canner?altitude=4350 ft&product=fish&pack=raw&jar=pint&gauge=dial'.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/url"
	"os"
	"strings"
	"time"

	"example.org/lakelarder/examples/internal/answers"
	"example.org/lakelarder/examples/internal/command"
)

func main() { command.Main("page", run) }

func run(args []string, out io.Writer) error {
	flags := flag.NewFlagSet("page", flag.ContinueOnError)
	flags.SetOutput(out)
	listen := flags.String("listen", "127.0.0.1:0", "`address` to serve on; port 0 takes a free one")
	dir := flags.String("out", "", "`folder` to write the files into, and serve nothing")
	address := flags.String("answer", "", "an `address` of the page, from # on, to answer here as text")
	if err := flags.Parse(args); err != nil {
		return err
	}
	switch {
	case flags.NArg() > 0:
		return fmt.Errorf("%s: expected only flags", flags.Arg(0))
	case *address != "":
		return answer(*address, out)
	case *dir != "":
		return build(*dir, out)
	}
	temporary, err := os.MkdirTemp("", "lakelarder-page")
	if err != nil {
		return err
	}
	defer os.RemoveAll(temporary)
	if err := build(temporary, out); err != nil {
		return err
	}
	return serve(temporary, *listen, out)
}

// serve serves the files of a folder until the program is ended.
func serve(dir, listen string, out io.Writer) error {
	listener, err := net.Listen("tcp", listen)
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "The page is at http://%s/ until this program is ended.\n", listener.Addr())
	server := http.Server{Handler: http.FileServer(http.Dir(dir)), ReadHeaderTimeout: 10 * time.Second}
	return server.Serve(listener)
}

// answer prints what the page answers to an address; what came with it counts as confirmed.
func answer(address string, out io.Writer) error {
	request, err := requested(address)
	if err != nil {
		return err
	}
	if request.Section == "tables" {
		if request.Tables, err = tables(moduleRoot()); err != nil {
			return err
		}
	}
	a := answers.Of(request)
	for _, f := range a.Faults {
		return errors.New(strings.TrimPrefix(f.Field+": "+f.Text, ": "))
	}
	for _, line := range a.Lines() {
		fmt.Fprintln(out, line)
	}
	return nil
}

// requested is the request of an address.
func requested(address string) (answers.Request, error) {
	section, query, _ := strings.Cut(strings.TrimPrefix(address, "#"), "?")
	values, err := url.ParseQuery(query)
	if err != nil {
		return answers.Request{}, err
	}
	request := answers.Request{Section: section, Values: map[string]string{}}
	for name := range values {
		if name == "units" {
			if err := request.System.UnmarshalText([]byte(values.Get(name))); err != nil {
				return request, err
			}
			continue
		}
		request.Values[name] = values.Get(name)
	}
	return request, nil
}
