# METADATA
# scope: package
# title: The mix is too wet for a floor that must dry or keep water out
# custom:
#   stage: order
#   severity: fix
#   why: "Every pound of water that the cement does not bind has to leave through the pores it made. With much water there is more to dry and wider pores for water to come back through, and above a certain ratio the pores never close at all."
#   do: "Order a low water-cement ratio and get the slump with a water reducer; keep it wet until its pores have closed."
#   numbers: [w/cm, largest w/cm ordered, days of drying, permeability, days of wet curing until the pores close]
package practice.moisture["wet-mix"]

here if data.trade.covered

here if input.member.watertight == true

wrong contains "it is too wet for a floor that must dry before it is covered" if {
	data.trade.covered
	input.figure.wcm > data.limit.moisture.wet_ratio
}

wrong contains "the order allows more water than a floor should have that must dry" if {
	data.trade.covered
	input.order.ratio_limit > data.limit.moisture.wet_ratio
}

wrong contains "it is too wet to keep water out" if {
	input.member.watertight == true
	input.figure.wcm > data.limit.moisture.wet_ratio
}

wrong contains "the order allows more water than concrete should have that keeps water out" if {
	input.member.watertight == true
	input.order.ratio_limit > data.limit.moisture.wet_ratio
}

number["w/cm"] := {"yours": "figure.wcm", "right": data.limit.moisture.wet_ratio}

number["largest w/cm ordered"] := {"yours": "order.ratio_limit", "right": data.limit.moisture.wet_ratio}

number["days of drying"] := {"yours": "figure.days_to_dry", "right": "figure.days_to_dry_better"}

number["permeability"] := {"yours": "figure.permeability_ratio", "right": 1, "unit": ""}

number["days of wet curing until the pores close"] := {"yours": "figure.closing_age", "right": "figure.closing_age_better"}

mend["order.ratio_limit"] := data.limit.moisture.wet_ratio

mend["mix.wcm"] := data.limit.moisture.wet_ratio if input.mix.wcm > data.limit.moisture.wet_ratio

mend["mix.wcm"] := data.limit.moisture.wet_ratio if not input.figure.wcm

mend["mix.water"] := input.figure.water_dry_floor if input.mix.water > input.figure.water_dry_floor
