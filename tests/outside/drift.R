# Drift over the years by base R: reads series,distance,day,error,limit from a file, a series being a loop whose test
# points were read on the same days. For each test point it prints slope a year with confidence interval, the prediction
# interval 400 days after the last result, both with a scatter pooled over the points, and the first day within 20 years on
# which the interval is on a limit or beyond it (day by day); for each series Clopper and Pearson's interval of the errors
# inside the limit. The parts of the scatter are those of lines fitted to the mean of the points, to their slope on the
# distance and to each of them, not taken from residuals.
arguments <- commandArgs(trailingOnly = TRUE)
rows <- read.csv(arguments[1])
show <- function(series, figure, value) cat(series, ",", figure, ",", sprintf("%.15g", value), "\n", sep = "")
sigma2 <- function(y, years) suppressWarnings(summary(lm(y ~ years))$sigma^2)
for (series in unique(rows$series)) {
  part <- rows[rows$series == series, ]
  limit <- part$limit[1]
  days <- sort(unique(part$day))
  places <- sort(unique(part$distance))
  points <- length(places)
  years <- (days - days[1]) / 365.25
  errors <- sapply(places, function(place) {
    at <- part[part$distance == place, ]
    at$error[order(at$day)]
  })
  free <- length(days) - 2
  tilt <- if (points > 1) (places - mean(places)) / sqrt(sum((places - mean(places))^2)) else 0
  shift <- sigma2(as.vector(errors %*% rep(1 / sqrt(points), points)), years)
  tilted <- if (points > 1) sigma2(as.vector(errors %*% tilt), years) else 0
  all <- sum(apply(errors, 2, function(y) suppressWarnings(deviance(lm(y ~ years)))))
  rest <- if (points > 2) (all - free * (shift + tilted)) / (free * (points - 2)) else 0
  for (point in 1:points) {
    model <- lm(errors[, point] ~ years)
    unscaled <- suppressWarnings(summary(model)$cov.unscaled)
    parts <- c(shift / points, tilt[point]^2 * tilted, max(0, 1 - 1 / points - tilt[point]^2) * rest)
    of <- c(free, free, max(1, free * (points - 2)))
    s <- sqrt(sum(parts))
    nu <- sum(parts)^2 / sum(parts^2 / of)
    t <- qt(0.975, nu)
    name <- function(figure) paste(figure, point)
    slope <- unname(coef(model)[2])
    show(series, name("perYear"), slope)
    show(series, name("perYearLow"), slope - t * s * sqrt(unscaled[2, 2]))
    show(series, name("perYearHigh"), slope + t * s * sqrt(unscaled[2, 2]))
    band <- function(at) {
      x <- cbind(1, (at - days[1]) / 365.25)
      middle <- as.vector(x %*% coef(model))
      reach <- t * s * sqrt(1 + rowSums((x %*% unscaled) * x))
      cbind(middle, middle - reach, middle + reach)
    }
    last <- days[length(days)]
    later <- band(last + 400)
    show(series, name("value"), later[1, 1])
    show(series, name("low"), later[1, 2])
    show(series, name("high"), later[1, 3])
    ahead <- last + 0:7305
    beyond <- which(band(ahead)[, 3] >= limit | band(ahead)[, 2] <= -limit)
    show(series, name("meets"), if (length(beyond) == 0) -1 else ahead[beyond[1]])
  }
  rate <- binom.test(sum(abs(part$error) <= limit), nrow(part))$conf.int
  show(series, "rateLow", rate[1])
  show(series, "rateHigh", rate[2])
}
