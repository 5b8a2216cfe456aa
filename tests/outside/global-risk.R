# The risks over all loops by R's own adaptive integration, and root of the found rate; a case a row of results.
# usage: Rscript global-risk.R <file>; columns case, acceptance, common, group, own, count, groups, rate
options(digits = 17)
rows <- read.csv(commandArgs(TRUE)[1])
# Every function that is integrated takes many places at once.
sure <- function(f, from, to, digits = 1e-9) {
  integrate(f, from, to, rel.tol = digits, abs.tol = digits * 1e-3, subdivisions = 2000)$value
}
# Split at 0, lest a narrow peak be stepped over.
over_normal <- function(f, digits = 1e-9) {
  sure(function(c) dnorm(c) * f(c), -7, 0, digits) + sure(function(c) dnorm(c) * f(c), 0, 7, digits)
}

accepted_at <- function(case, x) {
  inside <- function(c) {
    chance <- 1
    for (i in seq_len(nrow(case))) {
      s <- x + c * case$common[i]
      inside_one <- pnorm((case$acceptance[i] - s) / case$own[i]) - pnorm((-case$acceptance[i] - s) / case$own[i])
      chance <- chance * inside_one^case$count[i]
    }
    chance
  }
  # What the cycles share: 561 places of equal distance, for many shared deviations at once.
  g <- seq(-7, 7, by = 0.025)
  of_group <- function(c) {
    logarithm <- matrix(0, length(c), length(g))
    for (i in seq_len(nrow(case))) {
      s <- outer(x + c * case$common[i], g * case$group[i], "+")
      p <- pnorm((case$acceptance[i] - s) / case$own[i]) - pnorm((-case$acceptance[i] - s) / case$own[i])
      logarithm <- logarithm + case$count[i] * log(pmax(p, 0))
    }
    as.vector(exp(logarithm) %*% dnorm(g)) * 0.025
  }
  if (any(case$group > 0)) over_normal(function(c) of_group(c)^case$groups[1])
  else if (all(case$common == 0)) inside(0) else over_normal(inside)
}

for (name in unique(rows$case)) {
  case <- rows[rows$case == name, ]
  end <- 1 + 9 * max(sqrt(case$common^2 + case$group^2 + case$own^2))
  # The chance of a pass is smooth: a spline through many places of it stands for it, through fewer where cycles differ.
  places <- if (any(case$group > 0)) 61 else 201
  at <- sort(unique(c(seq(0, 1, length.out = places), seq(1, end, length.out = places))))
  passed <- splinefun(at, sapply(at, function(x) accepted_at(case, x)))
  share <- function(f, from, to, spread) {
    breaks <- sort(unique(c(from, to, pmin(pmax(spread * c(0.5, 1, 2, 4, 8), from), to))))
    2 * sum(mapply(function(a, b) sure(function(x) dnorm(x, 0, spread) * f(x), a, b), head(breaks, -1), tail(breaks, -1)))
  }
  found <- function(spread) share(passed, 0, end, spread)
  spread <- if (found(1e-3) <= case$rate[1]) 0 else
    exp(uniroot(function(s) found(exp(s)) - case$rate[1], log(c(1e-3, 1e3)), tol = 1e-13)$root)
  cat(sprintf("%s,%.15g,%.15g,%.15g\n", name, spread,
    if (spread == 0) 0 else share(passed, 1, end, spread),
    if (spread == 0) 1 - passed(0) else share(function(x) 1 - passed(x), 0, 1, spread)))
}
