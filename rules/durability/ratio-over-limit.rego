# METADATA
# scope: package
# title: The water-cement ratio is above what the exposure allows
# custom:
#   stage: order
#   severity: fix
#   why: "Water that the cement does not need leaves fine pores behind. Through them rain, frost and salt get in, and then the surface scales and the steel rusts, however strong the concrete tests."
#   do: "Order the concrete with a largest water-cement ratio for its exposure, and with the strength that goes with it; if it must flow better, take a water reducer."
#   numbers: [w/cm, largest w/cm ordered, strength that goes with it]
package practice.durability["ratio-over-limit"]

here if data.trade.freezes_often_wet

here if {
	data.trade.under_code
	data.trade.freezes_sometimes_wet
}

here if {
	data.trade.under_code
	input.member.watertight == true
}

here if {
	data.trade.under_code
	data.trade.salt_outside_steel
}

# What is salted also freezes while often wet, and what is under the code may have no more than what is not: each stricter
# limit is asked about only below the wider one.
wrong contains "it is above the limit for concrete that freezes while often wet" if {
	data.trade.freezes_often_wet
	input.figure.wcm > input.figure.ratio_wet_flatwork
}

wrong contains "the order allows more than concrete that freezes while often wet may have" if {
	data.trade.freezes_often_wet
	input.order.ratio_limit > input.figure.ratio_wet_flatwork
}

wrong contains "it is above the limit of every edition for concrete that meets deicing salt" if {
	data.trade.salted
	input.figure.wcm > input.figure.ratio_salted_flatwork
}

wrong contains "the order allows more than any edition for concrete that meets deicing salt" if {
	data.trade.salted
	input.order.ratio_limit > input.figure.ratio_salted_flatwork
}

wrong contains "it is above the limit for structural concrete that freezes while often wet (class F2)" if {
	data.trade.freezes_often_wet
	data.trade.under_code
	input.figure.wcm > input.figure.ratio_f2
}

wrong contains "the order allows more than structural concrete that freezes while often wet may have (class F2)" if {
	data.trade.freezes_often_wet
	data.trade.under_code
	input.order.ratio_limit > input.figure.ratio_f2
}

wrong contains "it is above the limit for structural concrete that freezes while wet now and then (class F1)" if {
	data.trade.freezes_sometimes_wet
	data.trade.under_code
	input.figure.wcm > input.figure.ratio_f1
}

wrong contains "the order allows more than structural concrete that freezes while wet now and then may have (class F1)" if {
	data.trade.freezes_sometimes_wet
	data.trade.under_code
	input.order.ratio_limit > input.figure.ratio_f1
}

wrong contains "it is above the limit for reinforced concrete that salt reaches (class C2)" if {
	data.trade.under_code
	data.trade.salt_outside_steel
	input.figure.wcm > input.figure.ratio_c2
}

wrong contains "the order allows more than reinforced concrete that salt reaches may have (class C2)" if {
	data.trade.under_code
	data.trade.salt_outside_steel
	input.order.ratio_limit > input.figure.ratio_c2
}

wrong contains "it is above the limit for structural concrete that must keep water out" if {
	data.trade.under_code
	input.member.watertight == true
	input.figure.wcm > input.figure.ratio_watertight
}

wrong contains "the order allows more than structural concrete that must keep water out may have" if {
	data.trade.under_code
	input.member.watertight == true
	input.order.ratio_limit > input.figure.ratio_watertight
}

number["w/cm"] := {"yours": "figure.wcm", "right": data.trade.governing_ratio}

number["largest w/cm ordered"] := {"yours": "order.ratio_limit", "right": data.trade.governing_ratio}

number["strength that goes with it"] := {"yours": "order.strength", "right": data.trade.governing_strength}

mend["order.ratio_limit"] := data.trade.governing_least

mend["mix.wcm"] := data.trade.governing_least if input.mix.wcm > data.trade.governing_least

mend["mix.wcm"] := data.trade.governing_least if not input.figure.wcm

mend["mix.water"] := data.trade.governing_water if input.mix.water > data.trade.governing_water
