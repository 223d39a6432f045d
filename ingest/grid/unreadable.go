package grid

import "fmt"

// Unreadable says, in words for the person who owns the file, why it could
// not be read and what can be done about it.
type Unreadable struct {
	Reason string // e.g. "the workbook is cut short"
	Advice string // e.g. "copy it again from where it came from", "" if there is none
	// Foreign: the file is of another trade and does not claim to be a table,
	// such as a photograph with a photograph's name. Nothing was lost.
	Foreign bool
}

// Error returns the reason.
func (u *Unreadable) Error() string { return u.Reason }

// Damaged returns an *Unreadable for a file whose content contradicts itself.
// The detail says where, e.g. `sheet "Amps": checksum differs`.
func Damaged(format string, args ...any) *Unreadable {
	return &Unreadable{
		Reason: "the file is damaged: " + fmt.Sprintf(format, args...),
		Advice: "open it in the program that made it, let that repair it, save it under a new name and check it; or fetch a good copy",
	}
}

// TooLarge returns an *Unreadable for a file that passes one of the Limits,
// e.g. TooLarge("%d sheets, the limit is %d", n, max).
func TooLarge(format string, args ...any) *Unreadable {
	return &Unreadable{
		Reason: "the file is too large to be a schedule: " + fmt.Sprintf(format, args...),
		Advice: "save the sheets that matter as a workbook of their own",
	}
}
