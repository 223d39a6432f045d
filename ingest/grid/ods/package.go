package ods

import (
	"archive/zip"
	"bytes"
	"errors"
	"io"

	"lineaudit/ingest/grid"
)

// ratioFrom is the size below which a part may unpack to any multiple.
const ratioFrom = 8 << 20

// unpack returns the parts of a zipped document that a table needs: the named
// styles, if any, and the content. Each is read to its checksum.
func unpack(data []byte, lim grid.Limits) ([][]byte, error) {
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, grid.Damaged("it cannot be unpacked (%s)", err)
	}
	if lim.MaxMembers > 0 && len(z.File) > lim.MaxMembers {
		return nil, grid.TooLarge("%d parts, the limit is %d", len(z.File), lim.MaxMembers)
	}
	members := map[string]*zip.File{}
	for _, m := range z.File {
		switch m.Name {
		case "content.xml", "styles.xml", "META-INF/manifest.xml", "encrypted-package":
			if members[m.Name] != nil {
				return nil, grid.Damaged("it holds the part %s twice", m.Name)
			}
			members[m.Name] = m
		}
	}
	if members["encrypted-package"] != nil {
		return nil, passwordProtected()
	}
	left := lim.MaxInflated
	read := func(name string) ([]byte, error) {
		m := members[name]
		if m == nil {
			return nil, nil
		}
		b, err := inflate(m, left, lim.MaxRatio)
		if lim.MaxInflated > 0 {
			left = max(left-int64(len(b)), 1)
		}
		return b, err
	}
	manifest, err := read("META-INF/manifest.xml")
	if err != nil {
		return nil, err
	}
	if bytes.Contains(manifest, []byte("encryption-data")) {
		return nil, passwordProtected()
	}
	var parts [][]byte
	for _, name := range []string{"styles.xml", "content.xml"} {
		b, err := read(name)
		if err != nil {
			return nil, err
		}
		if b != nil {
			parts = append(parts, b)
		} else if name == "content.xml" {
			return nil, grid.Damaged("its content is missing")
		}
	}
	return parts, nil
}

// inflate unpacks one part of at most left bytes (0: any) and checks its sum
// and its size.
func inflate(m *zip.File, left, ratio int64) ([]byte, error) {
	const encrypted = 1
	if m.Flags&encrypted != 0 {
		return nil, passwordProtected()
	}
	size := int64(m.UncompressedSize64)
	packed := int64(m.CompressedSize64)
	switch {
	case size < 0 || left > 0 && size > left:
		return nil, grid.TooLarge("its parts unpack to more than the limit")
	case size > ratioFrom && ratio > 0 && size/ratio > packed:
		return nil, grid.TooLarge("the part %s unpacks to more than %d times its size", m.Name, ratio)
	}
	r, err := m.Open()
	if err != nil {
		return nil, grid.Damaged("the part %s cannot be unpacked (%s)", m.Name, err)
	}
	defer r.Close() // reading: nothing is lost
	b, err := io.ReadAll(io.LimitReader(r, size+1))
	switch {
	case errors.Is(err, zip.ErrChecksum):
		return nil, grid.Damaged("the checksum of the part %s differs", m.Name)
	case err != nil:
		return nil, grid.Damaged("the part %s cannot be unpacked (%s)", m.Name, err)
	case int64(len(b)) != size:
		return nil, grid.Damaged("the part %s is not of the size it states", m.Name)
	}
	return b, nil
}

func passwordProtected() error {
	return &grid.Unreadable{
		Reason: "the spreadsheet is protected by a password",
		Advice: "open it with the password and save a copy without one",
	}
}
