package stage

// UnfinishedText is what the note of an unfinished run begins with.
const UnfinishedText = unfinishedText
