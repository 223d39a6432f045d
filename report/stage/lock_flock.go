//go:build darwin || dragonfly || freebsd || linux || netbsd || openbsd

package stage

import (
	"errors"
	"os"
	"syscall"
)

// lock holds the folder for one run; it is let go when the program ends,
// however that happens. Where a file system knows no locks there is none.
func lock(dir string) (release func(), err error) {
	f, err := os.Open(dir)
	if err != nil {
		return nil, err
	}
	switch err := syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB); {
	case errors.Is(err, syscall.EWOULDBLOCK):
		f.Close()
		return nil, errBusy
	case err != nil:
		f.Close()
		return func() {}, nil
	}
	return func() { f.Close() }, nil
}
