package season

import (
	"time"

	"example.org/lakelarder/units"
	"example.org/lakelarder/units/cite"
)

// Week is seven days, the step of a plan.
const Week = 7 * 24 * time.Hour

// Keeping is how long something may be kept, and who says so. The caller brings it: from package coldchain, from a
// label, or from the local extension service.
type Keeping struct {
	Time     time.Duration `wire:"required"`
	Citation cite.Citation `wire:"required"`
}

// weeks is the greatest age in weeks that is surely within the time, whatever the days: what was caught on the first
// day of a week and is eaten on the last day of the next is two weeks old. Below a week it is negative.
func (k Keeping) weeks() int { return int(k.Time/Week) - 1 }

func (k Keeping) check(what string, least time.Duration) error {
	if err := units.CheckDuration("keeping time of "+what, k.Time, least, 100*53*Week); err != nil {
		return err
	}
	return k.Citation.Check()
}
