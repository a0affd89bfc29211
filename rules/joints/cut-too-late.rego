# METADATA
# scope: package
# title: The joints are cut too late
# custom:
#   stage: before
#   severity: fix
#   why: "The slab begins to shorten in its first night, while it is weakest. A saw that comes after that cuts beside cracks that are already there, though they may not show for days."
#   do: "Cut as soon as the edges of the cut no longer ravel, even at night. Check with the saw rather than the clock, and begin with the longest lines."
#   numbers: ["sawing window in hours for this saw and temperature"]
#   cautions: [dust]
package practice.joints["cut-too-late"]

here if {
	data.trade.jointed_slab
	input.joints.cut_after > 0
}

wrong contains "the saw comes after the slab has begun to crack by itself" if {
	here
	input.joints.cut_after > input.figure.saw_latest
}

number["sawing window in hours for this saw and temperature"] := {
	"yours": "joints.cut_after",
	"right": "range.saw_latest.low",
	"low": input.range.saw_first.low,
	"high": input.range.saw_latest.high,
}

mend["joints.cut_after"] := input.range.saw_latest.low
