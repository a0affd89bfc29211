# METADATA
# scope: package
# title: The base is soft, loose or uneven
# custom:
#   stage: before
#   severity: stop
#   why: "A slab is only as strong as what it lies on. Over a soft spot it bridges once, then it cracks; over fill that was not compacted it follows the fill down; over humps it is thin where it should be thick."
#   do: "Dig out soft spots, compact fill in thin layers, and grade it so that the slab has its full thickness everywhere. Roll or drive a loaded truck over it and watch for movement."
#   act: true
package practice.ground["uneven-support"]

here if input.ground.support in {"uniform", "soft spots", "uncompacted fill", "uneven"}

wrong contains "there are soft or loose spots" if {
	here
	input.ground.support == "soft spots"
}

wrong contains "the fill is not compacted" if {
	here
	input.ground.support == "uncompacted fill"
}

wrong contains "it is uneven" if {
	here
	input.ground.support == "uneven"
}

mend["ground.support"] := "uniform"
