// Package ask says what to ask of whoever measures the room.
package ask
