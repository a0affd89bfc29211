# METADATA
# scope: package
# title: The driveway has no permit
# custom:
#   stage: order
#   severity: stop
#   why: "Work without a permit can be stopped with the truck on the road."
#   do: "Get the permit first."
package practice.TOPIC["no-permit"]

here if input.member.use == "driveway"

wrong contains "no permit was given" if {
	here
	input.TOPIC.permit == false
}

mend["TOPIC.permit"] := true
