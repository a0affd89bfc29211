# METADATA
# scope: package
# title: The accelerator is taken for antifreeze
# custom:
#   stage: order
#   severity: stop
#   why: "An accelerator makes concrete set and harden sooner. It does next to nothing to keep the water in it from freezing: a full dose of calcium chloride lowers the freezing point by a few degrees at most."
#   do: "Order the accelerator to shorten the time under cover, and cover the slab all the same."
#   numbers: [freezing point of the mix water, freezing point lowered by, hours to 500 psi with it, hours to 500 psi without it]
package practice.cold["accelerator-as-antifreeze"]

here if input.cold.accelerator in {"calcium chloride", "non-chloride"}

wrong contains "an accelerator does not keep concrete from freezing" if {
	here
	input.cold.relied_on == true
}

number["freezing point of the mix water"] := {"yours": "figure.chloride_freezing_point"}

number["freezing point lowered by"] := {"yours": "figure.chloride_freezing_drop"}

number["hours to 500 psi with it"] := {"yours": "figure.hours_to_500"}

number["hours to 500 psi without it"] := {"yours": "figure.hours_to_500_plain"}

mend["cold.relied_on"] := false
