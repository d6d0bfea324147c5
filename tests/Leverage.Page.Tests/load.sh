#!/usr/bin/env bash
# Load on the page, this machine only: 32 connections for 20 s on /loosen, each asking for another overlap.
# Prints requests a second, p50, p99, the processor time of one answer, and every status that was no 200.
# Usage: tests/Leverage.Page.Tests/load.sh [SECONDS]      needs python3; builds the page in Release
set -euo pipefail
cd "$(dirname "$0")/../.."
seconds=${1:-20}
dotnet build src/Leverage.Page -c Release -v q >/dev/null
log=$(mktemp)
src/Leverage.Page/bin/Release/net10.0/leverage-page --port 0 >"$log" &
server=$!
trap 'kill "$server" 2>/dev/null; rm -f "$log"' EXIT
for _ in $(seq 100); do grep -q http "$log" && break; sleep 0.1; done
address=$(grep -o 'http://127.0.0.1:[0-9]*' "$log")
python3 - "$address" "$seconds" "$server" <<'PY'
import collections, http.client, json, os, sys, threading, time
host = sys.argv[1].removeprefix("http://")
seconds = float(sys.argv[2])
first = http.client.HTTPConnection(host)
first.request("GET", "/choices")
example = json.load(first.getresponse())["example"]

def ask(connection, i):
    start = time.perf_counter()
    connection.request("GET", "/loosen?" + example.replace("overlap=400mm", f"overlap={100 + i % 350}mm").replace(" ", "%20"))
    response = connection.getresponse()
    response.read()
    return response.status, time.perf_counter() - start

def quantile(times, share):
    return 1000 * sorted(times)[min(len(times) - 1, int(share * len(times)))]

def processor():
    with open(f"/proc/{sys.argv[3]}/stat") as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")

for i in range(300):
    ask(first, i)
before = processor()
alone = [ask(first, i)[1] for i in range(200)]
print(f"processor time of one answer with both drawings: {1000 * (processor() - before) / 200:.1f} ms")
print(f"one at a time: p50 {quantile(alone, .5):.1f} ms, p99 {quantile(alone, .99):.1f} ms")
times, statuses, end = [], collections.Counter(), time.perf_counter() + seconds

def worker(number):
    connection, i = http.client.HTTPConnection(host), 11 * number
    while time.perf_counter() < end:
        status, took = ask(connection, i)
        statuses[status] += 1
        times.append(took)
        i += 1

threads = [threading.Thread(target=worker, args=(n,)) for n in range(32)]
[thread.start() for thread in threads]
[thread.join() for thread in threads]
print(f"32 connections, {seconds:.0f} s: {len(times) / seconds:.0f} requests/s, p50 {quantile(times, .5):.0f} ms, p99 {quantile(times, .99):.0f} ms")
errors = {status: count for status, count in statuses.items() if status != 200}
print("no error" if not errors else f"errors: {errors}")
sys.exit(1 if errors else 0)
PY
