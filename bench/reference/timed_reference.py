"""What every reference script shares: the request on standard input, its own clock, the answer on standard output."""
import json
import platform
import sys
import time

try:
    import numpy
    import scipy
except ImportError as missing:
    sys.exit(f"This comparison needs SciPy and NumPy for Python; {missing.name} is not installed. Nothing was compared.")


def read_request():
    return json.load(sys.stdin)


def timed(work, runs, warm_up=3):
    """The last result and the milliseconds of each counted run."""
    times = []
    for run in range(-warm_up, runs):
        started = time.perf_counter()
        result = work()
        taken = 1000 * (time.perf_counter() - started)
        if run >= 0:
            times.append(taken)
    return result, times


def answer(times, result):
    versions = f"NumPy {numpy.__version__}, SciPy {scipy.__version__}, Python {platform.python_version()}"
    json.dump({"versions": versions, "times": times, "result": result}, sys.stdout)
