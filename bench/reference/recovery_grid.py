#!/usr/bin/python3
"""What tests say of a recovery, on a grid of losses and time constants, by NumPy: whole arrays, no loop over the grid."""
from timed_reference import answer, read_request, timed

import numpy

LOSSES = 1 + 0.5 * numpy.arange(79)
STEPS = (numpy.arange(61) - 30) / 10


def quantiles(weight, values, shares):
    """The first value in order at which the belief so far reaches a share; equal values count together."""
    order = numpy.argsort(values, kind="stable")
    ordered = values[order]
    sums = numpy.cumsum(weight[order])
    last_of_equal = numpy.searchsorted(ordered, ordered, side="right") - 1
    place = numpy.minimum(numpy.searchsorted(sums[last_of_equal], shares), len(values) - 1)
    return ordered[place]


def forecast(request):
    prior, sigma, level = request["prior"], request["sigma"], request["level"]
    day = numpy.array([test["day"] for test in request["tests"]])
    found = numpy.clip([test["level"] for test in request["tests"]], 50, 130)
    tau = prior["timeConstant"] * numpy.exp(prior["logSd"] * STEPS)
    decay = numpy.exp(-day[None, :] / tau[:, None])
    residual = (found[None, None, :] - (100 - LOSSES[None, :, None] * decay[:, None, :])) / sigma
    logarithm = -0.5 * numpy.sum(residual**2, axis=2) - 0.5 * STEPS[:, None] ** 2
    weight = numpy.exp(logarithm - logarithm.max())
    weight = (weight / weight.sum()).ravel()
    loss, constant = numpy.tile(LOSSES, len(STEPS)), numpy.repeat(tau, len(LOSSES))
    shares = [0.1, 0.5, 0.9]
    newest = max(request["tests"], key=lambda test: test["day"])
    expected = weight @ (100 - loss * numpy.exp(-newest["day"] / constant))
    rows = [weight @ loss, weight @ constant, (numpy.clip(newest["level"], 50, 130) - expected) / sigma]
    for on in request["on"]:
        values = 100 - loss * numpy.exp(-on / constant)
        rows.extend([*quantiles(weight, values, shares), weight[values >= level].sum()])
    missing = 100 - level
    time = numpy.where(loss > missing, constant * numpy.log(loss / missing), 0)
    rows.extend(quantiles(weight, time, shares))
    return [float(value) for value in rows]


def main():
    request = read_request()
    rows, times = timed(lambda: forecast(request), request["runs"], request["runs"] // 4)
    answer({"NumPy": times}, rows)


main()
