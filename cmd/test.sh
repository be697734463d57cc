#!/bin/sh
# The one command that tells whether all is well. It installs what a fresh Debian or Ubuntu machine with Go lacks, then checks the
# form of the code, builds it and runs every test. Run it from anywhere: sh cmd/test.sh
set -eu
cd "$(dirname "$0")/.."

. cmd/need.sh

need_go
install "the race detector needs a C compiler" gcc libc6-dev
install "the form for a phone is filled in by a real browser" chromium

say "form: gofmt"
unformatted=$(gofmt -l cmd furniture render room samples ui)
[ -z "$unformatted" ] || { echo "not in gofmt's form:"; echo "$unformatted"; exit 1; }

# The window needs cgo and the toolkit's C code; everything else is plain Go and is checked without a C compiler.
packages=$(CGO_ENABLED=0 go list -e ./... 2>/dev/null | grep -v '/cmd/bunkwright$')

say "go vet"
CGO_ENABLED=0 go vet $packages

say "go vet for Windows and macOS"
CGO_ENABLED=0 GOOS=windows go vet $packages
CGO_ENABLED=0 GOOS=darwin go vet $(echo "$packages" | grep -v -e '/ui$' -e '/ui/control$') # there the toolkit itself wants cgo

say "staticcheck"
CGO_ENABLED=0 go run honnef.co/go/tools/cmd/staticcheck@v0.8.2 $packages

say "tests"
CGO_ENABLED=0 go test $packages

# Packages that start goroutines run once more under the race detector.
racy=$(grep -lE '^\s*go (func|[a-z])' -r --include='*.go' cmd furniture render room samples ui | grep -v -e _test.go -e ^cmd/bunkwright/ | xargs -r -n1 dirname | sort -u | sed 's|^|./|')
if [ -n "$racy" ]; then
	say "tests under the race detector: $racy"
	CGO_ENABLED=1 go test -race $racy
fi
if [ "$(uname)" = Linux ]; then
	sh cmd/window-test.sh
fi
say "all is well"
