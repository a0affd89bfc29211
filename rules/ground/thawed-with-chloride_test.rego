package practice.ground["thawed-with-chloride_test"]

test_wrong_with_salt if {
	data.practice.ground["thawed-with-chloride"].wrong["salt goes where concrete will lie"] with input as {"ground": {"thaw_method": "salt"}}
}

test_right_with_heat if {
	count(data.practice.ground["thawed-with-chloride"].wrong) == 0 with input as {"ground": {"thaw_method": "hydronic heater"}}
	data.practice.ground["thawed-with-chloride"].here with input as {"ground": {"thaw_method": "hydronic heater"}}
}

test_not_here_when_nothing_thaws_it if {
	not data.practice.ground["thawed-with-chloride"].here with input as {"ground": {"thaw_method": "none"}}
}
