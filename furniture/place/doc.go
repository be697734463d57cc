// Package place answers where in the room the bed could stand, and what to change so that an answer fits.
//
// It only tries: every placement and every change is judged by the questions of package fit, which stay the one source of truth.
package place
