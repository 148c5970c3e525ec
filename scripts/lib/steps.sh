# What scripts/test is made of: steps that print their name and seconds, and one count over all runners.

passed=0
failed=0
short=()

# Sums what cargo's, the wasm runner's and Node's own summaries say: "passed failed".
counted() {
  awk '
    /^test result: / { for (k = 2; k <= NF; k++) { if ($k ~ /^passed/) good += $(k - 1); if ($k ~ /^failed/) bad += $(k - 1) } }
    /^[^ ]+ (pass|fail|cancelled) [0-9]+$/ { if ($2 == "pass") good += $3; else bad += $3 }
    END { print good + 0, bad + 0 }' "$1"
}

# step NAME COMMAND...: a step that fails without having counted a failure counts as one.
step() {
  local name=$1 log code good bad start=$SECONDS
  shift
  log=$(mktemp)
  printf '\n== %s\n' "$name"
  "$@" 2>&1 | tee "$log"
  code=${PIPESTATUS[0]}
  read -r good bad < <(counted "$log")
  rm -f "$log"
  [ "$code" -ne 0 ] && [ "$bad" -eq 0 ] && bad=1
  passed=$((passed + good))
  failed=$((failed + bad))
  [ "$bad" -gt 0 ] && short+=("$name")
  printf -- '-- %s: %d passed, %d failed, %d s\n' "$name" "$good" "$bad" $((SECONDS - start))
  last_count=$((good + bad))
}

# tests NAME COMMAND...: a step whose runner must have run at least one test.
tests() {
  step "$@"
  if [ "$last_count" -eq 0 ]; then
    echo "$1: no test ran"
    failed=$((failed + 1))
    short+=("$1")
  fi
}

# The last line of every run, and its exit code.
sum() {
  echo
  [ ${#short[@]} -gt 0 ] && printf 'fell short: %s\n' "${short[@]}"
  printf '%d passed, %d failed\n' "$passed" "$failed"
  [ "$failed" -eq 0 ]
}
