# METADATA
# scope: package
# title: An outdoor slab is troweled smooth or worked too often
# custom:
#   stage: during
#   severity: fix
#   why: "Every pass brings up fines and drives out the air that protects the top. What is left is a dense, slick skin over wet concrete: it scales in the first winters, and people slip on it."
#   do: "Outdoors order a float and broom finish: bull float before bleeding starts, edge and float once after it ends, broom, and leave it alone."
#   numbers: [passes]
package practice.finish["overworked-outdoors"]

here if {
	data.trade.flatwork
	input.exposure.outdoors == true
}

wrong contains "it is to be steel-troweled" if {
	here
	input.finish.final in {"light trowel", "hard trowel"}
}

wrong contains "it is worked over too often" if {
	here
	input.finish.passes > data.limit.finish.most_passes_outdoors
}

number["passes"] := {"yours": "finish.passes", "right": data.limit.finish.most_passes_outdoors}

mend["finish.final"] := "broom" if input.finish.final in {"light trowel", "hard trowel"}

mend["finish.passes"] := data.limit.finish.most_passes_outdoors if input.finish.passes > data.limit.finish.most_passes_outdoors
