#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
#
# The desk once as a real program on an X server that nobody looks at: start, type, take a picture, quit.
# on_screen_test.sh CLAMPWRIGHT CLAMPWRIGHT-DESK
set -euo pipefail

place=$(mktemp -d)
export HOME=$place XDG_RUNTIME_DIR=$place/run XDG_CONFIG_HOME=$place/config XDG_DATA_HOME=$place/data LC_ALL=C.UTF-8
mkdir -m 700 "$XDG_RUNTIME_DIR"
unset QT_QPA_PLATFORM WAYLAND_DISPLAY
server=''
finish() { [[ -z $server ]] || kill "$server" 2>/dev/null || true; rm -rf "$place"; }
trap finish EXIT

fail() {
  printf '%s\n' "$*" >&2
  [[ ! -s $place/said ]] || sed 's/^/  the desk said: /' "$place/said" >&2
  exit 1
}

# The server picks a free number and says which.
Xvfb -displayfd 3 -screen 0 1280x900x24 3>"$place/number" >/dev/null 2>&1 &
server=$!
for _ in {1..100}; do
  [[ -s $place/number ]] && break
  sleep 0.1
done
[[ -s $place/number ]] || fail 'no X server'
DISPLAY=:$(<"$place/number")
export DISPLAY

"$1" --workshop "$place/demo.clampwright" demo >/dev/null 2>&1
# The keyboard's library copies a name out of the server's answer, which ends in no zero: not a fault of the desk.
export ASAN_OPTIONS=${ASAN_OPTIONS:+$ASAN_OPTIONS:}strict_string_checks=0
QT_QPA_PLATFORM=xcb "$2" "$place/demo.clampwright" >"$place/said" 2>&1 &
desk=$!

title() { xdotool search --onlyvisible --name 'Clampwright$' getwindowname 2>/dev/null || true; }
# wait_for TITLE: until the window is called that.
wait_for() {
  for _ in {1..100}; do
    [[ $(title) == "$1" ]] && return
    kill -0 "$desk" 2>/dev/null || fail "the desk ended before its window was called $1"
    sleep 0.1
  done
  fail "the window is called '$(title)', not $1"
}

wait_for 'demo.clampwright – Clampwright'
window=$(xdotool search --onlyvisible --name 'Clampwright$')
xdotool windowfocus --sync "$window"
# The find line has the focus at the start.
xdotool type --delay 20 'clutch hub'
xdotool key Return
wait_for 'clutch hub – demo.clampwright – Clampwright'
sleep 0.3
import -window root "$place/desk.png"
colours=$(identify -format '%k' "$place/desk.png")
[[ $colours -ge 20 ]] || fail "the picture has only $colours colours"
[[ -z ${CLAMPWRIGHT_KEEP_PICTURE:-} ]] || cp "$place/desk.png" "$CLAMPWRIGHT_KEEP_PICTURE"
xdotool key ctrl+q
for _ in {1..100}; do
  kill -0 "$desk" 2>/dev/null || break
  sleep 0.1
done
! kill -0 "$desk" 2>/dev/null || fail 'the desk does not quit'
wait "$desk" || fail "the desk ended with $?"
[[ ! -s $place/said ]] || fail 'the desk said something where nothing was to be said'
