package browsertest

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/answers"
)

// TestRecord: a record that was dropped is shown as it is read, judged only when that is confirmed, and gone after a reload.
func TestRecord(t *testing.T) {
	data, err := os.ReadFile(filepath.Join("..", "..", "canningday", "night.csv"))
	require.NoError(t, err)
	open(t, "#canner")
	run(t, chromedp.Click(chromedp.CSS("#example")), chromedp.Click(chromedp.CSS("#sample-run")))
	example := answers.Request{Section: "canner", Values: exampleOf("canner"), Files: map[string]answers.File{"run": {Name: "night.csv", Data: data}}}
	same(t, example)
	require.Equal(t, "", answers.Of(example).Verdict, "nothing is judged before the reading is confirmed")
	run(t, chromedp.Click(chromedp.CSS(".ask button")))
	example.Files["run"] = answers.File{Name: "night.csv", Data: data, Confirmed: true}
	same(t, example)
	require.Equal(t, "not met", answers.Of(example).Verdict)
	require.Equal(t, 1, value[int](t, "document.querySelectorAll('.picture svg').length"))
	require.NotContains(t, value[string](t, "location.hash"), "night")
	fmt.Printf("a record of a run: judged in %s ms\n", value[string](t, "document.body.dataset.took"))
	run(t, chromedp.Reload())
	loaded(t)
	require.NotContains(t, value[string](t, "document.getElementById('content').innerText"), "NOT MET")
}

// TestEverySample: the invented record of every section is read after its questions, and judged as natively.
func TestEverySample(t *testing.T) {
	data, err := os.ReadFile(opened.dir + "/samples.json")
	require.NoError(t, err)
	var samples map[string]string
	require.NoError(t, json.Unmarshal(data, &samples))
	for _, s := range answers.Sections() {
		for _, d := range s.Drops {
			open(t, "#"+s.Name)
			click(t, "#example")
			click(t, "#sample-"+d.Name)
			f := answers.File{Name: d.Sample, Data: []byte(samples[d.Sample])}
			r := answers.Request{Section: s.Name, Values: s.Example}
			for n := 0; ; n++ {
				r.Files = map[string]answers.File{d.Name: f}
				same(t, r)
				asks := answers.Of(r).Asks
				if len(asks) == 0 {
					break
				}
				require.Less(t, n, 5)
				click(t, ".ask button")
				if f.Confirmed = asks[0].Ask == answers.Reading; !f.Confirmed {
					f.Replies = append(f.Replies, answers.Reply{Ask: asks[0].Ask, Answer: asks[0].Choices[0].Answer})
				}
			}
			require.NotEmpty(t, answers.Of(r).Verdict, s.Name)
			require.Equal(t, 1, value[int](t, "document.querySelectorAll('.picture svg').length"), s.Name)
			fmt.Printf("%s, its record: judged in %s ms\n", s.Name, value[string](t, "document.body.dataset.took"))
		}
	}
}

// TestPrint: a print carries the version and the date, and is not empty.
func TestPrint(t *testing.T) {
	open(t, "#canner")
	click(t, "#example")
	paper, err := chromedp.Run(opened.tab, chromedp.PrintToPDF())
	require.NoError(t, err)
	require.Greater(t, len(paper), 10_000)
	require.Regexp(t, `^Lakelarder .+, \d{4}-\d\d-\d\d\.$`, value[string](t, "document.getElementById('stamp').textContent"))
}

func exampleOf(name string) map[string]string {
	for _, s := range answers.Sections() {
		if s.Name == name {
			return s.Example
		}
	}
	return nil
}

// TestLoggerFiles: ten files as loggers write them are read, asked about or refused as natively.
func TestLoggerFiles(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("..", "..", "..", "testdata", "series", "formats", "*.txt"))
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 10)
	open(t, "#canner")
	run(t, chromedp.Click(chromedp.CSS("#example")))
	values := map[string]string{}
	for name, text := range exampleOf("canner") {
		values[name] = text
	}
	values["record"] = "temperature"
	script(t, "page.values.record = 'temperature';")
	step := max(1, len(files)/24)
	read := 0
	for i := 0; i < len(files); i += step {
		data, err := os.ReadFile(files[i])
		require.NoError(t, err)
		bytes, err := json.Marshal(toInts(data))
		require.NoError(t, err)
		script(t, "dropped('run', 'log.txt', new Uint8Array("+string(bytes)+"));")
		r := answers.Request{Section: "canner", Values: values, Files: map[string]answers.File{"run": {Name: "log.txt", Data: data}}}
		same(t, r)
		for _, q := range answers.Of(r).Asks {
			if q.Ask == answers.Reading {
				read++
			}
		}
	}
	require.GreaterOrEqual(t, read, 5, "files whose reading only needs to be confirmed")
}

func toInts(data []byte) []int {
	all := make([]int, len(data))
	for i, b := range data {
		all[i] = int(b)
	}
	return all
}

// TestAccessible: axe-core finds nothing serious, in light and in dark, empty, answered and refused.
func TestAccessible(t *testing.T) {
	source := os.Getenv("AXE")
	if source == "" {
		dir := t.TempDir()
		fetch := exec.Command("npm", "pack", "--silent", "axe-core@4.14.1")
		fetch.Dir = dir
		if text, err := fetch.CombinedOutput(); err != nil {
			fmt.Printf("NOT RUN: accessibility by axe-core, which cannot be fetched here: %v %s\n", err, text)
			return
		}
		unpack := exec.Command("tar", "xzf", "axe-core-4.14.1.tgz")
		unpack.Dir = dir
		require.NoError(t, unpack.Run())
		source = filepath.Join(dir, "package", "axe.min.js")
	}
	axe, err := os.ReadFile(source)
	require.NoError(t, err)
	for _, s := range answers.Sections() {
		open(t, "#"+s.Name)
		run(t, chromedp.Evaluate[chromedp.Void](string(axe)))
		accessible(t, s.Name+", empty")
		script(t, "const b = document.getElementById('example'); if (b) b.click(); else { page.values.search = 'smoked pint dial'; drawForm(); changed('search') }")
		script(t, "let n = 0; for (const d of document.querySelectorAll('form details')) d.open = true; for (const d of document.querySelectorAll('.from')) d.open = n++ < 3")
		for _, theme := range []string{"light", "dark"} {
			script(t, "document.querySelector('input[value="+theme+"]').click()")
			accessible(t, s.Name+" answered, "+theme)
		}
	}
}

func accessible(t *testing.T, what string) {
	t.Helper()
	found := value[string](t, `new Promise((done) => setTimeout(done, 250)).then(() => axe.run()).then((r) => r.violations.filter((v) => ["serious", "critical"].includes(v.impact)).map((v) =>
		v.id + ": " + v.nodes.map((n) => n.target.join(" ") + " " + n.failureSummary).join("; ")).join("\n"))`)
	require.Empty(t, strings.TrimSpace(found), what)
}
