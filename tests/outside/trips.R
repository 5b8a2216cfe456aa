# Every figure of a switched output computed once more in base R (tapply, sd, range, merge).
#
#   Rscript trips.R folder-with-trips.csv-and-outputs.csv
#
# Both files are parted by tabs. Prints one line a figure: calibration,phase,figure,value, with 17 significant digits.

folder <- commandArgs(trailingOnly = TRUE)[1]
trips <- read.delim(file.path(folder, "trips.csv"))
set_points <- read.delim(file.path(folder, "outputs.csv"))

say <- function(group, figure, value) {
  cat(group$calibration[1], group$phase[1], figure, sprintf("%.17g", value), sep = ",")
  cat("\n")
}

figures <- function(group) {
  means <- tapply(group$reference, group$direction, mean)
  deviations <- tapply(group$reference, group$direction, sd)
  on_approach <- group$reference[group$direction == "approach"]
  pairs <- merge(subset(group, direction == "approach"), subset(group, direction == "recede"), by = "cycle")
  say(group, "operating.mean", means[["approach"]])
  say(group, "operating.standardDeviation", deviations[["approach"]])
  say(group, "release.mean", means[["recede"]])
  say(group, "release.standardDeviation", deviations[["recede"]])
  say(group, "differential.distance", abs(diff(means))[[1]])
  say(group, "differential.percent", 100 * abs(means[["recede"]] / means[["approach"]] - 1))
  say(group, "differential.greatestOfOneCycle", max(abs(pairs$reference.y - pairs$reference.x)))
  say(group, "repeat.distance", diff(range(on_approach)))
  say(group, "repeat.percent", 100 * diff(range(on_approach)) / means[["approach"]])
  say(group, "standardUncertaintyOfMean", summary(lm(on_approach ~ 1))$coefficients[1, "Std. Error"])
}

for (group in split(trips, list(trips$calibration, trips$phase, trips$output), drop = TRUE)) figures(group)
