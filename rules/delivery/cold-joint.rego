# METADATA
# scope: package
# title: The next load comes too late to knit with the last
# custom:
#   stage: during
#   severity: fix
#   costs: [crew_waiting_cost]
#   why: "Fresh concrete joins what is already placed only while that is still plastic. After that there is a seam that leaks, shows and cracks, and no vibrating heals it."
#   do: "Shorten the gap, order a retarder, or keep the edge alive with the vibrator. If it cannot be kept, stop at a straight bulkhead and make it a construction joint."
#   numbers: [longest gap between loads or lifts, time to initial set]
package practice.delivery["cold-joint"]

here if input.load.several == true

wrong contains "the gap is longer than the concrete stays plastic" if {
	here
	input.load.planned_joint == false
	input.load.gap > input.figure.knit_minutes
}

number["longest gap between loads or lifts"] := {"yours": "load.gap", "right": "figure.knit_minutes"}

number["time to initial set"] := {"yours": "figure.set_hours"}

mend["load.gap"] := input.figure.knit_minutes

mend["load.gap"] := input.range.knit_minutes.low if not input.figure.knit_minutes
