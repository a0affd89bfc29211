# METADATA
# scope: package
# title: A dry look is taken for the end of bleeding
# custom:
#   stage: during
#   severity: fix
#   why: "When the air takes water faster than the slab gives it, the shine goes while water is still climbing. Close the top then, and that water gathers under a sealed skin: blisters, or a sheet of mortar that comes loose."
#   do: "Cover a patch with a scrap of plastic for some minutes and look for water beneath, and go by the depth of a footprint. Fog, film or screen the rest so that it does not dry ahead of you."
#   numbers: [evaporation rate, bleeding rate]
package practice.finish["sheen-gone-too-soon"]

here if {
	data.trade.flatwork
	input.finish.judged_by_sheen == true
}

wrong contains "evaporation is beyond what this concrete is sure to bleed" if {
	here
	data.trade.dries_too_fast
}

wrong contains "evaporation is faster than this concrete bleeds" if {
	here
	input.figure.evaporation > data.limit.finish.least_bleeding
	input.figure.evaporation > input.mix.bleeding
}

number["evaporation rate"] := {"yours": "figure.evaporation", "right": "figure.evaporation_limit"}

number["bleeding rate"] := {
	"yours": "mix.bleeding",
	"low": data.limit.finish.least_bleeding,
	"high": data.limit.finish.most_bleeding,
	"unit": "lb/ft2/h",
}

mend["finish.judged_by_sheen"] := false
