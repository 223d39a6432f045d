package main

import (
	"testing"

	"lineaudit/samples/typed"
)

func TestHandSamples(t *testing.T) { typed.Check(t, "..", cases()) }
