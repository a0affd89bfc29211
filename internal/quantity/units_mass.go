package quantity

// Sizes of the units of mass and force, in kg and N; exact by definition.
// The bag is the 94 lb bag of portland cement of the United States.
const (
	lb   = 0.45359237
	oz   = lb / 16
	ton  = 2000 * lb
	cwt  = 100 * lb
	bag  = 94 * lb
	grav = 9.80665
	lbf  = lb * grav
	psi  = lbf / in2
	inHg = 13595.1 * grav * inch                // mercury of 13.5951 g/cm3
	perm = lb / 7000 / hour / ft2 / inHg * 1e12 // grain per hour, ft2 and inHg
)

// massUnits are the units of mass, force and what is made of them. Bases:
// kg, N, Pa and the plain SI products of those.
var massUnits = []unit{
	{"lb", Mass, lb, "lb", "kg", "", "lbm", 0},
	{"oz", Mass, oz, "oz", "g", "", "", 0},
	{"cwt", Mass, cwt, "cwt", "kg", "", "", 0},
	{"ton", Mass, ton, "ton", "t", "", "", 0},
	{"long ton", Mass, 2240 * lb, "ton", "t", "", "", 0},
	{"mg", Mass, 1e-6, "oz", "mg", "", "", 0},
	{"g", Mass, 1e-3, "oz", "g", "", "", 0},
	{"kg", Mass, 1, "lb", "kg", "", "", 0},
	{"t", Mass, 1e3, "ton", "t", "", "", 0},

	{"lb/yd3", Density, lb / yd3, "lb/yd3", "kg/m3", "", "lb/yd|pcy", 0},
	{"lb/ft3", Density, lb / ft3, "lb/ft3", "kg/m3", "", "pcf", 0},
	{"lb/gal", Density, lb / gal, "lb/gal", "kg/L", "", "", 0},
	{"bags/yd3", Density, bag / yd3, "bags/yd3", "kg/m3", "", "bags/yd", 0},
	{"kg/m3", Density, 1, "lb/yd3", "kg/m3", "", "", 0},
	{"g/L", Density, 1, "lb/ft3", "g/L", "", "", 0},
	{"g/cm3", Density, 1e3, "lb/ft3", "g/cm3", "", "g/mL", 0},
	{"kg/L", Density, 1e3, "lb/gal", "kg/L", "", "", 0},
	{"t/m3", Density, 1e3, "lb/ft3", "t/m3", "", "", 0},
	{"ug/m3", MassConcentration, 1e-9, "", "", "", "", 0},
	{"mg/m3", MassConcentration, 1e-6, "", "", "", "", 0},
	{"mg/L", MassConcentration, 1e-3, "", "", "", "", 0},

	{"gal/yd3", WaterContent, gal / yd3, "gal/yd3", "L/m3", "", "gal/yd", 0},
	{"fl oz/yd3", WaterContent, flOz / yd3, "fl oz/yd3", "mL/m3", "", "fl oz/yd|oz/yd3|oz/yd", 0},
	{"L/m3", WaterContent, 1e-3, "gal/yd3", "L/m3", "", "", 0},
	{"mL/m3", WaterContent, 1e-6, "fl oz/yd3", "mL/m3", "", "", 0},
	{"gal/bag", WaterPerCement, gal / bag, "gal/bag", "L/kg", "", "", 0},
	{"L/kg", WaterPerCement, 1e-3, "gal/bag", "L/kg", "", "", 0},
	{"fl oz/cwt", AdmixtureDose, flOz / cwt, "fl oz/cwt", "mL/100 kg", "", "oz/cwt|fl oz/100 lb|oz/100 lb", 0},
	{"mL/100 kg", AdmixtureDose, 1e-8, "fl oz/cwt", "mL/100 kg", "", "", 0},
	{"mL/kg", AdmixtureDose, 1e-6, "fl oz/cwt", "mL/kg", "", "", 0},

	{"lbf", Force, lbf, "lbf", "N", "", "", 0},
	{"kip", Force, 1000 * lbf, "kip", "kN", "", "", 0},
	{"N", Force, 1, "lbf", "N", "", "", 0},
	{"kN", Force, 1e3, "kip", "kN", "", "", 0},
	{"psi", Pressure, psi, "psi", "MPa", "", "lb/in2|lbf/in2", 0},
	{"ksi", Pressure, 1000 * psi, "ksi", "MPa", "", "kip/in2", 0},
	{"psf", Pressure, lbf / ft2, "psf", "kPa", "", "lbf/ft2", 0},
	{"ksf", Pressure, 1000 * lbf / ft2, "ksf", "kPa", "", "kip/ft2", 0},
	{"inHg", Pressure, inHg, "inHg", "kPa", "", "in Hg|inches of mercury", 0},
	{"Pa", Pressure, 1, "psf", "Pa", "", "N/m2", 0},
	{"hPa", Pressure, 100, "inHg", "hPa", "", "mbar|millibar|millibars", 0},
	{"kPa", Pressure, 1e3, "psf", "kPa", "", "kN/m2", 0},
	{"MPa", Pressure, 1e6, "psi", "MPa", "", "N/mm2|MN/m2", 0},
	{"GPa", Pressure, 1e9, "ksi", "GPa", "", "", 0},

	{"lb/ft", ForcePerLength, lbf / foot, "lb/ft", "kN/m", "", "plf|lbf/ft", 0},
	{"lb/in", ForcePerLength, lbf / inch, "lb/in", "N/mm", "", "pli|lbf/in", 0},
	{"kip/ft", ForcePerLength, 1000 * lbf / foot, "kip/ft", "kN/m", "", "klf", 0},
	{"N/mm", ForcePerLength, 1e3, "lb/in", "N/mm", "", "", 0},
	{"N/m", ForcePerLength, 1, "lb/ft", "N/m", "", "", 0},
	{"kN/m", ForcePerLength, 1e3, "lb/ft", "kN/m", "", "", 0},
	{"ft·lb", Torque, lbf * foot, "ft·lb", "N·m", "", "ft lbf", 0},
	{"in·lb", Torque, lbf * inch, "in·lb", "N·m", "", "in lbf", 0},
	{"kip·ft", Torque, 1000 * lbf * foot, "kip·ft", "kN·m", "", "", 0},
	{"N·m", Torque, 1, "ft·lb", "N·m", "", "", 0},
	{"kN·m", Torque, 1e3, "kip·ft", "kN·m", "", "", 0},
	{"pci", Subgrade, psi / inch, "pci", "MPa/m", "", "lb/in3|lbf/in3|psi/in", 0},
	{"MPa/m", Subgrade, 1e6, "pci", "MPa/m", "", "kPa/mm", 0},
	{"kPa/m", Subgrade, 1e3, "pci", "kPa/m", "", "kN/m3", 0},

	{"lb/ft2", MassPerArea, lb / ft2, "lb/ft2", "kg/m2", "", "", 0},
	{"lb/100 ft2", MassPerArea, lb / ft2 / 100, "lb/100 ft2", "kg/m2", "", "", 0},
	{"lb/yd2", MassPerArea, lb / yd2, "lb/yd2", "kg/m2", "", "", 0},
	{"oz/yd2", MassPerArea, oz / yd2, "oz/yd2", "g/m2", "", "", 0},
	{"oz/ft2", MassPerArea, oz / ft2, "oz/ft2", "g/m2", "", "", 0},
	{"kg/m2", MassPerArea, 1, "lb/ft2", "kg/m2", "", "", 0},
	{"g/m2", MassPerArea, 1e-3, "oz/yd2", "g/m2", "", "", 0},
	{"lbm/ft", MassPerLength, lb / foot, "lbm/ft", "kg/m", "lb/ft", "", 0},
	{"kg/m", MassPerLength, 1, "lbm/ft", "kg/m", "", "", 0},
	{"ft2/lb", SpecificSurface, ft2 / lb, "ft2/lb", "m2/kg", "", "", 0},
	{"m2/kg", SpecificSurface, 1, "ft2/lb", "m2/kg", "", "", 0},
	{"cm2/g", SpecificSurface, 0.1, "ft2/lb", "m2/kg", "", "", 0},

	{"lb/ft2/h", Evaporation, lb / ft2 / hour, "lb/ft2/h", "kg/m2/h", "", "", 0},
	{"kg/m2/h", Evaporation, 1.0 / hour, "lb/ft2/h", "kg/m2/h", "", "", 0},
	{"g/m2/h", Evaporation, 1e-3 / hour, "lb/ft2/h", "g/m2/h", "", "", 0},
	{"lb/1000 ft2/24 h", VaporEmission, lb / ft2 / 1000 / day, "lb/1000 ft2/24 h", "g/(m2 d)", "", "lb/1000 ft2/d", 0},
	{"g/(m2 d)", VaporEmission, 1e-3 / day, "lb/1000 ft2/24 h", "g/(m2 d)", "g/(m²·d)", "g/m2/24 h", 0},
	{"perm", Permeance, perm, "perm", "ng/(Pa s m2)", "", "US perm|US perms", 0},
	{"ng/(Pa s m2)", Permeance, 1, "perm", "ng/(Pa s m2)", "ng/(Pa·s·m²)", "", 0},
	{"perm in", Permeability, perm * inch, "perm in", "ng/(Pa s m)", "perm·in", "", 0},
	{"ng/(Pa s m)", Permeability, 1, "perm in", "ng/(Pa s m)", "ng/(Pa·s·m)", "", 0},
}
