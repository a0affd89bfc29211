# METADATA
# scope: package
# title: The load is older than its time limit
# custom:
#   stage: during
#   severity: stop
#   costs: [rejected_load_cost]
#   why: "Concrete stiffens while it rides and waits. Past the limit it is usually kept going with water, and that is what spoils it. Editions differ: {90 min} and {300 rev} up to 2013, {90 min} until 2020, and since 2021 no limit unless the order or the producer sets one."
#   do: "Send it back, or get the purchaser's word that the limit is set aside, and then place it only while slump and temperature hold without a drop of water. Order a retarder or a nearer plant for the loads to come."
#   numbers: [age at the end of discharge, time limit, minutes left]
#   cautions: [skin]
package practice.delivery["too-old"]

here if input.figure.load_age >= 0

wrong contains "it is discharged after the time limit in force" if {
	here
	input.figure.load_age > input.load.time_limit
}

wrong contains "it is discharged after the time limit in force" if {
	here
	input.load.limit_source == "standard"
	input.figure.load_age > data.limit.delivery.default_time_limit[input.job.delivery_standard]
	stands
}

wrong contains "the limit was set aside only while slump and temperature hold" if {
	here
	input.figure.load_age > input.load.waived_limit
	lost
}

wrong contains "the drum has turned more than the limit in force" if {
	here
	input.load.limit_source == "standard"
	input.load.revolutions > data.limit.delivery.default_revolutions[input.job.delivery_standard]
	stands
}

stands if input.load.limit_waived == false

stands if lost

# A limit that was set aside stands again as soon as the load needs water, has stiffened or is too hot.
lost if input.water.added > 0

lost if input.load.slump < input.figure.slump_least

lost if input.load.temperature > data.limit.delivery.most_temperature

number["age at the end of discharge"] := {"yours": "figure.load_age", "right": "figure.time_limit"}

number["time limit"] := {"right": "figure.time_limit"}

number["minutes left"] := {"yours": "figure.minutes_left"}

mend["load.age"] := input.figure.time_limit if not input.figure.load_age <= input.figure.time_limit

mend["load.age"] := input.load.waived_limit

mend["load.wait"] := input.figure.wait_allowed

mend["load.haul"] := input.figure.haul_allowed

mend["load.revolutions"] := most if {
	most := data.limit.delivery.default_revolutions[input.job.delivery_standard]
	input.load.revolutions > most
}
