package practice.water["not-on-ticket_test"]

test_wrong_off_the_ticket if {
	data.practice.water["not-on-ticket"].wrong["the water added is not written on the ticket"] with input as {"water": {"added": 5, "on_ticket": false}}
}

test_wrong_cylinders_first if {
	data.practice.water["not-on-ticket"].wrong["the cylinders were made before the water went in"] with input as {"water": {"added": 5, "on_ticket": true, "cylinders": "before"}}
}

test_right_written_and_tested_after if {
	every cylinders in ["after", "none"] {
		data.practice.water["not-on-ticket"].here with input as {"water": {"added": 5, "on_ticket": true, "cylinders": cylinders}}
		count(data.practice.water["not-on-ticket"].wrong) == 0 with input as {"water": {"added": 5, "on_ticket": true, "cylinders": cylinders}}
	}
}

test_not_here_without_water if {
	not data.practice.water["not-on-ticket"].here with input as {"water": {"added": 0, "on_ticket": false}}
}
