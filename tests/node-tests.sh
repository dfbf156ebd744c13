# Sourced by screens/run and shell/run.

# node_tests AT_ONCE FILE...: runs files of tests, so many at once. A window on a busy machine misses a moment now and then:
# a file that failed runs once more, alone, and is named. What fails twice has failed.
node_tests() {
  local at_once=$1 failed
  shift
  failed=$(mktemp)
  if run_node_tests "$at_once" "$failed" "$@"; then
    rm "$failed"
    return
  fi
  local again=()
  mapfile -t again < <(sort -u "$failed")
  rm "$failed"
  [ ${#again[@]} -gt 0 ] || return 1
  say "failed, and once more alone: ${again[*]}"
  run_node_tests 1 /dev/null "${again[@]}" || return 1
  say "PASSED ONLY THE SECOND TIME, so it is not sound yet: ${again[*]}"
}

run_node_tests() {
  local at_once=$1 failed=$2
  shift 2
  node --test --test-concurrency="$at_once" --test-timeout=900000 \
    --test-reporter=tap --test-reporter-destination=stdout \
    --test-reporter="$node_tests_root/failed-files.mjs" --test-reporter-destination="$failed" "$@"
}
node_tests_root=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
