# Sourced by tests/run and demo/run: installs what this machine lacks, and says in one line what it
# can not install (Rust, Node). Debian and Ubuntu.

say() { printf '\n== %s\n' "$*"; }

fail() {
  printf '%s\n' "$*" >&2
  exit 1
}

# What the tests build, all of it each time: for another choice of crates cargo builds anew what they share, SQLite among it.
# The shell among them needs libwebkit2gtk-4.1-dev and the built screens (ui/dist).
# shellcheck disable=SC2034
everything=(--workspace --features hosewright-cli/serve)

# Rust and Node come from their own installers; nothing here fetches a toolchain.
need_toolchains() {
  command -v cargo >/dev/null || fail "cargo is missing: install Rust 1.95 or newer (rustup.rs) and run this again."
  command -v node >/dev/null || fail "node is missing: install Node.js 20 or newer and run this again."
  command -v npm >/dev/null || fail "npm is missing: install it with Node.js and run this again."
}

# need_packages PACKAGE...: installs those Debian packages that are not there.
need_packages() {
  local missing=()
  for package in "$@"; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'install ok installed' || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return
  command -v apt-get >/dev/null || fail "These packages are missing and this is no Debian or Ubuntu machine: ${missing[*]}"
  local root=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || fail "Run as root once, or install: ${missing[*]}"
    root=(sudo)
  fi
  say "installing ${missing[*]}"
  "${root[@]}" apt-get update -qq
  "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

# need_node_modules FOLDER: installs what its lock file says, once for each lock file.
need_node_modules() {
  local folder=$1 stamp=$1/node_modules/.installed-from
  if ! cmp -s "$folder/package-lock.json" "$stamp"; then
    say "installing node packages of $folder"
    (cd "$folder" && npm ci --no-audit --no-fund --loglevel=error)
    cp "$folder/package-lock.json" "$stamp"
  fi
}
