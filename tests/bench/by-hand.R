#!/usr/bin/env Rscript
# What a practitioner who scripts would write instead: base R, lm() and svg(), one HTML page a calibration.
# usage: by-hand.R READINGS.csv OUTDIR
a <- commandArgs(TRUE); d <- read.csv(a[1]); dir.create(a[2], showWarnings = FALSE, recursive = TRUE)
draw <- function(expr, w = 6, h = 3.2) { f <- tempfile(fileext = ".svg"); svg(f, w, h); eval.parent(substitute(expr)); dev.off(); r <- paste(readLines(f), collapse = "\n"); unlink(f); r }
for (id in unique(d$calibration)) {
  one <- d[d$calibration == id, ]; lo <- round(min(one$reference_mm), -1); hi <- round(max(one$reference_mm), -1); S <- hi - lo
  html <- c("<!doctype html><meta charset=utf-8><title>", id, "</title><h1>", id, "</h1>")
  for (ph in unique(one$phase)) {
    r <- one[one$phase == ph, ]; r$err <- 100 * ((lo + (r$signal_mA - 4) / 16 * S) - r$reference_mm) / S
    r$pt <- round((r$reference_mm - lo) / S * 20)
    m <- lm(err ~ reference_mm, r); k <- coef(m)
    up <- tapply(r$err[r$direction == "rising"], r$pt[r$direction == "rising"], mean)
    dn <- tapply(r$err[r$direction == "falling"], r$pt[r$direction == "falling"], mean)
    av <- (up + dn) / 2; x <- as.numeric(names(av)); term <- av - (av[1] + (av[length(av)] - av[1]) * x / 20)
    fig <- c(zero = sum(k * c(1, lo)), span = k[[2]] * S, max = max(abs(r$err)), terminal = max(abs(term)), hysteresis = max(abs(up - dn)), s = summary(m)$sigma)
    html <- c(html, "<h2>", ph, "</h2><table>", paste0("<tr><td>", names(fig), "<td>", sprintf("%.4f", fig)), "</table><table>",
      sprintf("<tr><td>%d<td>%s<td>%.1f<td>%.4f<td>%.4f", r$cycle, r$direction, r$reference_mm, r$signal_mA, r$err), "</table>",
      draw({ plot(r$reference_mm, r$err, col = ifelse(r$direction == "rising", 4, 2)); abline(h = c(-.5, .5), lty = 2); abline(m) }),
      draw({ plot(x, up - dn, type = "b") }))
  }
  writeLines(html, file.path(a[2], paste0(id, ".html")))
}
