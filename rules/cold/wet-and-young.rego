# METADATA
# scope: package
# title: Wet frosts come before it is strong enough
# custom:
#   stage: after
#   severity: fix
#   why: "Standing one freeze is not standing a winter. Concrete that is full of water and still weak loses its skin flake by flake, air or no air."
#   do: "Keep water off it, or keep it from freezing, until it has the strength given. Let it dry for some weeks before the wet frosts."
#   numbers: [strength needed before wet frosts, strength when they begin]
package practice.cold["wet-and-young"]

here if input.protection.saturated_freezing == true

wrong contains "it is not strong enough for wet frosts by then" if {
	here
	input.protection.strength_then < input.figure.strength_for_frosts
}

number["strength needed before wet frosts"] := {"yours": "protection.strength_then", "right": "figure.strength_for_frosts"}

number["strength when they begin"] := {"yours": "protection.strength_then"}

mend["protection.strength_then"] := input.range.strength_for_frosts.high
