# shellcheck shell=bash
# Shared by viewer/run and tests/run: installing, configuring, building. Read with `.`, from the
# top folder of the source.

say() { printf '%s\n' "$*" >&2; }

# Names of the packages in the given lists that are not installed, one a line.
missingPackages() {
  local installed package command
  installed=$(dpkg-query -W -f='${db:Status-Status} ${Package}\n' 2>/dev/null |
    sed -n 's/^installed //p')
  sed 's/#.*//' "$@" | while read -r package command; do
    [ -n "$package" ] || continue
    if [ -n "$command" ] && command -v "$command" >/dev/null; then continue; fi
    if grep -qxF -- "$package" <<<"$installed"; then continue; fi
    printf '%s\n' "$package"
  done
}

# installPackages LIST...: installs what is missing, asking for sudo only then.
installPackages() {
  local missing=() asRoot=()
  if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
    say "This set-up installs with apt, and there is none here. The packages it would install are"
    say "listed in $*; with those in place, build with: cmake -S . -B build && cmake --build build"
    return 1
  fi
  mapfile -t missing < <(missingPackages "$@")
  if [ "${#missing[@]}" -eq 0 ]; then return 0; fi
  if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
      say "Missing from this machine: ${missing[*]}"
      say "Ask whoever looks after it to run: apt-get install ${missing[*]}"
      return 1
    fi
    asRoot=(sudo)
  fi
  say "Installing from Debian: ${missing[*]}"
  "${asRoot[@]}" apt-get update -q >&2 || say "The package lists could not be refreshed; going on."
  "${asRoot[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -q --no-install-recommends "${missing[@]}" >&2
}

# configure FOLDER OPTION...: once; again only when other options are asked for.
configure() {
  local folder=$1 stamp="$1/.configured-with"
  shift
  if [ -f "$folder/build.ninja" ] && [ "$(cat "$stamp" 2>/dev/null)" = "$*" ]; then return 0; fi
  mkdir -p "$folder"
  if ! cmake -S . -B "$folder" -G Ninja "$@" >"$folder/configure.log" 2>&1; then
    cat "$folder/configure.log" >&2
    return 1
  fi
  printf '%s' "$*" >"$stamp"
}

# The cache is shared between copies of the source in different folders.
export CCACHE_NOHASHDIR=1
CCACHE_BASEDIR=$(pwd)
export CCACHE_BASEDIR
