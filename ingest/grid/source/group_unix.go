//go:build unix

package source

import (
	"os/exec"
	"syscall"
)

// ownGroup puts the program and what it starts into a process group of its
// own, all of which is ended when the time is up.
func ownGroup(cmd *exec.Cmd) {
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	cmd.Cancel = func() error { return syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL) }
}
