# METADATA
# scope: package
# title: The concrete comes hotter than allowed
# custom:
#   stage: order
#   severity: fix
#   costs: [rejected_load_cost]
#   why: "Hot concrete takes more water for the same slump, stiffens on the way and sets before it can be finished. It is strong early and weaker later than the same mix placed cool."
#   do: "Have the plant cool it: chilled water or ice, shaded and sprinkled stone, cement that is not fresh from the mill. Or place at night."
#   numbers: [concrete temperature against its limit, temperature from the ingredients, mixing-water temperature that brings it down, ice that brings it down]
package practice.hot["too-hot"]

here if input.load.temperature > 0

wrong contains "it is above the highest temperature" if {
	here
	input.load.temperature > data.limit.hot.most_temperature
}

number["concrete temperature against its limit"] := {"yours": "load.temperature", "right": data.limit.hot.most_temperature}

number["temperature from the ingredients"] := {"yours": "figure.mix_temperature"}

number["mixing-water temperature that brings it down"] := {"yours": "materials.water_temperature", "right": "figure.water_temperature_for_most"}

number["ice that brings it down"] := {"right": "figure.ice_needed"}

mend["load.temperature"] := data.limit.hot.most_temperature
