# METADATA
# scope: package
# title: The trucks do not come at the pace the crew places
# custom:
#   stage: order
#   severity: mind
#   costs: [truck_waiting_cost]
#   why: "Trucks that come faster than they are emptied stand in line while the concrete in them ages; trucks that come too far apart leave an open face that stiffens before the next load meets it."
#   do: "Order the trucks one unloading time apart, and call the plant as soon as the pace changes."
#   numbers: [truck spacing to order, placing rate, unloading time of a load, age of the worst load]
package practice.delivery["trucks-too-close-or-far"]

here if input.load.several == true

wrong contains "they come faster than they are emptied, so loads age in line" if {
	here
	input.load.spacing < input.range.truck_spacing_to_order.low
}

wrong contains "they come so far apart that the face stands open" if {
	here
	input.load.spacing > input.range.truck_spacing_to_order.high
}

number["truck spacing to order"] := {"yours": "load.spacing", "right": "figure.truck_spacing_to_order"}

number["placing rate"] := {"yours": "figure.placing_rate"}

number["unloading time of a load"] := {"yours": "figure.unloading_time"}

number["age of the worst load"] := {"yours": "figure.worst_load_age"}

mend["load.spacing"] := input.figure.truck_spacing_to_order
