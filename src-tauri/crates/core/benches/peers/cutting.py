"""Cutting stock by a general-purpose solver (HiGHS through scipy's milp), for comparison.

Reads a JSON list of {pieces, stock: [{reel, length}], kerf, useful, limit} in mm and seconds on standard input, for
batches whose pieces can all be made; writes a JSON list of {reel, reel_bound, reel_proved, scrap, scrap_proved,
seconds} on standard output: first the least new hose, then, with no more of it, the least scrap. Needs numpy and scipy.

A piece takes its length and one kerf; the last piece of a stock that comes out even needs no cut behind it, so a stock
has room for one kerf more than its length. What a reel loses is what is used of it, at most its length. Scrap is what
is left of a cut offcut where that is shorter than a useful rest.
"""

import json
import sys
import time

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import coo_array


class Rows:
    """Constraints, row by row."""

    def __init__(self):
        self.at, self.column, self.value, self.low, self.high = [], [], [], [], []

    def add(self, terms, low, high):
        row = len(self.low)
        for column, value in terms:
            self.at.append(row)
            self.column.append(column)
            self.value.append(value)
        self.low.append(low)
        self.high.append(high)

    def constraint(self, columns):
        shape = (len(self.low), columns)
        return LinearConstraint(coo_array((self.value, (self.at, self.column)), shape).tocsr(), self.low, self.high)


def solve(case):
    pieces, stock, kerf, useful = case["pieces"], case["stock"], case["kerf"], case["useful"]
    n, m = len(pieces), len(stock)
    cut = [piece + kerf for piece in pieces]
    x = lambda piece, at: piece * m + at
    # For each stock: what a reel loses or an offcut scraps; whether a reel comes out even, or an offcut is cut;
    # whether the rest of an offcut is kept.
    cost, one, kept = (lambda at: n * m + at), (lambda at: n * m + m + at), (lambda at: n * m + 2 * m + at)
    columns = n * m + 3 * m
    rows = Rows()
    for piece in range(n):
        rows.add([(x(piece, at), 1) for at in range(m)], 1, 1)
    for at, own in enumerate(stock):
        length = own["length"]
        used = [(x(piece, at), cut[piece]) for piece in range(n)]
        rows.add(used, -np.inf, length + kerf)
        if own["reel"]:
            # cost >= used - kerf * even, and even only where the reel is used up.
            rows.add([(column, -value) for column, value in used] + [(cost(at), 1), (one(at), kerf)], 0, np.inf)
            rows.add(used + [(one(at), -length)], 0, np.inf)
            rows.add([(cost(at), 1), (one(at), -length)], 0, np.inf)
        else:
            rows.add([(x(piece, at), 1) for piece in range(n)] + [(one(at), -n)], -np.inf, 0)
            # cost >= length - used where it is cut and its rest not kept; kept only where that is long enough.
            rows.add(used + [(cost(at), 1), (one(at), -length), (kept(at), length)], 0, np.inf)
            rows.add(used + [(kept(at), useful + kerf)], -np.inf, length + kerf)
    whole = np.ones(columns)
    whole[n * m : n * m + m] = 0
    high = np.ones(columns)
    high[n * m : n * m + m] = np.inf
    fixed = [(x(piece, at)) for piece in range(n) for at in range(m) if cut[piece] > stock[at]["length"] + kerf]
    high[fixed] = 0
    reels = [at for at in range(m) if stock[at]["reel"]]
    offcuts = [at for at in range(m) if not stock[at]["reel"]]
    limit = {"time_limit": case["limit"], "mip_rel_gap": 0}

    began = time.perf_counter()
    aim = np.zeros(columns)
    aim[[cost(at) for at in reels]] = 1
    first = milp(aim, constraints=rows.constraint(columns), bounds=Bounds(0, high), integrality=whole, options=limit)
    if first.x is None:
        return {"reel": None, "seconds": time.perf_counter() - began}
    reel = float(first.fun)
    rows.add([(cost(at), 1) for at in reels], -np.inf, reel + 1e-6)
    aim = np.zeros(columns)
    aim[[cost(at) for at in offcuts]] = 1
    second = milp(aim, constraints=rows.constraint(columns), bounds=Bounds(0, high), integrality=whole, options=limit)
    return {
        "reel": reel,
        "reel_bound": None if first.mip_dual_bound is None else float(first.mip_dual_bound),
        "reel_proved": bool(first.status == 0),
        "scrap": None if second.x is None else float(second.fun),
        "scrap_proved": bool(second.status == 0),
        "seconds": time.perf_counter() - began,
    }


def main():
    answers = []
    cases = json.load(sys.stdin)
    for at, case in enumerate(cases):
        answers.append(solve(case))
        print(f"\rpeer {at + 1}/{len(cases)}", end="", file=sys.stderr, flush=True)
    print(file=sys.stderr)
    json.dump(answers, sys.stdout)


main()
