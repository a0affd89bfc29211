# METADATA
# scope: package
# title: Strength alone is taken for durability
# custom:
#   stage: order
#   severity: mind
#   why: "A cylinder breaks once, in a laboratory; frost, salt and sulfate work on the surface for years. Strong concrete without air scales, and strong concrete with too much water in it lets salt through to the steel."
#   do: "Order what the exposure needs beside the strength: a largest water-cement ratio, the air for the stone size, the right cement, and enough cover over the steel."
#   numbers: [w/cm, air content, cement in a yard, concrete cover]
package practice.durability["strength-alone"]

harsh if data.trade.freezes_often_wet

harsh if data.trade.sulfate_moderate

here if harsh

wrong contains "its strength says little about frost, salt or sulfate" if {
	harsh
	input.order.taken_as_durable == true
}

number["w/cm"] := {"yours": "figure.wcm", "right": data.trade.governing_ratio}

number["air content"] := {"yours": "order.air", "right": "figure.air_often_wet"} if data.trade.freezes_often_wet

number["cement in a yard"] := {"yours": "figure.cementitious", "right": data.limit.durability.least_cementitious, "unit": "lb/yd3"} if data.trade.freezes_often_wet

number["concrete cover"] := {
	"yours": "steel.cover", "right": data.limit.steel.cover_weather_large,
	"low": data.limit.steel.cover_weather_small, "high": data.limit.steel.cover_weather_large, "unit": "in",
}

mend["order.taken_as_durable"] := false
