package printed

import (
	"fmt"
	"path"
	"regexp"
	"sort"
	"strings"
)

// A library is the index, the files and the tests, as the audit sees them.
type library struct {
	index string
	files map[string]string // below testdata, without the index
	tests map[string]suite  // by package directory
}

var areas = []struct{ name, code string }{
	{"units", "UNIT"}, {"pressure", "PRES"}, {"process", "PROC"}, {"canner", "CANN"}, {"brine", "BRIN"}, {"smoke", "SMOK"}, {"yield", "YIEL"},
	{"season", "SEAS"}, {"timetable", "TIME"}, {"coldchain", "COLD"}, {"lethality", "LETH"}, {"series", "SERI"},
}

var bases = []string{"read", "quoted", "recalled", "practice", "computed", "invented"}

const header = "| id | file | holds | document | place | basis | rows | tests |"

var anyID = regexp.MustCompile(`LL-[A-Z]{4}-[0-9]{2,}`)

// An entry is one line of the index.
type entry struct {
	id, file, holds, document, place, basis, rows, tests string
}

func (e entry) String() string {
	return "| " + strings.Join([]string{e.id, e.file, e.holds, e.document, e.place, e.basis, e.rows, e.tests}, " | ") + " |"
}

// audit compares index, files, bibliography and tests, and says what is wrong.
func (l library) audit() []string {
	entries, used, wrong := l.entries()
	listed := map[string]entry{}
	for _, e := range entries {
		if _, twice := listed[e.file]; twice {
			wrong = append(wrong, "testdata/README.md: "+e.file+" is in the index twice")
		}
		if _, ok := l.files[e.file]; !ok {
			wrong = append(wrong, "testdata/README.md: there is no file "+e.file)
		}
		listed[e.file] = e
	}
	for _, file := range sortedKeys(l.files) {
		found, complaints := l.describe(file)
		wrong = append(wrong, complaints...)
		if len(complaints) > 0 {
			continue
		}
		e, ok := listed[file]
		if !ok {
			found.id, found.holds = nextID(file, used), "?"
			wrong = append(wrong, fmt.Sprintf("testdata/%s is not in the index; its line under ## %s:\n%s", file, area(file), found))
			continue
		}
		wrong = append(wrong, l.compare(e, found)...)
	}
	return wrong
}

// entries reads the index. used are all ids that it names, the retired ones included.
func (l library) entries() (entries []entry, used map[string]bool, wrong []string) {
	used = map[string]bool{}
	complain := func(line int, format string, args ...any) {
		wrong = append(wrong, fmt.Sprintf("testdata/README.md:%d: ", line+1)+fmt.Sprintf(format, args...))
	}
	section, tables := "", []string{}
	for i, line := range strings.Split(l.index, "\n") {
		if strings.HasPrefix(line, "## ") {
			section = strings.TrimPrefix(line, "## ")
		}
		if section == "Retired ids" {
			for _, id := range anyID.FindAllString(line, -1) {
				if used[id] {
					complain(i, "%s is retired and in use, or retired twice", id)
				}
				used[id] = true
			}
		}
		switch {
		case !strings.HasPrefix(line, "|") || strings.HasPrefix(line, "|---"):
			continue
		case line == header:
			tables = append(tables, section)
			continue
		}
		e, ok := entryOf(line)
		if !ok {
			complain(i, "a line has eight cells: %s", header)
			continue
		}
		if area(e.file) != section {
			complain(i, "%s does not stand under ## %s", e.file, area(e.file))
		}
		if anyID.FindString(e.id) != e.id || !strings.HasPrefix(e.id, prefix(e.file)) {
			complain(i, "%s has the id %q and not %s and a number", e.file, e.id, prefix(e.file))
		}
		if used[e.id] {
			complain(i, "the id %s is used twice", e.id)
		}
		used[e.id] = true
		entries = append(entries, e)
	}
	want := []string{}
	for _, a := range areas {
		want = append(want, a.name)
	}
	if strings.Join(tables, " ") != strings.Join(want, " ") {
		wrong = append(wrong, fmt.Sprintf("testdata/README.md: has the tables %v and not %v", tables, want))
	}
	return entries, used, wrong
}

func entryOf(line string) (entry, bool) {
	cells := strings.Split(strings.TrimSuffix(strings.TrimPrefix(line, "|"), "|"), "|")
	if len(cells) != 8 {
		return entry{}, false
	}
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
	}
	return entry{cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6], cells[7]}, true
}

// compare judges an entry by what was found in the file and in the tests.
func (l library) compare(e, found entry) []string {
	var wrong []string
	for _, name := range strings.Split(e.tests, ", ") {
		if complaint := l.unfit(name, e.file); complaint != "" {
			wrong = append(wrong, fmt.Sprintf("testdata/README.md: %s: %s", e.id, complaint))
		} else if !strings.Contains(", "+found.tests+", ", ", "+name+", ") {
			found.tests = strings.TrimPrefix(found.tests+", "+name, "?, ") // it reads the file by way of a helper
		}
	}
	if invented(e.file) && !strings.Contains(strings.ToLower(e.holds), "invented") {
		wrong = append(wrong, fmt.Sprintf("testdata/README.md: %s holds invented records and must say so", e.id))
	}
	for _, text := range []string{e.holds, e.place} {
		if text == "" || strings.Contains(text, "?") {
			wrong = append(wrong, fmt.Sprintf("testdata/README.md: %s: what it holds and its place are still to be written", e.id))
		}
	}
	found.id, found.holds, found.place = e.id, e.holds, e.place
	if sameTests(e.tests, found.tests) {
		found.tests = e.tests
	}
	if e != found {
		wrong = append(wrong, fmt.Sprintf("testdata/README.md: the line of %s is wrong; it is now:\n%s", e.id, found))
	}
	return wrong
}

func sameTests(a, b string) bool {
	left, right := strings.Split(a, ", "), strings.Split(b, ", ")
	sort.Strings(left)
	sort.Strings(right)
	return strings.Join(left, ", ") == strings.Join(right, ", ")
}

// unfit says why a test cannot be one that reads the file.
func (l library) unfit(name, file string) string {
	dot := strings.LastIndex(name, ".")
	if dot < 0 {
		return fmt.Sprintf("%q is not a package and a test such as pressure/process.TestSchedules", name)
	}
	dir, test := name[:dot], name[dot+1:]
	if _, ok := l.tests[dir][test]; !ok || test == "" {
		return fmt.Sprintf("there is no test %s in %s", test, dir)
	}
	for _, literals := range l.tests[dir] {
		if literals[file] {
			return ""
		}
	}
	return fmt.Sprintf("no test file of %s holds the string %q", dir, file)
}

func area(file string) string { return strings.Split(file, "/")[0] }

func invented(file string) bool { return path.Base(path.Dir(file)) == "records" }

// prefix is what the ids of a file's area start with: "LL-PROC-".
func prefix(file string) string {
	for _, a := range areas {
		if a.name == area(file) {
			return "LL-" + a.code + "-"
		}
	}
	return "LL-?-"
}

// nextID is the first id of the area above all that were ever used. It is then used.
func nextID(file string, used map[string]bool) string {
	highest := 0
	for id := range used {
		var n int
		if _, err := fmt.Sscanf(id, prefix(file)+"%d", &n); err == nil && n > highest {
			highest = n
		}
	}
	id := fmt.Sprintf("%s%02d", prefix(file), highest+1)
	used[id] = true
	return id
}

func sortedKeys[T any](m map[string]T) []string {
	keys := make([]string, 0, len(m))
	for key := range m {
		keys = append(keys, key)
	}
	sort.Strings(keys)
	return keys
}
