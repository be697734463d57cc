// Package survey asks where the corners and heights of a room are, how sure that is, and which readings nobody has checked.
package survey
