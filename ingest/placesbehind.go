package ingest

import "lineaudit/ingest/notation"

// placesBehind reads "Foyer with wall control R2 (50 W), shop and bar behind knob R3
// (30 W)": places, each with the control that their loudspeakers hang behind.
func (b *builder) placesBehind(s seen) []carried {
	if _, tail := splitControl(s.text); tail == "" {
		return nil
	}
	var out []carried
	var waiting service // places whose control is named further on: "Foyer, shop with control R2"
	for _, segment := range segments(s.text) {
		head, tail := splitControl(segment)
		place := b.placesIn(s, head)
		if !place.had() {
			return nil
		}
		place.zones, place.rooms = append(waiting.zones, place.zones...), append(waiting.rooms, place.rooms...)
		if waiting = (service{}); tail == "" {
			waiting = place
			continue
		}
		list, err := notation.ParseControls(tail, notation.Auto)
		if err != nil || len(list) != 1 {
			return nil
		}
		c := carried{controls: []string{list[0].Name}, at: place, unnamed: list[0].Name == ""}
		if c.unnamed {
			c.controls[0] = "control (" + tidy(b.placeNamed(&place)) + ")"
		}
		if list[0].W > 0 {
			c.watts = s
			c.watts.text = plain(list[0].W) + " W"
		}
		out = append(out, c)
	}
	if waiting.had() {
		return nil
	}
	for _, c := range out {
		b.controlNames.Add(c.controls[0], 0)
	}
	return out
}
