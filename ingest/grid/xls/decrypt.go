package xls

import (
	"bytes"
	"crypto/md5"
	"crypto/rc4"
	"crypto/sha1"
	"encoding/binary"
	"math/bits"
)

// defaultPassword is what workbooks are encrypted with whose owner protected
// their structure and set no password to open them ([MS-XLS] 2.2.10).
// Anybody's program opens these without asking.
const defaultPassword = "VelvetSweatshop"

// blockSize is how many bytes one RC4 key serves ([MS-OFFCRYPTO] 2.3.6.3).
const blockSize = 1024

// decrypt returns the stream in plain text if it is encrypted with the default
// password, by its FilePass record ([MS-XLS] 2.4.117).
func decrypt(stream []byte, filePass record, biff8 bool) ([]byte, bool) {
	d := filePass.data
	after := filePass.pos + 4 + len(d)
	if !biff8 {
		return unXOR(stream, after, d)
	}
	if len(d) < 2 {
		return nil, false
	}
	kind, d := u16(d), d[2:]
	switch {
	case kind == 0:
		return unXOR(stream, after, d)
	case kind != 1 || len(d) < 4:
		return nil, false
	}
	var key func(block int) []byte
	if major, minor := u16(d), u16(d[2:]); major == 1 && minor == 1 {
		key = standardKey(d[4:])
	} else if major >= 2 && major <= 4 && minor == 2 {
		key = cryptoKey(d[4:])
	}
	if key == nil {
		return nil, false
	}
	pad := make([]byte, len(stream)) // the key stream; headers of records use some of it up
	for at := 0; at < len(pad); at += blockSize {
		c, err := rc4.NewCipher(key(at / blockSize))
		if err != nil {
			return nil, false
		}
		part := pad[at:min(at+blockSize, len(pad))]
		c.XORKeyStream(part, part)
	}
	return eachRecord(stream, after, func(pos, _ int, data []byte) {
		for i := range data {
			data[i] ^= pad[pos+i]
		}
	}), true
}

// eachRecord calls f with the part of each record that is encrypted, in a copy
// of the stream that it returns. pos is where the part lies in the stream,
// size that of the whole record's data.
func eachRecord(stream []byte, from int, f func(pos, size int, data []byte)) []byte {
	out := bytes.Clone(stream)
	s := &recordStream{b: out, pos: from}
	for {
		r, err := s.next()
		if err != nil { // the end, or damage that reading will meet again
			return out
		}
		switch r.id {
		case recBOF, recFilePass, 0x00e1, 0x0138, 0x0194, 0x0195, 0x0196: // InterfaceHdr, RRDHead, UsrExcl, FileLock, RRDInfo
			continue
		case recBoundSheet: // the offset of the sheet is plain
			if len(r.data) > 4 {
				f(r.pos+8, len(r.data), r.data[4:])
			}
			continue
		}
		f(r.pos+4, len(r.data), r.data)
	}
}

// utf16LE returns the default password in UTF-16.
func utf16LE() []byte {
	var out []byte
	for _, c := range []byte(defaultPassword) {
		out = append(out, c, 0)
	}
	return out
}

// standardKey returns the keys of RC4 encryption ([MS-OFFCRYPTO] 2.3.6), or
// nil if the password is another. d holds salt, verifier and its hash.
func standardKey(d []byte) func(int) []byte {
	if len(d) < 48 {
		return nil
	}
	hash := md5.Sum(utf16LE())
	hash = md5.Sum(bytes.Repeat(append(bytes.Clone(hash[:5]), d[:16]...), 16))
	key := func(block int) []byte {
		k := md5.Sum(binary.LittleEndian.AppendUint32(bytes.Clone(hash[:5]), uint32(block)))
		return k[:]
	}
	plain := make([]byte, 32)
	c, err := rc4.NewCipher(key(0))
	if err != nil {
		return nil
	}
	c.XORKeyStream(plain, d[16:48])
	if sum := md5.Sum(plain[:16]); !bytes.Equal(sum[:], plain[16:]) {
		return nil
	}
	return key
}

// cryptoKey returns the keys of RC4 CryptoAPI encryption ([MS-OFFCRYPTO]
// 2.3.5), or nil if the password or the scheme is another. d holds flags, the
// size of the header, the header and the verifier.
func cryptoKey(d []byte) func(int) []byte {
	const rc4ID, sha1ID = 0x6801, 0x8004
	if len(d) < 8 {
		return nil
	}
	size := int(u32(d[4:]))
	d = d[8:]
	if size < 32 || len(d) < size+60 || len(d)-size > 1<<12 {
		return nil
	}
	head, verifier := d[:size], d[size:]
	if alg := u32(head[8:]); alg != rc4ID && alg != 0 {
		return nil
	}
	if alg := u32(head[12:]); alg != sha1ID && alg != 0 {
		return nil
	}
	length := int(u32(head[16:])) / 8
	if length == 0 {
		length = 5
	}
	if length < 5 || length > 16 || u32(verifier) != 16 {
		return nil
	}
	base := sha1.Sum(append(bytes.Clone(verifier[4:20]), utf16LE()...))
	key := func(block int) []byte {
		k := sha1.Sum(binary.LittleEndian.AppendUint32(bytes.Clone(base[:]), uint32(block)))
		if length == 5 { // 40 bits are filled up with zeros
			return append(bytes.Clone(k[:5]), make([]byte, 11)...)
		}
		return k[:length]
	}
	plain := make([]byte, 36)
	c, err := rc4.NewCipher(key(0))
	if err != nil {
		return nil
	}
	c.XORKeyStream(plain[:16], verifier[20:36])
	c.XORKeyStream(plain[16:], verifier[40:60])
	if sum := sha1.Sum(plain[:16]); !bytes.Equal(sum[:], plain[16:]) {
		return nil
	}
	return key
}

// unXOR undoes the obfuscation of [MS-OFFCRYPTO] 2.3.7. d holds the key and
// the verifier that the password makes.
func unXOR(stream []byte, after int, d []byte) ([]byte, bool) {
	const key, verifier = 0xb359, 0x9a0a // of the default password
	if len(d) < 4 || u16(d) != key || u16(d[2:]) != verifier {
		return nil, false
	}
	var pad [16]byte
	for i := range pad {
		c := byte(0xbb) // fills up the password of 15 characters
		if i < len(defaultPassword) {
			c = defaultPassword[i]
		}
		half := byte(key & 0xff)
		if i%2 == 1 {
			half = key >> 8
		}
		pad[i] = bits.RotateLeft8(c^half, -1)
	}
	return eachRecord(stream, after, func(pos, size int, data []byte) {
		for i := range data {
			data[i] = bits.RotateLeft8(data[i]^pad[(pos+i+size)%16], -5)
		}
	}), true
}
