#!/usr/bin/python3
"""Bands through flight and after landing with everything unknown at once, by NumPy: arrays over all draws, day by day.

Day by day the rows of draws stay in the processor's cache: on this shape that took less time than whole matrices of days
and draws.
"""
from timed_reference import answer, read_request, timed

import numpy
from scipy import stats


def course(day):
    return (1 - numpy.exp(-day / 7)) - 0.5 * (1 - numpy.exp(-day / 120))


def slices_of(request):
    """Level, amplitude, triangle of their covariance and weight, for slices of equal probability of the adherence."""
    count, training, quantity = request["slices"], request["training"], request["quantity"]
    posterior = stats.beta(8 + training["done"], 2 + training["missed"])
    dose = training["planned"] / training["reference"] * posterior.ppf((numpy.arange(count) + 0.5) / count)
    short = numpy.maximum(0, 1 - dose)
    grown = 1 + quantity["doseSlope"] * short
    level = numpy.full(count, numpy.log(request["pre"]["value"]))
    amplitude = quantity["amplitude"] * grown
    p11 = numpy.full(count, request["pre"]["sd"] ** 2)
    p12 = numpy.zeros(count)
    p22 = (quantity["amplitudeSd"] * grown) ** 2 + (quantity["amplitude"] * quantity["doseSlopeSd"] * short) ** 2
    likelihood = numpy.zeros(count)
    for test in request["tests"]:
        g = course(test["day"])
        to_level, to_amplitude = p11 - g * p12, p12 - g * p22
        spread = to_level - g * to_amplitude + test["sd"] ** 2 + quantity["driftPerDay"] * test["day"]
        surprise = numpy.log(test["value"]) - level + g * amplitude
        likelihood += stats.norm.logpdf(surprise, 0, numpy.sqrt(spread))
        level = level + to_level / spread * surprise
        amplitude = amplitude + to_amplitude / spread * surprise
        p11, p12, p22 = p11 - to_level**2 / spread, p12 - to_level * to_amplitude / spread, p22 - to_amplitude**2 / spread
    weights = numpy.exp(likelihood - likelihood.max())
    first = numpy.sqrt(p11)
    return level, amplitude, first, p12 / first, numpy.sqrt(p22 - p12**2 / p11), weights / weights.sum()


def project(request):
    draws, quantity = request["draws"], request["quantity"]
    chance = numpy.random.default_rng(request["seed"])
    levels, amplitudes, first, cross, second, weights = slices_of(request)
    place = chance.choice(len(weights), draws, p=weights)
    one, other = chance.standard_normal(draws), chance.standard_normal(draws)
    level = levels[place] + first[place] * one
    amplitude = amplitudes[place] + cross[place] * one + second[place] * other
    landing = chance.integers(request["earliest"], request["latest"] + 1, draws)
    recovery = numpy.log(2) / (quantity["halfLife"] * numpy.exp(quantity["halfLifeLogSd"] * chance.standard_normal(draws)))
    at_landing = amplitude * course(landing)
    drift, normal, deficit = numpy.zeros(draws), numpy.empty(draws), numpy.zeros(draws)
    lowest = numpy.full(draws, numpy.inf)
    step = numpy.sqrt(quantity["driftPerDay"])
    rows = []
    for day in range(1, request["days"] + 1):
        if day <= request["earliest"]:
            chance.standard_normal(out=normal)
            normal *= step
            drift += normal
            value = level - amplitude * course(day) - drift
        else:
            flying = landing >= day
            if day <= request["latest"]:
                chance.standard_normal(out=normal)
                drift += numpy.where(flying, step * normal, 0)
            deficit = numpy.where(flying, amplitude * course(day), at_landing) + drift
            value = level - numpy.where(flying, deficit, deficit * numpy.exp(-recovery * (day - landing)))
        numpy.minimum(lowest, value, out=lowest)
        rows.append(numpy.quantile(value, request["levels"], overwrite_input=True))
    return numpy.exp(numpy.array(rows)), numpy.exp(numpy.quantile(lowest, request["levels"]))


def main():
    request = read_request()
    (rows, lowest), times = timed(lambda: project(request), request["runs"], 1)
    answer({"NumPy": times}, {"rows": rows.tolist(), "lowest": lowest.tolist()})


main()
