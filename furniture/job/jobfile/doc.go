// Package jobfile answers how a job is written as text and read back, and on which line of the file each of its keys stands.
package jobfile
