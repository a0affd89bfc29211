package heat

import "math"

// Hydration is the three-parameter model of the heat that cementitious material sets free: degree of hydration
// Ultimate·exp(-(Tau/t)^Beta) at the equivalent age t in hours at 21.1 °C (A. K. Schindler and K. J. Folliard, ACI
// Materials Journal, 2005).
type Hydration struct {
	Ultimate   float64 // ultimate degree of hydration, up to 1
	Tau        float64 // h
	Beta       float64
	Total      float64 // heat at full hydration, J/kg of cementitious material
	Activation float64 // apparent activation energy, J/mol
}

// hydrationReference is the temperature at which Tau counts, K.
const hydrationReference = 273.15 + 21.1

// gasConstant in J/mol·K.
const gasConstant = 8.314

// Degree is the degree of hydration at an equivalent age in hours at 21.1 °C.
func (h Hydration) Degree(age float64) float64 {
	if age <= 0 || h.Ultimate == 0 {
		return 0
	}
	return h.Ultimate * math.Exp(-math.Exp(h.Beta*math.Log(h.Tau/age)))
}

// Released is the heat set free at an equivalent age in hours at 21.1 °C, J/kg of cementitious material.
func (h Hydration) Released(age float64) float64 { return h.Total * h.Degree(age) }

// Rate is the speed of hydration at a temperature in °C, 1 at 21.1 °C.
func (h Hydration) Rate(celsius float64) float64 {
	return math.Exp(-h.Activation / gasConstant * (1/(celsius+273.15) - 1/hydrationReference))
}

// Cement is a cementitious material. The compounds are fractions of the portland cement by mass, FlyAsh and Slag
// fractions of all cementitious material.
type Cement struct {
	C3S, C2S, C3A, C4AF, SO3, FreeLime, MgO float64
	Blaine                                  float64 // fineness, m²/kg
	FlyAsh, FlyAshLime, Slag                float64 // FlyAshLime: CaO of the fly ash, a fraction
}

// Hydration gives the parameters of the model for a water-cement ratio by Schindler's regressions; the ultimate degree
// is that of R. H. Mills.
func (c Cement) Hydration(wcm float64) Hydration {
	ultimate := 1.031*wcm/(0.194+wcm) + 0.50*c.FlyAsh + 0.30*c.Slag
	tau := 66.78 * math.Pow(c.C3A, -0.154) * math.Pow(c.C3S, -0.401) * math.Pow(c.Blaine, -0.804) *
		math.Pow(c.SO3, -0.758) * math.Exp(2.187*c.Slag+9.50*c.FlyAsh*c.FlyAshLime)
	beta := 181.4 * math.Pow(c.C3A, 0.146) * math.Pow(c.C3S, 0.227) * math.Pow(c.Blaine, -0.535) *
		math.Pow(c.SO3, 0.558) * math.Exp(-0.647*c.Slag)
	scm := 1 - 1.05*c.FlyAsh*(1-c.FlyAshLime/0.40) + 0.40*c.Slag
	return Hydration{
		Ultimate: math.Min(ultimate, 1), Tau: tau, Beta: beta,
		Total:      1000 * (c.clinkerHeat()*(1-c.FlyAsh-c.Slag) + 461*c.Slag + 1800*c.FlyAshLime*c.FlyAsh),
		Activation: 22100 * scm * math.Pow(c.C3A, 0.30) * math.Pow(c.C4AF, 0.25) * math.Pow(c.Blaine, 0.35),
	}
}

// clinkerHeat is the heat of complete hydration of the portland cement, J/g (Bogue).
func (c Cement) clinkerHeat() float64 {
	return 500*c.C3S + 260*c.C2S + 866*c.C3A + 420*c.C4AF + 624*c.SO3 + 1186*c.FreeLime + 850*c.MgO
}

// CementType gives a typical composition of a type of cement: "I", "II", "III", "IV", "V" or "IL". The compounds and
// the fineness of Types I to V are averages of a survey of North American cements (Design and Control of Concrete
// Mixtures, EB001, table of average compositions); Type IL is Type I with a tenth of limestone, ground finer. ok is
// false for any other name.
func CementType(name string) (c Cement, ok bool) {
	switch name {
	case "I":
		c = Cement{C3S: 0.54, C2S: 0.18, C3A: 0.10, C4AF: 0.08, SO3: 0.030, Blaine: 369}
	case "II":
		c = Cement{C3S: 0.55, C2S: 0.19, C3A: 0.06, C4AF: 0.11, SO3: 0.027, Blaine: 377}
	case "III":
		c = Cement{C3S: 0.55, C2S: 0.17, C3A: 0.09, C4AF: 0.08, SO3: 0.035, Blaine: 548}
	case "IV":
		c = Cement{C3S: 0.42, C2S: 0.32, C3A: 0.04, C4AF: 0.15, SO3: 0.022, Blaine: 340}
	case "V":
		c = Cement{C3S: 0.54, C2S: 0.22, C3A: 0.04, C4AF: 0.13, SO3: 0.023, Blaine: 373}
	case "IL":
		c = Cement{C3S: 0.49, C2S: 0.16, C3A: 0.09, C4AF: 0.07, SO3: 0.030, Blaine: 440}
	default:
		return Cement{}, false
	}
	c.FreeLime, c.MgO = 0.01, 0.02
	return c, true
}
