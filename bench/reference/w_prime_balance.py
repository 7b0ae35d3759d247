#!/usr/bin/python3
"""Balance of the store above critical power, second by second: without a loop where NumPy and SciPy can do without one."""
from timed_reference import answer, read_request, timed

import numpy
from scipy.signal import lfilter


def by_distance(power, critical, capacity):
    """The deficit fades by exp(-D / W0) below and grows above: a sum of what was spent, each part with its own fading."""
    spent = numpy.maximum(power - critical, 0)
    kept = numpy.exp(-numpy.cumsum(numpy.maximum(critical - power, 0)) / capacity)
    return capacity - kept * numpy.cumsum(spent / kept)


def by_distance_loop(power, critical, capacity):
    """The same as it is printed, one second after another."""
    balance, after = capacity, numpy.empty(len(power))
    for second, watts in enumerate(power.tolist()):
        if watts >= critical:
            balance -= watts - critical
        else:
            balance = capacity - (capacity - balance) * numpy.exp(-(critical - watts) / capacity)
        after[second] = balance
    return after


def by_integral(power, critical, capacity):
    """One time constant for the whole record: a linear filter."""
    below = power[power < critical]
    tau = 546 * numpy.exp(-0.01 * numpy.mean(critical - below)) + 316
    fade = numpy.exp(-1 / tau)
    return capacity - lfilter([tau * (1 - fade)], [1, -fade], numpy.maximum(power - critical, 0))


def main():
    request = read_request()
    power = numpy.array(request["power"])
    given = (power, request["criticalPower"], request["capacity"])
    distance, distance_times = timed(lambda: by_distance(*given), request["runs"], request["runs"] // 4)
    loop, loop_times = timed(lambda: by_distance_loop(*given), 9, 1)
    integral, integral_times = timed(lambda: by_integral(*given), request["runs"], request["runs"] // 4)
    answer(
        {"distance": distance_times, "loop": loop_times, "integral": integral_times},
        {"distance": distance.tolist(), "loop": loop.tolist(), "integral": integral.tolist()},
    )


main()
