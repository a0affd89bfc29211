package words

import (
	"slices"
	"strings"

	"hearsay/internal/heat"
)

// What goes without saying, subject by subject; each list may build on those before it.

// unsaidPlace is about the member and the place where it stands.
var unsaidPlace = []unsaid{
	{
		path: "member.kind", value: "slab on ground", from: "joints.spacing", note: "a slab on the ground, since it is jointed and nothing says that it is held up",
		when: func(k known) bool {
			jointed := k.knows("joints.spacing") || k.knows("joints.panel_length") || k.knows("joints.depth") || k.knows("joints.cut_after")
			return jointed && k.nothingElse()
		},
	},
	{
		path: "member.kind", value: "slab on ground", from: "steel.position", note: "a slab on the ground, since its steel lies on it",
		when: func(k known) bool { return k.is("steel.position", "on the ground", "pulled up") && k.nothingElse() },
	},
	{
		path: "member.kind", value: "slab on ground", from: "member.thickness", note: "a slab on the ground, by its size",
		when: func(k known) bool {
			return k.below("member.thickness", thickPad) && k.above("member.length", leastSlab) && k.above("member.width", leastSlab) && k.nothingElse()
		},
	},
	{
		path: "weather.low", from: "weather.air", note: "no colder overnight than now, since no low is told",
		when: func(k known) bool {
			return k.below("weather.air", cool) && !k.knows("weather.forecast") && (k.speaks(weatherWords) || strings.ContainsAny(k.out.Facts[k.stated["weather.air"]].Text, "°F"))
		},
		like: func(k known) string { return k.same("F", "weather.air") },
	},
	{
		path: "member.kind", value: "slab on ground", from: "member.use", note: "a slab on the ground, as pads so thin are",
		when: func(k known) bool {
			return k.is("member.use", "equipment pad") && k.below("member.thickness", thickPad)
		},
	},
	{
		path: "exposure.freezes", value: "yes", from: "exposure.outdoors", note: "freezing in service, since it is outdoors where it freezes now",
		when: func(k known) bool { return k.is("exposure.outdoors", "yes") && k.frost() },
	},
	{
		path: "order.air", from: "load.air", note: "ordered with the air that was measured, since nothing else is told of it",
		when: func(k known) bool { return k.knows("load.air") && k.is("exposure.freezes", "yes") },
		like: func(k known) string {
			air, _ := k.number("load.air")
			return plainNumber(air) + " %"
		},
	},
	{
		path: "exposure.moist", value: "yes", from: "member.use", note: "moist in service, since it is outdoors or in the ground",
		when: func(k known) bool {
			about := k.knows("mix.chloride") || k.knows("mix.other_chloride") || k.is("cold.accelerator", "calcium chloride") || k.knows("mix.reactive") || k.knows("mix.expansion")
			return about && (k.is("exposure.outdoors", "yes") || k.is("member.use", "footing", "pier", "foundation wall", "retaining wall", "tank"))
		},
	},
	{
		path: "steel.cover_against", value: "cast on ground", from: "steel.cover", note: "the cover to the ground that it is cast on",
		when: func(k known) bool { return k.knows("steel.cover") && k.is("member.use", "footing", "pier") },
	},
	{
		path: "steel.cover_against", value: "weather", from: "steel.cover", note: "the cover to a face that meets weather or earth",
		when: func(k known) bool {
			return k.knows("steel.cover") && (k.is("member.use", "foundation wall", "retaining wall") ||
				k.is("exposure.outdoors", "yes") && k.is("member.kind", "suspended slab", "wall", "column", "beam"))
		},
	},
	{
		path: "steel.cover_against", value: "indoors", from: "steel.cover", note: "the cover to indoor air",
		when: func(k known) bool {
			return k.knows("steel.cover") && k.is("exposure.outdoors", "no") && k.is("member.kind", "suspended slab", "wall", "column", "beam")
		},
	},
}

// unsaidCold is about frost: what covers it, and what it is relied on to stand.
var unsaidCold = []unsaid{
	{
		path: "cold.chloride_dose", value: "1 %", from: "cold.accelerator", note: "a dose of 1 %, the least that is usual, since none is told",
		when: func(k known) bool {
			return k.is("cold.accelerator", "calcium chloride") && k.is("metal.reinforced", "yes")
		},
	},
	{
		path: "cold.relied_on", value: "yes", from: "cold.accelerator", note: "relied on against frost, since nothing else is there against it",
		when: func(k known) bool {
			return k.is("cold.accelerator", "calcium chloride", "non-chloride") && k.is("protection.cover", "none") && k.frost()
		},
	},
	{
		path: "protection.cover", value: "none", from: "cold.relied_on", note: "uncovered, since the accelerator is to do without a cover",
		when: func(k known) bool { return k.is("cold.relied_on", "yes") && !k.speaks(coverWords) },
	},
	{
		path: "protection.cover", value: "none", from: "cure.method", note: "without a cover against the cold, since none is told",
		when: func(k known) bool {
			return k.is("cure.method", "wet", "sprinkled") && k.below("weather.low", freezing) && !k.speaks(coverWords)
		},
	},
	{
		path: "protection.service", value: "no load exposed", from: "protection.days", note: "open to freezing afterwards, since it is outdoors where it freezes",
		when: func(k known) bool { return k.knows("protection.days") && k.is("exposure.freezes", "yes") },
	},
	{
		path: "cold.accelerator", value: "none", from: "protection.days", note: "without an accelerator, since none is told",
		when: func(k known) bool { return k.knows("protection.days") && !k.speaks(hasteWords) },
	},
	{
		path: "mix.cement_type", value: "I", from: "protection.days", note: "ordinary cement, since no other is told",
		when: func(k known) bool { return k.knows("protection.days") && k.ordinaryCement() },
	},
	{
		path: "protection.removal", value: "at once", from: "protection.removal_outside", note: "uncovered at once, since nothing is told of going slowly",
		when: func(k known) bool {
			warm := k.knows("protection.slab_temperature") || k.knows("protection.enclosure_temperature")
			return warm && k.knows("protection.removal_outside") && !k.speaks(slowWords)
		},
	},
	{
		path: "safety.ventilated", value: "no", from: "protection.heater", note: "not ventilated, since nothing is told of that",
		when: func(k known) bool {
			return k.is("protection.heater", "unvented") && k.is("safety.people_in_enclosure", "yes") && !k.speaks(airWords)
		},
	},
}

// unsaidFresh is about placing and finishing.
var unsaidFresh = []unsaid{
	{
		path: "load.temperature", from: "materials.water_temperature", note: "concrete as warm as its ingredients make it",
		when: func(k known) bool { return true },
		like: known.mixed,
	},
	{
		path: "load.temperature", from: "weather.air", note: "concrete as warm as the air and no warmer than {95 F}, since its temperature is not told",
		when: func(k known) bool { return k.drying() && k.above("weather.air", mild) && !k.knows("weather.forecast") },
		like: func(k known) string {
			air, _ := k.number("weather.air")
			return plainNumber(min(air, hottest)) + " F"
		},
	},
	{
		path: "finish.drying_measure", value: "none", from: "weather.wind", note: "left to dry as it will, since nothing is told against it",
		when: func(k known) bool { return k.drying() && !k.speaks(dampWords) },
	},
	{
		path: "ground.dampened", value: "no", from: "ground.dry_and_hot", note: "not dampened, since nothing is told of that",
		when: func(k known) bool { return k.is("ground.dry_and_hot", "yes") && !k.speaks(wetWords) },
	},
	{
		path: "finish.working_on", value: "yes", from: "finish.bleed_water", note: "worked on meanwhile",
		when: func(k known) bool {
			return k.is("finish.bleed_water", "on the slab", "rising") && (k.is("finish.cement_dusted", "yes") || k.is("finish.water_sprinkled", "yes") || k.knows("finish.machine"))
		},
	},
	{
		path: "finish.final", value: "hard trowel", from: "finish.machine", note: "a hard steel trowel finish, as a troweling machine leaves it",
		when: func(k known) bool {
			return k.is("finish.machine", "walk-behind", "riding") && k.speaks(trowelWords) && !k.speaks(floatWords)
		},
	},
	{
		path: "finish.rain_cover", value: "no", from: "weather.rain_in", note: "without a cover against rain on site, since none is told",
		when: func(k known) bool {
			return (k.knows("weather.rain_in") || k.is("weather.rain", "yes")) && !k.speaks(sheetWords)
		},
	},
}

// unsaidWater is about the order, its water and its age.
var unsaidWater = []unsaid{
	{
		path: "order.slump_raised_with", value: "admixture", from: "order.reducer", note: "made to flow by its water reducer",
		when: func(k known) bool { return k.is("order.reducer", "mid", "high") && k.knows("order.slump") },
	},
	{
		path: "order.slump_raised_with", value: "nothing", from: "order.slump", note: "without an admixture that makes it flow, since none is told",
		when: func(k known) bool { return k.above("order.slump", wettest) && !k.speaks(flowWords) },
	},
	{
		path: "water.purpose", value: "lost to heat", from: "load.slump", note: "making up for slump lost to heat, since it came stiffer than ordered in heat",
		when: known.lostToHeat,
	},
	{
		path: "water.wash_counted", value: "no", from: "water.wash", note: "not counted as mixing water, since nothing is told of that",
		when: func(k known) bool { return k.above("water.wash", 0) && !k.speaks(countWords) },
	},
	{
		path: "load.limit_source", value: "standard", from: "load.age", note: "held to the {90 min} of ASTM C94, since no other limit is told",
		when: func(k known) bool { return k.timed() },
	},
	{
		path: "job.delivery_standard", value: "2013 to 2020", from: "load.age", note: "ordered by an edition of ASTM C94 that sets {90 min}, since no other is told",
		when: func(k known) bool { return k.is("load.limit_source", "standard") && k.timed() },
	},
	{
		path: "load.limit_waived", value: "no", from: "load.age", note: "held to its time limit, since nobody is told to have set it aside",
		when: func(k known) bool { return k.is("load.limit_source", "standard") && k.timed() },
	},
	{
		path: "mix.reaction_measure", value: "none", from: "mix.reactive", note: "without a measure against alkali reaction, since its cement has nothing beside it",
		when: func(k known) bool {
			return (k.is("mix.reactive", "yes") || k.knows("mix.expansion")) && k.straight() && !k.speaks(alkaliWords)
		},
	},
}

// unsaidFloor is about floors that are covered.
var unsaidFloor = []unsaid{
	{
		path: "floor.judged_by", value: "age", from: "floor.days_to_covering", note: "judged by its age, since no test is told",
		when: func(k known) bool {
			return k.knows("floor.covering") && !k.is("floor.covering", "none") && (k.knows("floor.days_to_covering") || k.knows("floor.drying_days")) && !k.speaks(testWords)
		},
	},
	{
		path: "floor.conditioned_hours", value: "0 h", from: "floor.room_temperature", note: "not at service conditions, since the room is too cold or too hot for that",
		when: func(k known) bool {
			return k.is("floor.judged_by", "probes", "dome") && (k.below("floor.room_temperature", coldRoom) || k.above("floor.room_temperature", hotRoom))
		},
	},
	{
		path: "floor.conditioned_room", value: "yes", from: "member.use", note: "the floor of a heated room",
		when: func(k known) bool {
			return k.knows("floor.retarder") && k.is("member.use", "house floor", "basement floor")
		},
	},
}

// unsaidLater is about what comes after.
var unsaidLater = []unsaid{
	{
		path: "cure.method", value: "compound", from: "cure.delay", note: "curing compound, since a cure is told and nothing that keeps it wet",
		when: func(k known) bool { return k.knows("cure.delay") && k.speaks(compoundWords) && !k.speaks(wetCureWords) },
	},
	{
		path: "steel.kind", value: "none", from: "joints.made", note: "without steel, since none is told",
		when: func(k known) bool {
			return (k.is("joints.made", "no") || k.knows("joints.spacing")) && k.is("member.kind", "slab on ground") && !k.speaks(steelWords)
		},
	},
	{
		path: "safety.upright_bars", value: "yes", from: "safety.bars_capped", note: "bars that stand upright, since their caps are spoken of",
		when: func(k known) bool { return k.is("safety.bars_capped", "no") },
	},
	{
		path: "order.strength", value: "4000 psi", from: "strength.action_after", note: "concrete of {4000 psi}, since its strength is not told",
		when: func(k known) bool {
			return k.knows("strength.action_after") && k.is("strength.action", "walk", "car", "truck", "load") && !k.knows("mix.cementitious")
		},
	},
	{
		path: "mix.cement_type", value: "I", from: "cure.days", note: "ordinary cement, since no other is told",
		when: func(k known) bool {
			return (k.above("cure.days", 0) || k.knows("strength.action_after")) && k.ordinaryCement()
		},
	},
	{
		path: "cure.temperature", from: "strength.action_after", note: "concrete as warm as the air around it, since nothing else is told",
		when: func(k known) bool { return k.knows("strength.action_after") && !k.speaks(coverWords) },
		like: func(k known) string { return k.same("F", "weather.mean", "weather.air") },
	},
	{
		path: "cure.surface_temperature", from: "cure.water_temperature", note: "as warm as it was placed, since nothing else is told",
		when: func(k known) bool { return k.knows("cure.water_temperature") },
		like: func(k known) string { return k.same("F", "load.temperature") },
	},
	{
		path: "strength.rejected", value: "yes", from: "order.strength", note: "to be rejected for its tests",
		when: func(k known) bool {
			return k.knows("order.strength") && (k.knows("strength.tests") || k.knows("strength.lowest")) && k.speaks(rejectWords)
		},
	},
	{
		path: "strength.cores_judged_by", value: "cylinder limit", from: "strength.cores", note: "judged by the full specified strength, since cores that pass are to be rejected",
		when: func(k known) bool { return k.speaks(rejectWords) && k.coresPass() },
	},
	{
		path: "safety.designer_agreed", value: "no", from: "safety.supports_removed", note: "without the designer's word, since nothing is told of that",
		when: func(k known) bool { return k.is("safety.supports_removed", "yes") && !k.speaks(designerWords) },
	},
}

// nothingElse says whether the text speaks of no member but a slab on the ground, and the job neither.
func (k known) nothingElse() bool {
	return !k.knows("member.use") && !k.knows("member.kind") && !k.knows("safety.elevated") && !k.knows("safety.span") && !k.speaks(heldUp) && !k.speaks(otherMembers)
}

// drying says whether the air over fresh flatwork is told.
func (k known) drying() bool {
	return k.is("member.kind", "slab on ground", "suspended slab", "topping") && k.knows("weather.wind") && (k.knows("weather.humidity") || k.knows("weather.dew_point"))
}

// ordinaryCement says whether nothing speaks for any other cement.
func (k known) ordinaryCement() bool {
	for _, path := range []string{"exposure.sulfate_soil", "exposure.sulfate_water", "exposure.seawater", "mix.sulfate_resistance", "mix.fly_ash", "mix.slag", "mix.silica_fume",
		"mix.fly_ash_share", "mix.slag_share", "mix.silica_fume_share"} {
		if k.above(path, 0) || k.knows(path) && !k.below(path, 1) {
			return false
		}
	}
	return !k.speaks(cementWords)
}

// straight says whether the cement is told to have nothing beside it.
func (k known) straight() bool {
	return k.below("mix.fly_ash", 1) && !k.above("mix.slag", 0) || k.speaks(straightWords) && !k.above("mix.fly_ash", 0) && !k.above("mix.fly_ash_share", 0) && !k.above("mix.slag", 0) && !k.above("mix.slag_share", 0)
}

// lostToHeat says whether water is to make up for slump that heat has taken, beyond what was held back for that.
func (k known) lostToHeat() bool {
	ordered, ok := k.number("order.slump")
	if !ok || !k.above("water.added", 0) || !k.below("load.slump", ordered) || !k.above("load.temperature", hot) && !k.above("weather.air", hot) {
		return false
	}
	added, _ := k.number("water.added")
	for _, path := range []string{"water.withheld", "water.allowed"} {
		if ticket, told := k.number(path); told && added <= ticket {
			return false
		}
	}
	return true
}

// mixed is the temperature of the concrete as its ingredients make it, where all of them are told.
func (k known) mixed() string {
	n := map[string]float64{}
	for _, path := range []string{"mix.cementitious", "mix.water", "materials.cement_temperature", "materials.aggregate_temperature", "materials.water_temperature"} {
		v, ok := k.number(path)
		if !ok {
			return ""
		}
		n[path] = v
	}
	const usualAggregate = 3050 // lb in a yard
	aggregate := usualAggregate + 0.0
	if sand, ok := k.number("mix.fine_aggregate"); ok {
		if stone, ok := k.number("mix.coarse_aggregate"); ok {
			aggregate = sand + stone
		}
	}
	celsius := func(f float64) float64 { return (f - 32) / 1.8 }
	t, err := heat.Ingredients{Cement: n["mix.cementitious"], CementAt: celsius(n["materials.cement_temperature"]), Aggregate: aggregate,
		AggregateAt: celsius(n["materials.aggregate_temperature"]), Water: n["mix.water"], WaterAt: celsius(n["materials.water_temperature"])}.Temperature()
	if err != nil || t < 0 {
		return ""
	}
	return plainNumber(round(t*1.8+32)) + " F"
}

// same gives the first of the quantities that is known.
func (k known) same(unit string, paths ...string) string {
	for _, path := range paths {
		if n, ok := k.number(path); ok {
			return plainNumber(n) + " " + unit
		}
	}
	return ""
}

// coresPass says whether the cores told reach the shares of the specified strength that cores must reach, and less than all of it.
func (k known) coresPass() bool {
	v, _ := k.j.Value("strength.cores")
	cores, _ := v.([]float64)
	specified, ok := k.number("order.strength")
	if !ok || len(cores) == 0 {
		return false
	}
	sum := 0.0
	for _, n := range cores {
		sum += n
	}
	mean := sum / float64(len(cores)) / specified
	return mean >= meanOfCores && mean < 1 && slices.Min(cores) >= leastOfCores*specified
}

// timed says whether the age of a load is told, and nothing of its limit or of what would stretch it.
func (k known) timed() bool {
	return k.knows("load.age") && !k.knows("load.time_limit") && !k.knows("load.waived_limit") && !k.is("order.retarder", "yes") && !k.speaks(limitWords)
}

// Numbers that part what is spoken of from what is not; none of them decides a practice.
const (
	thickPad     = 12   // in: a thicker pad is a block
	leastSlab    = 3    // ft: what is narrower is a footing
	cool         = 40   // °F
	mild         = 60   // °F: below it concrete is warmed and may be warmer than the air
	hottest      = 95   // °F: what a plant is held to
	hot          = 84   // °F
	wettest      = 5    // in: from here on people make it flow with something
	meanOfCores  = 0.85 // of the specified strength
	leastOfCores = 0.75
	coldRoom     = 65 // °F
	hotRoom      = 85 // °F
)

// The words that show a subject is spoken of after all.
var (
	coverWords    = set([]string{"blanket", "blankets", "straw", "hay", "tarp", "tarps", "tent", "tented", "enclosure", "hoarding", "heater", "heaters", "heat", "foam", "cover", "covered", "covers", "insulated", "insulation"})
	hasteWords    = set([]string{"accelerator", "accelerated", "accelerate", "calcium", "chloride", "nonchloride", "nca", "winter", "hot", "early"})
	slowWords     = set([]string{"slow", "slowly", "gradual", "gradually", "step", "steps", "stages", "taper", "ramp", "loose", "loosen", "half", "layer", "crack", "cracked"})
	airWords      = set([]string{"vent", "vented", "ventilated", "ventilation", "fan", "fans", "monitor", "detector", "open", "fresh", "co", "meter"})
	dampWords     = set([]string{"fog", "fogs", "fogger", "fogging", "mist", "misting", "misters", "evaporation", "evap", "film", "monomolecular", "windbreak", "windbreaks", "shade", "shaded", "plastic", "poly", "burlap", "tent", "screens"})
	wetWords      = set([]string{"hose", "hosed", "wet", "wetted", "wetting", "damp", "dampen", "dampened", "sprinkle", "sprinkled", "soak", "soaked", "mist", "misted", "fog", "water"})
	trowelWords   = set([]string{"trowel", "trowels", "troweling", "trowelling", "troweled", "trowelled", "helicopter", "burn", "burned", "burnish"})
	floatWords    = set([]string{"pan", "pans", "broom", "broomed", "float"})
	sheetWords    = set([]string{"plastic", "poly", "tarp", "tarps", "tent", "cover", "covers", "covered", "visqueen", "sheet", "sheets", "sheeting", "canopy", "roof"})
	flowWords     = set([]string{"plasticizer", "superplasticizer", "super", "plasticiser", "superp", "reducer", "reducing", "wr", "wra", "hrwr", "hrwra", "midrange", "mid", "admix", "admixture", "admixtures", "flow", "flowing", "scc", "juice"})
	countWords    = set([]string{"count", "counted", "account", "accounted", "deduct", "deducted", "subtract", "subtracted", "adjusted", "adjust", "held", "trimmed", "less"})
	alkaliWords   = set([]string{"lithium", "alkali", "alkalis", "alkalies", "slag", "pozzolan", "metakaolin", "fume"})
	straightWords = set([]string{"straight"})
	rejectWords   = set([]string{"reject", "rejects", "rejected", "rejecting", "remove", "removed", "tear", "tearing", "torn", "rip", "ripped", "knock", "demolish", "demolished", "jackhammer", "condemn", "condemned", "replace", "replaced"})
	weatherWords  = set([]string{"air", "outside", "out", "degrees", "degree", "temp", "temperature", "weather", "below"})
	otherMembers  = set([]string{"curb", "pier", "piers", "caisson", "caissons", "tank", "steps", "stoop", "block", "trench", "stair", "stairs", "pile"})
	compoundWords = set([]string{"cure", "compound", "spray", "sprays", "sprayed", "sprayer", "spraying"})
	wetCureWords  = set([]string{"burlap", "wet", "hose", "hoses", "sprinkler", "plastic", "poly", "visqueen", "pond", "ponded", "ponding", "flood", "paper", "sheet", "blanket", "blankets"})
	steelWords    = set([]string{"steel", "rebar", "bar", "bars", "mesh", "wire", "wwf", "wwm", "wwr", "fiber", "fibers", "fibre", "fibres", "reinforced", "reinforcing", "reinforcement", "dowel", "dowels", "mat", "mats", "cable", "cables", "tendon", "tendons"})
	testWords     = set([]string{"test", "tests", "tested", "testing", "probe", "probes", "rh", "meter", "reading", "readings", "calcium", "dome", "kit", "moisture", "emission", "percent", "taped", "dry", "look", "looks"})
	cementWords   = set([]string{"type", "high-early", "early", "iii", "v", "blended", "ash", "slag", "fume"})
	designerWords = set([]string{"engineer", "engineers", "engineered", "designer", "architect", "eor", "structural", "stamped"})
	limitWords    = set([]string{"limit", "limits", "waive", "waived", "extend", "extended", "stabilizer", "stabiliser", "stabilized", "recover", "hydration", "retarder", "allowed", "allows", "rule", "ninety"})
)
