package units

// What people write, type by type, beside the strict names of the units. Usage of kitchens, without a published source.

var lengthsTyped = kitchen{
	name: lengths.name, strict: lengths, bare: []string{"ft", "in", "m", "cm"},
	next: map[string]string{"yd": "ft", "ft": "in", "m": "cm"},
	also: []spelling{
		{"mm", []string{"mms", "millimetre", "millimetres", "millimeter", "millimeters"}},
		{"cm", []string{"cms", "centimetre", "centimetres", "centimeter", "centimeters"}},
		{"km", []string{"kms", "kilometre", "kilometres", "kilometer", "kilometers"}},
		{"µm", []string{"micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers"}},
		{"in", []string{"ins"}},
		{"yd", []string{"yds"}},
		{"mi", []string{"mis"}},
	},
}

var areasTyped = kitchen{
	name: areas.name, strict: areas, bare: []string{"in²", "cm²"},
	also: []spelling{
		{"m²", []string{"sq m", "square metre", "square metres", "square meter", "square meters"}},
		{"cm²", []string{"sq cm", "square cm", "square centimetre", "square centimetres", "square centimeter",
			"square centimeters"}},
		{"mm²", []string{"sq mm", "square mm", "square millimetre", "square millimetres", "square millimeter",
			"square millimeters"}},
		{"in²", []string{"sq ins", "sq inch", "sq inches", "square in", "square inch", "square inches"}},
		{"ft²", []string{"sq foot", "sq feet", "square ft", "square foot", "square feet"}},
	},
}

var massesTyped = kitchen{
	name: masses.name, strict: masses, bare: []string{"lb", "kg", "oz", "g"},
	next: map[string]string{"lb": "oz", "kg": "g"},
	also: []spelling{
		{"g", []string{"gm", "gms", "gramme", "grammes"}},
		{"kg", []string{"kgs", "kilo", "kilos", "kilogramme", "kilogrammes"}},
		{"oz", []string{"ozs"}},
		{"mg", []string{"milligram", "milligrams", "milligramme", "milligrammes"}},
		{"µg", []string{"mcg", "microgram", "micrograms"}},
		{"t", []string{"metric ton", "metric tons"}},
	},
	unclear: []unclear{
		{names: []string{"gr", "grs"}, reason: "gr is gram to some and grain to others", units: []string{"g",
			"grain"}},
		{names: []string{"Mg", "MG", "mG"}, exact: true, reason: "mg is milligram and Mg is tonne",
			units: []string{"mg", "tonne"}},
		{names: []string{"t"}, exact: true, reason: "t may be a tonne, or a teaspoon, which is a volume; a tonne is typed in words",
			units: []string{"tonne"}},
		{names: []string{"T"}, exact: true, reason: "T may be a tonne, a ton of 2,000 lb, or a tablespoon, which is a volume",
			units: []string{"tonne"}},
		{names: []string{"ton", "tons"}, reason: "a ton may be a tonne, 2,000 lb or 2,240 lb", units: []string{"tonne"}},
		{names: []string{"fl oz", "fluid ounce", "fluid ounces"},
			reason: "a fluid ounce is a volume and not a weight"},
	},
}

var volumesTyped = kitchen{
	name: volumes.name, strict: volumes, bare: []string{"cup", "qt", "mL", "L"},
	next: map[string]string{"gal": "qt", "qt": "cup", "cup": "tbsp", "tbsp": "tsp"},
	also: []spelling{
		{"mL", []string{"mls", "cc", "ccs", "cm³", "cm3", "cubic cm", "cubic centimetre", "cubic centimetres",
			"cubic centimeter", "cubic centimeters"}},
		{"cL", []string{"cls", "centilitre", "centilitres", "centiliter", "centiliters"}},
		{"dL", []string{"dls", "decilitre", "decilitres", "deciliter", "deciliters"}},
		{"L", []string{"ltr", "ltrs"}},
		{"gal", []string{"gals", "us gal", "us gallon", "us gallons"}},
		{"qt", []string{"qts", "us qt", "us quart", "us quarts"}},
		{"pt", []string{"pts", "us pt", "us pint", "us pints"}},
		{"cup", []string{"c", "us cup", "us cups"}},
		{"fl oz", []string{"fl ozs", "floz", "fluid oz", "fl ounce", "fl ounces", "us fl oz"}},
		{"tbsp", []string{"tbsps", "tbs", "tbl", "tblsp", "tblsps"}},
		{"tsp", []string{"tsps"}},
		{"in³", []string{"cu inch", "cu inches", "cubic in"}},
		{"ft³", []string{"cu foot", "cu feet", "cubic ft"}},
		{"imp gal", []string{"imp gals", "imperial gallon", "imperial gallons", "uk gallon", "uk gallons"}},
		{"imp qt", []string{"imp qts", "imperial quart", "imperial quarts", "uk quart", "uk quarts"}},
		{"imp pt", []string{"imp pts", "imperial pint", "imperial pints", "uk pint", "uk pints"}},
		{"imp fl oz", []string{"imperial fl oz", "imperial fluid ounce", "imperial fluid ounces", "uk fl oz"}},
		{"metric tbsp", []string{"metric tablespoon", "metric tablespoons"}},
		{"metric tsp", []string{"metric teaspoon", "metric teaspoons"}},
	},
	unclear: []unclear{
		{names: []string{"t", "ts"}, reason: "t and T are tablespoon to some and teaspoon to others",
			units: []string{"tbsp", "tsp"}},
		{names: []string{"oz", "ozs", "ounce", "ounces"},
			reason: "an ounce is a weight, and of a volume it must say fluid",
			units:  []string{"fl oz"}},
	},
}

var pressuresTyped = kitchen{
	name: pressures.name, strict: pressures, bare: []string{"psi", "kPa"},
	also: []spelling{
		{"psi", []string{"p s i", "lb", "lbs", "pound", "pounds", "lb pressure", "lbs pressure", "pounds pressure",
			"lb of pressure", "lbs of pressure", "pounds of pressure", "lb/sq in", "lbs/sq in", "lb/square inch",
			"lbs/square inch", "pounds/sq in", "pounds/square inch", "lbs/in2"}},
		{"kPa", []string{"kilopascal", "kilopascals"}},
		{"Pa", []string{"pascal", "pascals"}},
		{"hPa", []string{"hectopascal", "hectopascals"}},
		{"bar", []string{"bars"}},
		{"mbar", []string{"mbars", "millibar", "millibars"}},
		{"MPa", []string{"megapascal", "megapascals"}},
		{"atm", []string{"atmosphere", "atmospheres"}},
		{"inHg", []string{"inch of mercury", "inches of mercury", "inches hg", "in of mercury", "\"Hg", "\" Hg"}},
		{"mmHg", []string{"mm of mercury", "millimetres of mercury", "millimeters of mercury"}},
	},
	unclear: []unclear{
		{names: []string{"mPa", "MPA", "Mpa", "mpa", "mPA"}, exact: true,
			reason: "MPa is megapascal and mPa a thousandth of a pascal",
			units:  []string{"MPa"}},
		{names: []string{"psig", "psia", "psi gauge", "psi absolute", "psi abs", "psi g", "psi a", "barg", "bara"},
			reason: "whether a pressure is a gauge reading or absolute is asked elsewhere, and the text must not say it"},
		{names: []string{"in", "inch", "inches", "mm"}, reason: "a column must say of what",
			units: []string{"inHg", "mmHg"}},
	},
}

var temperaturesTyped = kitchen{
	name: "temperature", bare: []string{"°F", "°C"}, apart: true,
	also: []spelling{
		{"°C", []string{"°C", "° C", "C", "C°", "deg C", "degC", "degree C", "degrees C", "celsius", "°celsius",
			"deg celsius", "degree celsius", "degrees celsius", "centigrade", "degrees centigrade"}},
		{"°F", []string{"°F", "° F", "F", "F°", "deg F", "degF", "degree F", "degrees F", "fahrenheit",
			"°fahrenheit", "degree fahrenheit", "degrees fahrenheit", "deg fahrenheit"}},
		{"K", []string{"K", "kelvin", "kelvins"}},
	},
	unclear: []unclear{
		{names: []string{"°", "deg", "degree", "degrees"}, reason: "the scale is missing",
			units: []string{"°F", "°C"}},
	},
}

var changesTyped = kitchen{
	name: temperatureChanges.name, strict: temperatureChanges, bare: []string{"°F", "°C"}, apart: true,
	also:    temperaturesTyped.also,
	unclear: temperaturesTyped.unclear,
}

var ratiosTyped = kitchen{
	name: ratios.name, strict: ratios, whole: share,
	also: []spelling{
		{"%", []string{"per cent", "percents"}},
		{"‰", []string{"per mille", "per mil", "permille"}},
		{"g/kg", []string{"g/kg", "g/kilo", "g/kilogram", "gram/kg", "grams/kg", "gram/kilo", "grams/kilo",
			"gram/kilogram", "grams/kilogram"}},
		{"ppm", []string{"parts per million", "parts/million"}},
		{"ppb", []string{"parts per billion", "parts/billion"}},
	},
}

var phsTyped = kitchen{name: phs.name, strict: phs, whole: acidity}

var energiesTyped = kitchen{
	name: energies.name, strict: energies, bare: []string{"kcal", "kJ"},
	also: []spelling{
		{"kJ", []string{"kilojoule", "kilojoules"}},
		{"kcal", []string{"kcals", "kilocalorie", "kilocalories"}},
		{"J", []string{"joule", "joules"}},
		{"Btu", []string{"btus"}},
		{"kWh", []string{"kilowatt hour", "kilowatt hours", "kw h"}},
	},
	unclear: []unclear{
		{names: []string{"cal", "CAL", "cals", "Cals", "calorie", "calories", "Calorie", "Calories"}, exact: true,
			reason: "a calorie of food tables is a kilocalorie, and the other one a thousandth of it",
			units:  []string{"kcal"}},
	},
}

var densitiesTyped = kitchen{
	name: densities.name, strict: densities, bare: []string{"g/mL", "kg/m³"},
	also: []spelling{{"g/mL", []string{"g/cc", "grams/mL", "kg/litre", "kg/liter"}}, {"g/L",
		[]string{"g/litre", "g/liter", "grams/L"}}},
}

var speedsTyped = kitchen{
	name: speeds.name, strict: speeds, bare: []string{"m/s", "ft/min"},
	also: []spelling{
		{"m/s", []string{"m/sec", "metres/second", "meters/second"}},
		{"ft/min", []string{"feet/min", "ft/minute", "feet/minute"}},
		{"mph", []string{"mile/hour", "miles/hour", "miles/h"}},
		{"km/h", []string{"kmh", "kph", "km/hr", "km/hour", "kilometres/hour", "kilometers/hour"}},
	},
}

var timesTyped = kitchen{
	name: times.name, strict: times, bare: []string{"min", "h"}, whole: clock,
	next: map[string]string{"wk": "d", "d": "h", "h": "min", "min": "s"},
	also: []spelling{
		{"h", []string{"hr", "hrs", "hour", "hours"}},
		{"min", []string{"mins", "minute", "minutes"}},
		{"s", []string{"sec", "secs", "second", "seconds"}},
		{"wk", []string{"wks"}},
	},
	unclear: []unclear{
		{names: []string{"m"}, first: true, reason: "m may be minutes or months", units: []string{"min"}},
		{names: []string{"mo", "mos", "month", "months", "yr", "yrs", "year", "years"},
			reason: "it has no fixed length; expected days"},
	},
}

var partsTyped = kitchen{name: "proportion", whole: proportion}
