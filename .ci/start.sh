# shellcheck shell=bash disable=SC2154 # script_name
# SPDX-License-Identifier: GPL-3.0-or-later
#
# For cli/start and gui/start, which set script_name and source this file: builds a program if it is not built yet, then
# becomes it. stdout is the program's alone. Installs on Debian 12 what the build needs.

# shellcheck source=.ci/install.sh
. "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/install.sh"

# start_program TARGET FOLDER "SECTION..." "CMAKE-OPTION..." ARGUMENT...
# The program lies in FOLDER of the build folder and is made from that folder, core and specdb.
start_program() {
  local target=$1 folder=$2 sections=$3 options=$4
  shift 4
  build=$repository/build/start-$folder
  program=$build/$folder/$target
  # Holds the folder it was built in: a moved or copied repository is built anew, since CMake keeps full paths.
  stamp=$build/built
  if ! is_built "$folder"; then
    mkdir -p "$build" 2>/dev/null || stop 73 "cannot make the folder $build"
    # One builds, the others wait and find it built. The lock does not pass on to the program.
    {
      flock -n 9 || { say "waits for another start to finish building"; flock 9; }
      is_built "$folder" || build_it "$target" "$sections" "$options" 9>&-
    } 9>"$build/lock"
  fi
  exec "$program" "$@"
}

is_built() {
  [[ -x $program && -r $stamp && $(<"$stamp") == "$repository" ]] || return 1
  local newer
  # Folders count as well: they get newer when a file goes.
  newer=$(cd "$repository" && find core specdb "$1" CMakeLists.txt -newer "$stamp" -print -quit)
  [[ -z $newer ]]
}

build_it() {
  local target=$1
  local -a sections options
  read -ra sections <<<"$2"
  read -ra options <<<"$3"
  install_missing "$build/install.log" "${sections[@]}"
  local log=$build/build.log
  [[ ! -e $stamp || $(<"$stamp") == "$repository" ]] || rm -rf "$build/CMakeCache.txt" "$build/CMakeFiles"
  # The stamp carries the time before the build, so that what is edited meanwhile is built next time.
  rm -f "$stamp"
  printf '%s' "$repository" >"$stamp.new"
  if [[ -e $program ]]; then say "builds $target again, as its sources or its folder have changed"; else
    say "builds $target; the first time takes some minutes"; fi
  {
    cmake -S "$repository" -B "$build" -G Ninja -D CMAKE_BUILD_TYPE=Release -D CLAMPWRIGHT_TESTS=OFF "${options[@]}" &&
      cmake --build "$build" --target "$target"
  } >"$log" 2>&1 </dev/null || {
    show_tail "$log"
    stop 70 "the build failed; the whole log is $log"
  }
  mv "$stamp.new" "$stamp"
}
