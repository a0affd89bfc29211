# METADATA
# scope: package
# title: The load does not fill what its ticket says
# custom:
#   stage: during
#   severity: mind
#   why: "What the batch weighs, divided by its unit weight, is what it fills. Short of the ticket somebody pays for concrete that never came; over it there is more air or water in every yard, and less cement than ordered."
#   do: "Weigh the unit weight on three trucks and take the mean before you claim anything. Then ask the plant for batch weights and air. Most short orders come from deep spots and spread forms, not from the truck."
#   numbers: [relative yield, yield, cement per yard delivered, unit weight]
package practice.delivery["yield-short"]

here if input.mix.density > 0

wrong contains "it fills less than the ticket says" if {
	here
	input.figure.relative_yield < data.limit.delivery.yield_tolerance.least
}

wrong contains "it fills more than the ticket says, so each yard holds less cement" if {
	here
	input.figure.relative_yield > data.limit.delivery.yield_tolerance.most
}

number["relative yield"] := {
	"yours": "figure.relative_yield",
	"right": 1,
	"low": data.limit.delivery.yield_tolerance.least,
	"high": data.limit.delivery.yield_tolerance.most,
}

number["yield"] := {"yours": "figure.yield", "right": "load.volume"}

number["cement per yard delivered"] := {"yours": "figure.cement_delivered", "right": "figure.cementitious"}

number["unit weight"] := {"yours": "mix.density", "right": "figure.unit_weight_for_yield"}

mend["mix.density"] := input.figure.unit_weight_for_yield
