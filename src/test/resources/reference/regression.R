# How the expected values of the cases regression_* were computed, with R 4.2.2 and its package
# survival 3.5-3: Rscript regression.R, in the folder that holds the cases. First route: survreg,
# an accelerated form, converted: shape = 1 / scale, coefficient of the log hazard =
# -shape * coefficient. Second route, and the only one for delayed entry, which survreg does not
# know: the likelihood as written here, by nlminb.
library(survival)

likelihood <- function(d, X) function(p) {
  k <- exp(p[1]); hazard <- function(t) (t / exp(p[2]))^k * exp(drop(X %*% p[-(1:2)]))
  exact <- !is.na(d$upper) & d$lower == d$upper
  up <- ifelse(is.na(d$upper), Inf, d$upper)
  l <- ifelse(exact, p[1] + log(hazard(d$lower)) - log(d$lower) - hazard(d$lower),
    ifelse(is.na(d$upper), -hazard(d$lower), log(exp(-hazard(d$lower)) - exp(-hazard(up)))))
  sum(d$weight * (l + hazard(ifelse(is.na(d$entry), 0, d$entry)))) }

top <- function(f, start) {
  g <- function(p) { v <- -f(p); if (is.finite(v)) v else 1e10 }
  slope <- function(p) sapply(seq_along(p), function(i) { h <- 1e-3 * max(abs(p[i]), .1); e <- replace(0 * p, i, h)
    (8 * (g(p + e) - g(p - e)) - (g(p + 2 * e) - g(p - 2 * e))) / (12 * h) })
  for (round in 1:3) start <- nlminb(start, g, slope, control = list(rel.tol = 1e-15, x.tol = 1e-13, eval.max = 2000, iter.max = 1000))$par
  start }

fixed <- function(f, j, value, start) {
  h <- function(q) f(append(q, value, j - 1)); q <- top(h, start[-j]); h(q) }

limits <- function(f, p, j, se, level = .95) {
  height <- f(p) - qchisq(level, 1) / 2
  r <- function(v) fixed(f, j, v, p) - height
  c(uniroot(r, p[j] - se * c(4, .5), tol = 1e-12)$root, uniroot(r, p[j] + se * c(.5, 4), tol = 1e-12)$root) }

show <- function(name, x) cat(sprintf("%s = %s\n", name, paste(format(x, digits = 15), collapse = ", ")))

curvature <- function(f, p) {
  n <- length(p); h <- 1e-4 * pmax(abs(p), .05); H <- matrix(0, n, n); e <- diag(n)
  D <- function(i, j, s) (f(p + s * h[i] * e[i, ] + s * h[j] * e[j, ]) - f(p + s * h[i] * e[i, ] - s * h[j] * e[j, ])
    - f(p - s * h[i] * e[i, ] + s * h[j] * e[j, ]) + f(p - s * h[i] * e[i, ] - s * h[j] * e[j, ])) / (4 * s^2 * h[i] * h[j])
  for (i in 1:n) for (j in 1:n) H[i, j] <- (4 * D(i, j, 1) - D(i, j, 2)) / 3
  H }

report <- function(case, d, X, terms) {
  cat("==", case, "\n")
  f <- likelihood(d, X); n <- ncol(X)
  entry <- any(!is.na(d$entry))
  if (!entry) {
    s <- survreg(Surv(ifelse(d$lower == 0, NA, d$lower), d$upper, type = "interval2") ~ X, weights = d$weight,
      control = list(rel.tolerance = 1e-14, maxiter = 200))
    k <- 1 / s$scale; b <- coef(s)
    p <- c(log(k), b[1], -k * b[-1])
    J <- matrix(0, n + 2, n + 2); J[1, n + 2] <- -1; J[2, 1] <- 1
    for (j in 1:n) { J[j + 2, j + 1] <- -k; J[j + 2, n + 2] <- k * b[j + 1] }
    V <- J %*% vcov(s) %*% t(J)
    q <- top(f, p); show("survreg against nlminb", max(abs(p - q))); show("loglik against survreg", f(p) - s$loglik[2])
    show("numeric curvature against survreg", max(abs(sqrt(diag(solve(-curvature(f, p)))) / sqrt(diag(V)) - 1)))
  } else {
    k0 <- survreg(Surv(pmax(d$lower, 1), ifelse(is.na(d$upper), NA, pmax(d$upper, 1)), type = "interval2") ~ X, weights = d$weight)
    p <- top(f, c(-log(k0$scale), coef(k0)[1], -coef(k0)[-1] / k0$scale)); V <- solve(-curvature(f, p)) }
  se <- sqrt(diag(V)); z <- qnorm(.975)
  show("regression.loglik", f(p)); show("regression.aic", 2 * length(p) - 2 * f(p))
  show("regression.shape", exp(p[1])); show("regression.shape_wald_log", exp(p[1] + c(-z, z) * se[1]))
  show("regression.shape_lr", exp(limits(f, p, 1, se[1])))
  show("regression.scale", exp(p[2])); show("regression.scale_wald_log", exp(p[2] + c(-z, z) * se[2]))
  show("regression.scale_lr", exp(limits(f, p, 2, se[2])))
  i <- 2 + 1:n
  show("regression.coefficient", p[i]); show("regression.se_coefficient", se[i])
  show("regression.accelerated_coefficient", -p[i] / exp(p[1]))
  show("regression.hazard_ratio", exp(p[i]))
  show("regression.hazard_ratio_wald_lo", exp(p[i] - z * se[i])); show("regression.hazard_ratio_wald_hi", exp(p[i] + z * se[i]))
  lr <- sapply(i, function(j) exp(limits(f, p, j, se[j])))
  show("regression.hazard_ratio_lr_lo", lr[1, ]); show("regression.hazard_ratio_lr_hi", lr[2, ])
  test <- function(out) { g <- if (length(out) == n) likelihood(d, matrix(0, nrow(d), 0)) else likelihood(d, X[, -out, drop = FALSE])
    2 * (f(p) - g(top(g, p[-(2 + out)]))) }
  chi <- sapply(terms, test); df <- sapply(terms, length)
  show("regression.lr_chi2", chi); show("regression.lr_df", df); show("regression.lr_p", pchisq(chi, df, lower.tail = FALSE))
  all <- test(1:n); show("regression.all_chi2", all); show("regression.all_df", n); show("regression.all_p", pchisq(all, n, lower.tail = FALSE)) }

d <- read.csv("regression_ovarian/data.csv")
report("regression_ovarian", d, cbind(d$x_age, d$x_rx == "rx2", d$x_ecog), list(1, 2, 3))
d <- read.csv("regression_breast_retraction/data.csv")
report("regression_breast_retraction", d, cbind(as.numeric(d$group == "RCT")), list(1))
d <- read.csv("regression_mixed_simulated/data.csv")
report("regression_mixed_simulated", d, cbind(d$x_load, d$x_maker == "B", d$x_maker == "C"), list(1, 2:3))
