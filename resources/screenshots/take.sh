#!/usr/bin/env bash
# Takes the pictures of README.md again: the window at 1280 × 800 in light colours, as PNG files in this folder.
# usage: resources/screenshots/take.sh [FOLDER OF THE PROGRAM, by default build/bin] [NAME OF ONE PICTURE]
# Needs Debian packages that Tenter itself does not need: xvfb, openbox, xdotool, imagemagick. compare.png also needs
# chromium.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd "$here/../.." && pwd)
program=${1:-$root/build/bin}/tenter
only=${2:-}
for command in Xvfb openbox xdotool import convert; do
    command -v "$command" >/dev/null || { echo "take.sh: $command is missing; install xvfb openbox xdotool imagemagick" >&2; exit 1; }
done
[[ -x $program ]] || { echo "take.sh: there is no $program; build it with app/run" >&2; exit 1; }

work=$(mktemp -d)
started=()
finish() {
    for id in "${started[@]}"; do kill "$id" 2>/dev/null || true; done
    rm -rf "$work"
}
trap finish EXIT

# A display of its own, windows without frames, and no settings of the user.
exec 7>"$work/display"
Xvfb -displayfd 7 -screen 0 1280x800x24 -nolisten tcp >"$work/xvfb.log" 2>&1 &
started+=($!)
for _ in {1..50}; do [[ -s $work/display ]] && break; sleep 0.1; done
DISPLAY=:$(<"$work/display")
export DISPLAY
export XDG_CONFIG_HOME=$work/config XDG_STATE_HOME=$work/state XDG_CACHE_HOME=$work/cache XDG_DATA_HOME=$work/data QT_SCALE_FACTOR=1
unset WAYLAND_DISPLAY QT_QPA_PLATFORM
cat >"$work/rc.xml" <<'XML'
<openbox_config xmlns="http://openbox.org/3.4/rc">
  <applications><application class="*"><decor>no</decor></application></applications>
</openbox_config>
XML
openbox --config-file "$work/rc.xml" >"$work/openbox.log" 2>&1 &
started+=($!)
sleep 0.5

# open SAMPLE: the window over the whole display, its pictures read.
open() {
    "$program" --theme light "$root/sample-projects/$1.tenter.json" >"$work/tenter.log" 2>&1 &
    tenter=$!
    started+=("$tenter")
    window=$(timeout 30 xdotool search --sync --onlyvisible --pid "$tenter" | tail -n 1)
    xdotool windowmove "$window" 0 0 windowsize "$window" 1280 800
    xdotool mousemove 1279 799
    sleep 2
}
press() {
    for key; do
        xdotool key --clearmodifiers "$key"
        sleep 0.3
    done
}
# shoot NAME: 256 colours keep a picture of the window below 150 kB.
shoot() {
    sleep 1.5
    import -window root "$work/$1.png"
    convert "$work/$1.png" +dither -colors 256 -strip -define png:compression-level=9 "PNG8:$here/$1.png"
    echo "$here/$1.png: $(stat -c %s "$here/$1.png") bytes"
}
close() {
    kill "$tenter"
    wait "$tenter" 2>/dev/null || true
}
wanted() { [[ -z $only || $only == "$1" ]]; }

if wanted window; then
    open shore-walks
    press F6 ctrl+Left shift+Right
    shoot window
    close
fi
if wanted finding; then
    open shore-walks
    press F8
    shoot finding
    close
fi
if wanted solve; then
    open shore-walks
    press F6 F9
    sleep 2
    shoot solve
    close
fi
if wanted compare; then
    open shore-walks
    press ctrl+shift+b
    sleep 2
    press Return
    sleep "${COMPARE_SECONDS:-45}"
    shoot compare
    close
fi
