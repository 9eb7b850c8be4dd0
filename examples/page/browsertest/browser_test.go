package browsertest

import (
	"context"
	"encoding/json"
	"fmt"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/answers"
)

// page is the built page in a browser.
type page struct {
	tab      context.Context
	at       string // its address, without a section
	dir      string
	mu       sync.Mutex
	requests []string
}

var opened page

// tables are those that were copied beside the page.
var tables []answers.Table

// TestMain builds the page, serves it and opens the browser; where there is none it says so and ends.
func TestMain(m *testing.M) { os.Exit(around(m)) }

func around(m *testing.M) int {
	browser := ""
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if found, err := exec.LookPath(name); err == nil && browser == "" {
			browser = found
		}
	}
	if browser == "" {
		fmt.Println("NOT RUN: the page in a browser, for no Chromium is installed here")
		return 0
	}
	dir, err := os.MkdirTemp("", "lakelarder-page")
	if err != nil {
		fmt.Println(err)
		return 1
	}
	defer os.RemoveAll(dir)
	build := exec.Command("go", "run", "./examples/page", "-out", dir)
	build.Dir = filepath.Join("..", "..", "..")
	text, err := build.CombinedOutput()
	fmt.Print(string(text))
	if err != nil {
		fmt.Println(err)
		return 1
	}
	data, err := os.ReadFile(filepath.Join(dir, "tables.json"))
	if err == nil {
		err = json.Unmarshal(data, &tables)
	}
	if err != nil {
		fmt.Println(err)
		return 1
	}
	tables = answers.Prepared(tables)
	server := httptest.NewServer(http.FileServer(http.Dir(dir)))
	defer server.Close()
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(browser), chromedp.NoSandbox, chromedp.WindowSize(1600, 1000))
	allocated, stop := chromedp.NewExecAllocator(context.Background(), options...)
	defer stop()
	tab, closeTab := chromedp.NewContext(allocated)
	defer closeTab()
	if err := chromedp.Do(tab); err != nil {
		fmt.Println("the browser does not start:", err)
		return 1
	}
	opened.at, opened.dir = server.URL+"/", dir
	limited, cancel := context.WithTimeout(tab, 300*time.Second)
	defer cancel()
	opened.tab = limited
	err = chromedp.Listen(limited, func(event any) {
		if sent, ok := event.(*network.EventRequestWillBeSent); ok {
			opened.mu.Lock()
			opened.requests = append(opened.requests, sent.Request.URL)
			opened.mu.Unlock()
		}
	})
	if err == nil {
		_, err = chromedp.Call(limited, network.Enable, network.EnableParams{})
	}
	if err != nil {
		fmt.Println("the browser does not say what it asks for:", err)
		return 1
	}
	return m.Run()
}

// asked are the requests since the page was opened, but for pictures that are in the page itself.
func (p *page) asked() []string {
	p.mu.Lock()
	defer p.mu.Unlock()
	var all []string
	for _, r := range p.requests {
		if !strings.HasPrefix(r, "data:") {
			all = append(all, r)
		}
	}
	return all
}

// run does something in the tab; an error fails the test.
func run(t *testing.T, steps ...chromedp.Action[chromedp.Void]) {
	t.Helper()
	require.NoError(t, chromedp.Do(opened.tab, steps...))
}

// click clicks the first element of a selector with the mouse.
func click(t *testing.T, selector string) {
	t.Helper()
	run(t, chromedp.Click(chromedp.CSS(selector)))
}

// script runs statements in the page.
func script(t *testing.T, statements string) {
	t.Helper()
	run(t, chromedp.Evaluate[chromedp.Void]("(() => {"+statements+"})()"))
}

// value is what an expression comes to in the page.
func value[T any](t *testing.T, expression string) T {
	t.Helper()
	v, err := chromedp.Run(opened.tab, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	require.NoError(t, err, expression)
	return v
}

// open loads an address from nothing, as a link does.
func open(t *testing.T, address string) {
	t.Helper()
	run(t, chromedp.Navigate("about:blank"), chromedp.Navigate(opened.at+address))
	loaded(t)
}

// loaded waits until the page has answered for the first time.
func loaded(t *testing.T) {
	t.Helper()
	require.Eventually(t, func() bool {
		there, err := chromedp.Run(opened.tab, chromedp.Evaluate[bool]("!!document.body && document.body.dataset.loaded !== undefined"))
		return err == nil && there
	}, 20*time.Second, 20*time.Millisecond)
}

// link is the address of a request.
func link(r answers.Request) string {
	query := url.Values{}
	for name, text := range r.Values {
		query.Set(name, text)
	}
	query.Set("units", r.System.String())
	return "#" + r.Section + "?" + query.Encode()
}

// ask opens a request in the page that is loaded already, and confirms what came with the link.
func ask(t *testing.T, r answers.Request) {
	t.Helper()
	if !strings.HasPrefix(value[string](t, "location.href"), opened.at) {
		open(t, "")
	}
	address, err := json.Marshal(link(r))
	require.NoError(t, err)
	// The hash is set as by a link, and go is what follows; the page has answered when it returns.
	script(t, "history.replaceState(null, '', "+string(address)+"); go(); const b = document.getElementById('confirm'); if (b) b.click()")
}

const shownLines = `Array.from(document.querySelectorAll("#content .line")).map((e) => e.textContent).filter((text) => text)`

// same holds what the page shows against the native answer.
func same(t *testing.T, r answers.Request) {
	t.Helper()
	r.Tables = tables
	want := answers.Of(r)
	require.Equal(t, want.Lines(), value[[]string](t, shownLines), link(r))
	for _, f := range want.Faults {
		require.Contains(t, value[string](t, "document.body.innerText"), f.Text, link(r))
	}
}
