# Fits of survival::survreg, against which survreg_test.go holds the package.
#
#     Rscript survreg.R > survreg.json
#
# Every fit is written as rows (x, least, most, scale; null for no limit), so
# that the test lays out the same rows. Where a row's error has its own scale,
# survreg is given the row divided by it, which leaves coefficients, sigma and
# covariance alone and adds log(scale) to the log likelihood of each exact row;
# that is taken off again here.

suppressMessages(library(survival))

number <- function(v) ifelse(is.finite(v), sprintf("%.17g", v), "null")
vec <- function(v) paste0("[", paste(number(v), collapse = ", "), "]")
matrixText <- function(m) paste0("[", paste(apply(m, 1, vec), collapse = ", "), "]")

fit <- function(name, x, least, most, scale = rep(1, length(least)), sigma = 0) {
  x <- as.matrix(x)
  lo <- ifelse(is.finite(least), least / scale, NA)
  hi <- ifelse(is.finite(most), most / scale, NA)
  xs <- x / scale
  f <- survreg(Surv(lo, hi, type = "interval2") ~ xs - 1, dist = "gaussian", scale = sigma,
    control = survreg.control(rel.tolerance = 1e-14, toler.chol = 1e-14, maxiter = 200))
  stopifnot(f$iter < 200)
  exact <- is.finite(least) & is.finite(most) & least == most
  ll <- f$loglik[2] - sum(log(scale[exact]))
  rows <- paste0("      {\"x\": ", apply(x, 1, vec), ", \"least\": ", number(least),
    ", \"most\": ", number(most), ", \"scale\": ", number(scale), "}", collapse = ",\n")
  paste0("  {\n    \"name\": \"", name, "\",\n    \"free\": ", if (sigma == 0) "true" else "false",
    ",\n    \"rows\": [\n", rows, "\n    ],\n    \"coefficients\": ", vec(unname(coef(f))),
    ",\n    \"sigma\": ", number(f$scale), ",\n    \"logLikelihood\": ", number(ll),
    ",\n    \"covariance\": ", matrixText(unname(f$var)), "\n  }")
}

out <- c()
add <- function(...) out <<- c(out, fit(...))

# Tobin's durable goods, data set `tobin` of the package: left-censored at 0.
tob <- with(tobin, list(x = cbind(1, age, quant), lo = ifelse(durable > 0, durable, -Inf), hi = pmax(durable, 0)))
add("tobin", tob$x, tob$lo, tob$hi)
add("tobin, intercept only", tob$x[, 1, drop = FALSE], tob$lo, tob$hi)
for (s in c(1, 5, 25)) add(sprintf("tobin, sigma %g", s), tob$x, tob$lo, tob$hi, sigma = s)

# The file tests/data.interval of the package's source: two rows censored on the
# left, fourteen on the right, two exact, eight true intervals.
d <- read.csv(text = "lo,hi,age,ecog
NA,150,72.3315,1
NA,150,74.4932,1
146,166,66.4658,2
421,NA,53.3644,1
421,421,50.3397,1
448,NA,56.4301,2
454,474,56.937,2
465,485,59.8548,2
477,NA,64.1753,1
553,573,55.1781,2
628,648,56.7562,2
744,NA,50.1096,1
769,NA,59.6301,2
770,NA,57.0521,1
803,NA,39.2712,1
855,NA,43.1233,2
1040,NA,38.8932,2
1106,NA,44.6,1
1129,NA,53.9068,1
1206,NA,44.2055,1
1227,NA,59.589,2
258,278,74.5041,2
319,339,43.137,1
343,363,63.2192,2
375,375,64.4247,1
377,NA,58.3096,1")
lo <- ifelse(is.na(d$lo), -Inf, d$lo)
hi <- ifelse(is.na(d$hi), Inf, d$hi)
x <- with(d, cbind(1, age, ecog))
loglo <- log(ifelse(is.na(d$lo), 0, d$lo))
loghi <- log(hi)
add("log time", x, loglo, loghi)
add("log time, intercept only", x[, 1, drop = FALSE], loglo, loghi)
add("time", x, lo, hi)
add("log time, sigma 0.2", x, loglo, loghi, sigma = 0.2)
add("time, sigma 100", x, lo, hi, sigma = 100)

# The lognormal law on the times themselves is the Gaussian on their logarithms,
# but for 1/t in the density of each exact row.
check <- survreg(Surv(lo, hi, type = "interval2") ~ age + ecog, data = d, dist = "lognormal")
exact <- !is.na(d$lo) & !is.na(d$hi) & d$lo == d$hi
lognormal <- check$loglik[2] + sum(log(d$lo[exact]))

# A round of a coupling by feelers, made up: the leaf that goes, the one that
# does not, at every 30 degrees.
goes <- c(14, 12, 11, 8, 5, 5, 6, 8, 9, 13, 15, 14)
theta <- (0:11) * pi / 6
wave <- cbind(1, cos(theta), sin(theta))
add("feelers", wave, goes, goes + 1)
for (s in c(0.1, 0.5, 2)) add(sprintf("feelers, sigma %g", s), wave, goes, goes + 1, sigma = s)

# Beliefs about the unknowns, as rows with equal limits.
believed <- function(n) list(
  x = rbind(wave[seq_len(n), , drop = FALSE], diag(3)),
  lo = c(goes[seq_len(n)], 10, 4, -2), hi = c(goes[seq_len(n)] + 1, 10, 4, -2))
b <- believed(12)
add("feelers and beliefs, sigma 0.4", b$x, b$lo, b$hi, c(rep(1, 12), 2.5, 1, 0.5), 0.4)
add("feelers and beliefs, sigma found", b$x, b$lo, b$hi, c(rep(1, 12), 2.5, 1, 0.5))
b <- believed(2)
add("two feelers and weak beliefs", b$x, b$lo, b$hi, c(1, 1, 10, 20, 40), 0.5)
b <- believed(1)
add("one feeler and beliefs", b$x, b$lo, b$hi, c(1, 3, 2, 1), 0.5)
add("feelers of two sorts", wave, goes, goes + 1, rep(c(1, 3), 6))

cat("{\n\"R\": \"", R.version$major, ".", R.version$minor, "\",\n\"survival\": \"",
  as.character(packageVersion("survival")), "\",\n\"lognormal\": ", number(lognormal),
  ",\n\"fits\": [\n", paste(out, collapse = ",\n"), "\n]\n}\n", sep = "")
