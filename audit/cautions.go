package audit

// The usual cautions. They are printed with every finding of a rule that
// concerns what they speak of.
const (
	cautionHeat = "Overloaded parts run hot and can be a fire risk: take it out of use if it is hot, smells or hums, " +
		"and leave the verdict to a licensed practitioner and the local codes."
	cautionVolts = "A loudspeaker line carries a hazardous voltage while the amplifier plays: switch it off and lock it off before work; " +
		"local codes decide who may do the work."
	cautionEmergency = "Where a line serves emergency messages, any change must be agreed with the person responsible for the system and tested after it; " +
		"the standards and codes in force at the site decide, not this audit."
	cautionPaper = "A schedule says what was written, not what was built: confirm on site."
)
