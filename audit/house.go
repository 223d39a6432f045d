package audit

import "lineaudit/audit/schedule"

// NewSettings puts the limits, ratings and waivers of a house book in force.
func NewSettings(house *schedule.HouseBook) (*Settings, []schedule.HouseError) {
	s := DefaultSettings()
	s.House = house
	return s, nil
}
