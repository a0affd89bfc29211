# METADATA
# scope: package
# title: It is placed into water or onto mud
# custom:
#   stage: before
#   severity: stop
#   why: "A puddle does not get pushed out: it is folded in, washes the cement off the stone and makes the bottom of the slab weak and porous. Mud moves, and mixes in besides."
#   do: "Pump or sweep the water out and let the base drain. Dig mud out down to firm ground and fill with compacted stone."
#   numbers: [w/cm with the standing water mixed in, water standing in the forms or the trench]
#   act: true
package practice.ground["standing-water"]

here if input.ground.wet in {"standing water", "mud", "no"}

wrong contains "water stands where it is placed" if {
	here
	input.ground.wet == "standing water"
}

wrong contains "there is mud where it is placed" if {
	here
	input.ground.wet == "mud"
}

number["w/cm with the standing water mixed in"] := {"yours": "figure.wcm_with_ground_water", "right": "figure.wcm"}

number["water standing in the forms or the trench"] := {"yours": "figure.ground_water", "right": 0}

mend["ground.wet"] := "no"

mend["ground.standing_water"] := 0 if input.ground.standing_water > 0
