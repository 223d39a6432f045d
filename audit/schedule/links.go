package schedule

// LineVoltsOf returns the line voltage of a channel: its own, else the one
// said for the whole job. The channel may be nil.
func (j *Job) LineVoltsOf(c *Channel) Quantity[Volts] {
	if c != nil && c.LineVolts.Had() {
		return c.LineVolts
	}
	return j.LineVolts
}
