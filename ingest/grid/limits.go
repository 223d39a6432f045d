package grid

// Limits bound what one file may cost a reader. A reader that meets a limit
// returns an *Unreadable that names it, never a shorter book. A limit of zero
// or less means no limit, except for Stop.
type Limits struct {
	MaxBytes    int64 // bytes of the file itself
	MaxInflated int64 // bytes that the parts of a zipped workbook may unpack to, all together
	MaxRatio    int64 // how many times its packed size a part above 8 MiB may unpack to
	MaxMembers  int   // members of one zip
	MaxSheets   int   // sheets of one book
	MaxRows     int   // rows that hold something, all sheets together
	MaxCells    int   // non-empty cells, all sheets together
	MaxMerges   int   // merged areas, all sheets together
	MaxText     int64 // bytes of cell text held, all sheets together
	MaxCellText int   // bytes of text in one cell
	MaxDepth    int   // nesting of XML elements

	// Stop is asked every few thousand cells; an error from it ends the
	// reading and is returned as it is. nil never stops.
	Stop func() error
}

// DefaultLimits are far above any schedule and far below what a machine
// holds: the largest honest workbook met when they were chosen unpacks to 111
// MB, and the largest honest ratio above 8 MiB is 69.
func DefaultLimits() Limits {
	return Limits{
		MaxBytes:    128 << 20,
		MaxInflated: 512 << 20,
		MaxRatio:    250,
		MaxMembers:  20_000,
		MaxSheets:   2_000,
		MaxRows:     1_500_000,
		MaxCells:    4_000_000,
		MaxMerges:   200_000,
		MaxText:     256 << 20,
		MaxCellText: 1 << 20,
		MaxDepth:    200,
	}
}

// Check asks Stop, if there is one.
func (l Limits) Check() error {
	if l.Stop == nil {
		return nil
	}
	return l.Stop()
}
