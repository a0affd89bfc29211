# METADATA
# scope: package
# title: The water asked for is more than the load may take
# custom:
#   stage: during
#   severity: stop
#   why: "Every gallon beyond the ratio leaves pores that stay: the concrete gets weaker, shrinks more and lets water in, and nobody can see it afterwards."
#   do: "Add no more than is still allowed, in one go before discharge; often that is nothing. If it must flow better, have the plant send a water reducer."
#   numbers: [gallons still allowed on this load, w/cm after the water, w/cm before the water, slump gained, strength lost, strength lost by the ratio, cement thrown away (bags), cement thrown away (money), shrinkage added]
#   costs: [rejected_load_cost, reducer_route_cost]
#   cautions: [skin]
package practice.water["over-limit"]

here if input.water.added > 0

wrong contains "it would go over the water-cement ratio ordered" if {
	here
	input.figure.wcm_after_water > input.order.ratio_limit
}

wrong contains "it is more than the ticket allows" if {
	here
	input.water.added > input.figure.ticket_water
}

number["gallons still allowed on this load"] := {"yours": "water.added", "right": "figure.water_allowed"}

number["w/cm after the water"] := {"yours": "figure.wcm_after_water", "right": "order.ratio_limit"}

number["w/cm before the water"] := {"yours": "figure.wcm"}

number["slump gained"] := {"yours": "figure.slump_gained"}

number["strength lost"] := {"yours": "figure.strength_lost"}

number["strength lost by the ratio"] := {"yours": "figure.strength_lost_by_ratio"}

number["cement thrown away (bags)"] := {"yours": "figure.cement_wasted_bags"}

number["cement thrown away (money)"] := {"yours": "figure.cement_wasted_cost"}

number["shrinkage added"] := {"yours": "figure.shrinkage_added"}

mend["water.added"] := input.figure.water_allowed

mend["water.purpose"] := "none" if input.figure.water_allowed == 0
