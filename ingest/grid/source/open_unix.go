//go:build unix

package source

import "syscall"

// nowait has opening a pipe return at once instead of waiting for its writer.
const nowait = syscall.O_NONBLOCK
