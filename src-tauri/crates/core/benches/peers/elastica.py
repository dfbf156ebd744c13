"""The elastica between two clamps by a general-purpose boundary value solver, for comparison.

Reads a JSON list of {id, gap, start, end} for rods of unit length on standard input; writes a JSON list of
{id, seconds, solved, energy} on standard output. Needs numpy and scipy.

The unknown rod is r' = t, t' = m x t, m' = n x t with a constant unknown force n (Love, art. 253-262), and
r, t given at both ends, m(0) without a part along t(0).
"""

import json
import sys
import time

import numpy as np
from scipy.integrate import solve_bvp


def guess(case, nodes):
    """A cubic with handles along the clamps, as a rod of unit length; clamps in one line bulge to a side."""
    gap, start, end = (np.array(case[key]) for key in ("gap", "start", "end"))
    u = np.linspace(0, 1, nodes)[:, None]
    in_line = np.linalg.norm(np.cross(start, gap)) + np.linalg.norm(np.cross(end, gap)) < 1e-9
    side = np.linalg.svd(start[None, :])[2][1] if in_line else np.zeros(3)
    low, high = 0.0, 8.0
    for _ in range(40):
        size = (low + high) / 2
        handle, bulge = (0.3, size) if in_line else (size, 0.0)
        first, second = start * handle, gap - end * handle
        course = 3 * u * (1 - u) ** 2 * first + 3 * u**2 * (1 - u) * second + u**3 * gap
        course = course + 16 * u**2 * (1 - u) ** 2 * bulge * side
        length = np.linalg.norm(np.diff(course, axis=0), axis=1).sum()
        low, high = (size, high) if length < 1 else (low, size)
    at = np.concatenate([[0], np.cumsum(np.linalg.norm(np.diff(course, axis=0), axis=1))])
    tangent = np.gradient(course, at, axis=0)
    tangent /= np.linalg.norm(tangent, axis=1)[:, None]
    moment = np.cross(tangent, np.gradient(tangent, at, axis=0))
    return at / at[-1], np.concatenate([course.T, tangent.T, moment.T])


def solve(case):
    gap, start, end = (np.array(case[key]) for key in ("gap", "start", "end"))
    across = np.linalg.svd(end[None, :])[2][1:]

    def slope(_, y, n):
        t, m = y[3:6], y[6:9]
        return np.concatenate([t, np.cross(m.T, t.T).T, np.cross(n, t.T).T])

    def ends(near, far, _):
        return np.concatenate(
            [near[:3], near[3:6] - start, [near[6:9] @ near[3:6]], far[:3] - gap, across @ far[3:6]]
        )

    at, y = guess(case, 101)
    began = time.perf_counter()
    found = solve_bvp(slope, ends, at, y, p=np.zeros(3), tol=1e-6, max_nodes=20000)
    seconds = time.perf_counter() - began
    curvature = np.linalg.norm(found.sol(np.linspace(0, 1, 2001))[6:9], axis=0)
    energy = np.trapezoid(curvature**2, dx=1 / 2000) / 2
    return {
        "id": case["id"],
        "seconds": seconds,
        "solved": bool(found.success),
        "energy": energy if np.isfinite(energy) else None,
    }


print(json.dumps([solve(case) for case in json.load(sys.stdin)]))
