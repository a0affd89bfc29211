# METADATA
# scope: package
# title: The slump does not suit the work
# custom:
#   stage: order
#   severity: fix
#   why: "Too stiff leaves hollows. Too wet with water makes the stone sink and the water rise, so the top ends up weak and dusty and the whole shrinks more; an admixture gives the same flow without that."
#   do: "Order a slump within the range. Where it must flow more, order a water reducer and say that water is not to raise the slump."
#   numbers: [slump for this work, extra water if water makes it, strength that costs]
#   costs: [reducer_route_cost]
package practice.order["slump-unfit"]

here if input.order.slump >= 0

wrong contains "it is stiffer than this work can be placed" if {
	here
	input.order.slump < data.limit.order.least_slump[input.member.kind]
}

wrong contains "it is wetter than this work takes without an admixture" if {
	here
	input.order.slump > data.limit.order.most_slump[input.member.kind]
	input.order.slump_raised_with in {"water", "nothing"}
}

wrong contains "water is to raise it where an admixture should" if {
	here
	input.order.slump > data.limit.order.watered_slump[input.member.kind]
	input.order.slump_raised_with == "water"
}

wrong contains "it is beyond what slump can measure, even with an admixture" if {
	here
	input.order.slump > data.limit.order.flowing_slump
}

number["slump for this work"] := {
	"yours": "order.slump",
	"right": data.limit.order.watered_slump[input.member.kind],
	"low": data.limit.order.least_slump[input.member.kind],
	"high": data.limit.order.most_slump[input.member.kind],
	"unit": "in",
}

number["extra water if water makes it"] := {"yours": "figure.extra_water_for_slump"}

number["strength that costs"] := {"yours": "figure.strength_cost_of_slump"}

mend["order.slump"] := data.limit.order.least_slump[input.member.kind] if input.order.slump < data.limit.order.least_slump[input.member.kind]

mend["order.slump"] := data.limit.order.flowing_slump if input.order.slump > data.limit.order.flowing_slump

mend["order.slump_raised_with"] := "admixture" if input.order.slump > data.limit.order.watered_slump[input.member.kind]
