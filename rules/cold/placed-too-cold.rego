# METADATA
# scope: package
# title: The concrete comes colder than its section may be
# custom:
#   stage: order
#   severity: fix
#   costs: [rejected_load_cost]
#   why: "Cold concrete sets hours late, bleeds on and gains strength slowly, and a thin section has little heat of its own to keep it from freezing."
#   do: "Ask the plant for hot water, and warm aggregates in hard frost, so that it arrives at the temperature given. Do not ask for much more: hotter concrete stiffens on the way and cracks when it cools."
#   numbers: [least temperature as placed, mixing-water temperature that gives it, least temperature as mixed in this air]
package practice.cold["placed-too-cold"]

here if data.trade.cold_weather

wrong contains "it is colder than its section may be" if {
	here
	input.load.temperature < input.figure.least_placing_temperature
}

number["least temperature as placed"] := {"yours": "load.temperature", "right": "figure.least_placing_temperature"}

number["mixing-water temperature that gives it"] := {"yours": "materials.water_temperature", "right": "figure.water_temperature_for_least"}

number["least temperature as mixed in this air"] := {"right": "figure.least_mixing_temperature"}

mend["load.temperature"] := input.range.least_placing_temperature.high
