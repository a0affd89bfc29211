package rulebook

import (
	stdflag "flag"
	"time"
)

var (
	updateLimits = stdflag.String("update-limits", "", "a topic, or all: look for jobs that hold the limits which nothing holds, and write testdata/limits")
	searchTime   = stdflag.Duration("search-time", 4*time.Second, "with -update-limits, how long to look for a job in each manner")
)
