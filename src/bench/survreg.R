# How long R's survival takes for the fit that FitBenchmark times, on the same lives: from rows, as
# survreg is called, and the fitting alone, as survreg calls it inside. Prints both in microseconds
# of processor time (user and system, collections included, the process's start left out), medians
# of repeated blocks after one to warm up, then shape and scale.
#   Rscript survreg.R LIVES.csv
suppressPackageStartupMessages(library(survival))
lives <- read.csv(commandArgs(trailingOnly = TRUE)[1])
lives$lower[lives$lower == 0] <- NA
lives$upper[!is.finite(lives$upper)] <- NA

fits <- 500
blocks <- 7

microseconds <- function(fit) {
  block <- function() {
    gc(FALSE)
    took <- system.time(for (i in seq_len(fits)) fit(), gcFirst = FALSE)
    1e6 * (took[["user.self"]] + took[["sys.self"]]) / fits
  }
  block()
  median(replicate(blocks, block()))
}

from_rows <- function() survreg(Surv(lower, upper, type = "interval2") ~ 1, lives, dist = "weibull")
fit <- from_rows()

# What survreg hands on: log ages, the code of each kind of censoring, a column of ones.
ages <- with(lives, Surv(lower, upper, type = "interval2"))
logs <- cbind(log(ages[, 1:2]), ages[, 3])
ones <- matrix(1, nrow(lives), 1)
zeroes <- rep(0, nrow(lives))
alone <- function() {
  survreg.fit(ones, logs, rep(1, nrow(lives)), zeroes, NULL, survreg.control(), survreg.distributions$extreme,
    scale = 0, nstrat = 1, strata = 0, parms = NULL)
}
stopifnot(all.equal(unname(alone()$coefficients[1]), unname(coef(fit)), tolerance = 1e-6))

cat(microseconds(from_rows), microseconds(alone), 1 / fit$scale, exp(coef(fit)), "\n")
