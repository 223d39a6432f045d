package vocabulary

import "testing"

func TestDeviceIn(t *testing.T) {
	for _, tt := range []struct {
		text string
		want Device
	}{
		{"Ceiling loudspeaker 6 W", LoudspeakerDevice},
		{"Loudspeaker with 5 m of cable", LoudspeakerDevice},
		{"Deckenlautsprecher mit Regler", LoudspeakerDevice},
		{"Loudspeaker cable 2 x 2.5 mm²", CableDevice},
		{"Cable 2 core 2.5 mm², rack to end of line", CableDevice},
		{"Cable tray 100 mm, rack to riser", OtherDevice},
		{"4 Boxen à 10 W, über Regler R1", LoudspeakerDevice},
		{"6 ceiling speakers behind knob 2", LoudspeakerDevice},
		{"Volume control for 6 loudspeakers", ControlDevice},
		{"Wall knob, lounge", ControlDevice},
		{"Lautstärkeregler UP", ControlDevice},
		{"Atténuateur mural", ControlDevice},
		{"Mixer amplifier 120 W", AmplifierDevice},
		{"Amp 3", AmplifierDevice},
		{"Leistungsverstärker", AmplifierDevice},
		{"Paging microphone", OtherDevice},
		{"Tischsprechstelle", OtherDevice},
		{"Haut-parleur encastré", LoudspeakerDevice},
		{"Bocina de exterior", LoudspeakerDevice},
		{"Preamplifier", OtherDevice}, // it drives no line
		{"SPEAKER/STROBE", LoudspeakerDevice},
		{"STROBE", OtherDevice},
		{"EOL A1", OtherDevice}, {"end-of-line", OtherDevice}, {"fin de ligne", OtherDevice},
		{"Projector in the hall on output A of amplifier 1", LoudspeakerDevice},
		{"Druckkammer an Verstärker 2", LoudspeakerDevice},
		{"Sedge 6", NoDevice},
		{"Lamp room", NoDevice},
		{"", NoDevice},
	} {
		if got := DeviceIn(tt.text); got != tt.want {
			t.Errorf("DeviceIn(%q) = %d, want %d", tt.text, got, tt.want)
		}
	}
}
