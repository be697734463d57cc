// Package fit asks whether a bed placed in a room will work there, and by how much.
//
// A Question measures: a pure function from a Scene to readings. Judge alone knows how sure they are, whose rules they are held
// against and what the verdict is called. Adding a question is one function, one row of the table in all.go, and fixtures.
package fit
