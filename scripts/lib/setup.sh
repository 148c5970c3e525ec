# What the scripts share: bringing a machine with only Rust, Node, Python and apt to where the project builds.

say() { printf '\n== %s\n' "$*" >&2; }

need_rust() {
  command -v rustup >/dev/null || return 0
  rustup toolchain install >/dev/null 2>&1 || rustup show active-toolchain >&2
}

need_node() {
  local stamp=node_modules/.tagstrip-lock
  if ! cmp -s package-lock.json "$stamp"; then
    say "npm ci"
    npm ci --no-audit --no-fund >&2
    cp package-lock.json "$stamp"
  fi
}

# Debian packages by name, where they are not there yet.
need_apt() {
  local missing=()
  for package in "$@"; do
    dpkg -s "$package" >/dev/null 2>&1 || missing+=("$package")
  done
  [ ${#missing[@]} -eq 0 ] && return 0
  say "apt-get install ${missing[*]}"
  apt-get update -qq >&2
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "${missing[@]}" >/dev/null
}

# The browsers that the page is tried in, what drives them, and a broad and a narrow face to letter in.
need_browsers() { need_apt chromium chromium-driver firefox-esr webkit2gtk-driver xvfb fonts-dejavu-core fonts-liberation; }

# One of the build's own tools, compiled once without optimising: it runs for a second and takes minutes to optimise.
tool() {
  cargo build --quiet --profile tools -p tagstrip-tools --features bindings --bin "$1" >&2
}
