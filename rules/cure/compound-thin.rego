# METADATA
# scope: package
# title: The curing compound is spread too thin
# custom:
#   stage: after
#   severity: fix
#   why: "A curing compound works by being a whole film. Stretched, it leaves pinholes and bare streaks, and a broomed surface has far more face to cover than a smooth one."
#   do: "Have the gallons on site before you start, mark off the area one pail must cover, and spray two coats at right angles, the second thin one over whatever still shows."
#   numbers: [curing compound needed, coverage]
package practice.cure["compound-thin"]

here if input.cure.method == "compound"

wrong contains "there is too little of it for this area" if {
	here
	input.figure.compound_coverage > input.figure.compound_coverage_allowed
}

number["curing compound needed"] := {"yours": "figure.compound_planned", "right": "figure.compound_needed"}

number["coverage"] := {"yours": "figure.compound_coverage", "right": "figure.compound_coverage_allowed"}

mend["cure.compound_coverage"] := data.limit.cure.compound_coverage_rough if not input.figure.compound_needed

mend["cure.compound_coverage"] := input.figure.compound_coverage_allowed if input.figure.compound_needed

mend["cure.compound_volume"] := input.figure.compound_needed
