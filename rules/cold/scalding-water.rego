# METADATA
# scope: package
# title: Very hot water meets the cement
# custom:
#   stage: order
#   severity: fix
#   why: "Water much hotter than a hand can stand makes cement set in a flash where they meet: lumps and balls that never break up, and a load that stiffens on the road."
#   do: "Batch hot water onto the aggregates, let them take the heat, and add the cement last; or use cooler water and warm the aggregates."
#   numbers: [water temperature needed, hottest water that may meet cement]
#   cautions: [hot-water]
package practice.cold["scalding-water"]

here if input.materials.water_temperature > data.limit.cold.hottest_water

wrong contains "it is batched straight onto the cement" if {
	here
	input.materials.hot_water_first == "cement"
}

number["water temperature needed"] := {"yours": "materials.water_temperature", "right": "figure.water_temperature_needed"}

number["hottest water that may meet cement"] := {"yours": "materials.water_temperature", "right": data.limit.cold.hottest_water}

mend["materials.hot_water_first"] := "aggregate"
