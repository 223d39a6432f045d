package reporttest

import "errors"

// ErrFull is what a full disk answers.
var ErrFull = errors.New("no space left on device")

// A Disk takes so many bytes and then is full.
type Disk struct{ Room int }

// Write takes what there is room for.
func (d *Disk) Write(p []byte) (int, error) {
	if len(p) > d.Room {
		n := d.Room
		d.Room = 0
		return n, ErrFull
	}
	d.Room -= len(p)
	return len(p), nil
}
