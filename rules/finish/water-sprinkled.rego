# METADATA
# scope: package
# title: Water is put on the surface to finish it
# custom:
#   stage: during
#   severity: stop
#   why: "The brush of water makes paste that closes easily, because it is weak: the top quarter inch becomes a different concrete from the one that was paid for. It crazes, dusts and scales."
#   do: "Leave the water off. If it drags, use an evaporation retarder sparingly, magnesium instead of wood, or start sooner on a smaller area."
#   numbers: [w/cm of the surface]
#   cautions: [skin]
package practice.finish["water-sprinkled"]

here if data.trade.flatwork

wrong contains "water is worked into the surface" if {
	here
	input.finish.water_sprinkled == true
}

number["w/cm of the surface"] := {"yours": "figure.surface_wcm"}

mend["finish.water_sprinkled"] := false

mend["finish.water_rate"] := 0 if input.finish.water_rate > 0
