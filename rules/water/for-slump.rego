# METADATA
# scope: package
# title: Water is used to make the slump
# custom:
#   stage: during
#   severity: fix
#   why: "Water makes concrete flow, and stays in it as pores. A water reducer makes it flow with the water it has."
#   do: "Bring it to the slump ordered with the water that was held back, if the ratio has room; go beyond that with a water reducer only, dosed by the plant."
#   numbers: [slump that a water reducer gives, slump wanted less slump measured, water it takes, strength it costs]
#   costs: [reducer_route_cost]
package practice.water["for-slump"]

here if input.water.added > 0

here if input.water.purpose in {"to the slump ordered", "above the slump ordered", "lost to heat"}

wrong contains "the water is to make it wetter than ordered" if {
	here
	input.water.purpose == "above the slump ordered"
}

wrong contains "the slump wanted is above the slump ordered" if {
	here
	input.figure.slump_sought > input.order.slump
}

wrong contains "so much water takes it past the slump ordered" if {
	here
	input.range.slump_after_water.low > input.order.slump
}

wrong contains "the water-cement ratio leaves no room for it" if {
	here
	input.figure.wcm_after_water > input.order.ratio_limit
}

number["slump that a water reducer gives"] := {"right": "figure.reducer_slump_gain"}

number["slump wanted less slump measured"] := {"yours": "figure.slump_rise"}

number["water it takes"] := {"yours": "figure.water_for_rise"}

number["strength it costs"] := {"yours": "figure.strength_cost_of_rise"}

mend["water.added"] := 0

mend["water.purpose"] := "none"
