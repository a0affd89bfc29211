# METADATA
# scope: package
# title: People breathe the fumes of a heater in an enclosure
# custom:
#   stage: during
#   severity: stop
#   why: "A flame in a closed tent uses up the air and gives off carbon monoxide, which nobody sees or smells. People grow tired and stop caring before they notice, and die."
#   do: "Take a heater whose exhaust goes outside, or let fresh air in and measure carbon monoxide at the start and again through the shift; nobody sleeps in the enclosure."
#   cautions: [fumes]
package practice.safety["heater-fumes"]

here if {
	input.protection.heater == "unvented"
	input.safety.people_in_enclosure == true
}

wrong contains "the heater exhausts where people work, and the air is neither changed nor measured" if {
	input.protection.heater == "unvented"
	input.safety.people_in_enclosure == true
	input.safety.ventilated == false
}

mend["safety.ventilated"] := true
