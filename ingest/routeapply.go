package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
)

// What notes say of places and outputs, given to the parts of the job.

// applyRoutes gives outputs and controls what the notes say of them, where the
// tables do not.
func (b *builder) applyRoutes() {
	for i := range b.routes {
		r := &b.routes[i]
		channel := b.channelOfRoute(r)
		if channel == nil {
			continue
		}
		if r.watts.had() && len(b.channelRated[channel]) == 0 {
			if out, s := b.rating(r.watts); len(out) > 0 {
				b.noteChannelRating(channel, out, s)
			}
		}
		for _, name := range r.service.zones {
			if z := b.zone(r.service.at, name); z != nil && z.Channel == nil {
				feedZone(z, channel, &r.outlet)
			}
		}
		b.serve(&r.service, channel, nil)
		if r.service.rest {
			b.feedRest(r.service.at, channel)
		}
	}
	b.runSpokenLines()
	for _, c := range b.carried {
		for _, tag := range c.controls {
			k := b.controls[b.controlNames.Find(tag).Key]
			if c.unnamed {
				if at := b.controlAt(&c.at); at != nil {
					k = at
				}
			}
			if k == nil && c.at.had() && b.placesKnown(&c.at) {
				k = b.control(c.at.at, tag)
			}
			if k == nil {
				continue
			}
			if c.watts.had() && len(b.controlRated[k]) == 0 {
				b.noteControlRating(k, c.watts)
			}
			for _, name := range c.at.zones {
				if z := b.zones[b.zoneNames.Find(name).Key]; z != nil && z.Control == nil {
					z.Control = k
				}
			}
			b.serve(&c.at, nil, k)
		}
	}
}

// feedRest hangs all loudspeakers that nothing has fed so far on an output:
// "the rest on output 2", behind what other outputs feed; "everything is on output 1".
func (b *builder) feedRest(at seen, c *schedule.Channel) {
	n := 0
	for _, l := range b.job.Loudspeakers {
		if l.Channel == nil && (l.Zone == nil || l.Zone.Channel == nil) {
			l.Channel = c
			n++
		}
	}
	if n > 0 {
		b.take(at, "channel", c.Label(), schedule.LikelierReading, "said of all that nothing else feeds")
	}
}

// placesKnown reports whether rows name a place of a service.
func (b *builder) placesKnown(v *service) bool {
	for _, name := range v.zones {
		if b.zones[b.zoneNames.Find(name).Key] != nil {
			return true
		}
	}
	return len(v.rooms)+len(v.tags)+len(v.rows) > 0
}

// channelOfRoute is the channel that a note names.
func (b *builder) channelOfRoute(r *route) *schedule.Channel {
	var a *schedule.Amplifier
	if r.outlet.amp != "" {
		if a = b.amplifier(r.outlet.ampAt, r.outlet.amp); a == nil {
			return nil
		}
	}
	if len(r.outlet.channels) == 0 {
		for _, c := range b.onlyChannel(nil, &r.outlet, a) {
			return c
		}
		return nil
	}
	name := r.outlet.channels[0]
	if len(r.outlet.channels) > 1 {
		name = strings.Join(r.outlet.channels, "+")
	}
	if a == nil {
		var ok bool
		if a, ok = b.ownerOf(r.outlet.at, name); !ok {
			return nil
		}
	}
	return b.channel(a, name, r.outlet.at.source.At)
}
