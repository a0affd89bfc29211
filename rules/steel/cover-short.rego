# METADATA
# scope: package
# title: Too little concrete covers the steel
# custom:
#   stage: before
#   severity: fix
#   engineer: true
#   why: "The concrete over the steel keeps water, salt and air away from it. Where it is thin the steel rusts, and rust takes more room than steel and pushes the concrete off."
#   do: "Set chairs and spacers to the cover of the exposure, and measure it before the concrete comes: {3 in} against the ground it is cast on."
#   numbers: [least cover, cover given]
package practice.steel["cover-short"]

here if input.metal.reinforced == true

wrong contains "the cover is less than this exposure needs" if {
	here
	input.steel.cover < input.figure.least_cover
}

number["least cover"] := {"yours": "steel.cover", "right": "range.least_cover.high"}

number["cover given"] := {"yours": "steel.cover"}

mend["steel.cover"] := input.range.least_cover.high
