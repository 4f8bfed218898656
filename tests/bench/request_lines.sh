#!/bin/sh
# Request lines a second through the real program: request_lines.sh [PROGRAM] [LINES] [SITE]
set -eu
program=${1:-.build/bench/bin/fingerbreadth}
count=${2:-50000}
site=${3:-deltoid}
lines=$(mktemp)
trap 'rm -f "$lines"' EXIT
awk -v n="$count" -v site="$site" 'BEGIN { for (i = 0; i < n; i++)
    printf "{\"site\": \"%s\", \"side\": \"%s\", \"age\": \"%dy\", \"sex\": \"%s\", \"stature\": %d, \"weight\": %d}\n",
        site, i % 2 ? "left" : "right", 20 + i % 60, i % 3 ? "female" : "male", 150 + i % 40, 55 + i % 45 }' > "$lines"
start=$(date +%s.%N)
answers=$("$program" locate --json - < "$lines" | wc -l)
end=$(date +%s.%N)
awk -v a="$answers" -v s="$start" -v e="$end" \
    'BEGIN { printf "%d lines in %.2f s: %.0f a second\n", a, e - s, a / (e - s) }'
