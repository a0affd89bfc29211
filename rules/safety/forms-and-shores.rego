# METADATA
# scope: package
# title: Forms or shores of an elevated member come out without the designer's word
# custom:
#   stage: after
#   severity: stop
#   why: "Until it is strong enough an elevated slab or beam hangs on its shores, and often carries the floor above it as well. Taken out early it comes down, on whoever is below."
#   do: "Leave them until the designer's conditions are met, by strength tested or by the time the drawings give; then take them out in the order given, with nobody below."
#   numbers: [days above 50 F that forms usually stay, age at removal]
#   cautions: [supports]
package practice.safety["forms-and-shores"]

here if input.safety.supports_removed == true

wrong contains "the designer has not agreed to it" if {
	input.safety.supports_removed == true
	input.safety.designer_agreed == false
}

number["days above 50 F that forms usually stay"] := {"right": "figure.removal_days"}

number["age at removal"] := {"yours": "strength.action_after"}

mend["safety.designer_agreed"] := true
