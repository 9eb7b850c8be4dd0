package printed

import (
	"fmt"
	"runtime"
	"strings"
	"testing"
)

// A fake stands in for the test that a helper is to fail. It keeps what it was told and ends its goroutine when a real one would.
type fake struct {
	testing.TB
	said  []string
	ended bool
}

func (f *fake) Helper() {}

func (f *fake) Errorf(format string, args ...any) {
	f.said = append(f.said, fmt.Sprintf(format, args...))
}

func (f *fake) Fatalf(format string, args ...any) {
	f.Errorf(format, args...)
	f.ended = true
	runtime.Goexit()
}

// told runs body against a fake test and returns what the fake was told.
func told(body func(tb testing.TB)) (said string, ended bool) {
	f := &fake{}
	done := make(chan struct{})
	go func() {
		defer close(done)
		body(f)
	}()
	<-done
	return strings.Join(f.said, "\n"), f.ended
}
