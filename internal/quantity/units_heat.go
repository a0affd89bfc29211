package quantity

// Sizes of the units of heat in SI. The Btu is that of the International
// Table, as in the standards for building materials.
const (
	btu  = 1055.05585262
	degF = 5.0 / 9
)

// heatUnits are the units of temperature and heat. Bases: °C, J, W.
var heatUnits = []unit{
	{"F", Temperature, degF, "F", "C", "", "", 32},
	{"C", Temperature, 1, "F", "C", "", "", 0},
	{"K", Temperature, 1, "F", "K", "", "", 273.15},
	{"dF", TemperatureDifference, degF, "dF", "dC", "°F difference", "", 0},
	{"dC", TemperatureDifference, 1, "dF", "dC", "°C difference", "", 0},
	{"F/h", TemperatureRate, degF / hour, "F/h", "C/h", "", "", 0},
	{"F/d", TemperatureRate, degF / day, "F/d", "C/d", "", "F/24 h", 0},
	{"C/h", TemperatureRate, 1.0 / hour, "F/h", "C/h", "", "K/h", 0},
	{"C/d", TemperatureRate, 1.0 / day, "F/d", "C/d", "", "K/d|C/24 h", 0},
	{"F/in", Gradient, degF / inch, "F/in", "C/m", "", "", 0},
	{"F/ft", Gradient, degF / foot, "F/ft", "C/m", "", "", 0},
	{"C/m", Gradient, 1, "F/in", "C/m", "", "K/m", 0},
	{"C/cm", Gradient, 100, "F/in", "C/cm", "", "", 0},
	{"C/mm", Gradient, 1000, "F/in", "C/mm", "", "", 0},
	{"F·h", DegreeHours, degF, "F·h", "C·h", "", "", 0},
	{"C·h", DegreeHours, 1, "F·h", "C·h", "", "", 0},
	{"F·d", DegreeDays, degF, "F·d", "C·d", "", "", 0},
	{"C·d", DegreeDays, 1, "F·d", "C·d", "", "", 0},

	{"R", RValue, ft2 * hour * degF / btu, "R", "RSI", "", "ft2·h·F/Btu", 0},
	{"RSI", RValue, 1, "R", "RSI", "", "m2·K/W|m2·C/W", 0},
	{"Btu/h/ft/F", ThermalConductivity, btu / hour / foot / degF, "Btu/h/ft/F", "W/m/K", "Btu/(h·ft·°F)", "", 0},
	{"Btu in/h/ft2/F", ThermalConductivity, btu * inch / hour / ft2 / degF, "Btu in/h/ft2/F", "W/m/K", "Btu·in/(h·ft²·°F)", "", 0},
	{"W/m/K", ThermalConductivity, 1, "Btu/h/ft/F", "W/m/K", "W/(m·K)", "W/m/C", 0},
	{"Btu/h/ft2/F", HeatTransfer, btu / hour / ft2 / degF, "Btu/h/ft2/F", "W/m2/K", "Btu/(h·ft²·°F)", "", 0},
	{"W/m2/K", HeatTransfer, 1, "Btu/h/ft2/F", "W/m2/K", "W/(m²·K)", "W/m2/C", 0},
	{"Btu/lb/F", SpecificHeat, btu / lb / degF, "Btu/lb/F", "kJ/kg/K", "Btu/(lb·°F)", "", 0},
	{"kJ/kg/K", SpecificHeat, 1000, "Btu/lb/F", "kJ/kg/K", "kJ/(kg·K)", "kJ/kg/C|J/g/K|J/g/C", 0},
	{"J/kg/K", SpecificHeat, 1, "Btu/lb/F", "J/kg/K", "J/(kg·K)", "J/kg/C", 0},
	{"Btu/h/ft2", HeatFlux, btu / hour / ft2, "Btu/h/ft2", "W/m2", "Btu/(h·ft²)", "", 0},
	{"W/m2", HeatFlux, 1, "Btu/h/ft2", "W/m2", "", "", 0},

	{"Btu/lb", Energy, btu / lb, "Btu/lb", "J/g", "", "", 0},
	{"J/g", Energy, 1000, "Btu/lb", "J/g", "", "kJ/kg", 0},
	{"cal/g", Energy, 4184, "Btu/lb", "J/g", "", "", 0},
	{"Btu", Heat, btu, "Btu", "kJ", "", "", 0},
	{"kWh", Heat, 3.6e6, "", "", "", "kW·h", 0},
	{"J", Heat, 1, "Btu", "J", "", "", 0},
	{"kJ", Heat, 1e3, "Btu", "kJ", "", "", 0},
	{"MJ", Heat, 1e6, "Btu", "MJ", "", "", 0},
	{"hp", Power, 550 * lbf * foot, "hp", "kW", "", "", 0},
	{"Btu/h", Power, btu / hour, "Btu/h", "watt", "", "", 0},
	{"watt", Power, 1, "Btu/h", "watt", "watts", "", 0},
	{"kW", Power, 1e3, "hp", "kW", "", "", 0},
}

// plainUnits are ratios, strains, counts, money and the electrical units.
var plainUnits = []unit{
	{"", Ratio, 1, "", "", "", "", 0},
	{"%", Ratio, 0.01, "", "", "", "per cent|% RH|% relative humidity|% by mass|% by weight|% by volume", 0},
	{"ppm", Concentration, 1, "", "", "", "parts per million", 0},
	{"ppb", Concentration, 1e-3, "", "", "", "parts per billion", 0},
	{"millionths", Strain, 1e-6, "", "", "", "um/m|uin/in|x10-6|×10⁻⁶", 0},
	{"in/in", Strain, 1, "", "", "", "mm/mm|m/m", 0},
	{"% strain", Strain, 0.01, "", "", "", "percent strain", 0},
	{"millionths/F", ThermalExpansion, 1e-6 / degF, "millionths/F", "millionths/C", "", "uin/in/F", 0},
	{"millionths/C", ThermalExpansion, 1e-6, "millionths/F", "millionths/C", "", "millionths/K|um/m/C|um/m/K", 0},
	{"in/in/F", ThermalExpansion, 1 / degF, "in/in/F", "millionths/C", "", "", 0},

	{"1", Count, 1, "", "", "", "each|ea|piece|pieces|pcs|pc", 0},
	{"rev", Count, 1, "", "", "", "", 0},
	{"truck", Count, 1, "", "", "trucks", "", 0},
	{"load", Count, 1, "", "", "loads", "", 0},
	{"batch", Count, 1, "", "", "batches", "", 0},
	{"cylinder", Count, 1, "", "", "cylinders", "", 0},
	{"beam", Count, 1, "", "", "beams", "", 0},
	{"core", Count, 1, "", "", "cores", "", 0},
	{"specimen", Count, 1, "", "", "specimens", "", 0},
	{"sample", Count, 1, "", "", "samples", "", 0},
	{"test", Count, 1, "", "", "tests", "", 0},
	{"pass", Count, 1, "", "", "passes", "", 0},
	{"lift", Count, 1, "", "", "lifts", "", 0},
	{"layer", Count, 1, "", "", "layers", "", 0},
	{"blow", Count, 1, "", "", "blows", "", 0},
	{"cycle", Count, 1, "", "", "cycles", "", 0},
	{"bar", Count, 1, "", "", "", "bars", 0}, // the number of a bar: "#5"; not the pressure
	{"W", Count, 1, "", "", "", "", 0},       // the number of a wire: "W2.9"; not the watt
	{"joint", Count, 1, "", "", "joints", "", 0},
	{"person", Count, 1, "", "", "persons", "", 0},

	{"$", Money, 1, "", "", "", "", 0},
	{"$/yd3", PricePerVolume, 1 / yd3, "$/yd3", "$/m3", "", "$/yd", 0},
	{"$/m3", PricePerVolume, 1, "$/yd3", "$/m3", "", "", 0},
	{"$/gal", PricePerVolume, 1 / gal, "$/gal", "$/L", "", "", 0},
	{"$/L", PricePerVolume, 1 / litre, "$/gal", "$/L", "", "", 0},
	{"$/ft2", PricePerArea, 1 / ft2, "$/ft2", "$/m2", "", "", 0},
	{"$/m2", PricePerArea, 1, "$/ft2", "$/m2", "", "", 0},
	{"$/ft", PricePerLength, 1 / foot, "$/ft", "$/m", "", "", 0},
	{"$/m", PricePerLength, 1, "$/ft", "$/m", "", "", 0},
	{"$/lb", PricePerMass, 1 / lb, "$/lb", "$/kg", "", "", 0},
	{"$/ton", PricePerMass, 1 / ton, "$/ton", "$/t", "", "", 0},
	{"$/kg", PricePerMass, 1, "$/lb", "$/kg", "", "", 0},
	{"$/t", PricePerMass, 1e-3, "$/ton", "$/t", "", "", 0},
	{"$/h", PricePerTime, 1.0 / hour, "", "", "", "", 0},
	{"$/d", PricePerTime, 1.0 / day, "", "", "", "", 0},

	{"coulomb", Charge, 1, "", "", "coulombs", "", 0},
	{"kohm·cm", Resistivity, 10, "", "", "kΩ·cm", "", 0},
	{"ohm·cm", Resistivity, 0.01, "", "", "Ω·cm", "", 0},
	{"ohm·m", Resistivity, 1, "", "", "Ω·m", "", 0},
}

// twins gives, for a unit whose spelling has a second meaning, the units of
// that meaning. They are used only where the wanted unit leaves no doubt: "20
// F" is a temperature unless a temperature difference is wanted.
var twins = map[string][]string{
	"F":      {"dF"},
	"C":      {"dC"},
	"K":      {"dC"},
	"lb":     {"lbf"},
	"oz":     {"fl oz"},
	"lb/ft2": {"psf"},
	"lb/ft":  {"lbm/ft"},
	"%":      {"% slope", "% strain"},
}
