//go:build !(linux && (amd64 || arm64))

package scratch

import (
	"errors"
	"os"
)

// nameless opens a file that never has a name: not here.
func nameless() (*os.File, error) { return nil, errors.ErrUnsupported }
