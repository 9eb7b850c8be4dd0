package browsertest

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"

	"example.org/lakelarder/examples/internal/answers"
	"example.org/lakelarder/units"
)

// TestEverySection: each has an address of its own, loads by it, and answers its invented example as the library does.
func TestEverySection(t *testing.T) {
	for _, s := range answers.Sections() {
		open(t, "#"+s.Name)
		require.Equal(t, s.Title, value[string](t, "document.querySelector('h1').textContent"))
		require.Equal(t, s.Name, value[string](t, "document.querySelector('nav a[aria-current]').dataset.section"))
		fmt.Printf("%s: first answer %s ms after the program was compiled\n", s.Name, value[string](t, "document.body.dataset.first"))
		if s.Example == nil {
			continue
		}
		run(t, chromedp.Click(chromedp.CSS("#example")))
		same(t, answers.Request{Section: s.Name, Values: s.Example})
		require.Contains(t, value[string](t, "document.querySelector('#answer .invented').textContent"), "Invented")
		fmt.Printf("%s: answered in %s ms\n", s.Name, value[string](t, "document.body.dataset.took"))
	}
}

// canner is a request of the canner with something else in some fields.
func canner(system units.System, changes ...string) answers.Request {
	values := map[string]string{"altitude": "4350 ft", "product": "fish", "pack": "raw", "jar": "pint", "gauge": "dial"}
	for i := 0; i < len(changes); i += 2 {
		values[changes[i]] = changes[i+1]
		if changes[i+1] == "" {
			delete(values, changes[i])
		}
	}
	return answers.Request{Section: "canner", System: system, Values: values}
}

// TestSameAsNative: the page says what the native program says, for what is published and what is not.
func TestSameAsNative(t *testing.T) {
	open(t, "")
	count := 0
	for _, gauge := range []string{"dial", "weighted"} {
		for _, jar := range []string{"half-pint", "pint", "quart", "half-gallon"} {
			for _, altitude := range []string{"0 ft", "1001 ft", "2000 ft", "1326 m", "7 500 ft", "8001 ft", "10000 ft"} {
				r := canner(units.System(count%3), "gauge", gauge, "jar", jar, "altitude", altitude)
				ask(t, r)
				same(t, r)
				count++
			}
		}
	}
	for _, changes := range [][]string{
		{"readsHigh", "1.5 psi"}, {"readsHigh", "-1 psi"}, {"product", "smoked fish", "pack", "as smoked"}, {"product", "tuna", "pack", "precooked", "jar", "half-pint"},
		{"size", "pint regular", "diameter", "12 in", "height", "11 1/2 in", "rack", "1/2 in", "divider", "1/8 in", "clearance", "1/4 in", "jars", "50"},
	} {
		ask(t, canner(units.Both, changes...))
		same(t, canner(units.Both, changes...))
		count++
	}
	require.GreaterOrEqual(t, count, 40)
}

// TestRefused: what cannot be is refused in the library's own sentence beside the field, and what was typed stays.
func TestRefused(t *testing.T) {
	open(t, "")
	for _, c := range [][3]string{
		{"altitude", "4350", "unit"}, {"altitude", "-10 ft", ""}, {"altitude", "high", ""}, {"altitude", "4350 lb", ""}, {"altitude", "12000 m", ""}, {"altitude", "-400 m", ""}, {"altitude", "4,350 ft", "comma"}, {"altitude", "0.5 mm", ""},
		{"altitude", "", "not stated"}, {"product", "pike", ""}, {"product", "", "not stated"}, {"pack", "", "not stated"}, {"jar", "500 mL", ""}, {"jar", "", "not stated"},
		{"gauge", "", "not stated"}, {"gauge", "water bath", ""}, {"readsHigh", "1", "unit"}, {"readsHigh", "3 psi", ""}, {"readsHigh", "1 in", ""}, {"readsHigh", "-2.5 psi", ""},
		{"readsHigh", "1:40", ""}, {"readsHigh", "one foot pound", ""},
	} {
		r := canner(units.Both, c[0], c[1])
		want := answers.Of(r)
		ask(t, r)
		same(t, r)
		if want.Verdict == "not published" {
			require.Contains(t, []string{"-10 ft", "-400 m", "12000 m"}, c[1], "an altitude that no table has")
			continue
		}
		require.NotEmpty(t, want.Faults, c)
		beside := value[string](t, "document.getElementById('field-"+c[0]+"-fault').textContent")
		require.Contains(t, beside, want.Faults[0].Text, c)
		require.Contains(t, beside, c[2])
		require.Equal(t, c[1], value[string](t, "document.getElementById('field-"+c[0]+"').value"))
		require.Equal(t, "true", value[string](t, "document.getElementById('field-"+c[0]+"').getAttribute('aria-invalid')"))
		require.NotContains(t, strings.Join(value[[]string](t, shownLines), "\n"), "needle")
	}
}

// TestTables: what is searched for is found as natively, and the address of a row leads to it.
func TestTables(t *testing.T) {
	open(t, "#tables")
	for _, values := range []map[string]string{{}, {"search": "smoked pint dial"}, {"search": "listeria"}, {"table": "LL-PROC-03"}, {"table": "LL-NONE-01"}} {
		r := answers.Request{Section: "tables", Values: values}
		ask(t, r)
		same(t, r)
		fmt.Printf("tables: read in %s ms\n", value[string](t, "document.body.dataset.tables"))
		took := value[string](t, "document.body.dataset.took")
		fmt.Printf("tables %v: answered in %s ms\n", values, took)
	}
	ask(t, answers.Request{Section: "tables", Values: map[string]string{"search": "LL-PROC-03 2001"}})
	click(t, "#answer td a")
	require.Eventually(t, func() bool { return strings.Contains(value[string](t, "location.hash"), "row=") }, 5*time.Second, 20*time.Millisecond)
	require.Contains(t, value[string](t, "document.getElementById('answer').textContent"), "USDA, Complete Guide to Home Canning")
}

// TestLink: altitude, jar and gauge of a link are asked for before any pressure is shown, and a reload keeps what was typed.
func TestLink(t *testing.T) {
	r := canner(units.US, "readsHigh", "1 psi")
	open(t, link(r))
	require.NotContains(t, value[string](t, "document.getElementById('content').innerText"), "needle")
	before := value[[]string](t, shownLines)
	r.FromLink = true
	require.Equal(t, answers.Of(r).Lines(), before)
	run(t, chromedp.Click(chromedp.CSS("#confirm")))
	r.FromLink = false
	same(t, r)
	address := value[string](t, "location.hash")
	run(t, chromedp.Reload())
	loaded(t)
	require.Equal(t, address, value[string](t, "location.hash"))
	require.Equal(t, "4350 ft", value[string](t, "document.getElementById('field-altitude').value"))
	require.Equal(t, "us", value[string](t, "document.querySelector('input[name=units]:checked').value"))
	require.Equal(t, before, value[[]string](t, shownLines), "a reload is a link")
}

// TestSlider: it stops only at published bands and writes the upper end of the band.
func TestSlider(t *testing.T) {
	open(t, "#canner")
	run(t, chromedp.Focus(chromedp.CSS("#slider-altitude")))
	script(t, "const s = document.getElementById('slider-altitude'); s.value = 2; s.dispatchEvent(new Event('input', {bubbles: true}));")
	require.Equal(t, "6000 ft", strings.ReplaceAll(value[string](t, "document.getElementById('field-altitude').value"), ",", ""))
	require.Equal(t, "above 4,000 ft to 6,000 ft", value[string](t, "document.getElementById('slider-altitude').getAttribute('aria-valuetext')"))
}

// TestNothingLeaves: the page asks only its own server, and that only while it loads.
func TestNothingLeaves(t *testing.T) {
	open(t, "")
	before := len(opened.asked())
	ask(t, canner(units.Both))
	run(t, chromedp.Click(chromedp.CSS("#example")))
	require.Len(t, opened.asked(), before)
	for _, r := range opened.asked() {
		require.True(t, strings.HasPrefix(r, opened.at) || r == "about:blank", r)
	}
	blocked := value[string](t, "(() => { try { return String(eval('1+1')) } catch (e) { return e.name } })()")
	require.NotEmpty(t, blocked)
	require.Equal(t, "blocked", value[string](t, "fetch('http://127.0.0.2:9/').then(() => 'went', () => 'blocked')"))
}

// TestPictures writes what the page looks like at three widths, light and dark, where SCREENSHOTS names a folder; at every width nothing
// is wider than the screen.
func TestPictures(t *testing.T) {
	dir := os.Getenv("SCREENSHOTS")
	for _, s := range answers.Sections() {
		open(t, "#"+s.Name)
		script(t, "const b = document.getElementById('example'); if (b) b.click(); else { page.values.search = 'smoked pint dial'; drawForm(); changed('search') }")
		for _, width := range []int64{360, 800, 1600} {
			run(t, chromedp.EmulateViewport(width, 900))
			require.LessOrEqual(t, value[int64](t, "document.documentElement.scrollWidth"), width, s.Name)
			for _, theme := range []string{"light", "dark"} {
				if dir == "" {
					continue
				}
				script(t, "document.querySelector('input[value="+theme+"]').click()")
				picture, err := chromedp.Run(opened.tab, chromedp.FullScreenshot(100))
				require.NoError(t, err)
				require.NoError(t, os.WriteFile(filepath.Join(dir, fmt.Sprintf("%s-%d-%s.png", s.Name, width, theme)), picture, 0o644))
			}
		}
	}
	run(t, chromedp.EmulateViewport(1600, 1000))
}
