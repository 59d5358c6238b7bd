#!/bin/sh
# Takes the pictures in docs/screens afresh from the demo nursery: in a real browser, against a
# database in memory. Needs chromium and chromium-driver.
set -eu
cd "$(dirname "$0")/.."
./mvnw -q -B test -Dtest=ScreensTest -Dscreens=docs/screens
