# The same models on the same data with lme4, for comparison: wall time of one fit, values new to
# each call. Run by src/bench/compare.sh.
suppressPackageStartupMessages(library(lme4))
set.seed(1)
folder <- "src/test/resources/reference"
full <- y ~ env + (1 | env:rep) + (1 | entry) + (1 | entry:site) + (1 | entry:year) + (1 | entry:env)
simple <- y ~ env + (1 | entry) + (1 | entry:env)
for (size in c("small", "large")) {
  data <- read.csv(file.path(folder, sprintf("data-bench-%s-a.csv", size)), comment.char = "#",
                   colClasses = c(y = "numeric"))
  data <- data[!is.na(data$y), ]
  seen <- data$y
  for (model in c("full", "simple")) {
    times <- replicate(5, {
      plots <- data
      plots$y <- seen + rnorm(length(seen), sd = 0.3)
      system.time({
        for (column in c("site", "year", "rep", "entry")) plots[[column]] <- factor(plots[[column]])
        plots$env <- interaction(plots$site, plots$year, drop = TRUE)
        lmer(get(model), plots)
      })[["elapsed"]]
    })
    cat(sprintf("lme4 %s, R %s: %s %s %.1f ms (best of 5)\n", packageVersion("lme4"),
                getRversion(), model, size, 1000 * min(times)))
  }
}
