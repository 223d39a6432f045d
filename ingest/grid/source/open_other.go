//go:build !unix

package source

// nowait is nothing here: no pipe lies among files.
const nowait = 0
