# METADATA
# scope: package
# title: Water goes in after part of the load is out
# custom:
#   stage: during
#   severity: stop
#   why: "Nobody knows how much is left in the drum, so nobody knows what ratio the rest gets, and the test sample was taken from the drier part. The last yards can be far weaker than the first."
#   do: "Leave the water out and finish the load as it is, or send the rest back. Settle the slump before anything but the test sample is discharged."
#   numbers: [concrete that may be out before water goes in, water allowed after that, share discharged, w/cm of the rest, strength lost by the rest]
#   costs: [rejected_load_cost]
package practice.water["after-discharge"]

here if input.water.added > 0

wrong contains "part of the load was discharged before the water went in" if {
	here
	input.water.moment == "after discharge"
}

number["concrete that may be out before water goes in"] := {"yours": "water.discharged", "right": data.limit.water.first_portion, "unit": "yd3"}

number["water allowed after that"] := {"yours": "water.added", "right": data.limit.water.late_water, "unit": "gal"}

number["share discharged"] := {"yours": "figure.share_discharged"}

number["w/cm of the rest"] := {"yours": "figure.wcm_of_rest", "right": "order.ratio_limit"}

number["strength lost by the rest"] := {"yours": "figure.rest_strength_lost"}

mend["water.added"] := data.limit.water.late_water

mend["water.purpose"] := "none"
