package series

import "strings"

// sensors finds the column that names the sensor of a row, where the rows of several stand below each other.
func (s *sniffer) sensors() {
	if !s.stated.Only.Column.isZero() {
		return
	}
	for i, c := range s.cols {
		if s.isTime(i) || i == s.format.Value.Number-1 {
			continue
		}
		if !(c.class == classText && (saysSensor(c.name) || s.format.Header == 0) || c.class == classNumber &&
			countsSensors(c.name) && allWhole(c.values)) {
			continue
		}
		if names := s.distinct(i); len(names) > 1 {
			s.askSensor(i, names)
			return
		}
	}
}

// saysSensor reports a heading that names what a row was measured with or where.
func saysSensor(name string) bool {
	switch strings.Join(strings.FieldsFunc(strings.ToLower(name), func(r rune) bool {
		return r == '_' ||
			r == ' ' || r == '.' || r == '-'
	}), " ") {
	case "sensor", "sensor id", "sensor name", "sensorid", "probe", "probe id", "probe name", "device",
		"device id", "device name", "deviceid", "channel", "ch", "channel name", "location", "site", "site id",
		"siteid", "station", "stn", "name", "tag", "node", "node id", "room", "position", "logger",
		"logger id", "parameter", "variable", "measure", "quantity", "type", "label", "entity id", "entity":
		return true
	}
	return false
}

// countsSensors reports a heading under which numbers name sensors.
func countsSensors(name string) bool {
	switch strings.Join(strings.FieldsFunc(strings.ToLower(name), func(r rune) bool {
		return r == '_' ||
			r == ' ' || r == '.' || r == '-'
	}), " ") {
	case "channel", "ch", "channel no", "sensor id", "sensorid", "sensor no", "probe id", "probe no",
		"device id", "deviceid", "node", "node id", "logger id", "site id":
		return true
	}
	return false
}

// distinct are the texts of a column in the order of the file, if each names more than one row; nil otherwise.
func (s *sniffer) distinct(i int) []string {
	count := map[string]int{}
	var names []string
	for _, v := range s.cols[i].values {
		if count[v]++; count[v] == 1 {
			names = append(names, v)
		}
	}
	if len(names) > 200 || 2*len(names) > len(s.cols[i].values)+1 {
		return nil
	}
	return names
}

func (s *sniffer) askSensor(i int, names []string) {
	var choices []Choice
	for _, name := range names {
		choices = append(choices, Choice{name, "the rows of " + short(name)})
	}
	s.format.Only = Filter{Column: s.heading(i)}
	s.ask(AskSensor, choices, "The rows of several stand below each other. Which %s in column %d is wanted?",
		shortName(s.cols[i].name), i+1)
}

func shortName(name string) string {
	if name == "" {
		return "name"
	}
	return short(name)
}
