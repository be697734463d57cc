# What the scripts beside this one share: saying what happens, and installing what a fresh Debian or Ubuntu machine lacks.

say() { printf '\n== %s\n' "$1"; }

# install WHY PACKAGE...: installs those Debian packages that are missing; does nothing where all are there, or where there is no apt.
install() {
	why=$1
	shift
	command -v dpkg-query >/dev/null 2>&1 || return 0
	missing=""
	for package in "$@"; do
		dpkg-query -W -f '${Status}' "$package" 2>/dev/null | grep -q '^install ok installed$' || missing="$missing $package"
	done
	[ -n "$missing" ] || return 0
	say "installing$missing: $why"
	root=""
	[ "$(id -u)" -eq 0 ] || root="sudo"
	$root apt-get update -qq
	$root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing
}

need_go() {
	command -v go >/dev/null 2>&1 && return 0
	echo "go is missing: install Go 1.26 or newer, then run this again" >&2
	exit 2
}

# What building the window asks for, and what a real window needs to be seen in a test.
window_packages="gcc libc6-dev pkg-config libgl-dev libegl-dev libx11-dev libxcursor-dev libxrandr-dev libxinerama-dev libxi-dev libxxf86vm-dev"
screen_packages="xvfb xdotool imagemagick libgl1 libgl1-mesa-dri dbus"

# tags of the window on Linux: X11 alone (it works under Wayland too), and no slow thread checks.
window_tags="x11,migrated_fynedo"
