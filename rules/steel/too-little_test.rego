package practice.steel["too-little_test"]

job(purpose, area) := {
	"metal": {"reinforced": true}, "steel": {"purpose": purpose},
	"figure": {"steel_area": area, "steel_needed": 0.1},
}

test_wrong_for_drag if {
	data.practice.steel["too-little"].wrong["it is less than drags the slab between its joints over the ground"] with input as job("drag", 0.05)
}

test_wrong_for_the_code_minimum if {
	data.practice.steel["too-little"].wrong["it is less than the code asks of a structural slab"] with input as job("minimum", 0.05)
}

test_wrong_for_crack_control if {
	data.practice.steel["too-little"].wrong["it is less than holds cracks tight"] with input as job("hold cracks", 0.05)
	data.practice.steel["too-little"].wrong["it is less than holds cracks tight"] with input as job("no joints", 0.05)
}

test_right_at_the_area_needed if {
	count(data.practice.steel["too-little"].wrong) == 0 with input as job("drag", 0.1)
	data.practice.steel["too-little"].here with input as job("drag", 0.1)
}

test_not_here_without_a_purpose_that_an_area_serves if {
	not data.practice.steel["too-little"].here with input as job("prevent cracks", 0.05)
}

test_not_here_in_plain_concrete if {
	not data.practice.steel["too-little"].here with input as {"metal": {"reinforced": false}, "steel": {"purpose": "drag"}}
}
