// Package reader is a page to be read: a title, parts with their headings, and
// for each line where it is from or the key it is about. What F1 says of a stage
// and the list of what to bring are such pages.
package reader
