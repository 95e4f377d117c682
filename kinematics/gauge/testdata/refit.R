# The built-in visits fitted by survival::survreg, against which refit_test.go
# holds the estimate.
#
#     Rscript refit.R > refit.json
#
# Everything is built anew from the visit files: states, seatings, a row for each
# reading and belief. Which beliefs hold, the faces touching and the halves true,
# is not found here but told (choices); all else as the package's doc.go says.
# A row divided by its standard deviation has an error of one, so survreg's scale
# is held at 1.
#
# Rim steps, pilots and strips see the offset y, z alone, which has no part in the
# gap of a seated shaft; they need the hull's mechanics and are left out.

suppressMessages({library(survival); library(jsonlite)})

thou <- 0.0254
top <- "../../../assets"
visits <- c("first-job", "low-to-port", "v-drive", "crooked-flange", "bent-shaft", "burr", "half-rim", "hogging",
  "stuck-nut", "solid-feet", "dummy", "under-power", "far-apart")
choices <- list( # untrue halves: shaft, flange; every seating touches
  "crooked-flange" = c(FALSE, TRUE),
  "bent-shaft" = c(TRUE, FALSE))

# mm is a length of an object under key_thou or key_mm; none where it has neither.
mm <- function(o, key, none = NA) {
  if (!is.null(o[[paste0(key, "_thou")]])) return(o[[paste0(key, "_thou")]] * thou)
  if (!is.null(o[[paste0(key, "_mm")]])) return(o[[paste0(key, "_mm")]])
  none
}
or <- function(x, other) if (is.null(x)) other else x
rad <- function(deg) deg * pi / 180

# gather lists the seatings, each with its state, turns and readings. No visit
# here numbers a seating, so every gauging has one of its own.
gather <- function(v) {
  seatings <- list(); state <- 0; moved <- TRUE
  for (e in v$events) {
    g <- e$gauging
    if (is.null(g)) { moved <- TRUE; next }
    stopifnot(is.null(g$seating), is.null(g$lever_on), is.null(g$bolts_in), g$held %in% c("seated", "centred"))
    if (moved) { state <- state + 1; moved <- FALSE }
    # A dummy's unevenness is known and turns with the shaft half.
    thin <- rad(or(g$between$thin_at_deg, 0)) + rad(or(g$shaft_turn_deg, 0))
    dummy <- if (is.null(g$between)) c(0, 0) else mm(g$between, "uneven", 0) / 2 * c(cos(thin), sin(thin))
    stopifnot(is.null(g$between) || g$between$what == "dummy")
    seatings[[length(seatings) + 1]] <- list(state = state, shaft = rad(or(g$shaft_turn_deg, 0)),
      flange = rad(or(g$flange_turn_deg, 0)), seated = g$held == "seated", apart = mm(g, "apart", 0), dummy = dummy,
      readings = g$readings)
  }
  list(seatings = seatings, states = state)
}

refit <- function(name) {
  v <- fromJSON(file.path(top, "visits", paste0(name, ".visit.json")), simplifyVector = FALSE)
  hull <- if (is.list(v$hull)) v$hull else fromJSON(file.path(top, "hulls", paste0(tolower(v$hull), ".hull.json")))
  radius <- hull$coupling$outer_diameter_mm / 2
  feel <- max(mm(v, "feel_error", 0.3 * thou), 0.05 * thou)
  all <- gather(v)
  S <- all$seatings
  # Unknowns: run-outs (shaft cos, sin, flange cos, sin), A B y z of each state,
  # g0 of each seating.
  n <- 4 + 4 * all$states + length(S)
  at <- function(k) 4 + 4 * (k - 1) # before state k's A
  g0 <- function(s) 4 + 4 * all$states + s

  X <- matrix(0, 0, n); lo <- hi <- sd <- c()
  add <- function(x, least, most, s) {
    X <<- rbind(X, x); lo <<- c(lo, least); hi <<- c(hi, most); sd <<- c(sd, s)
  }
  unit <- function(i) replace(numeric(n), i, 1)
  # wave is c cos + s sin of the whole gap of a seating, both halves as turned: a
  # half turned by f has its low side at p + f.
  wave <- function(s, c, sn) {
    x <- numeric(n); q <- S[[s]]
    x[at(q$state) + 1:2] <- c(c, sn)
    for (half in 1:2) {
      f <- if (half == 1) q$shaft else q$flange
      x[2 * half - 1] <- c * cos(f) + sn * sin(f)
      x[2 * half] <- sn * cos(f) - c * sin(f)
    }
    x
  }
  gap <- function(s, deg, least, most, err) {
    x <- wave(s, cos(rad(deg)), sin(rad(deg))); x[g0(s)] <- 1
    # g0 is counted from the distance held, so that survreg meets no huge numbers.
    known <- sum(S[[s]]$dummy * c(cos(rad(deg)), sin(rad(deg)))) + S[[s]]$apart
    add(x, least - known, most - known, err)
  }

  measured <- c(FALSE, FALSE)
  gauged <- rep(FALSE, length(S)) # has a gap reading
  for (s in seq_along(S)) {
    R <- S[[s]]$readings
    for (j in seq_along(R)) {
      r <- R[[j]]
      if (r$kind == "leaf") {
        least <- mm(r, "goes", -Inf); most <- mm(r, "stops", Inf)
        # A leaf tried again later there with limits that do not meet holds.
        again <- FALSE
        for (l in R[seq_along(R) > j]) if (l$kind == "leaf" && abs(l$clock_deg - r$clock_deg) <= 1)
          again <- again || mm(l, "goes", -Inf) > most + feel || mm(l, "stops", Inf) < least - feel
        if (again) next
        gap(s, r$clock_deg, least, most, feel); gauged[s] <- TRUE
      } else if (r$kind == "leaf round") {
        leaf <- mm(r, "leaf"); gauged[s] <- TRUE
        span <- function(a) (a[[2]] - a[[1]]) %% 360
        along <- function(arcs, least, most) for (a in arcs) {
          m <- max(1, floor(span(a) / 30))
          for (i in seq_len(m)) gap(s, a[[1]] + span(a) * (i - 0.5) / m, least, most, feel)
        }
        along(r$enters_deg, leaf, Inf); along(r$stops_deg, -Inf, leaf)
        for (a in r$enters_deg) for (b in r$stops_deg) for (ends in list(c(a[[2]], b[[1]]), c(b[[2]], a[[1]]))) {
          apart <- (ends[2] - ends[1] + 180) %% 360 - 180
          if (abs(apart) <= 15) gap(s, ends[1] + apart / 2, leaf, leaf, sqrt(feel^2 + (0.5 * thou)^2))
        }
      } else if (r$kind == "run-out" && r$on == "face" && !is.null(r$low_deg)) {
        half <- if (r$half == "shaft side") 1 else 2
        a <- mm(r, "tir") / 2 * radius / or(r$radius_mm, radius)
        add(unit(2 * half - 1), a * cos(rad(r$low_deg)), a * cos(rad(r$low_deg)), 0.25 * thou)
        add(unit(2 * half), a * sin(rad(r$low_deg)), a * sin(rad(r$low_deg)), 0.25 * thou)
        measured[half] <- TRUE
      }
    }
  }
  readings <- length(lo)

  # Beliefs.
  untrue <- or(choices[[name]], c(FALSE, FALSE))
  for (half in 1:2) for (i in 2 * half - 1:0) add(unit(i), 0, 0, if (untrue[half] || measured[half]) 4 * thou else 0.4 * thou)
  for (k in seq_len(all$states)) for (i in 1:4) add(unit(at(k) + i), 0, 0, if (i <= 2) 1 else 3)
  touching <- gauged & sapply(S, function(q) q$seated)
  for (s in which(!touching)) add(unit(g0(s)), 0, 0, 1)
  # Never in one another; faces an inch apart are no nearer to it than survreg can tell.
  for (s in which(touching)) if (S[[s]]$apart == 0) for (h in 0:11) gap(s, 30 * h, 0, Inf, 0.1 * thou)

  solve1 <- function(X, lo, hi, sd, init) {
    lo <- lo / sd; hi <- hi / sd
    x <- X / sd
    lo[is.infinite(lo)] <- NA; hi[is.infinite(hi)] <- NA
    survreg(Surv(lo, hi, type = "interval2") ~ x - 1, dist = "gaussian", scale = 1, init = init,
      control = survreg.control(rel.tolerance = 1e-14, toler.chol = 1e-14, maxiter = 300))
  }
  # A start: least squares through the middles of the intervals.
  two <- is.finite(lo) & is.finite(hi)
  w <- 1 / sqrt(sd[two]^2 + (hi[two] - lo[two])^2 / 12)
  b <- qr.coef(qr(rbind(X[two, ] * w, diag(1e-3, n))), c((lo[two] + hi[two]) / 2 * w, numeric(n)))

  # Touching, g0 is the gap's own amplitude within 0.4 thou, its tip rounded by
  # 0.1 thou, counted from the distance held. Held apart by more
  # than a leaf reaches, g0 is that distance, within 2 %; laid out round b until nothing moves.
  for (turn in 1:2000) {
    Xt <- X; lt <- lo; st <- sd
    for (s in which(touching)) {
      of <- c(sum(wave(s, 1, 0) * b), sum(wave(s, 0, 1) * b))
      w <- of + S[[s]]$dummy; apart <- S[[s]]$apart
      amp <- sqrt(sum(w^2) + (0.1 * thou)^2); u <- w / amp
      x <- if (apart > 3) numeric(n) else wave(s, -u[1], -u[2]); x[g0(s)] <- 1
      Xt <- rbind(Xt, x); lt <- c(lt, if (apart > 3) 0 else amp - sum(u * of))
      st <- c(st, if (apart > 3) max(thou, 0.02 * apart) else if (apart > 0) thou else 0.4 * thou)
    }
    f <- solve1(Xt, lt, c(hi, tail(lt, sum(touching))), st, b)
    new <- unname(coef(f))
    moved <- max(abs(new - b))
    stopifnot(f$iter < 300)
    b <- if (turn > 8) (new + b) / 2 else new
    if (moved < 1e-13) break
  }
  stopifnot(moved < 1e-13)
  message(sprintf("%-15s %3d reading rows, %3d turns, last moved %.1e mm", name, readings, turn, moved))
  i <- c(sapply(seq_len(all$states), function(k) at(k) + 1:2))
  V <- unname(f$var)[i, i]
  number <- function(v) paste0("[", paste(sprintf("%.17g", v), collapse = ", "), "]")
  truth <- function(v) paste0("[", paste(ifelse(v, "true", "false"), collapse = ", "), "]")
  paste0("  {\n   \"name\": \"", name, "\",\n   \"untrue\": ", truth(untrue), ",\n   \"touching\": ", truth(touching[gauged]),
    ",\n   \"rows\": ", readings, ",\n   \"gap_mm\": ", number(b[i]), ",\n   \"covariance_mm2\": [\n    ",
    paste(apply(V, 1, number), collapse = ",\n    "), "\n   ]\n  }")
}

cat("{\n \"made_by\": \"R ", format(getRversion()), ", survival ", format(packageVersion("survival")), ", jsonlite ",
  format(packageVersion("jsonlite")), "\",\n \"visits\": [\n", paste(sapply(visits, refit), collapse = ",\n"), "\n ]\n}\n", sep = "")
