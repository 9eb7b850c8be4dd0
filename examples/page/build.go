package main

import (
	"bytes"
	"compress/gzip"
	"embed"
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"strings"

	"example.org/lakelarder/examples/internal/answers"
	"example.org/lakelarder/examples/internal/form"
)

//go:embed static
var static embed.FS

// samples are the invented records that the page offers, by the name it knows them by.
var samples = map[string]string{
	"night.csv": "examples/canningday/night.csv", "core.csv": "examples/smokeday/core.csv", "coho.csv": "examples/coolerlog/coho.csv",
}

// build writes the whole page into a folder: what is as it is, the compressed program, what starts it, and the invented
// records.
func build(dir string, out io.Writer) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	for _, step := range []func(dir, root string) error{copyStatic, compile, copyStarter, copySamples, copyTables} {
		if err := step(dir, moduleRoot()); err != nil {
			return err
		}
	}
	packed, err := os.Stat(filepath.Join(dir, "lakelarder.wasm.z"))
	if err != nil {
		return err
	}
	fmt.Fprintf(out, "Built into %s; the program is %.2f MB compressed.\n", dir, float64(packed.Size())/1e6)
	return nil
}

func copyStatic(dir, _ string) error {
	return fs.WalkDir(static, "static", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		data, err := static.ReadFile(name)
		if err != nil {
			return err
		}
		return os.WriteFile(filepath.Join(dir, entry.Name()), data, 0o644)
	})
}

// compile builds the program for js/wasm and compresses it: not every host of static files does.
func compile(dir, root string) error {
	plain := filepath.Join(dir, "lakelarder.wasm")
	defer os.Remove(plain)
	cmd := exec.Command("go", "build", "-trimpath", "-ldflags=-s -w -X main.version="+version(root), "-o", plain, "./examples/page/wasm")
	cmd.Dir, cmd.Env = root, append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if text, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("building for js/wasm: %w: %s", err, bytes.TrimSpace(text))
	}
	data, err := os.ReadFile(plain)
	if err != nil {
		return err
	}
	packed, err := os.Create(plain + ".z")
	if err != nil {
		return err
	}
	defer packed.Close()
	w, err := gzip.NewWriterLevel(packed, gzip.BestCompression)
	if err != nil {
		return err
	}
	if _, err := w.Write(data); err != nil {
		return err
	}
	if err := w.Close(); err != nil {
		return err
	}
	return packed.Close()
}

// version is the revision that the page is built from, where git says it.
func version(root string) string {
	cmd := exec.Command("git", "describe", "--always", "--dirty", "--tags")
	cmd.Dir = root
	if text, err := cmd.Output(); err == nil && len(bytes.TrimSpace(text)) > 0 {
		return string(bytes.TrimSpace(text))
	}
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return strings.Trim(info.Main.Version, "()")
	}
	return "of development"
}

// copyStarter copies the script of the Go distribution that starts a program for js/wasm.
func copyStarter(dir, _ string) error {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return fmt.Errorf("asking for GOROOT: %w", err)
	}
	for _, place := range []string{"lib", "misc"} {
		data, err := os.ReadFile(filepath.Join(string(bytes.TrimSpace(root)), place, "wasm", "wasm_exec.js"))
		if err == nil {
			return os.WriteFile(filepath.Join(dir, "wasm_exec.js"), data, 0o644)
		}
	}
	return fmt.Errorf("the Go distribution in %s has no wasm_exec.js", bytes.TrimSpace(root))
}

func copySamples(dir, root string) error {
	all := map[string]string{}
	for name, place := range samples {
		data, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(place)))
		if err != nil {
			return err
		}
		all[name] = string(data)
	}
	data, err := json.Marshal(all)
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(dir, "samples.json"), data, 0o644)
}

// copyTables copies the printed tables, as the page and the native program read them.
func copyTables(dir, root string) error {
	all, err := tables(root)
	if err != nil {
		return err
	}
	data, err := json.Marshal(all)
	if err != nil {
		return err
	}
	return os.WriteFile(filepath.Join(dir, "tables.json"), data, 0o644)
}

func tables(root string) ([]answers.Table, error) {
	testdata := filepath.Join(root, "testdata")
	index, err := os.ReadFile(filepath.Join(testdata, "README.md"))
	if err != nil {
		return nil, err
	}
	return answers.ReadTables(string(index), func(name string) ([]byte, error) {
		return os.ReadFile(filepath.Join(testdata, filepath.FromSlash(name)))
	})
}

// moduleRoot is the folder of this module.
func moduleRoot() string { return filepath.Dir(filepath.Dir(form.Beside("."))) }
