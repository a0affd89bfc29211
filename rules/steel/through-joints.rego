# METADATA
# scope: package
# title: Too much steel runs through joints that are meant to open
# custom:
#   stage: before
#   severity: fix
#   why: "Steel that runs through a contraction joint ties the two panels together. The joint cannot open, so the slab cracks between the joints instead."
#   do: "Cut the steel at every contraction joint, or lay no more than a tenth of a per cent of the slab through it. Where loads must pass, use smooth dowels that let the joint open."
#   numbers: [steel ratio through the joints, joint opening expected]
package practice.steel["through-joints"]

here if {
	data.trade.jointed_slab
	input.metal.reinforced == true
	input.steel.through_joints != "cut"
}

wrong contains "more steel runs through the joints than lets them open" if {
	here
	input.figure.steel_through_joints > data.limit.steel.through_joints
}

number["steel ratio through the joints"] := {"yours": "figure.steel_through_joints", "right": data.limit.steel.through_joints}

number["joint opening expected"] := {"yours": "figure.joint_opening"}

mend["steel.through_joints"] := "cut"
