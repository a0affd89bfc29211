# METADATA
# scope: package
# title: The joints are filled before most of the shrinkage is over
# custom:
#   stage: after
#   severity: mind
#   why: "Joints go on opening for months as the slab dries. A filler put in early is pulled off one side, and the edges it was to protect are left to break."
#   do: "Wait {60 d} at least, {90 d} or more where the work allows it, and fill at the temperature of service. Plan to go over the joints again once."
#   numbers: [earliest age to fill, share of shrinkage still to come, joint opening still to come]
package practice.joints["filled-too-soon"]

here if {
	data.trade.slab_on_ground
	input.joints.fill_needed == true
}

wrong contains "the joints are filled while the slab still shortens much" if {
	here
	input.joints.filled_after < data.limit.joints.earliest_fill.least
}

wrong contains "more than half of the shrinkage is still to come after so long a wet cure" if {
	here
	input.figure.shrinkage_to_come_aci209 > data.limit.joints.most_to_come
}

number["earliest age to fill"] := {
	"yours": "joints.filled_after",
	"right": data.limit.joints.earliest_fill.better,
	"low": data.limit.joints.earliest_fill.least,
	"high": data.limit.joints.earliest_fill.better,
}

number["share of shrinkage still to come"] := {"yours": "figure.shrinkage_to_come"}

number["joint opening still to come"] := {"yours": "figure.joint_opening_to_come"}

mend["joints.filled_after"] := data.limit.joints.earliest_fill.better
