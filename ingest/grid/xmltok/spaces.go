package xmltok

import "bytes"

// An element is one that is open.
type element struct {
	raw   []byte // its name as it stands in the part
	name  string // with the prefix of its space
	bound int    // name spaces bound before it
}

// rawAttribute is an attribute whose space is not looked up yet.
type rawAttribute struct{ name, value []byte }

// A binding gives a prefix of the part to a name space.
type binding struct{ prefix, short string }

// maxBindings bounds the name spaces in force at a time.
const maxBindings = 1000

// bind takes in xmlns:prefix="space".
func (r *Reader) bind(prefix string, space []byte) error {
	if len(r.bindings) >= maxBindings {
		return tooMany()
	}
	b, err := r.unescape(space)
	if err != nil {
		return err
	}
	short, known := r.prefix[string(b)]
	switch {
	case len(b) == 0:
		short = ""
	case !known:
		short = "?"
	}
	r.bindings = append(r.bindings, binding{prefix, short})
	return nil
}

// unbind forgets the name spaces that an element bound.
func (r *Reader) unbind(bound int) {
	if bound != len(r.bindings) {
		r.bindings = r.bindings[:bound]
		clear(r.names)
	}
}

// maxNames bounds the names whose short form is remembered.
const maxNames = 4096

// short returns a name with the short prefix of its space. An attribute
// without a prefix is in no space.
func (r *Reader) short(raw []byte, isAttribute bool) string {
	// A colon marks the difference between both uses of a bare name.
	key := r.key[:0]
	if isAttribute {
		key = append(key, '@')
	}
	key = append(key, raw...)
	r.key = key
	if s, ok := r.names[string(key)]; ok {
		return s
	}
	prefix, local := "", raw
	if i := bytes.IndexByte(raw, ':'); i > 0 && i+1 < len(raw) {
		prefix, local = string(raw[:i]), raw[i+1:]
	}
	s := string(local)
	if prefix != "" || !isAttribute {
		if p := r.lookup(prefix); p != "" {
			s = p + ":" + s
		}
	}
	if len(r.names) < maxNames {
		r.names[string(key)] = s
	}
	return s
}

// lookup returns the short prefix of the space that a prefix is bound to.
func (r *Reader) lookup(prefix string) string {
	for i := len(r.bindings) - 1; i >= 0; i-- {
		if r.bindings[i].prefix == prefix {
			return r.bindings[i].short
		}
	}
	if prefix == "" {
		return ""
	}
	return "?"
}
