# shellcheck shell=bash disable=SC2154 # script_name
# SPDX-License-Identifier: GPL-3.0-or-later
#
# For cli/start, tests/run and .ci/run, which set script_name and source this file: makes sure that what they need is
# installed. Works by .ci/packages. Everything said goes to stderr, under the name of the script; the exit codes are those
# of sysexits.h.

repository=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd -P)

say() { printf '%s: %s\n' "$script_name" "$*" >&2; }

stop() {
  local code=$1
  shift
  say "$@"
  exit "$code"
}

# Shows the end of a log, each line under the script's name as all else it says.
show_tail() { tail -n 25 "$1" | sed "s|^|$script_name:   |" >&2; }

# "package proof" of each line in the named sections.
listed() {
  local sections=" $* " section='' package proof rest
  while read -r package proof rest; do
    case $package in
      '' | '#'*) ;;
      '['*) section=${package//[\[\]]/} ;;
      *) [[ $sections != *" $section "* ]] || printf '%s %s\n' "$package" "$proof" ;;
    esac
  done <"$repository/.ci/packages"
}

is_debian_12() (
  [[ -r /etc/os-release ]] || exit 1
  # shellcheck source=/dev/null
  . /etc/os-release
  [[ ${ID:-} == debian && ${VERSION_ID:-} == 12 ]]
)

is_there() {
  case $1 in
    -) ;;
    '<'*) printf '#include %s\n' "$1" | c++ -E -x c++ - >/dev/null 2>&1 ;;
    /*) [[ -e $1 ]] ;;
    *) command -v "$1" >/dev/null ;;
  esac
}

# Reads lines "package proof", prints the packages whose proof fails.
without_proof() {
  local package proof
  while read -r package proof; do
    is_there "$proof" || printf '%s\n' "${package%%|*}"
  done
}

# Reads lines "package proof", prints those that Debian does not have installed, with the first of their packages.
not_installed() {
  local package proof installed lines
  lines=$(cat)
  # shellcheck disable=SC2016 # the dollars are for dpkg-query
  installed=$(cut -d ' ' -f 1 <<<"$lines" | tr '|' '\n' |
    xargs dpkg-query -W -f '${Package} ${db:Status-Status}\n' 2>/dev/null) || true
  while read -r package proof; do
    grep -qxF "$(tr '|' '\n' <<<"$package" | sed 's/$/ installed/')" <<<"$installed" ||
      printf '%s %s\n' "${package%%|*}" "$proof"
  done <<<"$lines"
}

# install_missing LOG SECTION...
install_missing() {
  local log=$1 lines missing
  shift
  lines=$(listed "$@")
  if ! is_debian_12 || ! command -v dpkg-query >/dev/null; then
    missing=$(without_proof <<<"$lines" | paste -sd ' ')
    [[ -z $missing ]] || stop 69 "this system is not Debian 12, so nothing is installed for you. Missing, by the names" \
      "that Debian gives them: $missing. Install these and call again."
    return
  fi
  lines=$(not_installed <<<"$lines")
  [[ -n $lines ]] || return 0
  missing=$(cut -d ' ' -f 1 <<<"$lines" | paste -sd ' ')
  local -a as_root=()
  if [[ $EUID -ne 0 ]]; then
    if ! may_become_root; then
      # Whoever brought the tools along by another way needs no package.
      missing=$(without_proof <<<"$lines" | paste -sd ' ')
      [[ -n $missing ]] || return 0
      stop 77 "these Debian packages are missing, and installing them takes root or sudo: $missing"
    fi
    as_root=(sudo)
  fi
  as_root+=(env DEBIAN_FRONTEND=noninteractive apt-get -q -y -o DPkg::Lock::Timeout=300)
  say "installs these Debian packages: $missing"
  # A source of packages that cannot be reached need not be one that we want: the installing decides. Nothing is
  # removed to make room; that is for the owner of the machine.
  "${as_root[@]}" update >"$log" 2>&1 </dev/null || true
  local -a packages
  read -ra packages <<<"$missing"
  "${as_root[@]}" install --no-install-recommends --no-remove "${packages[@]}" >>"$log" 2>&1 </dev/null || {
    show_tail "$log"
    stop 69 "the packages could not be installed; the whole log is $log"
  }
}

may_become_root() {
  command -v sudo >/dev/null || return 1
  # Without a terminal nobody can answer the question for a password.
  sudo -n true 2>/dev/null || [[ -t 2 ]]
}
