# METADATA
# scope: package
# title: The load would go over its water-cement ratio
# custom:
#   stage: during
#   severity: stop
#   why: "Every gallon beyond the ratio leaves pores that stay: the concrete gets weaker, shrinks more and lets water in, and nobody can see it afterwards."
#   do: "Leave the water out. If it must flow better, ask the plant for a water reducer."
#   numbers: [w/cm]
#   cautions: [skin]
package practice.water["over-limit"]

here if input.water.added > 0

wrong contains "it would go over the water-cement ratio ordered" if {
	here
	input.figure.wcm_after_water > input.order.ratio_limit
}

number["w/cm"] := {"yours": "figure.wcm_after_water", "right": "order.ratio_limit"}

mend["water.added"] := 0
