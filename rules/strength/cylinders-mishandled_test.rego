package practice.strength["cylinders-mishandled_test"]

cylinders(facts) := {
	"strength": object.union({"cylinder_place": "box", "initial_temperature": 70, "initial_hours": 24, "field_cured": false}, facts),
	"figure": {"cylinder_coldest": 60, "cylinder_warmest": 80},
	"range": {"cylinder_coldest": {"low": 60, "high": 60}, "cylinder_warmest": {"low": 80, "high": 80}},
}

test_in_a_box_is_right if {
	got := data.practice.strength["cylinders-mishandled"] with input as cylinders({})
	got.here
	count(got.wrong) == 0
}

test_edges_are_right if {
	cold := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"initial_temperature": 60, "initial_hours": 48})
	count(cold) == 0
	warm := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"initial_temperature": 80})
	count(warm) == 0
}

test_each_way_to_be_wrong if {
	cold := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"initial_temperature": 59})
	cold == {"they are too cold at first"}
	warm := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"initial_temperature": 81})
	warm == {"they are too warm at first"}
	late := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"initial_hours": 49})
	late == {"they stay on site too long"}
	sun := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"cylinder_place": "ground"})
	sun == {"they stand on the ground or in the sun"}
	truck := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"cylinder_place": "truck"})
	truck == {"they ride on a truck or tailgate"}
	slab := data.practice.strength["cylinders-mishandled"].wrong with input as cylinders({"cylinder_place": "with the slab"})
	slab == {"acceptance cylinders are cured with the structure"}
}

test_field_cured_are_not_here if {
	not data.practice.strength["cylinders-mishandled"].here with input as cylinders({"field_cured": true, "cylinder_place": "with the slab", "initial_temperature": 40})
}
