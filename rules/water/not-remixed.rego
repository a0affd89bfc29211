# METADATA
# scope: package
# title: The addition is not mixed in
# custom:
#   stage: during
#   severity: fix
#   why: "Water or admixture poured into the mouth of the drum sits on the first concrete that comes out. That part is thin soup, and what follows is stiff as before."
#   do: "Turn the drum at mixing speed until the revolutions are full, then test the slump, then discharge."
#   numbers: [revolutions still to turn, revolutions after the addition]
package practice.water["not-remixed"]

here if input.water.added > 0

here if input.water.admixture_added == true

wrong contains "the drum turned too little after it went in" if {
	here
	input.figure.revolutions_since < data.limit.water.remix_revolutions
}

number["revolutions still to turn"] := {"right": "figure.revolutions_still_to_turn"}

number["revolutions after the addition"] := {"yours": "figure.revolutions_since", "right": data.limit.water.remix_revolutions, "unit": "rev"}

mend["water.revolutions_after"] := data.limit.water.remix_revolutions

mend["water.minutes_after"] := input.figure.remix_minutes if input.water.minutes_after >= 0
