//go:build linux && (amd64 || arm64)

package scratch

import (
	"os"
	"syscall"
)

// tmpfile is __O_TMPFILE of these two machines, which package syscall lacks.
const tmpfile = 0x400000

// nameless opens a file that never has a name, if the file system can do that.
func nameless() (*os.File, error) {
	return os.OpenFile(os.TempDir(), os.O_RDWR|tmpfile|syscall.O_DIRECTORY, 0o600)
}
