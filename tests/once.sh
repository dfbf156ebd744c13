# Sourced by tests/run. Needs .ci/machine.sh.

# once NAME PATHSPEC... -- COMMAND...: a step. What passed on this machine with the same files and the same tools is not run
# again; `rm -r target/passed` has all of it run anew. A path that begins with ':!' is left out.
once() {
  local name=$1 paths=()
  shift
  while [ "$1" != -- ]; do
    paths+=("$1")
    shift
  done
  shift
  # Without git nobody knows which files there are: then everything is run.
  if ! git ls-files -- tests/run >/dev/null 2>&1; then
    say "$name"
    "$@"
    return
  fi
  local passed=${CARGO_TARGET_DIR:-target}/passed/$name key
  # What is run counts as well, and how.
  key=$(
    printf '%s\n' "$@" "$(declare -f "$1" || true)"
    tools
    contents "${paths[@]}" tests/run tests/once.sh .ci
  )
  key=$(sha256sum <<<"$key")
  if [ "$key" = "$(cat "$passed" 2>/dev/null)" ]; then
    say "$name: passed before with these files"
    return
  fi
  say "$name"
  rm -f "$passed"
  "$@"
  mkdir -p "$(dirname "$passed")"
  printf '%s\n' "$key" >"$passed"
}

# contents PATHSPEC...: what stands in each file, committed or not.
contents() {
  git ls-files -z --cached --others --exclude-standard -- "$@" | sort -zu | while IFS= read -r -d '' file; do
    [ ! -e "$file" ] || printf '%s\0' "$file"
  done | xargs -0 sha256sum --
}

# tools: the versions of what builds and of what is driven.
tools() {
  rustc --version
  node --version
  dpkg-query -W chromium libwebkit2gtk-4.1-0 webkit2gtk-driver zbar-tools poppler-utils lighttpd postgresql 2>/dev/null || true
}
