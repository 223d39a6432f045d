// Package notation reads what people type into the cells of a device schedule
// of a constant-voltage loudspeaker system: taps, line voltages, quantities,
// lengths, conductors, ratings, channels, tags and remarks, in English,
// German, French, Spanish, Italian and Dutch.
//
// Every parser is a pure function from a cell's text to a typed result. A
// result says what was taken for granted ([Doubts]); a text that gives no
// value is an error wrapping one of the sentinels below, never a zero.
//
// Parsers of figures take a [Style], the decimal mark of the column, which
// [DetectStyle] finds. With [Auto] each cell is judged alone, and a figure that
// two conventions read differently ("1,200") carries the doubt [DecimalMark];
// reading it again with [Point] and with [Comma] gives both values.
//
// The words are data: see the folder vocabulary.
package notation
