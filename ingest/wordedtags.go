package ingest

import "strings"

// tagsOnly are the tags of a list without the words behind the first of them that say where it is: "Horn E5, ice machine" is one
// loudspeaker. Words of which the first has no figure either stay, as a list of names.
func tagsOnly(list []string) []string {
	if len(list) < 2 || !anyDigit(list[0]) {
		return list
	}
	for i, tag := range list {
		if !anyDigit(tag) && strings.Trim(tag, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != "" && hasLongWord(tag) {
			return list[:i:i]
		}
	}
	return list
}
