package practice.water["for-slump_test"]

load(purpose, wanted, low, after) := {
	"water": {"added": 8, "purpose": purpose},
	"order": {"slump": 4, "ratio_limit": 0.5},
	"figure": {"slump_sought": wanted, "wcm_after_water": after},
	"range": {"slump_after_water": {"low": low}},
}

test_wrong_by_intent if {
	data.practice.water["for-slump"].wrong["the water is to make it wetter than ordered"] with input as load("above the slump ordered", 4, 4, 0.48)
}

test_wrong_by_the_slump_wanted if {
	data.practice.water["for-slump"].wrong["the slump wanted is above the slump ordered"] with input as load("to the slump ordered", 6, 4, 0.48)
}

test_wrong_by_its_effect if {
	data.practice.water["for-slump"].wrong["so much water takes it past the slump ordered"] with input as load("to the slump ordered", 4, 4.5, 0.48)
}

test_wrong_where_the_ratio_is_used_up if {
	data.practice.water["for-slump"].wrong["the water-cement ratio leaves no room for it"] with input as load("to the slump ordered", 4, 4, 0.51)
}

test_right_with_water_held_back if {
	data.practice.water["for-slump"].here with input as load("to the slump ordered", 4, 4, 0.5)
	count(data.practice.water["for-slump"].wrong) == 0 with input as load("to the slump ordered", 4, 4, 0.5)
}

test_not_here_without_water if {
	not data.practice.water["for-slump"].here with input as {"water": {"added": 0, "purpose": "none"}}
}
