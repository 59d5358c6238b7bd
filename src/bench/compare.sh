#!/bin/sh
# Variance components by our REML and, where R with lme4 is at hand (Debian: r-cran-lme4), by lme4,
# on the same machine one after the other.
set -eu
cd "$(dirname "$0")/../.."
./mvnw -q -B -Pbench verify -Dbench=SiteTrials
if command -v Rscript >/dev/null && Rscript -e 'quit(status = !requireNamespace("lme4"))'; then
  Rscript src/bench/lme4.R
else
  echo "R with lme4 is not installed; its times of another day: src/test/resources/reference/lme4-times.csv"
fi
