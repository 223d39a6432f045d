package audit

import "lineaudit/audit/line"

// NominalVolts returns the exact voltage of the nominal class that a line
// voltage belongs to (70, 70.7 and 71 V are one class, 100/sqrt(2) V), or the
// voltage itself outside every class.
func NominalVolts(v float64) float64 { return line.Nominal(v) }
