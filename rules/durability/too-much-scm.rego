# METADATA
# scope: package
# title: There is more fly ash, slag or silica fume than deicing salt allows
# custom:
#   stage: order
#   severity: fix
#   why: "Fly ash and slag make concrete denser in the long run, but they gain strength slowly; a surface with much of them, finished by hand and salted early, scales more easily. For concrete under deicing salt the code therefore limits their share."
#   do: "Keep each and all of them within their share; what is already in a blended cement counts."
#   numbers: [share of fly ash against its limit, share of slag against its limit, share of silica fume against its limit, share of all together against its limit, share of fly ash and silica fume against its limit]
package practice.durability["too-much-scm"]

here if data.trade.salted

wrong contains "there is too much fly ash or other pozzolan" if {
	data.trade.salted
	input.figure.fly_ash_share > data.limit.durability.scm["fly ash"]
}

wrong contains "there is too much slag cement" if {
	data.trade.salted
	input.figure.slag_share > data.limit.durability.scm.slag
}

wrong contains "there is too much silica fume" if {
	data.trade.salted
	input.figure.silica_fume_share > data.limit.durability.scm["silica fume"]
}

wrong contains "all of them together are too much" if {
	data.trade.salted
	input.figure.scm_share > data.limit.durability.scm_total.all
}

wrong contains "fly ash and silica fume together are too much" if {
	data.trade.salted
	input.figure.pozzolan_share > data.limit.durability.scm_total.pozzolans
}

number["share of fly ash against its limit"] := {"yours": "figure.fly_ash_share", "right": data.limit.durability.scm["fly ash"], "unit": "%"}

number["share of slag against its limit"] := {"yours": "figure.slag_share", "right": data.limit.durability.scm.slag, "unit": "%"}

number["share of silica fume against its limit"] := {"yours": "figure.silica_fume_share", "right": data.limit.durability.scm["silica fume"], "unit": "%"}

number["share of all together against its limit"] := {"yours": "figure.scm_share", "right": data.limit.durability.scm_total.all, "unit": "%"}

number["share of fly ash and silica fume against its limit"] := {"yours": "figure.pozzolan_share", "right": data.limit.durability.scm_total.pozzolans, "unit": "%"}

mend["mix.fly_ash_share"] := input.figure.fly_ash_allowed if input.mix.fly_ash_share > input.figure.fly_ash_allowed

mend["mix.slag_share"] := input.figure.slag_allowed if input.mix.slag_share > input.figure.slag_allowed

mend["mix.silica_fume_share"] := input.figure.silica_fume_allowed if input.mix.silica_fume_share > input.figure.silica_fume_allowed

mend["mix.fly_ash"] := input.figure.fly_ash_allowed_mass if input.mix.fly_ash > input.figure.fly_ash_allowed_mass

mend["mix.slag"] := input.figure.slag_allowed_mass if input.mix.slag > input.figure.slag_allowed_mass

mend["mix.silica_fume"] := input.figure.silica_fume_allowed_mass if input.mix.silica_fume > input.figure.silica_fume_allowed_mass

mend["mix.portland"] := input.figure.portland_allowed_mass if input.mix.portland < input.figure.portland_allowed_mass
