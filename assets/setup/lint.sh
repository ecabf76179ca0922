# shellcheck shell=bash
# The checks that tests/run makes of the sources and of the installed program.

# Only what a visitor expects lies on top: four folders of code, one of assets, the two readings.
lintTopLevel() {
  local unexpected
  unexpected=$(git ls-files | sed 's,/.*,,' | sort -u |
    grep -vxE 'CMakeLists\.txt|README\.md|DEVELOPERS\.md|viewer|model|shaders|assets|tests|\..*')
  if [ -n "$unexpected" ]; then
    printf 'Not expected at the top level: %s\n' "$unexpected"
    return 1
  fi
}

# Nothing may depend on where one machine keeps its files.
lintPaths() {
  ! git grep -nE '(^|[^A-Za-z0-9_.}-])/(work|root|home)/' -- . ':!assets/setup/lint.sh'
}

# Every key after the word "Source:" is explained in model/SOURCES.md.
lintSources() {
  local key bad=0
  while read -r key; do
    if ! grep -qF "| $key |" model/SOURCES.md; then
      echo "model/SOURCES.md does not know $key"
      bad=1
    fi
  done < <(git grep -ohE 'Source: \[[A-Z][A-Za-z0-9.-]*\]' -- '*.h' '*.cpp' |
    sed 's/.*\[\(.*\)\]/\1/' | sort -u)
  return "$bad"
}

lintShell() {
  shellcheck -x viewer/run tests/run .ci/run assets/setup/*.sh
}

lintFormat() {
  git ls-files -z '*.cpp' '*.h' | xargs -0 clang-format --dry-run -Werror
}

# tidyKey FILE: changes when anything does that clang-tidy would see of this project.
tidyKey() {
  local file=$1
  {
    clang-tidy --version
    cat .clang-tidy "$file"
    # Headers of the project that the file includes, directly or not.
    g++ -std=c++20 -I. -MM -MG "$file" 2>/dev/null | grep -oE '[^ ]+\.h' |
      while read -r header; do [ ! -f "$header" ] || cat "$header"; done
  } | sha256sum | cut -d' ' -f1
}

# tidyOne BUILD CACHE FILE: nothing to do for a file that has passed before just as it is.
tidyOne() {
  local key
  key=$(tidyKey "$3")
  if [ -e "$2/$key" ]; then return 0; fi
  clang-tidy --quiet -p "$1" "$3" 2>/dev/null && touch "$2/$key"
}

# lintTidy BUILD: every source of the library and the program, and of the tests those that other
# tests stand on or that start the program; all of them would add minutes. Two at a time.
lintTidy() {
  local cache=${XDG_CACHE_HOME:-$HOME/.cache}/stringcourse/tidy
  mkdir -p "$cache"
  export -f tidyOne tidyKey
  git ls-files -z 'model/*.cpp' 'viewer/*.cpp' 'tests/support/*.cpp' 'tests/program/*.cpp' |
    xargs -0 -P "$(nproc)" -I{} bash -c 'tidyOne "$@"' _ "$1" "$cache" {}
}

# lintPackage BUILD: installs into a folder of its own, tries what was installed, makes the package.
lintPackage() {
  local prefix=$1/installed
  rm -rf "$prefix" "$1"/*.deb
  desktop-file-validate assets/packaging/stringcourse.desktop &&
    cmake --install "$1" --prefix "$prefix" &&
    "$prefix/bin/stringcourse" --version &&
    "$prefix/bin/stringcourse" check "$prefix/share/stringcourse/jobs/orchard-house.toml" &&
    test -s "$prefix/share/man/man1/stringcourse.1.gz" &&
    (cd "$1" && cpack -G DEB) &&
    dpkg-deb --info "$1"/*.deb &&
    dpkg-deb --contents "$1"/*.deb
}
