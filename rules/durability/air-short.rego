# METADATA
# scope: package
# title: Too little air is ordered for concrete that freezes while wet
# custom:
#   stage: order
#   severity: fix
#   costs: [tear_out_cost]
#   why: "Water swells as it freezes. Billions of air bubbles, finer than sand, give it room inside the concrete; with too few of them the surface scales off winter by winter. Smaller stone means more mortar, and that needs more air."
#   do: "Order the total air that the stone size and the exposure call for, and have it tested where the truck discharges."
#   numbers: [air content, tolerance either way]
package practice.durability["air-short"]

here if data.trade.freezes_often_wet

here if data.trade.freezes_sometimes_wet

wrong contains "it is below what concrete needs that freezes while often wet" if {
	data.trade.freezes_often_wet
	input.order.air < input.figure.air_often_wet
}

wrong contains "it is below what concrete needs that freezes while wet now and then" if {
	data.trade.freezes_sometimes_wet
	input.order.air < input.figure.air_sometimes_wet
}

number["air content"] := {"yours": "order.air", "right": "figure.air_often_wet"} if data.trade.freezes_often_wet

number["air content"] := {"yours": "order.air", "right": "figure.air_sometimes_wet"} if {
	data.trade.freezes_sometimes_wet
	not data.trade.freezes_often_wet
}

number["tolerance either way"] := {"right": data.limit.delivery.air_tolerance, "unit": "%"}

mend["order.air"] := input.range.air_often_wet.high if data.trade.freezes_often_wet

mend["order.air"] := input.range.air_sometimes_wet.high if {
	data.trade.freezes_sometimes_wet
	not data.trade.freezes_often_wet
}
