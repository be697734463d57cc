#!/bin/sh
# Measures, in the built window under Xvfb, how long after the hand moved its pixels are there: the bed dragged across the plan, and a still
# picture dragged in the same window, in turns on the same display. Each move is sent alone and its time noted; the program's own trace
# says when the window was painted. sh cmd/latency.sh [moves] prints medians in ms.
set -eu
cd "$(dirname "$0")/.."
. cmd/need.sh

moves=${1:-40}
need_go
install "the window is drawn with OpenGL on X11, and a measurement needs a display and a hand" $window_packages $screen_packages
out=$(mktemp -d)
go build -tags "$window_tags" -o "$out/bunkwright" ./cmd/bunkwright
export HOME="$out/home" XDG_RUNTIME_DIR="$out/run" FYNE_THEME=light
mkdir -p "$HOME/.cache" "$HOME/.config" "$XDG_RUNTIME_DIR"
chmod 700 "$XDG_RUNTIME_DIR"
Xvfb -displayfd 3 -screen 0 1200x800x24 3>"$out/display" >/dev/null 2>&1 &
screen=$!
trap 'kill $screen 2>/dev/null || true; rm -r "$out"' EXIT
for i in $(seq 20); do
	[ -s "$out/display" ] && break
	sleep 0.3
done
DISPLAY=:$(cat "$out/display")
export DISPLAY

# run WHAT STAGE-KEY X Y DX DY [FLAG]: drags from X, Y and leaves trace and times of sending in $out/WHAT.
run() {
	what=$1 key=$2 x=$3 y=$4 dx=$5 dy=$6
	shift 6
	cp samples/town-house.toml "$out/job.toml"
	dbus-run-session -- "$out/bunkwright" -trace "$out/$what.trace" "$@" "$out/job.toml" >"$out/log" 2>&1 &
	program=$!
	window=""
	for i in $(seq 40); do
		window=$(xdotool search --onlyvisible --name "Bunk for" 2>/dev/null | head -n 1)
		[ -n "$window" ] && break
		sleep 0.3
	done
	xdotool windowsize "$window" 1200 800 windowmove "$window" 0 0 windowfocus "$window"
	sleep 2
	xdotool key --clearmodifiers "$key"
	sleep 1
	xdotool mousemove "$x" "$y" mousedown 1
	sleep 0.2
	: >"$out/$what.sent"
	for i in $(seq "$moves"); do
		[ $((i % 20)) -ne 10 ] || { dx=$((0 - dx)); dy=$((0 - dy)); }
		date +%s.%6N >>"$out/$what.sent"
		xdotool mousemove_relative -- "$dx" "$dy"
		sleep 0.2
	done
	xdotool mouseup 1
	sleep 1
	xdotool key --clearmodifiers ctrl+z ctrl+s ctrl+w
	for i in $(seq 10); do
		kill -0 $program 2>/dev/null || break
		sleep 0.3
	done
	kill $program 2>/dev/null || true
	wait $program 2>/dev/null || true
}

# latencies WHAT LINE: for each time of sending, how long after it the first such line of the trace was painted.
latencies() {
	awk -v line="$2" 'NR == FNR { sent[n++] = $1; next }
		$1 == line { at = $2 + $NF / 1000; while (k < n && sent[k + 1] && sent[k + 1] < $2) k++
			if (sent[k] > 0 && sent[k] <= $2 && !done[k]++) print 1000 * (at - sent[k]) }' "$out/$1.sent" "$out/$1.trace"
}
median() { sort -n | awk '{ v[NR] = $1 } END { if (NR) printf "%.1f", v[int((NR + 1) / 2)]; else printf "none" }'; }
field() { awk -v line="$2" -v f="$3" '$1 == line { for (i = 1; i < NF; i++) if ($i == f) print $(i + 1) }' "$out/$1.trace" | median; }

for turn in 1 2; do
	run "still$turn" ctrl+3 330 250 3 2 -bare
	run "bed$turn" ctrl+3 330 250 3 2
	run "level$turn" ctrl+2 735 376 0 2
done
for what in still bed level; do
	cat "$out/${what}1.trace" "$out/${what}2.trace" >"$out/$what.trace"
	for turn in 1 2; do latencies "$what$turn" step; done >"$out/$what.step"
	for turn in 1 2; do latencies "$what$turn" words; done >"$out/$what.words"
	for turn in 1 2; do latencies "$what$turn" sure; done >"$out/$what.sure"
	echo "$what: $(wc -l <"$out/$what.step") steps; from the event to its pixels $(median <"$out/$what.step") ms, to the words $(median <"$out/$what.words") ms, to plus-or-minus $(median <"$out/$what.sure") ms;" \
		"model $(field $what step model), drawing $(field $what step drawing), painted $(field $what step painted) ms after it was handled"
done
awk -v a="$(median <"$out/bed.step")" -v b="$(median <"$out/level.step")" -v c="$(median <"$out/still.step")" \
	'BEGIN { printf "the bed takes %.2f times as long as a still picture, a level %.2f times\n", a / c, b / c }'
