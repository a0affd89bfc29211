# METADATA
# scope: package
# title: The joints are not deep enough
# custom:
#   stage: before
#   severity: fix
#   why: "A joint works because the slab is weakest there. Where the cut is too shallow the slab is nearly as strong under it as beside it, and the crack runs past."
#   do: "Cut to a quarter of the thickness. An early-entry saw may stay at its own least depth, since it cuts while the concrete is still weak."
#   numbers: [least depth]
package practice.joints["too-shallow"]

here if data.trade.jointed_slab

wrong contains "the joints are shallower than the slab and the saw need" if {
	here
	input.joints.depth < input.figure.least_joint_depth
}

number["least depth"] := {"yours": "joints.depth", "right": "range.least_joint_depth.high"}

mend["joints.depth"] := input.range.least_joint_depth.high
