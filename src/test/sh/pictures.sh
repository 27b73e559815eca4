#!/bin/sh
# Takes the README's pictures anew into shared/pictures: the made-up season in the program's own
# window on a screen nobody sees, at noon of the season's last day.
#
#   src/test/sh/pictures.sh
#
# Wants xvfb, evilwm, xdotool, imagemagick, faketime and a Java with windows (openjdk-17-jre). Look
# at every picture before keeping it.

set -eu
cd "$(dirname "$0")/../../.."
for tool in Xvfb evilwm xdotool import faketime; do
  command -v "$tool" >/dev/null || {
    echo "$tool is not here: sudo apt install xvfb evilwm xdotool imagemagick faketime" >&2
    exit 1
  }
done
bin/padside --version >/dev/null
folder=$(mktemp -d)
export HOME="$folder" XDG_DATA_HOME="$folder/data" XDG_CONFIG_HOME="$folder/config"
export LC_ALL=C.UTF-8 TZ=UTC DISPLAY=:91
Xvfb :91 -screen 0 1400x900x24 >/dev/null 2>&1 &
server=$!
sleep 1
evilwm -fn fixed >/dev/null 2>&1 &
manager=$!
faketime '2026-10-17 12:05:00' java -jar target/padside.jar demo --window >"$folder/said" 2>&1 &
program=$!
end() {
  kill "$program" 2>/dev/null || true
  sleep 2
  kill "$manager" "$server" 2>/dev/null || true
  rm -rf "$folder"
}
trap end EXIT

until window=$(xdotool search --onlyvisible --name '^Padside$'); do sleep 1; done
sleep 4
xdotool mousemove --window "$window" 200 400 click 1
sleep 1

# take NAME: what the window shows now; no cell has more than two of a few colours.
take() {
  sleep 3
  import -window "$window" -strip -colors 32 -define png:compression-level=9 \
    "PNG8:shared/pictures/$1.png"
}
mkdir -p shared/pictures
take day
xdotool key n
sleep 2
xdotool type --delay 60 lam
xdotool key Return
sleep 2
xdotool type --delay 60 '7g10 NW'
take card
xdotool key F4
take chart
xdotool key Escape
sleep 1
xdotool key Escape
sleep 2
xdotool key Up Up Return
sleep 2
xdotool key w
sleep 1
xdotool type --delay 60 '2g3 NW'
xdotool key Return
sleep 2
xdotool key space space space space
take pad
ls -l shared/pictures
