# METADATA
# scope: package
# title: Dry cement is spread to soak up bleed water
# custom:
#   stage: during
#   severity: stop
#   why: "The cement drinks the water and turns into a rich, wet skin on top of concrete that goes on bleeding. The skin shrinks more than what is below, so it crazes, curls off and scales."
#   do: "Take the water off with a hose or a squeegee, wait for the rest to come up, and leave the bag closed."
#   cautions: [skin, dust]
package practice.finish["cement-dusted"]

here if data.trade.flatwork

wrong contains "cement is worked into the bleed water" if {
	here
	input.finish.cement_dusted == true
}

mend["finish.cement_dusted"] := false
