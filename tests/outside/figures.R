# Every figure of one reading, of the line and of the error curve, computed once more in base R (lm, vcov, predict).
#
#   Rscript figures.R folder
#
# readings.csv has one row a reading, with what its instrument should do in the same row; conditions.csv one row a
# calibration, standards.csv one row a standard of a calibration (read by uncertainty.R). Prints one line a figure:
# calibration,phase,figure,value, numbers with 17 significant digits, NA where the data do not allow the figure.
# Where several places are equally far (readings are rounded, so they can be), all are printed with | between them.
# The two minimax figures are found by brute force over the theorem that three points (a free line) or two points
# (a line through a fixed point) decide them: Cheney, Introduction to Approximation Theory (1966), chapter 1.

folder <- commandArgs(trailingOnly = TRUE)[1]
table_of <- function(name, ...) {
  read.csv(file.path(folder, name), na.strings = "", encoding = "UTF-8", stringsAsFactors = FALSE, ...)
}
rows <- table_of("readings.csv")
stages <- c("signal", "counts", "value")
typed <- table_of("readings.csv", colClasses = "character")[c("reference", stages)]
rows[paste0("typed_", names(typed))] <- typed

here <- dirname(sub("^--file=", "", grep("^--file=", commandArgs(), value = TRUE)))
source(file.path(here, "uncertainty.R"))
source(file.path(here, "scatter.R"))

say <- function(first, figure, value) {
  text <- if (length(value) == 0 || is.na(value)) "NA" else if (is.character(value)) value else sprintf("%.17g", value)
  cat(first$calibration, first$phase, figure, text, sep = ",")
  cat("\n")
}

# Names of all places whose size is the greatest, but for the rounding of binary numbers.
say_places <- function(first, figure, places, sizes) {
  greatest <- which(sizes >= max(sizes, -Inf, na.rm = TRUE) * (1 - 1e-9))
  text <- if (is.character(places)) places else sprintf("%.17g", places)
  say(first, figure, if (length(greatest) == 0) NA else paste(unique(text[greatest]), collapse = "|"))
}

line_ends <- function(first, stage) c(first[[paste0(stage, "_lower")]], first[[paste0(stage, "_upper")]])

# Distance that an output stands for, as a weighted mean of the two range ends.
distance_of <- function(output, ends, range) {
  (range[1] * (ends[2] - output) + range[2] * (output - ends[1])) / (ends[2] - ends[1])
}

output_of <- function(distance, ends, range) {
  (ends[1] * (range[2] - distance) + ends[2] * (distance - range[1])) / (range[2] - range[1])
}

fault_levels <- function(first) {
  if (!is.na(first$fault_low) || !is.na(first$fault_high)) return(c(first$fault_low, first$fault_high))
  is_live_zero <- first$signal_unit == "mA" && setequal(c(first$signal_lower, first$signal_upper), c(4, 20))
  if (is_live_zero) c(3.6, 21) else c(NA, NA)
}

# Width of one side of the tolerance in distance: the sum of its terms.
tolerance_width <- function(first, sizes, reference) {
  range <- c(first$range_lower, first$range_upper)
  bases <- c(first$tolerance_basis, first$second_tolerance_basis)
  width <- rep(0, length(reference))
  for (i in which(!is.na(bases) & !is.na(sizes))) {
    per_unit <- switch(bases[i],
      "percent of span" = diff(range) / 100,
      "percent of reading" = abs(reference) / 100,
      "distance" = 1,
      "signal" = diff(range) / abs(first$signal_upper - first$signal_lower))
    width <- width + sizes[i] * per_unit
  }
  width
}

# Nominal position: the column point, or the mean reference of a group parted by gaps of more than 2 % of span.
nominal_positions <- function(phase, span) {
  if (!anyNA(phase$point)) return(phase$point)
  order_of <- order(phase$reference)
  group <- integer(nrow(phase))
  group[order_of] <- cumsum(c(TRUE, diff(phase$reference[order_of]) > 0.02 * span))
  ave(phase$reference, group)
}

single_readings <- function(phase, judged, range) {
  first <- phase[1, ]
  for (i in seq_len(nrow(phase))) {
    reading <- phase[i, ]
    name <- function(figure) paste0("readings.", i, ".", figure)
    output <- reading[[judged]]
    indicated <- distance_of(output, line_ends(first, judged), range)
    say(first, name("indicated"), indicated)
    say(first, name("errorDistance"), indicated - reading$reference)
    say(first, name("errorSignal"), output - output_of(reading$reference, line_ends(first, judged), range))
    say(first, name("errorPercentSpan"), 100 * (indicated - reading$reference) / diff(range))
    say(first, name("loopErrorDistance"), phase$loop_distance[i])
    say(first, name("loopErrorValue"), phase$loop_value[i])
    shares_of(first, name("shares."), reading, range)
    plus <- c(first$tolerance, first$second_tolerance)
    minus <- ifelse(is.na(c(first$tolerance_minus, first$second_tolerance_minus)), plus,
                    c(first$tolerance_minus, first$second_tolerance_minus))
    say(first, name("toleranceHigh"), tolerance_width(first, plus, reading$reference))
    say(first, name("toleranceLow"), -tolerance_width(first, minus, reading$reference))
  }
}

shares_of <- function(first, prefix, reading, range) {
  at <- sapply(stages, function(stage) distance_of(reading[[stage]], line_ends(first, stage), range))
  card <- if (is.null(reading$signal_at_card)) NA else distance_of(reading$signal_at_card, line_ends(first, "signal"), range)
  at <- c(at, card)
  names(at) <- c(stages, "card")
  has <- !is.na(at)
  share <- function(figure, exists, value) say(first, paste0(prefix, figure), if (exists) unname(value) else NA)
  before_counts <- if (has["card"]) at["card"] else at["signal"]
  has_before <- has["card"] || has["signal"]
  share("sensor", has["signal"], at["signal"] - reading$reference)
  share("wiring", has["signal"] && has["card"], at["card"] - at["signal"])
  share("sensorAndWiring", !has["signal"] && has["card"], at["card"] - reading$reference)
  share("inputCard", has_before && has["counts"], at["counts"] - before_counts)
  share("scaling", has["counts"] && has["value"], at["value"] - at["counts"])
  share("sensorAndInputCard", !has_before && has["counts"], at["counts"] - reading$reference)
  share("inputCardAndScaling", has_before && !has["counts"] && has["value"], at["value"] - before_counts)
  share("sensorToController", !has_before && !has["counts"] && has["value"], at["value"] - reading$reference)
}

fitted_lines <- function(first, used, judged, range) {
  enough <- length(unique(used$reference)) >= 2
  fit <- if (enough) lm(used[[judged]] ~ used$reference) else NULL
  residual_sum <- if (enough) sum(residuals(fit)^2) else NA
  errors <- if (enough) sqrt(diag(vcov(fit))) else c(NA, NA)
  for (figure in c("n", "slope", "intercept", "slopeStdError", "interceptStdError", "residualStdDev", "rSquared")) {
    say(first, paste0("fit.", figure), if (!enough) NA else switch(figure,
      n = nrow(used), slope = coef(fit)[[2]], intercept = coef(fit)[[1]],
      slopeStdError = errors[[2]], interceptStdError = errors[[1]],
      residualStdDev = sqrt(residual_sum / (nrow(used) - 2)),
      rSquared = 1 - residual_sum / sum((used[[judged]] - mean(used[[judged]]))^2)))
  }
  line <- if (enough) lm(error ~ reference, data = used) else NULL
  at_lower <- if (enough) predict(line, data.frame(reference = range[1]), se.fit = TRUE) else NULL
  say(first, "zeroError.percentSpan", if (enough) at_lower$fit[[1]] else NA)
  say(first, "zeroError.standardUncertainty", if (enough) at_lower$se.fit[[1]] else NA)
  say(first, "spanError.percentSpan", if (enough) coef(line)[[2]] * diff(range) else NA)
  say(first, "spanError.standardUncertainty", if (enough) sqrt(vcov(line)[2, 2]) * diff(range) else NA)
}

direction_mean <- function(group, direction) {
  errors <- group$error[group$direction == direction]
  if (length(errors) == 0) NA else mean(errors)
}

error_curve <- function(used) {
  groups <- split(used, used$nominal)
  curve <- data.frame(
    point = sapply(groups, function(group) group$nominal[1]),
    reference = sapply(groups, function(group) mean(group$reference)),
    up = sapply(groups, direction_mean, "rising"),
    down = sapply(groups, direction_mean, "falling"))
  curve$mean <- rowMeans(curve[, c("up", "down")], na.rm = TRUE)
  curve[order(curve$point), ]
}

linearities <- function(first, curve) {
  count <- nrow(curve)
  x <- curve$reference
  a <- curve$mean
  none <- count < 3
  say(first, "linearity.independent", if (none) NA else max(apply(combn(count, 3), 2, function(triple) {
    triple <- triple[order(x[triple])]
    run <- x[triple]
    chord <- a[triple[1]] + (a[triple[3]] - a[triple[1]]) * (run[2] - run[1]) / (run[3] - run[1])
    abs(a[triple[2]] - chord) / 2
  })))
  say(first, "linearity.terminal", if (none) NA else
    max(abs(a - approx(x[c(1, count)], a[c(1, count)], xout = x, rule = 2)$y)))
  away <- x - x[1]
  off <- a - a[1]
  say(first, "linearity.zeroBased", if (none) NA else max(apply(combn(2:count, 2), 2, function(pair)
    abs(off[pair[1]] * away[pair[2]] - off[pair[2]] * away[pair[1]]) / (away[pair[1]] + away[pair[2]]))))
  say(first, "linearity.leastSquares", if (none) NA else max(abs(residuals(lm(a ~ x)))))
}

hystereses <- function(first, used, curve) {
  both <- curve[!is.na(curve$up) & !is.na(curve$down), ]
  difference <- abs(both$up - both$down)
  say(first, "hysteresis.percentSpan", difference[which.max(difference)])
  say_places(first, "hysteresis.point", both$point, difference)
  runs <- do.call(rbind, lapply(split(used, used$cycle), function(run) {
    of_run <- error_curve(run)
    data.frame(cycle = run$cycle[1], point = of_run$point, difference = abs(of_run$up - of_run$down))
  }))
  say(first, "hysteresis.withinOneCycle.percentSpan", runs$difference[which.max(runs$difference)])
  say_places(first, "hysteresis.withinOneCycle.point", runs$point, runs$difference)
  say_places(first, "hysteresis.withinOneCycle.cycle", runs$cycle, runs$difference)
}

repeatabilities <- function(first, used) {
  groups <- split(used, list(used$direction, used$nominal), drop = TRUE)
  groups <- groups[vapply(groups, nrow, 0L) >= 2]
  none <- length(groups) == 0
  spreads <- vapply(groups, function(group) diff(range(group$error)), 0)
  freedom <- vapply(groups, nrow, 0L) - 1
  say(first, "repeatability.percentSpan", if (none) NA else max(spreads))
  say_places(first, "repeatability.point", vapply(groups, function(group) group$nominal[1], 0), spreads)
  say_places(first, "repeatability.direction", vapply(groups, function(group) group$direction[1], ""), spreads)
  say(first, "repeatability.pooledStdDev", if (none) NA else
    sqrt(sum(sapply(groups, function(group) var(group$error)) * freedom) / sum(freedom)))
  say(first, "repeatability.degreesOfFreedom", if (none) NA else sum(freedom))
}

loop_errors <- function(first, used, range) {
  worst <- which.max(abs(used$loop_distance))
  say(first, "loopError.distance", used$loop_distance[worst])
  say(first, "loopError.percentSpan", 100 * used$loop_distance[worst] / diff(range))
  say(first, "loopError.value", used$loop_value[worst])
  if (length(worst) == 1) shares_of(first, "loopError.shares.", used[worst, ], range)
}

phase_figures <- function(phase) {
  first <- phase[1, ]
  range <- c(first$range_lower, first$range_upper)
  kept <- is.na(phase$rejected)
  judging <- if (any(kept)) phase[kept, ] else phase
  described <- sapply(stages, function(stage) !anyNA(line_ends(first, stage)) && !all(is.na(judging[[stage]])))
  judged <- stages[described][1]
  say(first, "judged", judged)
  # A rejected reading neither shapes a test point nor counts as a cycle.
  phase$nominal <- phase$reference
  phase$nominal[kept] <- nominal_positions(phase[kept, ], diff(range))
  times <- rep(NA, nrow(phase))
  times[kept] <- ave(seq_len(sum(kept)), phase$nominal[kept], phase$direction[kept], FUN = seq_along)
  phase$cycle <- ifelse(is.na(phase$cycle), times, phase$cycle)
  phase$error <- 100 * (distance_of(phase[[judged]], line_ends(first, judged), range) - phase$reference) / diff(range)
  phase$loop_distance <- distance_of(phase$value, line_ends(first, "value"), range) - phase$reference
  phase$loop_value <- phase$value - output_of(phase$reference, line_ends(first, "value"), range)
  single_readings(phase, judged, range)
  faults <- fault_levels(first)
  is_fault <- (!is.na(phase$signal) & !is.na(faults[1]) & phase$signal <= faults[1]) |
    (!is.na(phase$signal) & !is.na(faults[2]) & phase$signal >= faults[2])
  used <- phase[kept & !is_fault & !is.na(phase[[judged]]), ]
  of_loop <- phase[kept & !is_fault & !is.na(phase$loop_distance), ]
  read_stages <- c("signal", "signal_at_card", "counts", "value")
  read_stages <- read_stages[match(judged, read_stages):4]
  by_stage <- lapply(setNames(nm = read_stages), function(stage) {
    ends <- line_ends(first, if (stage == "signal_at_card") "signal" else stage)
    distance <- if (is.null(phase[[stage]])) NA else distance_of(phase[[stage]], ends, range)
    read <- phase
    read$error <- 100 * (distance - phase$reference) / diff(range)
    read$number <- seq_len(nrow(phase))
    read[kept & !is_fault & !is.na(read$error), ]
  })
  is_read <- seq_len(nrow(phase)) %in% unlist(lapply(by_stage, function(read) read$number))
  left_out <- !kept | is_fault | !is_read
  curve <- error_curve(used)
  say(first, "counted.readings", nrow(phase))
  say(first, "counted.used", sum(!left_out))
  say(first, "counted.leftOut", sum(left_out))
  say(first, "counted.points", nrow(curve))
  say(first, "counted.cycles", length(unique(used$cycle)))
  fitted_lines(first, used, judged, range)
  say(first, "inaccuracy.positive", max(0, used$error))
  say(first, "inaccuracy.negative", min(0, used$error))
  sizes <- sqrt(used$error^2)
  say(first, "meanAbsoluteError.percentSpan", if (length(sizes) == 0) NA else mean(sizes))
  say(first, "meanAbsoluteError.distance", if (length(sizes) == 0) NA else mean(sizes) * diff(range) / 100)
  each <- rbind(data.frame(error = curve$up, point = curve$point, direction = "rising"),
                data.frame(error = curve$down, point = curve$point, direction = "falling"))
  say(first, "maximumMeasuredError.percentSpan", each$error[which.max(abs(each$error))])
  say_places(first, "maximumMeasuredError.point", each$point, abs(each$error))
  say_places(first, "maximumMeasuredError.direction", each$direction, abs(each$error))
  linearities(first, curve)
  hystereses(first, used, curve)
  repeatabilities(first, used)
  loop_errors(first, of_loop, range)
  uncertainties(phase, used, by_stage, judged, any(kept & is_fault & is_inside(phase$reference, range)))
}

is_inside <- function(reference, range) reference >= range[1] & reference <= range[2]

for (phase in split(rows, list(rows$calibration, rows$phase), drop = TRUE)) phase_figures(phase)
