package words

import (
	"slices"

	"hearsay/internal/heat"
)

// What is taken for granted and takes a sum; the rest stands in corpus/unsaid.yaml.

// computed states it.
func (s *solver) computed(k known) {
	if t := k.mixed(); t != "" && !k.knows("load.temperature") {
		k.take("load.temperature", t, "materials.water_temperature", "concrete as warm as its ingredients make it")
	}
	if !k.knows("strength.cores_judged_by") && k.speaks(s.unsaidWords["reject"]) && k.coresPass() {
		k.take("strength.cores_judged_by", "cylinder limit", "strength.cores", "judged by the full specified strength, since cores that pass are to be rejected")
	}
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

// What cores must reach of the specified strength by ACI 318: three of them on average, and each.
const (
	meanOfCores  = 0.85
	leastOfCores = 0.75
)
