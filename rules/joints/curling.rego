# METADATA
# scope: package
# title: The edges of the panels will lift
# custom:
#   stage: before
#   severity: fix
#   why: "A floor dries from its top only, so its top shortens more than its bottom and every panel turns up at the edges like a drying leaf. Nobody finished it out of level: wheels hammer the joints and the floor covering shows them."
#   do: "Bring the joints closer together, order a mix of low shrinkage with little water and large stone, keep it wet for a week or more, or lay steel in the upper third. A richer mix curls more, not less."
#   numbers: [joint spacing that keeps the edges down, edge lift estimated, drying shrinkage expected, radius of relative stiffness, edge lift with closer joints, edge lift with a low-shrinkage mix, edge lift of a thicker slab]
package practice.joints.curling

here if {
	data.trade.slab_on_ground
	input.exposure.outdoors == false
}

wrong contains "the panels are long enough for their edges to lift, and nothing is done against it" if {
	here
	input.joints.curl_measure == "none"
	input.figure.edge_lift > data.limit.joints.most_lift
}

wrong contains "it dries from its top only, without curing, in panels long enough for their edges to lift" if {
	here
	input.floor.retarder == "direct"
	input.cure.method in {"none", "sprinkled"}
	input.figure.edge_lift > data.limit.joints.most_lift
}

number["joint spacing that keeps the edges down"] := {"yours": "figure.joint_span", "right": "range.flat_joint_spacing.low"}

number["edge lift estimated"] := {"yours": "figure.edge_lift", "right": data.limit.joints.most_lift}

number["drying shrinkage expected"] := {"yours": "figure.drying_shrinkage"}

number["radius of relative stiffness"] := {"yours": "figure.radius_of_relative_stiffness"}

number["edge lift with closer joints"] := {"yours": "figure.edge_lift_closer"}

number["edge lift with a low-shrinkage mix"] := {"yours": "figure.edge_lift_low_shrinkage"}

number["edge lift of a thicker slab"] := {"yours": "figure.edge_lift_thicker"}

mend["joints.spacing"] := input.range.flat_joint_spacing.low

mend["joints.made"] if input.joints.made == false
