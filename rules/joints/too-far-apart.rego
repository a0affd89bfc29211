# METADATA
# scope: package
# title: The contraction joints are too far apart
# custom:
#   stage: before
#   severity: fix
#   why: "Concrete shortens as it dries, by about {0.75 in} in {100 ft}, and the ground holds it back. Where no joint is near enough to give way it cracks where it likes, and a long panel lifts at its edges as well."
#   do: "Lay out panels no longer than the largest spacing, as square as the plan allows, with a joint at every inside corner and column."
#   numbers: [largest spacing, spacing planned, panels to lay out]
package practice.joints["too-far-apart"]

here if data.trade.slab_on_ground

wrong contains "they are farther apart than thickness and concrete allow" if {
	here
	input.joints.spacing <= data.limit.joints.farthest_contraction_joints
	input.figure.panels_in_stretch > 1
}

wrong contains "they are so far apart that only continuous steel could do without more" if {
	here
	input.joints.spacing > data.limit.joints.farthest_contraction_joints
	data.trade.too_light_for_no_joints
}

wrong contains "there are none, and the slab is longer than it can be without" if {
	here
	input.joints.made == false
	input.figure.panels_in_stretch > 1
	data.trade.too_light_for_no_joints
}

number["largest spacing"] := {"yours": "figure.joint_span", "right": "range.largest_joint_spacing.low"} if input.member.thickness > 0

number["spacing planned"] := {"yours": "joints.spacing"}

number["panels to lay out"] := {"right": "figure.panels"} if input.member.thickness > 0

mend["joints.spacing"] := input.range.largest_joint_spacing.low if input.member.thickness > 0

mend["joints.made"] if input.joints.made == false
