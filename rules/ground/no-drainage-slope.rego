# METADATA
# scope: package
# title: Outdoor flatwork does not drain
# custom:
#   stage: before
#   severity: fix
#   why: "Water that stands on a slab soaks in and freezes, and what runs toward the house ends in the basement."
#   do: "Set the forms so that it falls away from the building by at least the figure given; twice that is usual for drives and walks."
#   numbers: [least fall over this length, fall in each foot]
package practice.ground["no-drainage-slope"]

here if {
	input.exposure.outdoors == true
	input.member.kind == "slab on ground"
}

wrong contains "it falls too little" if {
	here
	input.member.fall < data.limit.ground.least_fall
}

number["least fall over this length"] := {"yours": "figure.fall_planned", "right": "figure.fall_needed"}

number["fall in each foot"] := {"yours": "member.fall", "right": data.limit.ground.least_fall}

mend["member.fall"] := data.limit.ground.least_fall
