package main

import (
	"testing"

	"lineaudit/samples/typed"
)

func TestHardSamples(t *testing.T) { typed.Check(t, "..", cases()) }
