"""Histories with intervals and late entries fitted by surpyval 0.25, lifelines 0.30.3 and the likelihood itself in scipy 1.17.1.

Run: python mixed_lives.py tests/vectors. It reads life_data_shock_absorber.csv and writes life_mixed_data.csv and
life_mixed_cases.csv there. Needs numpy, scipy, surpyval and lifelines.
"""

import csv
import sys
import warnings
from math import ceil, floor

import lifelines
import numpy as np
import surpyval
from scipy.optimize import brentq, minimize, minimize_scalar

warnings.filterwarnings("ignore")
folder = sys.argv[1]


def histories():
    with open(f"{folder}/life_data_shock_absorber.csv") as file:
        shocks = [(float(row["time"]), int(row["failed"])) for row in csv.DictReader(file)]
    looked = 4000.0
    intervals = [(time, failed, 0.0, looked * floor(time / looked)) if failed else (time, 0, 0.0, None) for time, failed in shocks]
    # Found failed at the look after: the time is that of the look.
    intervals = [(looked * ceil(time / looked) if failed else time, failed, entered, after) for time, failed, entered, after in intervals]
    yield "intervals", intervals
    late = [(time, failed, [6000.0, 0.4 * time, 0.0][i % 3], None) for i, (time, failed) in enumerate(shocks)]
    yield "late", late
    both = []
    for i, (time, failed, _, after) in enumerate(intervals):
        entered = [4000.0, 0.0, 2500.0][i % 3]
        if i % 4 == 0 and failed:
            after, time = None, shocks[i][0]
        if after is not None and entered > after:
            entered = after
        if entered >= time:
            entered = 0.0
        both.append((time, failed, entered, after))
    yield "both", both
    yield "unseen", [(time, failed, 0.0, 0.0 if failed and i % 2 else after) for i, (time, failed, _, after) in enumerate(intervals)]

def bounds(row):
    time, failed, entered, after = row
    if not failed:
        return time, np.inf
    return (time, time) if after is None else (after, time)

def log_likelihood(rows, shape, scale):
    total = 0.0
    for row in rows:
        low, high = bounds(row)
        hazard = lambda t: (t / scale) ** shape
        if low == high:
            total += np.log(shape / scale) + (shape - 1) * np.log(low / scale) - hazard(low)
        elif np.isinf(high):
            total -= hazard(low)
        else:
            total += -hazard(low) + np.log(-np.expm1(-(hazard(high) - hazard(low))))
        total += hazard(row[2])
    return total

def direct(rows):
    best = minimize(lambda p: -log_likelihood(rows, np.exp(p[0]), np.exp(p[1])), [1.0, np.log(20000.0)], method="Nelder-Mead",
                    options=dict(xatol=1e-13, fatol=1e-13, maxiter=20000, maxfev=20000))
    best = minimize(lambda p: -log_likelihood(rows, np.exp(p[0]), np.exp(p[1])), best.x, method="Nelder-Mead",
                    options=dict(xatol=1e-13, fatol=1e-13, maxiter=20000, maxfev=20000))
    return np.exp(best.x[0]), np.exp(best.x[1]), -best.fun

def profile(rows, best, of):
    shape, scale, top = best
    def top_at(value):
        if of == "shape":
            f = lambda x: -log_likelihood(rows, value, np.exp(x)); c = np.log(scale)
        else:
            f = lambda x: -log_likelihood(rows, np.exp(x), value); c = np.log(shape)
        return -minimize_scalar(f, bounds=(c - 1.5, c + 1.5), method="bounded", options=dict(xatol=1e-12)).fun
    middle = shape if of == "shape" else scale
    f = lambda x: top_at(np.exp(x)) - top + 3.841458820694124 / 2
    return [np.exp(brentq(f, *pair, xtol=1e-12)) for pair in ((np.log(middle) - 1.5, np.log(middle)), (np.log(middle), np.log(middle) + 1.5))]

cases, data = [], []
for name, rows in histories():
    for time, failed, entered, after in rows:
        data.append([name, repr(time), failed, repr(entered), "" if after is None else repr(after)])
    low, high = map(np.array, zip(*map(bounds, rows)))
    entered = np.array([row[2] for row in rows])
    best = direct(rows)
    fitted = surpyval.Weibull.fit(xl=low, xr=high, tl=entered) if entered.any() else surpyval.Weibull.fit(xl=low, xr=high)
    life = lifelines.WeibullFitter().fit_interval_censoring(low, high, entry=entered if entered.any() else None)
    def case(quantity, time, value, second, tolerance, notes):
        group = "turnbull" if quantity == "survival" else "ci95_likelihood_ratio" if quantity.endswith(("lower", "upper")) else "weibull_mle"
        cases.append([f"{name}-{quantity.replace(' ', '-')}" + (f"-{time:g}" if time != "" else ""), name, group, quantity, time, f"{value:.10g}",
            "" if second is None else f"{second:.10g}", tolerance,
            "shock absorber data of life_cases.csv, as if looked at every 4000 km and entered late",
            "reference-library (surpyval 0.25; lifelines 0.30.3; own likelihood in scipy 1.17.1)", notes])
    case("shape", "", best[0], fitted.beta, "1e-4", f"value: own likelihood; second: surpyval; lifelines {life.rho_:.8g}")
    case("scale", "", best[1], fitted.alpha, "1e-4", f"value: own likelihood; second: surpyval; lifelines {life.lambda_:.8g}")
    case("log likelihood", "", best[2], life.log_likelihood_, "1e-6", "value: own likelihood; second: lifelines")
    for of in ("shape", "scale"):
        for side, value in zip(("lower", "upper"), profile(rows, best, of)):
            case(f"{of} {side}", "", value, None, "1e-5", "bound of 95 % by the likelihood ratio, own likelihood in scipy")
    late = {"tl": entered} if entered.any() else {}
    left = surpyval.Turnbull.fit(xl=low, xr=high, turnbull_estimator="Kaplan-Meier", **late)
    for time in (8000.0, 16000.0, 20000.0, 24000.0, 28000.0):
        case("survival", time, float(np.ravel(left.sf(time))[0]), None, "2e-4", "Turnbull's estimate by surpyval, its own tolerance 1e-4")
with open(f"{folder}/life_mixed_data.csv", "w", newline="") as file:
    csv.writer(file, lineterminator="\n").writerows([["data_set", "time", "failed", "entered", "after"], *data])
with open(f"{folder}/life_mixed_cases.csv", "w", newline="") as file:
    csv.writer(file, lineterminator="\n").writerows([["case_id", "data_set", "group", "quantity", "time", "value", "second_value", "tolerance_rel", "source", "basis", "notes"], *cases])
