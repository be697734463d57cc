#!/bin/sh
# Opens the window on a job, or on the town-house sample: sh cmd/start.sh [job.toml]
# It installs what a fresh Debian or Ubuntu machine with Go lacks. Without a display it does the same work without a window.
set -eu
here=$(pwd)
cd "$(dirname "$0")/.."
. cmd/need.sh

job=${1:-samples/town-house.toml}
case $job in
/*) ;;
*) [ $# -eq 0 ] || job=$here/$job ;;
esac
need_go

if [ "$(uname)" = Linux ] && [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
	out=$(mktemp -d)
	say "no display: the answers here, the drawings and sheets in $out"
	CGO_ENABLED=0 go build -o "$out/bunkfit" ./cmd/bunkfit
	"$out/bunkfit" check "$job" || [ $? -eq 1 ]
	"$out/bunkfit" draw "$job" -o "$out"
	exit 0
fi

tags=""
if [ "$(uname)" = Linux ]; then
	install "the window is drawn with OpenGL on X11" $window_packages libgl1 libxcursor1 libxrandr2 libxinerama1 libxi6 libxxf86vm1 xdg-utils
	tags="-tags $window_tags"
fi
say "building the window (the first time takes some minutes)"
program=$(mktemp -d)/bunkwright
go build $tags -o "$program" ./cmd/bunkwright
say "opening $job"
exec "$program" "$job"
