# METADATA
# scope: package
# title: The apron is too thin
# custom:
#   stage: order
#   severity: fix
#   why: "Garbage trucks drive over the sidewalk; a thin apron breaks under them."
#   do: "Make it thicker where it crosses the sidewalk."
#   numbers: [thickness]
#   cautions: [TOPIC-traffic]
package practice.TOPIC["thin-apron"]

here if {
	input.member.use == "driveway"
	input.TOPIC.apron == true
}

wrong contains "it is thinner than the sidewalk needs" if {
	here
	input.member.thickness < data.limit.TOPIC.apron_thickness
}

number["thickness"] := {"yours": "member.thickness", "right": data.limit.TOPIC.apron_thickness, "unit": "in"}

mend["member.thickness"] := data.limit.TOPIC.apron_thickness
