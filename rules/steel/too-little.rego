# METADATA
# scope: package
# title: There is less steel than its purpose needs
# custom:
#   stage: before
#   severity: fix
#   engineer: true
#   why: "Steel below a certain area gives way at the first crack and then does nothing at all. How much it takes depends on what it is for: little to drag a slab between its joints over the ground, several times as much to keep cracks fine."
#   do: "Say what the steel is for, and give it the area that takes, with bars or sheets that can be kept at their height."
#   numbers: [area provided, area by subgrade drag, area by shrinkage-temperature ratio, bar or wire that gives it]
package practice.steel["too-little"]

here if {
	input.metal.reinforced == true
	input.steel.purpose in {"drag", "minimum", "hold cracks", "no joints"}
}

wrong contains "it is less than drags the slab between its joints over the ground" if {
	here
	input.steel.purpose == "drag"
	input.figure.steel_area < input.figure.steel_needed
}

wrong contains "it is less than the code asks of a structural slab" if {
	here
	input.steel.purpose == "minimum"
	input.figure.steel_area < input.figure.steel_needed
}

wrong contains "it is less than holds cracks tight" if {
	here
	input.steel.purpose in {"hold cracks", "no joints"}
	input.figure.steel_area < input.figure.steel_needed
}

number["area provided"] := {"yours": "figure.steel_area", "right": "range.steel_needed.high"}

number["area by subgrade drag"] := {"right": "figure.drag_steel"}

number["area by shrinkage-temperature ratio"] := {"right": "figure.minimum_steel"}

number["bar or wire that gives it"] := {"right": "figure.bars_to_use"}

mend["steel.area"] := input.range.steel_needed.high if input.steel.area < input.range.steel_needed.high

mend["steel.spacing"] := input.range.bar_spacing_needed.low if input.steel.bar_size > 0

mend["steel.wire"] := input.range.wire_needed.high if input.steel.wire > 0
