# METADATA
# scope: package
# title: The slab is cast tight against what stands still
# custom:
#   stage: before
#   severity: fix
#   why: "Walls, columns and older slabs do not move with the new slab. Where it is cast against them it hangs on them as it shrinks and settles, and cracks start at every corner and column."
#   do: "Set a strip of {0.25 in} to {0.5 in} through the full depth around walls, columns, drains and older slabs, and box columns out as circles or diamonds."
#   numbers: [thickness of the strip]
package practice.joints["no-isolation"]

here if {
	data.trade.slab_on_ground
	input.joints.against != "nothing"
}

wrong contains "it is cast tight against walls, columns or older slabs" if {
	here
	input.joints.against == "tight"
}

number["thickness of the strip"] := {
	"right": data.limit.joints.isolation_strip.least,
	"low": data.limit.joints.isolation_strip.least,
	"high": data.limit.joints.isolation_strip.most,
	"unit": "in",
}

mend["joints.against"] := "isolated"
