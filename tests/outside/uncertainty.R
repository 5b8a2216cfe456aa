# Uncertainty budgets of the test points and what is said of them, once more in base R; read by figures.R.
#
# Budget: JCGM 100:2008 (u by the law of propagation, degrees of freedom by Welch-Satterthwaite, k from Student's t at
# 95.45 %); EA-4/02 M:2022, S9 to S11, where one or two rectangular contributions dominate. Statements: ILAC-G8:09/2019.
# A budget is a data frame with a row a contribution: u in distance, freedom, is_rectangular, is_shared.

conditions <- table_of("conditions.csv")
standards <- table_of("standards.csv")

units <- data.frame(
  row.names = c("mm", "cm", "m", "in", "ft", "mA", "A", "uA", "V", "mV", "degC", "K", "degF"),
  kind = rep(c("distance", "current", "voltage", "temperature"), c(5, 3, 2, 3)),
  size = c(1, 10, 1000, 25.4, 304.8, 1, 1000, 1e-3, 1, 1e-3, 1, 1, 5 / 9))

coverage <- 0.9545
severity <- c("pass", "conditional pass", "cannot be decided", "conditional fail", "fail")

# Made by hand: data.frame() and stacked(), which check much, would take most of the time.
contributions <- function(u, freedom, is_rectangular, is_shared) {
  count <- length(u)
  structure(list(u = u, freedom = rep_len(freedom, count), is_rectangular = rep_len(is_rectangular, count),
    is_shared = rep_len(is_shared, count)), class = "data.frame", row.names = seq_len(count))
}

stacked <- function(...) {
  parts <- Filter(length, list(...))
  column <- function(name) unlist(lapply(parts, .subset2, name), use.names = FALSE)
  contributions(column("u"), column("freedom"), column("is_rectangular"), column("is_shared"))
}

normal <- function(u, freedom = Inf, is_shared = FALSE) contributions(u, freedom, FALSE, is_shared)

rectangular <- function(half_width, is_shared = FALSE) contributions(half_width / sqrt(3), Inf, TRUE, is_shared)

or_else <- function(value, other) if (is.na(value)) other else value

# A step that was typed: one unit of the last decimal, of the most decimals of the column.
typed_step <- function(texts) {
  texts <- tolower(texts[!is.na(texts)])
  mantissa <- sub("e.*", "", texts)
  exponent <- ifelse(grepl("e", texts), as.numeric(sub(".*e", "", texts)), 0)
  written <- ifelse(grepl(".", mantissa, fixed = TRUE), nchar(sub(".*\\.", "", mantissa)), 0)
  10^-max(0, written - exponent)
}

# The standards of the kind of `unit`, each as a list with its size in that unit and the days since its certificate;
# kept, for every test point asks for them.
known_standards <- new.env()
fitting_standards <- function(condition, unit) {
  key <- paste(condition$calibration, unit)
  if (is.null(known_standards[[key]])) {
    own <- standards[standards$calibration == condition$calibration, ]
    own <- own[which(units[own$uncertainty_unit, "kind"] == units[unit, "kind"]), ]
    own$size <- units[own$uncertainty_unit, "size"] / units[unit, "size"]
    own$days <- as.numeric(as.Date(condition$performed_on) - as.Date(own$calibrated_on))
    known_standards[[key]] <- lapply(seq_len(nrow(own)), function(i) as.list(own[i, ]))
  }
  known_standards[[key]]
}

# b of U = a + b L as a fraction; without a it says nothing.
relative_part <- function(standard) {
  if (is.na(standard$expanded_uncertainty)) 0 else or_else(standard$relative_uncertainty, 0) / 100
}

# Certificate, drift since it, resolution of every standard of the kind of `unit`; `sensitivity` is distance for a unit.
standard_lines <- function(condition, unit, sensitivity, step, measured = 0) {
  lines_of(fitting_standards(condition, unit), sensitivity, step, measured)
}

lines_of <- function(own, sensitivity, step, measured = 0) {
  if (length(own) == 0) return(rectangular(sensitivity * step / 2))
  do.call(stacked, lapply(own, function(standard) {
    size <- sensitivity * standard$size
    stacked(
      normal((size * or_else(standard$expanded_uncertainty, 0) +
        sensitivity * relative_part(standard) * abs(measured)) / or_else(standard$coverage_factor, 2), is_shared = TRUE),
      rectangular(size * or_else(standard$drift_per_year * max(0, standard$days) / 365.25, 0), is_shared = TRUE),
      if (is.na(standard$resolution)) rectangular(sensitivity * step / 2) else rectangular(size * standard$resolution / 2))
  }))
}

air_lines <- function(condition, reference) {
  is_touched <- identical(condition$principle, "ultrasonic") && !identical(condition$temperature_compensated, "yes")
  if (!is_touched || is.na(condition$air_temperature)) return(NULL)
  standard_lines(condition, "degC", abs(reference) / (2 * (condition$air_temperature + 273.15)), 0,
    condition$air_temperature)
}

# What all points of a curve have in common; `stage` is the quantity that the errors are of.
curve_basis <- function(phase, used, stage) {
  first <- phase[1, ]
  condition <- conditions[conditions$calibration == first$calibration, ]
  span <- first$range_upper - first$range_lower
  per_output <- span / abs(diff(line_ends(first, stage)))
  step <- if (stage == "counts") 1 else typed_step(phase[[paste0("typed_", stage)]])
  curve <- error_curve(used)
  reference <- function(at) {
    standard_lines(condition, condition$distance_unit, 1, typed_step(phase$typed_reference), at)
  }
  ends <- line_ends(first, stage)
  output <- function(at) {
    if (stage != "signal") return(rectangular(per_output * step / 2))
    measured <- ends[1] + (at - first$range_lower) / span * diff(ends)
    standard_lines(condition, first$signal_unit, per_output, step, measured)
  }
  own <- stacked(reference(0), output(first$range_lower))
  steps <- 100 * combined(own$u[!own$is_shared]) / span
  list(
    first = first, condition = condition, span = span, used = used, curve = curve, reference = reference, output = output,
    steps = steps, scatter = reading_scatter(used, steps),
    width = suppressWarnings(max(abs(curve$up - curve$down), na.rm = TRUE)) * span / 100)
}

point_budget <- function(basis, row, direction) {
  at <- basis$curve[row, ]
  of_mean <- basis$used[basis$used$nominal == at$point & basis$used$direction == direction, ]
  one_way <- is.na(at$up) || is.na(at$down)
  angle <- or_else(basis$condition$alignment_angle, 0) * pi / 180
  budget <- stacked(
    basis$reference(at$reference),
    basis$output(at$reference),
    scatter_lines(basis$scatter, at$point, nrow(of_mean), length(unique(of_mean$cycle)), basis$span / 100),
    if (one_way && is.finite(basis$width)) rectangular(basis$width / 2),
    rectangular(abs(at$reference) * (1 - cos(angle))),
    air_lines(basis$condition, at$reference))
  budget[budget$u > 0, ]
}

combined <- function(u) sqrt(sum(u^2))

# What both directions of a point share: everything but their scatter and the steps.
common_part <- function(basis, row, direction) {
  at <- basis$curve[row, ]
  of_mean <- basis$used[basis$used$nominal == at$point & basis$used$direction == direction, ]
  scatter <- scatter_lines(basis$scatter, at$point, nrow(of_mean), length(unique(of_mean$cycle)), basis$span / 100)
  standards <- stacked(basis$reference(at$reference), basis$output(at$reference))
  own <- combined(c(scatter$u[1], standards$u[!standards$is_shared]))
  sqrt(max(0, combined(point_budget(basis, row, direction)$u)^2 - own^2))
}

# The chance that the true error of either direction lies outside, by adaptive integration over what they share.
either_outside <- function(e, limit, all, common) {
  own <- sqrt(pmax(0, all^2 - common^2))
  outside <- function(c) {
    q <- pnorm((e + c * common - limit$high) / own) + pnorm((limit$low - e - c * common) / own)
    -expm1(sum(log1p(-pmin(1, q))))
  }
  if (all(common == 0)) return(outside(0))
  edges <- c((limit$high - e) / common, (limit$low - e) / common)
  breaks <- sort(unique(pmin(8.75, pmax(-8.75, c(-8.75, 0, 8.75, edges)))))
  sum(mapply(function(a, b) integrate(Vectorize(function(c) dnorm(c) * outside(c)), a, b, rel.tol = 1e-11,
    abs.tol = 1e-15, subdivisions = 5000)$value, head(breaks, -1), tail(breaks, -1)))
}

# k where two rectangular quantities make a trapezoid: the root of its probability, not the closed form.
trapezoidal_factor <- function(wide, narrow) {
  a <- wide * sqrt(3)
  b <- narrow * sqrt(3)
  inside <- function(h) if (h <= a - b) h / a else 1 - (a + b - h)^2 / (4 * a * b)
  uniroot(function(h) inside(h) - 0.95, c(0, a + b), tol = 1e-13 * a)$root / combined(c(wide, narrow))
}

coverage_factor <- function(budget, freedom) {
  order_of <- order(budget$u, decreasing = TRUE)
  sharp <- order_of[budget$is_rectangular[order_of]]
  rest <- function(taken) combined(budget$u[-taken])
  if (length(sharp) >= 1 && rest(sharp[1]) <= 0.3 * budget$u[sharp[1]]) return(0.95 * sqrt(3))
  if (length(sharp) >= 2) {
    two <- budget$u[sharp[1:2]]
    if (rest(sharp[1:2]) <= min(two[2], 0.35 * combined(two))) return(trapezoidal_factor(two[1], two[2]))
  }
  if (freedom > 1e4) qnorm((1 + coverage) / 2) else qt((1 + coverage) / 2, floor(freedom * (1 + 1e-12)))
}

guard_band <- function(condition, U, ratio, k, limit) {
  is_managed <- k >= 1.995 && k < 2.055 && abs(limit$low + limit$high) <= 1e-9 * (limit$high - limit$low) && ratio >= 0.6
  switch(or_else(condition$decision_rule, "simple acceptance"),
    "simple acceptance" = 0,
    "managed guard band" = if (is_managed) U * max(0, 1.04 - exp(0.38 * log(ratio) - 0.54)) else U,
    or_else(condition$guard_factor, 1) * U)
}

# 10^-12 of the greatest distance is how a decimal number is stored, and does not count.
statement_of <- function(e, low, high, w, rule, slack) {
  within <- function(w) e >= low + w - slack && e <= high - w + slack
  if (w > 0 && (high - low) / 2 <= w + slack) return(if (within(-w)) "cannot be decided" else "fail")
  if (within(w)) return("pass")
  if (rule != "non-binary guard band") return("fail")
  if (within(0)) "conditional pass" else if (within(-w)) "conditional fail" else "fail"
}

tolerance_limits <- function(first, reference) {
  plus <- c(first$tolerance, first$second_tolerance)
  minus <- c(first$tolerance_minus, first$second_tolerance_minus)
  minus[is.na(minus)] <- plus[is.na(minus)]
  list(low = -tolerance_width(first, minus, reference), high = tolerance_width(first, plus, reference))
}

judged_direction <- function(basis, row, direction) {
  at <- basis$curve[row, ]
  error <- at[[if (direction == "rising") "up" else "down"]]
  if (is.na(error)) return(NULL)
  e <- error * basis$span / 100
  budget <- point_budget(basis, row, direction)
  u <- combined(budget$u)
  freedom <- u^4 / sum(budget$u^4 / budget$freedom)
  k <- coverage_factor(budget, freedom)
  limit <- tolerance_limits(basis$first, at$reference)
  ratio <- (limit$high - limit$low) / (2 * k * u)
  w <- guard_band(basis$condition, k * u, ratio, k, limit)
  wide <- max(1, k / 2)
  slack <- 1e-12 * max(abs(basis$first$range_lower), abs(basis$first$range_upper))
  has_zone <- w == 0 || (limit$high - limit$low) / 2 > w + slack
  rule <- or_else(basis$condition$decision_rule, "simple acceptance")
  list(
    point = at$point, reference = at$reference, up = at$up, down = at$down, mean = at$mean, direction = direction,
    errorDistance = e, toleranceLow = limit$low, toleranceHigh = limit$high, combinedUncertainty = u,
    effectiveDegreesOfFreedom = if (is.finite(freedom)) freedom else NA, coverageFactor = k, expandedUncertainty = k * u,
    guardBand = w, acceptanceLow = if (has_zone) limit$low + w else NA, acceptanceHigh = if (has_zone) limit$high - w else NA,
    testUncertaintyRatio = ratio, specificRisk = pnorm((e - limit$high) / (wide * u)) + pnorm((limit$low - e) / (wide * u)),
    statement = statement_of(e, limit$low, limit$high, w, rule, slack))
}

# The direction whose statement is worse, then whose risk is greater, then whose error lies farther beyond its limit,
# stands for the point: far outside every risk is 1.
judged_point <- function(basis, row) {
  each <- Filter(Negate(is.null), lapply(c("rising", "falling"), function(way) judged_direction(basis, row, way)))
  rank <- vapply(each, function(one) match(one$statement, severity), 0L)
  risk <- vapply(each, function(one) one$specificRisk, 0)
  beyond <- vapply(each, function(one) max(one$errorDistance - one$toleranceHigh, one$toleranceLow - one$errorDistance), 0)
  worse <- each[[order(-rank, -risk, -beyond)[1]]]
  if (length(each) == 2) {
    wide <- vapply(each, function(one) max(1, one$coverageFactor / 2), 0)
    value <- function(name) vapply(each, function(one) one[[name]], 0)
    limit <- list(low = worse$toleranceLow, high = worse$toleranceHigh)
    common <- vapply(c("rising", "falling"), function(way) common_part(basis, row, way), 0)
    worse$specificRisk <- either_outside(value("errorDistance"), limit, wide * value("combinedUncertainty"), wide * common)
  }
  worse
}

# The judged points of one stage, by rising distance; the signal at the card has the line and the meter of the signal.
judged_curve <- function(phase, used, stage) {
  if (nrow(used) == 0) return(list())
  basis <- curve_basis(phase, used, if (stage == "signal_at_card") "signal" else stage)
  lapply(seq_len(nrow(basis$curve)), function(row) judged_point(basis, row))
}

say_points <- function(first, points, name) {
  for (row in seq_along(points)) for (figure in names(points[[row]])) {
    say(first, paste0(name, ".", row, ".", figure), points[[row]][[figure]])
  }
}

statements_of <- function(points) vapply(points, function(one) one$statement, "")

# At each test point the last stage that was read there; points of the first stage are marked by its name.
deciding_points <- function(by_stage) {
  last <- list()
  for (stage in names(by_stage)) for (one in by_stage[[stage]]) {
    last[[sprintf("%.17g", one$point)]] <- c(one, list(stage = stage))
  }
  last[order(vapply(last, function(one) one$point, 0))]
}

worst_of <- function(statements) severity[suppressWarnings(max(match(statements, severity)))]

# By simple acceptance each reading is judged, not the mean.
reading_statements <- function(first, errors, references) {
  span <- first$range_upper - first$range_lower
  limit <- tolerance_limits(first, references)
  slack <- 1e-12 * span
  ifelse(errors >= limit$low - slack & errors <= limit$high + slack, "pass", "fail")
}

# What the standards of one kind leave open of a difference: b of a stated a + b L; else, and of a drift, both ends.
in_span <- function(condition, unit, sensitivity, difference) {
  own <- fitting_standards(condition, unit)
  vapply(own, function(standard) {
    states_form <- !is.na(standard$relative_uncertainty)
    alone <- standard
    if (states_form) alone$expanded_uncertainty <- NA
    lines <- lines_of(list(alone), sensitivity, 0)
    scale <- if (states_form) sensitivity * standard$relative_uncertainty / 100 * abs(difference) /
      or_else(standard$coverage_factor, 2) else 0
    combined(c(sqrt(2) * lines$u[lines$is_shared], scale))
  }, 0)
}

# Zero and span error with the scatter, the steps, the cycles, and the certificates and drifts that all readings share.
shared_line_uncertainty <- function(phase, used, judged) {
  first <- phase[1, ]
  basis <- curve_basis(phase, used, judged)
  states_all <- function(unit) {
    own <- fitting_standards(basis$condition, unit)
    length(own) > 0 && !anyNA(vapply(own, function(standard) standard$expanded_uncertainty, 0))
  }
  is_known <- states_all(basis$condition$distance_unit) && (judged != "signal" || states_all(first$signal_unit))
  range <- c(first$range_lower, first$range_upper)
  at_zero <- stacked(basis$reference(range[1]), basis$output(range[1]))
  shared <- if (is_known) 100 * combined(at_zero$u[at_zero$is_shared]) / basis$span else NA
  across <- if (is_known) 100 * combined(c(
    in_span(basis$condition, basis$condition$distance_unit, 1, basis$span),
    if (judged == "signal") in_span(basis$condition, first$signal_unit,
      basis$span / abs(diff(line_ends(first, judged))), diff(line_ends(first, judged))))) / basis$span else NA
  say_line_error(first, used, range, "zero", basis$steps, shared)
  say_line_error(first, used, range, "span", basis$steps, across)
}

# Each stage that was read is judged; the word of the loop is that of the last one, at each reading or test point.
uncertainties <- function(phase, used, by_stage, judged, has_fault) {
  first <- phase[1, ]
  condition <- conditions[conditions$calibration == first$calibration, ]
  span <- first$range_upper - first$range_lower
  shared_line_uncertainty(phase, used, judged)
  points <- lapply(setNames(nm = names(by_stage)), function(stage) judged_curve(phase, by_stage[[stage]], stage))
  deciding <- deciding_points(points)
  end <- Filter(function(one) one$stage != judged, deciding)
  say_points(first, points[[judged]], "points")
  say_points(first, lapply(end, function(one) one[names(one) != "stage"]), "endPoints")
  said <- lapply(points, statements_of)
  loop <- statements_of(deciding)
  if (or_else(condition$decision_rule, "simple acceptance") == "simple acceptance") {
    said <- lapply(by_stage, function(read) reading_statements(first, read$error * span / 100, read$reference))
    last <- character()
    for (stage in names(by_stage)) last[as.character(by_stage[[stage]]$number)] <- said[[stage]]
    loop <- last
  }
  said[[judged]] <- c(said[[judged]], if (has_fault) "fail")
  part <- function(stage) if (stage == judged) NA else worst_of(said[[stage]])
  say(first, "verdicts.sensor", worst_of(said[[judged]]))
  say(first, "verdicts.wiring", part("signal_at_card"))
  say(first, "verdicts.inputCard", part("counts"))
  say(first, "verdicts.controller", worst_of(said[["value"]]))
  say(first, "verdict", worst_of(c(loop, if (has_fault) "fail")))
}
