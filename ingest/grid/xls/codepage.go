package xls

import (
	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/japanese"
	"golang.org/x/text/encoding/korean"
	"golang.org/x/text/encoding/simplifiedchinese"
	"golang.org/x/text/encoding/traditionalchinese"
)

// codePage returns the encoding of a Windows code page number as a CodePage
// record gives it, and whether it is known.
func codePage(n uint16) (encoding.Encoding, bool) {
	switch n {
	case 367, 1200, 1252, 0x8001, 0: // ASCII; UTF-16, which BIFF8 says of itself
		return charmap.Windows1252, true
	case 437:
		return charmap.CodePage437, true
	case 850:
		return charmap.CodePage850, true
	case 852:
		return charmap.CodePage852, true
	case 855:
		return charmap.CodePage855, true
	case 858:
		return charmap.CodePage858, true
	case 860:
		return charmap.CodePage860, true
	case 862:
		return charmap.CodePage862, true
	case 863:
		return charmap.CodePage863, true
	case 865:
		return charmap.CodePage865, true
	case 866:
		return charmap.CodePage866, true
	case 874:
		return charmap.Windows874, true
	case 932:
		return japanese.ShiftJIS, true
	case 936:
		return simplifiedchinese.GBK, true
	case 949:
		return korean.EUCKR, true
	case 950:
		return traditionalchinese.Big5, true
	case 1250:
		return charmap.Windows1250, true
	case 1251:
		return charmap.Windows1251, true
	case 1253:
		return charmap.Windows1253, true
	case 1254:
		return charmap.Windows1254, true
	case 1255:
		return charmap.Windows1255, true
	case 1256:
		return charmap.Windows1256, true
	case 1257:
		return charmap.Windows1257, true
	case 1258:
		return charmap.Windows1258, true
	case 10000, 0x8000:
		return charmap.Macintosh, true
	case 10007:
		return charmap.MacintoshCyrillic, true
	}
	return charmap.Windows1252, false
}
