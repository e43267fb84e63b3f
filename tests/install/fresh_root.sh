#!/usr/bin/env bash
# Installs the packages into a new Debian root with apt, uses them there, removes them, and compares the files of the root
# before and after. Needs root and debootstrap; takes some minutes.
# usage: tests/install/fresh_root.sh PACKAGES MIRROR     address of a Debian mirror, for debootstrap
#        tests/install/fresh_root.sh PACKAGES ROOT       a folder that debootstrap has made
set -euo pipefail
packages=$(cd "$1" && pwd)
root=$2
if [[ ! -d $root ]]; then
    root=$(mktemp -d)
    trap 'rm -rf --one-file-system "$root"' EXIT
    debootstrap --variant=minbase bookworm "$root" "$2" >/dev/null
fi
inside() { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/tmp/home LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive "$@"; }
mkdir -p "$root/packages" "$root/tmp/home"
cp "$packages"/*.deb "$root/packages"
inside apt-get update -qq
files() { (cd "$root" && find . -xdev \( -path ./var -o -path ./tmp -o -path ./run -o -path ./packages \) -prune -o -type f -print | sort); }

# What they depend on stays installed, so that only the files of the packages can differ. The MIME database and the
# list of desktop entries are there before, as on every desktop.
inside bash -c 'apt-get install -y -qq --no-install-recommends shared-mime-info desktop-file-utils libglib2.0-bin fonts-vollkorn fonts-karla >/dev/null'
inside bash -c 'apt-get install -y -qq --no-install-recommends /packages/tenter_*.deb /packages/tenter-cli_*.deb >/dev/null'
inside bash -c 'apt-mark manual $(dpkg-query -W -f "\${Package} ") >/dev/null; apt-get purge -y -qq tenter tenter-cli >/dev/null'
files >"$root/tmp/before"
inside bash -c 'apt-get install -y -qq --no-install-recommends /packages/tenter_*.deb /packages/tenter-cli_*.deb >/dev/null'

sample=/usr/share/tenter/sample-projects/shore-walks.tenter.json
inside tenter-cli --version
[[ $(inside gio info -a standard::content-type "$sample") == *application/x.tenter+json* ]]
[[ $(inside gio mime application/x.tenter+json) == *Default*org.tenter.Tenter.desktop* ]]
echo "the type of the sample opens with Tenter"
inside tenter-cli check "$sample" --fail-on error | tail -n 1
inside tenter --picture /tmp/row.png "$sample"
code=0
inside env QT_QPA_PLATFORM=offscreen timeout 3 tenter "$sample" || code=$?
[[ $code == 124 ]] || { echo "the window ended with $code"; exit 1; }
echo "the window was open until it was stopped"

inside bash -c 'apt-get purge -y -qq tenter tenter-cli >/dev/null'
files >"$root/tmp/after"
diff "$root/tmp/before" "$root/tmp/after"
echo "removed: the root has the same $(wc -l <"$root/tmp/after") files as before"
