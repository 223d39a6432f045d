package source

import (
	"archive/zip"
	"bytes"
	"context"
	"errors"
	"io"
	"io/fs"
	"maps"
	"os"
	"path"
	"slices"
	"strings"
	"sync"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/zipdir"
)

const (
	zipsDeep   = 3       // zips within zips that are opened
	smallZip   = 8 << 20 // a zip may unpack to this much whatever its own size
	copyAtOnce = 256 << 10
)

// zipFile lists the members of the zip f, or f itself if it is a workbook.
func (w *walker) zipFile(f File, size int64) {
	shared := &sharedFile{path: f.Path}
	if err := shared.acquire(); err != nil {
		w.list(f) // reading it will say why
		return
	}
	defer shared.release()
	z, err := zipdir.Open(shared, size, w.lim.MaxMembers)
	switch {
	case errors.Is(err, zipdir.ErrTooMany):
		w.list(broken(f.Name, f.Path, grid.TooLarge("a zip of more than %d members", w.lim.MaxMembers)))
		return
	case err != nil:
		head := make([]byte, 130)
		n, _ := shared.ReadAt(head, 0)
		if cutZip(head[:n]).format == grid.Zip {
			f = broken(f.Name, f.Path, &grid.Unreadable{Reason: "the zip is cut short or damaged", Advice: "copy or download it again"})
		}
		w.list(f)
		return
	}
	if zipKind(z).format != grid.Zip {
		w.list(f)
		return
	}
	w.members(z, f, size, shared, 1)
}

// members lists what is in a zip of files. shared is opened while a member is
// read, nil if the zip is in memory.
func (w *walker) members(z *zip.Reader, outer File, size int64, shared *sharedFile, depth int) {
	if u := w.bomb(z, size); u != nil {
		w.list(broken(outer.Name, outer.Path, u))
		return
	}
	old := w.leaveOutMembers(z, outer.Name, shared)
	for _, m := range z.File {
		if w.ctx.Err() != nil {
			return
		}
		full := memberName(m.Name, m.NonUTF8)
		if strings.HasSuffix(full, "/") || strings.HasSuffix(full, `\`) {
			continue
		}
		if at, ok := old[slashed(full)]; ok {
			w.out.Results[at].Files++
			continue
		}
		name := path.Join(outer.Name, shown(full))
		if reason := passedOverPath(shown(full)); reason != "" {
			w.skip(name, reason)
			continue
		}
		if m.Mode()&fs.ModeSymlink != 0 {
			w.skip(name, "a link inside a zip")
			continue
		}
		f := File{Name: name, load: func(ctx context.Context, lim grid.Limits) ([]byte, error) {
			return loadMember(ctx, m, shared, lim)
		}}
		if !w.nested(m, f, shared, depth) {
			w.list(f)
		}
	}
}

// leaveOutMembers takes note of the results of earlier runs in a zip: it returns
// the place in out.Results of each.
func (w *walker) leaveOutMembers(z *zip.Reader, outer string, shared *sharedFile) map[string]int {
	if w.results == nil {
		return nil
	}
	members := make(map[string]*zip.File, len(z.File))
	folders := map[string]bool{}
	for _, m := range z.File {
		name := slashed(memberName(m.Name, m.NonUTF8))
		members[name] = m
		folders[path.Dir(name)] = true
	}
	old := map[string]int{}
	for _, folder := range slices.Sorted(maps.Keys(folders)) {
		read := func(file string) ([]byte, error) {
			m := members[path.Join(folder, file)]
			if m == nil {
				return nil, fs.ErrNotExist
			}
			return loadMember(w.ctx, m, shared, w.lim)
		}
		for _, result := range w.results(read) {
			old[path.Join(folder, result)] = len(w.out.Results)
		}
		name := outer
		if folder != "." {
			name = path.Join(outer, shown(folder))
		}
		w.out.Results = append(w.out.Results, Results{Folder: name})
	}
	return old
}

// slashed is the name of a member as others of its zip refer to it.
func slashed(name string) string { return path.Clean(strings.ReplaceAll(name, `\`, "/")) }

// passedOverPath is passedOver for every folder of a path.
func passedOverPath(name string) string {
	for part := range strings.SplitSeq(name, "/") {
		if reason := passedOver(part); reason != "" {
			return reason
		}
	}
	return ""
}

// bomb refuses a zip that unpacks to far more than files of this kind do.
func (w *walker) bomb(z *zip.Reader, size int64) *grid.Unreadable {
	var total uint64
	for _, m := range z.File {
		total += m.UncompressedSize64
		if total > 1<<50 || m.UncompressedSize64 > 1<<50 {
			total = 1 << 50
			break
		}
	}
	if total > smallZip && w.lim.MaxRatio > 0 && total/uint64(w.lim.MaxRatio) > uint64(size) {
		return grid.TooLarge("a zip that unpacks to more than %d times its size, as no honest one does", w.lim.MaxRatio)
	}
	return nil
}

// nested lists the members of a zip within a zip and reports whether the
// member was one. Such a zip is kept in memory.
func (w *walker) nested(m *zip.File, f File, shared *sharedFile, depth int) bool {
	if !strings.HasPrefix(memberHead(m, shared), "PK\x03\x04") {
		return false
	}
	if w.lim.MaxBytes > 0 && w.held+int64(m.UncompressedSize64) > w.lim.MaxBytes {
		return false
	}
	data, err := loadMember(w.ctx, m, shared, w.lim)
	if err != nil {
		return false // reading it will say why
	}
	z, err := zipdir.Open(bytes.NewReader(data), int64(len(data)), w.lim.MaxMembers)
	if err != nil || zipKind(z).format != grid.Zip {
		return false
	}
	if depth >= zipsDeep {
		w.list(broken(f.Name, "", &grid.Unreadable{Reason: "a zip in a zip in a zip, and so on: it was not opened", Advice: "unpack the outer ones"}))
		return true
	}
	w.held += int64(len(data))
	w.members(z, f, int64(len(data)), nil, depth+1)
	return true
}

// memberHead returns the first bytes of a member, "" if it cannot be read.
func memberHead(m *zip.File, shared *sharedFile) string {
	if m.Flags&1 != 0 || shared.acquire() != nil {
		return ""
	}
	defer shared.release()
	r, err := m.Open()
	if err != nil {
		return ""
	}
	defer r.Close()
	var b [4]byte
	n, _ := io.ReadFull(r, b[:])
	return string(b[:n])
}

// loadMember unpacks a member whole; its checksum is compared.
func loadMember(ctx context.Context, m *zip.File, shared *sharedFile, lim grid.Limits) ([]byte, error) {
	switch {
	case m.Flags&1 != 0:
		return nil, &grid.Unreadable{Reason: "it is protected by a password in its zip", Advice: "unpack the zip and give the folder"}
	case m.Method != zip.Store && m.Method != zip.Deflate:
		return nil, &grid.Unreadable{Reason: "it is packed in its zip in a way that is not known here", Advice: "unpack the zip and give the folder"}
	case lim.MaxBytes > 0 && m.UncompressedSize64 > uint64(lim.MaxBytes):
		return nil, grid.TooLarge("it unpacks to %d MiB, the limit is %d", m.UncompressedSize64>>20, lim.MaxBytes>>20)
	case m.UncompressedSize64 > smallZip && lim.MaxRatio > 0 && m.UncompressedSize64/uint64(lim.MaxRatio) > m.CompressedSize64:
		return nil, grid.TooLarge("it unpacks to more than %d times its size, as no honest file does", lim.MaxRatio)
	}
	if err := shared.acquire(); err != nil {
		return nil, err
	}
	defer shared.release()
	r, err := m.Open()
	if err != nil {
		return nil, damagedMember()
	}
	defer r.Close()
	var buf bytes.Buffer
	buf.Grow(int(min(m.UncompressedSize64, 4<<20)) + bytes.MinRead)
	for {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		_, err := io.CopyN(&buf, r, copyAtOnce)
		if uint64(buf.Len()) > m.UncompressedSize64 {
			return nil, damagedMember()
		}
		if errors.Is(err, io.EOF) && !errors.Is(err, io.ErrUnexpectedEOF) {
			return buf.Bytes(), nil
		}
		if err != nil {
			return nil, damagedMember()
		}
	}
}

func damagedMember() *grid.Unreadable {
	return &grid.Unreadable{Reason: "it is damaged in its zip: size or checksum differ from the zip's directory", Advice: "copy or download the zip again"}
}

// A sharedFile is a file that is open while somebody reads from it. A nil one
// is always ready: what it stands for is in memory.
type sharedFile struct {
	path  string
	mu    sync.Mutex
	users int
	file  *os.File
}

func (s *sharedFile) acquire() error {
	if s == nil {
		return nil
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.users == 0 {
		f, err := open(s.path)
		if err != nil {
			return err
		}
		s.file = f
	}
	s.users++
	return nil
}

func (s *sharedFile) release() {
	if s == nil {
		return
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.users--; s.users == 0 {
		s.file.Close()
		s.file = nil
	}
}

// ReadAt reads from the file, which must be acquired.
func (s *sharedFile) ReadAt(p []byte, off int64) (int, error) {
	s.mu.Lock()
	f := s.file
	s.mu.Unlock()
	if f == nil {
		return 0, fs.ErrClosed
	}
	return f.ReadAt(p, off)
}
