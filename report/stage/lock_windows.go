package stage

import (
	"errors"
	"path/filepath"
	"syscall"
)

const (
	deleteOnClose    = 0x04000000         // FILE_FLAG_DELETE_ON_CLOSE
	sharingViolation = syscall.Errno(32)  // ERROR_SHARING_VIOLATION
	deletePending    = syscall.Errno(303) // ERROR_DELETE_PENDING
)

// lock holds the folder for one run, by a file that nobody else may open; the
// system takes it away when the program ends, however that happens.
func lock(dir string) (release func(), err error) {
	name, err := syscall.UTF16PtrFromString(filepath.Join(dir, ".lineaudit-lock"))
	if err != nil {
		return nil, err
	}
	h, err := syscall.CreateFile(name, syscall.GENERIC_READ|syscall.GENERIC_WRITE, 0, nil, syscall.OPEN_ALWAYS, syscall.FILE_ATTRIBUTE_HIDDEN|deleteOnClose, 0)
	switch {
	case errors.Is(err, sharingViolation), errors.Is(err, deletePending):
		return nil, errBusy
	case err != nil:
		return func() {}, nil
	}
	return func() { syscall.CloseHandle(h) }, nil
}
