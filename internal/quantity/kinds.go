package quantity

// Kind says what a unit measures. Two units can be converted into each other
// when they are of one kind.
type Kind string

// The kinds of quantity, each with the units it is mostly written in.
const (
	Length                Kind = "length"                 // in, ft, mm, m
	Area                  Kind = "area"                   // ft2, m2
	Volume                Kind = "volume"                 // yd3, gal, m3, L
	Mass                  Kind = "mass"                   // lb, ton, kg, t
	Density               Kind = "density"                // lb/yd3, lb/ft3, bags/yd3, kg/m3
	WaterContent          Kind = "water content"          // gal/yd3, L/m3: liquid in a volume of concrete
	WaterPerCement        Kind = "water per cement"       // gal/bag, L/kg
	Pressure              Kind = "pressure"               // psi, psf, MPa, kPa
	Force                 Kind = "force"                  // lbf, kip, kN
	Temperature           Kind = "temperature"            // F, C
	TemperatureDifference Kind = "temperature difference" // dF, dC
	TemperatureRate       Kind = "temperature rate"       // F/h, C/h
	Gradient              Kind = "gradient"               // F/in, C/m
	Speed                 Kind = "speed"                  // mph, ft/h, km/h, m/s
	Time                  Kind = "time"                   // s, min, h, d, week, month, year
	Frequency             Kind = "frequency"              // rpm, vpm, Hz
	Ratio                 Kind = "ratio"                  // "" (plain), %
	Concentration         Kind = "concentration"          // ppm, ppb
	MassConcentration     Kind = "mass concentration"     // ug/m3, mg/m3, mg/L
	Evaporation           Kind = "evaporation"            // lb/ft2/h, kg/m2/h
	RValue                Kind = "r-value"                // R, RSI
	SteelArea             Kind = "steel area"             // in2/ft, mm2/m
	Coverage              Kind = "coverage"               // ft2/gal, m2/L
	Application           Kind = "application"            // gal/100 ft2, L/m2
	Rate                  Kind = "rate"                   // yd3/h, gal/min, m3/h
	AreaPerTime           Kind = "area per time"          // ft2/h, m2/h
	Permeance             Kind = "permeance"              // perm, ng/(Pa s m2)
	Permeability          Kind = "permeability"           // perm in, ng/(Pa s m)
	VaporEmission         Kind = "mverate"                // lb/1000 ft2/24 h, g/(m2 d)
	Strain                Kind = "strain"                 // millionths, in/in
	ThermalExpansion      Kind = "thermal expansion"      // millionths/F, millionths/C
	MassPerArea           Kind = "mass per area"          // lb/ft2, oz/yd2, kg/m2
	MassPerLength         Kind = "mass per length"        // lbm/ft, kg/m
	ForcePerLength        Kind = "force per length"       // lb/ft, kN/m
	Torque                Kind = "torque"                 // ft·lb, N·m
	Subgrade              Kind = "subgrade"               // pci, MPa/m
	AdmixtureDose         Kind = "admixture dose"         // fl oz/cwt, mL/100 kg
	Energy                Kind = "energy"                 // J/g, Btu/lb: heat per mass
	Heat                  Kind = "heat"                   // Btu, kWh, kJ
	Power                 Kind = "power"                  // hp, Btu/h, kW
	HeatFlux              Kind = "heat flux"              // Btu/h/ft2, W/m2
	HeatTransfer          Kind = "heat transfer"          // Btu/h/ft2/F, W/m2/K
	ThermalConductivity   Kind = "thermal conductivity"   // Btu/h/ft/F, W/m/K
	SpecificHeat          Kind = "specific heat"          // Btu/lb/F, kJ/kg/K
	DegreeHours           Kind = "degree-hours"           // F·h, C·h
	DegreeDays            Kind = "degree-days"            // F·d, C·d
	Slope                 Kind = "slope"                  // in/ft, mm/m, % slope
	Angle                 Kind = "angle"                  // deg, rad
	SpecificSurface       Kind = "specific surface"       // ft2/lb, m2/kg
	Charge                Kind = "charge"                 // coulomb
	Resistivity           Kind = "resistivity"            // kohm·cm, ohm·m
	Fuel                  Kind = "fuel"                   // mpg, km/L
	Count                 Kind = "count"                  // 1, rev, truck, cylinder, pass
	Money                 Kind = "money"                  // $
	PricePerVolume        Kind = "price per volume"       // $/yd3, $/m3
	PricePerArea          Kind = "price per area"         // $/ft2, $/m2
	PricePerLength        Kind = "price per length"       // $/ft, $/m
	PricePerMass          Kind = "price per mass"         // $/lb, $/ton, $/kg
	PricePerTime          Kind = "price per time"         // $/h, $/d
)

// phrase names a kind in a sentence: "a length", "an area".
func (k Kind) phrase() string {
	switch k {
	case Ratio:
		return "a plain ratio"
	case Money:
		return "a sum of money"
	case RValue:
		return "an R-value"
	case VaporEmission:
		return "a moisture vapor emission rate"
	case DegreeHours, DegreeDays:
		return "a number of " + string(k)
	case Fuel:
		return "a fuel economy"
	}
	switch k[0] {
	case 'a', 'e', 'i', 'o':
		return "an " + string(k)
	}
	return "a " + string(k)
}
