// Package misread says how a wrong reading of a tape probably came about, and what the tape would have said otherwise.
package misread
