# METADATA
# scope: package
# title: Hard troweling of concrete with entrained air
# custom:
#   stage: order
#   severity: stop
#   why: "Entrained air holds the bleed water back. The steel trowel closes the top before that water is out, and the skin blisters or comes off in sheets, weeks later and over whole floors."
#   do: "Order the floor without an air-entraining admixture and keep total air within the limit. Where it will freeze and needs air, give it a float and broom finish instead."
#   numbers: [largest total air, air measured]
package practice.finish["hard-trowel-air"]

here if input.finish.final == "hard trowel"

wrong contains "the concrete is air-entrained" if {
	here
	input.order.entrained_air == true
}

wrong contains "more air is ordered than a hard-troweled floor stands" if {
	here
	input.order.air > data.limit.finish.most_air_hard_trowel
}

wrong contains "more air was measured than a hard-troweled floor stands" if {
	here
	input.load.air > data.limit.finish.most_air_hard_trowel
}

number["largest total air"] := {"yours": "order.air", "right": data.limit.finish.most_air_hard_trowel, "unit": "%"}

number["air measured"] := {"yours": "load.air", "right": data.limit.finish.most_air_hard_trowel, "unit": "%"}

mend["order.entrained_air"] := false if input.order.entrained_air == true

mend["order.air"] := data.limit.finish.most_air_hard_trowel if input.order.air > data.limit.finish.most_air_hard_trowel

mend["load.air"] := data.limit.finish.most_air_hard_trowel if input.load.air > data.limit.finish.most_air_hard_trowel
