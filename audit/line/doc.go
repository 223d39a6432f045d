// Package line is the electricity of constant-voltage loudspeaker lines:
// taps and impedances, conductors, and the exact solution of the network that
// one amplifier channel feeds.
//
// All quantities are plain float64 in SI units (volts, amperes, ohms, siemens,
// watts, metres) except areas, in mm2, and levels, in decibels; names carry the
// unit where the type cannot. Everything is resistive: volts stand for RMS
// volts, and a transformer-fitted loudspeaker for the resistance of its tap.
//
// Two sums are kept apart. The nominal load ignores the cable and takes every
// control fully on; ratings are judged on it. The solved load counts cable and
// control settings; losses are judged on it.
package line
