#!/usr/bin/env bash
# Installs, uses, upgrades, removes and purges the Debian package on a bare Debian in a folder, and
# looks whether the flier's log outlives all of it and nothing else is left.
#
#   sudo src/test/sh/deb.sh [FOLDER]
#
# FOLDER gets a bare Debian 12 by debootstrap, unless it holds one already; a temporary folder is
# used when none is named. Needs root (for chroot and mounts of its own), a Debian mirror on the
# network (MIRROR names another) and some 700 MB; so it is none of the standard tests.
set -euo pipefail

# Mounts made from here on are seen by nobody else and end with this script.
if [ -z "${PADSIDE_DEB_MOUNTS:-}" ]; then
  [ "$(id -u)" -eq 0 ] || { echo 'Run it as root: it uses chroot and mount.' >&2; exit 2; }
  exec env PADSIDE_DEB_MOUNTS=1 unshare --mount "$BASH" "${BASH_SOURCE[0]}" "$@"
fi
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."

command -v debootstrap >/dev/null || { echo 'debootstrap is missing: apt install debootstrap' >&2; exit 2; }
if [ $# -gt 0 ]; then
  system=$1
else
  system=$(mktemp -d)
  trap 'rm -rf --one-file-system "$system"' EXIT
fi

step() {
  printf '\n== %s\n' "$*"
}

wrong() {
  echo "FAILED: $*" >&2
  exit 1
}

expect() {
  grep -qF -e "$2" <<<"$1" || wrong "no \"$2\" in: $1"
  echo "   $2"
}

in_system() {
  chroot "$system" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 \
    DEBIAN_FRONTEND=noninteractive "$@"
}

# As somebody with a home folder and no rights.
flier() {
  chroot --userspec=flier:flier "$system" env -i PATH=/usr/bin:/bin LC_ALL=C.UTF-8 TERM=xterm \
    HOME=/srv/flier "$@"
}

sums() {
  (cd "$system/srv/flier/.local/share/padside/log/journal" && sha256sum -- *)
}

# The journals as they were are all still there and the same.
log_is_whole() {
  local lost
  lost=$(comm -23 <(sort <<<"$kept") <(sums | sort))
  [ -z "$lost" ] || wrong "the log is not what it was: $lost"
}

step 'Building: one revision twice, alike byte for byte, and the next'
first=$(src/deb/build 1)
before=$(sha256sum "$first")
first=$(src/deb/build 1)
[ "$(sha256sum "$first")" = "$before" ] || wrong 'built twice it is not the same'
second=$(src/deb/build 2)
echo "   $first $second"

if [ ! -e "$system/etc/debian_version" ]; then
  step "A bare Debian in $system"
  debootstrap --variant=minbase bookworm "$system" "${MIRROR:-http://deb.debian.org/debian}" >"$system.log"
fi
mount -t proc proc "$system/proc"
mount -t devpts -o ptmxmode=666 devpts "$system/dev/pts"
cp "$first" "$second" "$system/"
in_system id flier >/dev/null 2>&1 || in_system useradd --create-home --home-dir /srv/flier flier
rm -rf "$system/srv/flier/.local" "$system/srv/flier/.cache"
flier mkdir -p /srv/flier/.config/padside
echo 'clock = trusted' >"$system/srv/flier/.config/padside/settings.properties"

step 'Installing it with what it depends on'
in_system apt-get -q update >/dev/null
in_system apt-get -q install -y --no-install-recommends "/$(basename "$first")" 2>&1 | tail -n 3
expect "$(in_system dpkg-query -W padside)" "$(basename "$first" | cut -d_ -f2)"
in_system dpkg --verify padside
expect "$(in_system sh -c 'command -v mvn javac || echo neither Maven nor compiler')" neither

step 'Commands'
expect "$(flier padside --version)" Padside
expect "$(flier padside predict --mass 36g --diameter 24.8mm --motor A8-3 --chute 12in --json)" apogee_m
flier padside demo --no-screens
expect "$(flier padside flights --log /srv/flier/.local/share/padside/demo)" Lamplighter
flier padside add rocket <<<'{"name": "Alder"}' >/dev/null
expect "$(flier padside export --csv --kind rocket)" Alder
bash -n "$system/usr/share/bash-completion/completions/padside"
gzip -t "$system/usr/share/man/man1/padside.1.gz"

# keys COMMAND: opens the screens, leaves them by q and Enter, prints all that was drawn.
screens() {
  (sleep "$1"; printf q; sleep 2; printf '\r'; sleep 2) |
    flier script -qec "stty rows 24 columns 80; padside${2:+ $2}" /dev/null
}

step 'Screens, the first time and again'
expect "$(screens 25)" 'Preparing a faster start, once'
[ -s "$system/srv/flier/.cache/padside/classes.jsa" ] || wrong 'no archive of classes was made'
drawn=$(screens 8)
expect "$drawn" 'No day is open yet.'
grep -q Preparing <<<"$drawn" && wrong 'the archive was not used again'
expect "$(screens 8 demo)" Lamplighter
kept=$(sums)

step 'Upgrading'
in_system apt-get -q install -y --no-install-recommends "/$(basename "$second")" 2>&1 | tail -n 2
expect "$(in_system dpkg-query -W padside)" "$(basename "$second" | cut -d_ -f2)"
expect "$(flier padside export --csv --kind rocket)" Alder
expect "$(screens 8)" 'No day is open yet.'

step 'Removing, installing again, purging'
in_system apt-get -q remove -y padside 2>&1 | tail -n 1
in_system sh -c 'command -v padside' && wrong 'padside is still there'
log_is_whole
in_system apt-get -q install -y --no-install-recommends "/$(basename "$second")" >/dev/null 2>&1
expect "$(flier padside export --csv --kind rocket)" Alder
in_system apt-get -q purge -y padside 2>&1 | tail -n 1
rm "$system/$(basename "$first")" "$system/$(basename "$second")"
left=$(find "$system" -xdev -iname '*padside*' ! -path "$system/srv/flier/*")
[ -z "$left" ] || wrong "left behind: $left"
log_is_whole
echo "   only the flier's own: $(cd "$system/srv/flier" && find . -name padside | sort | tr '\n' ' ')"

step 'All of it went well'
