# What one reading scatters by, what cycles differ by, and what both make of zero and span error, in base R; read by
# uncertainty.R. Cycles by analysis of variance of two nested lm (GUM H.5; Draper and Smith), n by the trace of the design.

# s without what the steps of a display make of it, and its degrees of freedom.
without_steps <- function(s, freedom, steps) {
  if (steps >= s) return(list(s = 0, freedom = freedom))
  part <- 1 - (steps / s)^2
  list(s = s * sqrt(part), freedom = max(1, freedom * part^2))
}

# How many cycles the readings can tell apart: 1 where they cannot show what cycles differ by.
cycles_told_apart <- function(used) {
  group <- interaction(used$nominal, used$direction, drop = TRUE)
  repeated <- used[ave(used$error, group, FUN = length) >= 2, ]
  if (nrow(repeated) == 0) return(1)
  counts <- unclass(table(droplevels(interaction(repeated$nominal, repeated$direction)), repeated$cycle))
  freedom <- nrow(repeated) - nrow(counts) - ncol(counts) + 1
  if (ncol(counts) >= 2 && freedom >= 1 && sum(counts) > sum(counts^2 / rowSums(counts))) ncol(counts) else 1
}

# What cycles differ by where it is not measured: as large as the scatter. Where several are not shown to differ, it is
# left open over the root of their number: the zero has it, a test point does not.
taking_differences <- function(scatter, cycles = 1) {
  open <- scatter$s / sqrt(cycles)
  scatter <- c(scatter, list(open = open, open_freedom = scatter$freedom))
  if (cycles == 1) c(scatter, list(between = open, cycle_freedom = scatter$freedom)) else scatter
}

cycle_differences <- function(used) {
  used$group <- interaction(used$nominal, used$direction, drop = TRUE)
  used <- used[ave(used$error, used$group, FUN = length) >= 2, ]
  used$group <- droplevels(used$group)
  counts <- unclass(table(used$group, used$cycle))
  freedom <- nrow(used) - nrow(counts) - ncol(counts) + 1
  if (nrow(used) == 0 || ncol(counts) < 2 || freedom < 1) return(NULL)
  design <- if (nlevels(used$group) > 1) error ~ group else error ~ 1
  apart <- lm(design, used)
  both <- lm(update(design, . ~ . + factor(cycle)), used)
  within <- deviance(both) / freedom
  cycles <- max(0, deviance(apart) - deviance(both)) / (ncol(counts) - 1)
  per_cycle <- (sum(counts) - sum(counts^2 / rowSums(counts))) / (ncol(counts) - 1)
  ratio <- if (sqrt(cycles / per_cycle) > 1e-10) cycles / max(within, 1e-20) else 0
  if (ratio <= qf(0.95, ncol(counts) - 1, freedom)) return(NULL)
  effect <- c(0, coef(both)[-seq_len(nlevels(used$group))])
  names(effect) <- sort(unique(used$cycle))
  list(within = sqrt(within), freedom = freedom, between = sqrt(max(0, cycles - within) / per_cycle),
    cycle_freedom = ncol(counts) - 1, effect = effect)
}

freed_of <- function(used, cycles) {
  effect <- if (is.null(cycles)) 0 else cycles$effect[as.character(used$cycle)]
  used$error - ifelse(is.na(effect), 0, effect)
}

# Without repeats: |rstandard|·sigma on distance by lm (Glejser); s at each point where its slope is shown.
growing_points <- function(used, steps) {
  if (length(unique(used$nominal)) < 5) return(NULL)
  fit <- lm(error ~ reference, used)
  used$size <- abs(residuals(fit)) / sqrt(pmax(1e-9, 1 - hatvalues(fit)))
  growth <- lm(size ~ reference, used)
  slope <- suppressWarnings(summary(growth))$coefficients[2, ]
  if (is.na(slope[4]) || slope[4] >= 0.05) return(NULL)
  at <- data.frame(reference = tapply(used$reference, used$nominal, mean))
  on <- predict(growth, at, se.fit = TRUE)
  scale <- sqrt(pi / 2)
  s <- scale * pmax(on$se.fit, on$fit)
  lever <- 1 / nrow(used) + (at$reference - mean(used$reference))^2 / sum((used$reference - mean(used$reference))^2)
  u <- pmax(scale * on$se.fit, s * sqrt((pi / 2 - 1) * lever))
  freed <- mapply(function(s, freedom) unlist(without_steps(s, freedom, steps)), s, pmax(1, (s / u)^2 / 2))
  data.frame(point = sort(unique(used$nominal)), s = freed["s", ], freedom = freed["freedom", ])
}

# In percent of span; `points` holds each test point's own s where the scatter is shown to change along the range.
reading_scatter <- function(used, steps) {
  line <- NULL
  if (nrow(used) >= 3 && length(unique(used$reference)) >= 2) {
    fit <- lm(error ~ reference, data = used)
    line <- taking_differences(without_steps(sqrt(deviance(fit) / (nrow(used) - 2)), nrow(used) - 2, steps))
    line$points <- growing_points(used, steps)
  }
  group <- interaction(used$nominal, used$direction, drop = TRUE)
  freedom <- sum(table(group) - 1)
  if (freedom == 0 || (!is.null(line) && freedom < min(3, line$freedom))) return(line)
  cycles <- cycle_differences(used)
  used$freed <- freed_of(used, cycles)
  own <- Filter(function(one) nrow(one) >= 2, split(used, group))
  sums <- data.frame(
    point = vapply(own, function(one) one$nominal[1], 0), reference = vapply(own, function(one) mean(one$reference), 0),
    squares = vapply(own, function(one) sum((one$freed - mean(one$freed))^2), 0),
    freedom = vapply(own, function(one) nrow(one) - 1, 0))
  found <- if (is.null(cycles)) list(s = sqrt(sum(sums$squares) / freedom), freedom = freedom)
    else list(s = cycles$within, freedom = cycles$freedom, between = cycles$between, cycle_freedom = cycles$cycle_freedom)
  if (nrow(sums) >= 5 && length(unique(sums$reference)) >= 3) {
    growth <- lm(sqrt(squares / freedom) ~ reference, sums)
    spread <- sqrt(diag(vcov(growth)))[[2]]
    if (abs(coef(growth)[[2]]) > qt(0.975, nrow(sums) - 2) * spread) {
      pooled <- aggregate(cbind(squares, freedom) ~ point, sums, sum)
      pooled$freedom <- pooled$freedom * found$freedom / freedom
      found$points <- data.frame(point = pooled$point, s = sqrt(pooled$squares / pooled$freedom), freedom = pmax(1, pooled$freedom))
    }
  }
  if (is.null(cycles)) taking_differences(found, cycles_told_apart(used)) else found
}

scatter_lines <- function(scatter, point, count, cycles, scale) {
  if (is.null(scatter)) return(NULL)
  at <- match(point, scatter$points$point)
  own <- if (is.na(at)) scatter else scatter$points[at, ]
  stacked(
    normal(scale * own$s / sqrt(count), own$freedom),
    if (!is.null(scatter$between)) normal(scale * scatter$between / sqrt(cycles), scatter$cycle_freedom))
}

# Standard uncertainty of the line at its lower end, or of its rise over the range, for an s of 1 at each of `x`.
lever <- function(x, range, which) {
  across <- if (which == "span") diff(range) else range[1] - mean(x)
  sqrt((if (which == "span") 0 else 1 / length(x)) + across^2 / sum((x - mean(x))^2))
}

# The variance of one reading of each row about the lines of the cycles: of all, or of its test point where lm of their
# standard deviations on distance shows a change; with what it leaves of the degrees of freedom of a slope.
scatter_of_rows <- function(part, left, freedom) {
  first <- part$cycle == part$cycle[1]
  x <- part$x[first]
  # In the order of the rows of the first cycle.
  squares <- as.vector(tapply(left^2, part$group, sum)[as.character(part$group[first])])
  all <- list(variances = rep(sum(squares) / freedom, length(x)), freedom = freedom)
  if (length(x) < 5 || length(unique(x)) < 3) return(all)
  each <- length(unique(part$cycle)) - 1
  own <- squares / (each * pmax(1e-9, 1 - hatvalues(lm(seq_along(x) ~ x))))
  slope <- suppressWarnings(summary(lm(sqrt(own) ~ x)))$coefficients[2, ]
  if (is.na(slope[4]) || slope[4] >= 0.05) return(all)
  variances <- ave(own, part$nominal[first])
  weighted <- tapply((x - mean(x))^2 * variances, part$nominal[first], sum)
  rows <- tapply(x, part$nominal[first], length)
  list(variances = variances, freedom = sum(weighted)^2 / sum(weighted^2 / (each * rows)))
}

# The line of each cycle by a fit of its own, of the points and directions that every cycle has once; F by nested lm.
cycle_slopes <- function(used) {
  cycles <- sort(unique(used$cycle))
  group <- interaction(used$nominal, used$direction, drop = TRUE)
  counts <- unclass(table(group, used$cycle))
  complete <- rownames(counts)[apply(counts == 1, 1, all)]
  part <- used[group %in% complete, ]
  if (length(cycles) < 2 || length(complete) < 3) return(NULL)
  part$group <- droplevels(interaction(part$nominal, part$direction))
  part$x <- ave(part$reference, part$group)
  if (length(unique(part$x)) < 2) return(NULL)
  base <- lm(error ~ group + factor(cycle), part)
  full <- lm(error ~ group + factor(cycle) + factor(cycle):x, part)
  m <- length(cycles)
  freedom <- (length(complete) - 2) * (m - 1)
  x <- part$x[part$cycle == cycles[1]]
  apart <- sum((x - mean(x))^2)
  scatter <- scatter_of_rows(part, residuals(full), freedom)
  squares <- max(0, deviance(base) - deviance(full)) / (m - 1)
  of_scatter <- sum((x - mean(x))^2 * scatter$variances) / apart
  ratio <- if (sqrt(squares / length(complete)) > 1e-10) squares / max(of_scatter, 1e-20) else 0
  if (ratio <= qf(0.95, m - 1, scatter$freedom)) return(NULL)
  # Each cycle on its own about the mean of all: a line of error on distance.
  part$freed <- part$error - ave(part$error, part$group)
  lines <- lapply(cycles, function(one) lm(freed ~ x, part[part$cycle == one, ]))
  # What scatter makes of a line: the row of its hat matrix there, or what it rises by.
  hat <- solve(crossprod(cbind(1, x)), t(cbind(1, x)))
  between <- function(values, from) sqrt(max(0, sum(values^2) / (m - 1) - sum((from %*% hat)^2 * scatter$variances)) / m)
  at <- function(to) vapply(lines, function(one) sum(coef(one) * c(1, to)), 0)
  list(
    freedom = m - 1, taken = 2 * (m - 1),
    zero = function(range) between(at(range[1]), c(1, range[1])),
    span = function(range) between(at(range[2]) - at(range[1]), c(0, diff(range))),
    effect = function(used) mapply(function(one, to) sum(coef(lines[[one]]) * c(1, to)), match(used$cycle, cycles), used$reference))
}

taken_line <- function(used, steps) {
  scatter <- reading_scatter(used, steps)
  if (!is.null(scatter$open)) normal(scatter$open / sqrt(length(unique(used$cycle))), scatter$open_freedom)
}

# Says u of zero or span error, widened for few degrees of freedom; all in percent of span.
say_line_error <- function(first, used, range, which, steps, shared) {
  name <- function(figure) paste0(which, "Error.", figure)
  if (length(unique(used$reference)) < 2 || nrow(used) < 3 || is.na(shared)) {
    return(say(first, name("combinedStandardUncertainty"), NA))
  }
  cycles <- cycle_differences(used)
  slopes <- cycle_slopes(used)
  used$freed <- if (is.null(slopes)) freed_of(used, cycles) else used$error - slopes$effect(used)
  taken <- if (!is.null(slopes)) slopes$taken else if (is.null(cycles)) 0 else cycles$cycle_freedom
  freedom <- max(1, nrow(used) - 2 - taken)
  own <- without_steps(sqrt(deviance(lm(freed ~ reference, used)) / freedom), freedom, steps)
  points <- tapply(used$reference, used$nominal, mean)
  if (length(points) < 2) points <- used$reference
  lines <- stacked(
    normal(own$s * lever(used$reference, range, which), own$freedom),
    normal(steps * (if (which == "span") sqrt(2) else lever(points, range, which))),
    normal(shared),
    if (!is.null(slopes)) normal(slopes[[which]](range), slopes$freedom)
    else if (which == "zero" && !is.null(cycles)) normal(cycles$between / sqrt(cycles$cycle_freedom + 1), cycles$cycle_freedom)
    else if (which == "zero") taken_line(used, steps))
  u <- sqrt(sum(lines$u^2))
  found <- if (u == 0) Inf else u^4 / sum(lines$u^4 / lines$freedom)
  widened <- u * qt((1 + coverage) / 2, max(1, floor(found * (1 + 1e-12)))) / qnorm((1 + coverage) / 2)
  say(first, name("combinedStandardUncertainty"), widened)
  say(first, name("effectiveDegreesOfFreedom"), if (is.finite(found)) found else NA)
  say(first, name("standardsUncertainty"), shared)
}
