# Drift over the years by base R: reads series,day,error,limit from a file; for each series prints its slope a year with
# confidence interval, the prediction interval 400 days after the last result, the first day within 20 years on which the
# interval is on a limit or beyond it (day by day), and Clopper and Pearson's interval of the errors inside the limit.
arguments <- commandArgs(trailingOnly = TRUE)
rows <- read.csv(arguments[1])
show <- function(series, figure, value) cat(series, ",", figure, ",", sprintf("%.15g", value), "\n", sep = "")
for (series in unique(rows$series)) {
  part <- rows[rows$series == series, ]
  limit <- part$limit[1]
  first <- min(part$day)
  last <- max(part$day)
  years <- (part$day - first) / 365.25
  model <- lm(error ~ years, data.frame(years, error = part$error))
  band <- function(days) {
    suppressWarnings(predict(model, data.frame(years = (days - first) / 365.25), interval = "prediction"))
  }
  interval <- suppressWarnings(confint(model))
  show(series, "perYear", coef(model)[2])
  show(series, "perYearLow", interval[2, 1])
  show(series, "perYearHigh", interval[2, 2])
  later <- band(last + 400)
  show(series, "value", later[1, 1])
  show(series, "low", later[1, 2])
  show(series, "high", later[1, 3])
  days <- last + 0:7305
  all <- band(days)
  beyond <- which(all[, 3] >= limit | all[, 2] <= -limit)
  show(series, "meets", if (length(beyond) == 0) -1 else days[beyond[1]])
  rate <- binom.test(sum(abs(part$error) <= limit), nrow(part))$conf.int
  show(series, "rateLow", rate[1])
  show(series, "rateHigh", rate[2])
}
