"""Weibull and Kaplan-Meier of one history by lifelines, for comparison.

Reads {time: [...], failed: [...], entered: [...], at: [...]} on standard input; writes {shape, scale, log_likelihood,
survival, seconds} on standard output: the part in service at each time of `at`, and how long both fits took, bounds
included. Needs lifelines.
"""

import json
import sys
import time

import numpy as np
from lifelines import KaplanMeierFitter, WeibullFitter

asked = json.load(sys.stdin)
times, failed, entered = (np.array(asked[key]) for key in ("time", "failed", "entered"))

began = time.perf_counter()
weibull = WeibullFitter().fit(times, failed, entry=entered)
curve = KaplanMeierFitter().fit(times, failed, entry=entered)
seconds = time.perf_counter() - began

json.dump(
    {
        "shape": float(weibull.rho_),
        "scale": float(weibull.lambda_),
        "log_likelihood": float(weibull.log_likelihood_),
        "survival": [float(curve.predict(at)) for at in asked["at"]],
        "seconds": seconds,
    },
    sys.stdout,
)
