package notation

// A KeyKind is the kind of thing that a name starts with.
type KeyKind string

// The kinds of key.
const (
	KeyNone        KeyKind = ""
	KeyZone        KeyKind = "zone"
	KeyChannel     KeyKind = "channel"
	KeyAmplifier   KeyKind = "amplifier"
	KeyControl     KeyKind = "control"
	KeyLine        KeyKind = "line"
	KeyLoudspeaker KeyKind = "loudspeaker"
	KeyCable       KeyKind = "cable"
	KeyRack        KeyKind = "rack"
)
