package notation

import (
	"math"
	"strings"
)

// The readers of sizePatterns: each takes the parts of one pattern.

func readStrands(r *conductorReading, m []string) bool {
	count, d := whole(m[2]), r.number(m[3])
	if count < 1 || d < 0.05 || d > 3 || r.c.Strands != nil {
		return false
	}
	r.c.Strands = &Strands{count, d}
	r.c.Stranded = r.c.Stranded || count > 1
	area := float64(count) * math.Pi / 4 * d * d
	if r.c.AreaMM2 > 0 && math.Abs(r.c.AreaMM2-area) > 0.1*area {
		r.clash = true
	}
	r.c.AreaMM2 = area
	return m[1] == "" || r.setCores(whole(m[1]))
}

// readThreeFactors reads 2x2x0.8 (pairs, cores, diameter) and 2x2x1.5 mm².
func readThreeFactors(r *conductorReading, m []string) bool {
	a, b, size, unit := whole(m[1]), whole(m[2]), r.number(m[3]), strings.ToLower(m[4])
	if a < 1 || b < 1 || b > 4 || a*b > 200 {
		return false
	}
	isArea := unit != "" && unit != "mm" && !isGaugeUnit(unit)
	switch {
	case isGaugeUnit(unit):
		if size != math.Trunc(size) || !r.setGauge(int(size)) {
			return false
		}
	case isArea:
		if !r.setArea(size) {
			return false
		}
	case isOneOf(size, telecomDiameters):
		if !r.setDiameter(size) {
			return false
		}
		if unit == "" {
			r.c.Doubts |= DiameterTaken
		}
	case isOneOf(size, standardAreas):
		if !r.setArea(size) {
			return false
		}
		if unit == "" {
			r.c.Doubts |= AreaTaken
		} else {
			r.c.Doubts |= MMForMM2
		}
	default:
		return false
	}
	if b == 2 {
		return r.setPairs(a)
	}
	return r.setCores(a * b)
}

func isGaugeUnit(unit string) bool {
	return strings.HasPrefix(unit, "a") || strings.HasPrefix(unit, "g")
}

func readCoresGauge(r *conductorReading, m []string) bool {
	return r.setGaugeAndCores(whole(m[2]), m[1], "")
}

func readPairsGauge(r *conductorReading, m []string) bool {
	return r.setGaugeAndCores(whole(m[3]), m[1], m[2])
}

func readPairsArea(r *conductorReading, m []string) bool {
	area := r.number(m[3])
	return whole(m[1]) >= 1 && area > 0 && r.setPairs(whole(m[1])) && r.setArea(area)
}

// setGaugeAndCores sets both, or neither where one of them makes no sense.
func (r *conductorReading) setGaugeAndCores(gauge int, cores, pairWord string) bool {
	if n := whole(cores); gauge < 1 || gauge > 40 || n < 1 || n > 100 {
		return false
	}
	return r.setGauge(gauge) && r.setCoresOrPairs(cores, pairWord)
}

// readGaugeCores reads 16/2, 14-2, #16-2, 16 AWG/2C, 14AWG-4C, 22/1P, and
// "2 x 16/2", two cables side by side.
func readGaugeCores(r *conductorReading, m []string) bool {
	gauge, cores := whole(m[3]), whole(m[5])
	marked := m[4] != "" || strings.Contains(m[0], "#") || strings.Contains(strings.ToLower(m[0]), "awg")
	if !marked && (gauge < 6 || gauge > 26 || cores < 1 || cores > 50) {
		return false
	}
	if strings.HasPrefix(m[3], "0") || strings.HasPrefix(m[5], "0") {
		return false // part of a date or a code
	}
	if strings.Contains(m[0], ",") && m[6] == "" && m[7] == "" {
		return false // "16, 2" is a list
	}
	if !r.setGaugeAndCores(gauge, m[5], m[7]) {
		return false
	}
	if n := whole(m[1] + m[2]); n > 1 {
		r.c.Parallel = n
		r.c.Doubts |= ParallelTaken
	}
	return true
}

func readGaugeThenCores(r *conductorReading, m []string) bool {
	return r.setGaugeAndCores(whole(m[1]), m[2], m[4])
}

func readGaugeTimes(r *conductorReading, m []string) bool {
	return r.setGaugeAndCores(whole(m[1]), m[2], "")
}

func readCoresArea(r *conductorReading, m []string) bool {
	area := r.number(m[2])
	return whole(m[1]) >= 1 && whole(m[1]) <= 200 && r.setArea(area) && r.setCores(whole(m[1]))
}

func readAreaCores(r *conductorReading, m []string) bool {
	area := r.number(m[1])
	cores, pairs := m[2], m[4]
	if cores == "" {
		cores, pairs = m[5], m[7]
	}
	if whole(cores) < 1 || whole(cores) > 200 {
		return false
	}
	return r.setArea(area) && r.setCoresOrPairs(cores, pairs)
}

func readArea(r *conductorReading, m []string) bool { return r.setArea(r.number(m[1])) }

func readDiameter(r *conductorReading, m []string) bool { return r.setDiameter(r.number(m[1])) }

// readCoresBare reads 2x1.5, 3G1,5, 2C 1.5, 2 x 1.5 mm, and 2x16 where the
// header says AWG.
func readCoresBare(r *conductorReading, m []string) bool {
	size, cores := r.number(m[3]), whole(m[1])
	if cores < 1 || cores > 100 || r.c.HasSize() {
		return false
	}
	standard := isOneOf(size, standardAreas)
	gauge := size == math.Trunc(size) && size >= 8 && size <= 26 && m[4] == ""
	switch {
	case m[4] != "" && standard:
		r.c.Doubts |= MMForMM2
	case m[4] != "":
		if !isOneOf(size, telecomDiameters) {
			return false
		}
		r.c.Doubts |= DiameterTaken
		return r.setDiameter(size) && r.setCores(cores)
	case gauge && (r.hint == HintAWG || r.hint == HintNone && !standard):
		if r.hint == HintNone {
			r.c.Doubts |= AWGTaken
		}
		return r.setGaugeAndCores(int(size), m[1], "")
	case gauge && r.hint == HintNone:
		r.clash = true // 2x16: mm² or AWG
		return true
	case r.hint == HintDiameter:
		return r.setDiameter(size) && r.setCores(cores)
	case r.hint == HintMM2:
	case standard:
		r.c.Doubts |= AreaTaken
	default:
		return false
	}
	return r.setArea(size) && r.setCores(cores)
}

func readGauge(r *conductorReading, m []string) bool {
	if n, aught := strings.CutSuffix(m[1], "/0"); aught {
		return whole(n) >= 1 && whole(n) <= 4 && r.setGauge(1-whole(n))
	}
	return !strings.HasPrefix(m[1], "0") && whole(m[1]) >= 1 && r.setGauge(whole(m[1]))
}

// readKcmil reads thousand circular mils: 1 kcmil is 0.506707 mm², from the mil
// of 0.0254 mm.
func readKcmil(r *conductorReading, m []string) bool {
	return r.setArea(float64(whole(m[1])) * 1000 * math.Pi / 4 * 0.0254 * 0.0254)
}

// readMillimetres reads "1.5 mm", where the area was meant, and "0,8 mm", a
// diameter.
func readMillimetres(r *conductorReading, m []string) bool {
	v := r.number(m[1])
	switch {
	case r.c.HasSize():
		return false
	case r.hint == HintDiameter || v == 0.4 || v == 0.6 || v == 0.8 || v == 0.9:
		r.c.Doubts |= DiameterTaken
		return r.setDiameter(v)
	case isOneOf(v, standardAreas):
		r.c.Doubts |= MMForMM2
		return r.setArea(v)
	}
	return false
}

func readParallel(r *conductorReading, m []string) bool {
	n := whole(m[1])
	if n < 2 {
		return false
	}
	r.c.Parallel = n
	return true
}

func readCores(r *conductorReading, m []string) bool {
	return whole(m[1]) >= 1 && whole(m[1]) <= 200 && r.setCores(whole(m[1]))
}

func readPairs(r *conductorReading, m []string) bool { return r.setPairs(whole(m[1])) }

// readStrandCount reads "79 strand", a British way to name a size by wires of
// 0.2 mm. Source: public schedules survey.
func readStrandCount(r *conductorReading, m []string) bool {
	n := whole(m[1])
	r.c.Stranded = true
	if r.c.HasSize() {
		return true
	}
	if n < 10 {
		return false
	}
	r.c.Strands = &Strands{n, 0.2}
	r.c.AreaMM2 = float64(n) * math.Pi / 4 * 0.2 * 0.2
	r.c.Doubts |= DiameterTaken
	return true
}
