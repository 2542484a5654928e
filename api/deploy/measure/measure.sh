#!/usr/bin/env bash
# Measures the service against what it could be at best, on this machine, over
# loopback, in one run: requests a second, and the times that half and 99 of 100
# requests take. The ratios are the result; the numbers are this machine's.
#
#   api/deploy/measure/measure.sh [SECONDS [ROUNDS]]
#
# It needs wrk and nginx. Every case runs ROUNDS times in turn; the median counts.
set -euo pipefail
cd "$(dirname "$0")/../../.."
seconds=${1:-4} rounds=${2:-3} connections=64
work=$(mktemp -d)
trap 'kill $(jobs -p) 2>/dev/null; rm -rf "$work"' EXIT

go build -o "$work/modeler" ./cmd/modeler
go build -o "$work/fixed" ./api/deploy/measure
"$work/modeler" draw '402 - 178' -o "$work/picture.svg" >/dev/null
gzip -5 -k "$work/picture.svg"

"$work/modeler" serve --listen 127.0.0.1:8301 >/dev/null 2>&1 &
"$work/fixed" 127.0.0.1:8302 "$work/picture.svg" &
cat >"$work/nginx.conf" <<EOF
pid $work/pid; error_log $work/log; worker_processes 2; user $(id -un);
events { worker_connections 1024; }
http { access_log off; types { image/svg+xml svg; } gzip_static on; sendfile on; open_file_cache max=10;
client_body_temp_path $work/a; proxy_temp_path $work/b; fastcgi_temp_path $work/c; uwsgi_temp_path $work/d; scgi_temp_path $work/e;
server { listen 127.0.0.1:8303; root $work; } }
EOF
chmod 755 "$work"
nginx -e "$work/log" -c "$work/nginx.conf" -g 'daemon off;' &
for port in 8301 8302 8303; do
  for _ in $(seq 50); do (: >/dev/tcp/127.0.0.1/$port) 2>/dev/null && break; sleep 0.1; done
done

tag=$(curl -s -o /dev/null -D - 'http://127.0.0.1:8301/v1/picture.svg?problem=402-178' | tr -d '\r' | sed -n 's/^[Ee][Tt]ag: //p')
cat >"$work/held.lua" <<EOF
wrk.headers["If-None-Match"] = '$tag'
EOF
# Problems that come once: sums, differences, products, fractions, in turn.
cat >"$work/new.lua" <<'EOF'
local thread = 0
function setup(t) t:set("id", thread); thread = thread + 1 end
local n = 0
function request()
  n = n + 1
  local k, i = n % 4, n * 2 + id
  local p
  if k == 0 then p = (1000 + i % 8000) .. "-" .. (1 + (i * 7) % 999)
  elseif k == 1 then p = (100 + i % 4000) .. "%2B" .. (100 + (i * 13) % 4000)
  elseif k == 2 then p = (2 + i % 97) .. "x" .. (2 + (i * 3) % 89)
  else p = (1 + i % 11) .. "/12%2B" .. (1 + (i * 5) % 7) .. "/8" end
  return wrk.format("GET", "/v1/picture.svg?problem=" .. p .. "&width=" .. (700 + n % 3000))
end
EOF

# Small ones that come once: a product of the tables, each in many widths.
cat >"$work/small.lua" <<'EOF'
local thread = 0
function setup(t) t:set("id", thread); thread = thread + 1 end
local n = 0
function request()
  n = n + 1
  local i = n * 2 + id
  return wrk.format("GET", "/v1/picture.svg?problem=" .. (2 + i % 8) .. "x" .. (2 + i % 7) .. "&width=" .. (64 + i % 3900))
end
EOF

measure() { # name, url, more for wrk
  local name=$1 url=$2; shift 2
  wrk -t2 -c$connections -d"${seconds}s" --latency "$@" "$url" >"$work/out"
  local rate p50 p99
  rate=$(awk '/Requests\/sec/ {print $2}' "$work/out")
  p50=$(awk '$1=="50%" {print $2}' "$work/out"); p99=$(awk '$1=="99%" {print $2}' "$work/out")
  grep -q 'Non-2xx' "$work/out" && [ "$name" != held ] && echo "  $name: $(grep Non-2xx "$work/out")" >&2
  echo "$name $rate $p50 $p99" >>"$work/results"
}
picture='http://127.0.0.1:8301/v1/picture.svg?problem=402-178'
for _ in $(seq "$rounds"); do
  measure nginx http://127.0.0.1:8303/picture.svg
  measure nginx-gzip http://127.0.0.1:8303/picture.svg -H 'Accept-Encoding: gzip'
  measure fixed http://127.0.0.1:8302/
  measure kept "$picture"
  measure kept-gzip "$picture" -H 'Accept-Encoding: gzip'
  measure new http://127.0.0.1:8301/ -s "$work/new.lua"
  measure new-small http://127.0.0.1:8301/ -s "$work/small.lua"
  measure held "$picture" -s "$work/held.lua"
done
base=$(awk '$1=="nginx" {print $2}' "$work/results" | sort -n | sed -n "$(((rounds + 1) / 2))p")
printf '%-12s %10s %8s %9s %9s\n' case 'requests/s' 'of nginx' 'half' '99 of 100'
for name in nginx nginx-gzip fixed kept kept-gzip held new new-small; do
  grep "^$name " "$work/results" | sort -k2 -n | sed -n "$(((rounds + 1) / 2))p" |
    awk -v base="$base" '{printf "%-12s %10.0f %8.2f %9s %9s\n", $1, $2, $2/base, $3, $4}'
done
pid=$(pgrep -f "$work/modeler serve" | head -1)
echo "memory: $(awk '/VmRSS/ {printf "%.0f MB", $2/1024}' /proc/"$pid"/status), at most $(awk '/VmHWM/ {printf "%.0f MB", $2/1024}' /proc/"$pid"/status)"
