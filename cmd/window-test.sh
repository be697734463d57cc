#!/bin/sh
# Starts the built window on a display of its own, works with it as a hand would, and looks at what comes of it. Called by test.sh.
set -eu
cd "$(dirname "$0")/.."
. cmd/need.sh

need_go
install "the window is drawn with OpenGL on X11, and a test needs a display, a hand and an eye" $window_packages $screen_packages

out=$(mktemp -d)
say "a real window; its pictures are in $out"
go build -tags "$window_tags" -o "$out/bunkwright" ./cmd/bunkwright
cp samples/town-house.toml "$out/job.toml"

export HOME="$out/home" XDG_RUNTIME_DIR="$out/run" FYNE_THEME=light
mkdir -p "$HOME/.cache" "$HOME/.config" "$XDG_RUNTIME_DIR" "$out/bin"
printf '#!/bin/sh\necho "$1" >"%s/viewed"\n' "$out" >"$out/bin/xdg-open" # the viewer that the system has in the test
chmod +x "$out/bin/xdg-open"
export PATH="$out/bin:$PATH"
chmod 700 "$XDG_RUNTIME_DIR"
Xvfb -displayfd 3 -screen 0 1440x900x24 3>"$out/display" >/dev/null 2>&1 &
screen=$!
trap 'kill $screen 2>/dev/null || true' EXIT
for i in 1 2 3 4 5 6 7 8 9 10; do
	[ -s "$out/display" ] && break
	sleep 0.5
done
DISPLAY=:$(cat "$out/display")
export DISPLAY

dbus-run-session -- "$out/bunkwright" "$out/job.toml" >"$out/log" 2>&1 &
program=$!
fail() { echo "window: $1"; cat "$out/log"; import -window root "$out/failed.png" || true; exit 1; }
for i in $(seq 40); do
	window=$(xdotool search --onlyvisible --name "Bunk for" 2>/dev/null | head -n 1)
	[ -n "$window" ] && xdotool windowfocus "$window" 2>/dev/null && break
	sleep 0.5
done
[ -n "$window" ] || fail "no window came"
sleep 1
shot() { import -window root "$out/$1.png"; }
key() { xdotool key --clearmodifiers "$@"; sleep 0.5; }
along() { grep '^along' "$out/job.toml"; }
first=$(along)
shot opened

say "drag the bed along its wall"
xdotool mousemove 320 250 mousedown 1
for i in 1 2 3 4 5 6 7 8 9 10; do
	xdotool mousemove_relative 7 0
	sleep 0.05
done
xdotool mouseup 1
sleep 1
shot dragged
key ctrl+s
[ "$(along)" != "$first" ] || fail "saved, but the bed has not moved: $(along)"

say "undo, open a question, print"
key ctrl+z
key ctrl+s
[ "$(along)" = "$first" ] || fail "undo does not bring the bed back: $(along)"
xdotool mousemove 1250 160 click 1
sleep 1
shot question
key ctrl+p
for i in $(seq 20); do
	[ -s "$out/job.pdf" ] && break
	sleep 0.5
done
[ -s "$out/job.pdf" ] || fail "no sheets came"
sleep 0.5
grep -q "file://$out/job.pdf" "$out/viewed" || fail "the viewer was not asked to show the sheets"
shot printed

say "type a length, and undo it"
xdotool mousemove 160 848 click 1
sleep 0.5
key ctrl+a
xdotool type '2 ft 3-1/2 in'
sleep 0.3
shot typing
key Return
key ctrl+s
case $(along) in *'"27-1/2 in"'*) ;; *) fail "a typed length is not in the file: $(along)" ;; esac
key ctrl+z
key ctrl+s
[ "$(along)" = "$first" ] || fail "undo does not take the typed length back: $(along)"

say "save a drawing by keys"
key ctrl+e
key Return
key Return
for i in $(seq 20); do
	ls "$out"/*-plan.png >/dev/null 2>&1 && break
	sleep 0.5
done
ls "$out"/*-plan.png >/dev/null 2>&1 || fail "no drawing came"
shot drawing

say "close"
key ctrl+w
for i in $(seq 20); do
	kill -0 $program 2>/dev/null || break
	sleep 0.5
done
kill -0 $program 2>/dev/null && fail "the window does not close"
wait $program || fail "it did not end well"
grep -qi 'panic\|fatal' "$out/log" && fail "the log tells of a panic"
say "the window did what the hand did"
