# METADATA
# scope: package
# title: Finishing while bleed water is on the slab
# custom:
#   stage: during
#   severity: stop
#   why: "Water worked back into the top makes a skin that is mostly water and fines. It looks closed on the day, and later dusts, crazes or peels off in sheets."
#   do: "Stop and wait. When it does not go by itself, drag it off with a hose or a squeegee, and start only when a footprint is within the depth for the machine."
#   numbers: [hours until bleeding ends, evaporation rate, bleeding rate]
#   cautions: [skin]
package practice.finish["on-bleed-water"]

here if data.trade.flatwork

wrong contains "they are working it while bleed water is there or still rising" if {
	here
	input.finish.working_on == true
	input.finish.bleed_water in {"on the slab", "rising"}
}

number["hours until bleeding ends"] := {"right": "figure.bleed_end_hours", "yours": "finish.hours_after"}

number["evaporation rate"] := {"yours": "figure.evaporation"}

number["bleeding rate"] := {
	"yours": "mix.bleeding",
	"low": data.limit.finish.least_bleeding,
	"high": data.limit.finish.most_bleeding,
	"unit": "lb/ft2/h",
}

mend["finish.working_on"] := false
