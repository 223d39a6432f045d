package main

import (
	"testing"

	"lineaudit/samples/typed"
)

func TestFieldSamples(t *testing.T) { typed.Check(t, "..", cases()) }
