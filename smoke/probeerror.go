package smoke

import (
	"fmt"
	"time"

	"example.org/lakelarder/units"
)

// ProbeError says which probe's record cannot be judged, counted from zero in the order given, at what time of the
// record where there is one, and why.
type ProbeError struct {
	Probe int
	At    time.Duration
	Err   error
}

// Error names the probe as a person counts, the time and the fault.
func (e ProbeError) Error() string {
	return fmt.Sprintf("probe %d at %v: %v", e.Probe+1, units.Lasting(e.At), e.Err)
}

// Unwrap returns the fault.
func (e ProbeError) Unwrap() error { return e.Err }
