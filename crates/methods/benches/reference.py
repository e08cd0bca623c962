"""The library side of the benchmark `maths`: the same questions, put to Python's scientific stack.

Reads one JSON request a line ({"row", "dir", ...}), runs that row on the arrays in `dir` and answers with one JSON
line: wall and processor milliseconds (the least of several runs), what was found, and a note where a time is scaled.
Reading files and turning them into the form a library wants is not timed.
"""

import json
import math
import os
import sys
import time
import warnings
from importlib import metadata
from pathlib import Path

import choix
import lifelines
import lifelines.statistics
import numpy as np
import ruptures
import scipy.optimize
import scipy.special
import scipy.stats

TYPES = {"f8": np.float64, "u1": np.uint8, "i8": np.int64}


def read(folder, name):
    """The array `name`, whatever its type."""
    for ending, dtype in TYPES.items():
        path = Path(folder) / f"{name}.{ending}"
        if path.exists():
            return np.fromfile(path, dtype=dtype)
    raise FileNotFoundError(f"{folder}/{name}")


# Most runs of each row; one for a quick look.
RUNS = int(os.environ.get("RUNS") or 200)


def timed(run, budget=2.0, most=RUNS):
    """Runs once at least, and again while the processor budget lasts: least wall and processor ms, last answer."""
    wall = cpu = math.inf
    spent = runs = 0
    while runs == 0 or (spent < budget and runs < most):
        begin, before = time.perf_counter(), time.process_time()
        answer = run()
        used = time.process_time() - before
        wall, cpu = min(wall, time.perf_counter() - begin), min(cpu, used)
        spent, runs = spent + used, runs + 1
    return {"wall_ms": wall * 1e3, "cpu_ms": cpu * 1e3}, answer


# Permutation within sessions ------------------------------------------------------------------------------------


def chance(sizes, words_in, outcomes_in):
    """Mean and variance of each cell, summed over sessions.

    `sizes`: units a session. `words_in`: presses by word of each unit, as sum and sum of squares by session.
    `outcomes_in`: units by session and outcome.
    """
    total, squares = words_in
    m, t, c = sizes[:, None, None], total[:, :, None], outcomes_in[:, None, :]
    mean = (t * c / m).sum(axis=0)
    each = (squares[:, :, None] - t * t / m) * c * (m - c) / (m * np.maximum(m - 1, 1))
    return mean, each.sum(axis=0)


def p_values(seen, tables, mean, variance):
    """Of each word, then of all together: share of rearrangements at least as extreme, the data counted in."""
    weight = np.divide(1.0, variance, out=np.zeros_like(variance), where=variance > 1e-9)

    def statistics(table):
        by_word = ((table - mean) ** 2 * weight).sum(axis=-1)
        return np.concatenate([by_word, by_word.sum(axis=-1, keepdims=True)], axis=-1)

    limit = statistics(seen)
    limit = limit - 1e-9 * (1 + limit)
    exceeded = (statistics(tables) >= limit).sum(axis=0)
    return {"exceeded": exceeded.tolist(), "drawn": len(tables), "seen": seen.tolist(), "mean": mean.tolist()}


def load_presses(request):
    words, outcomes = read(request["dir"], "words"), read(request["dir"], "outcomes")
    return words, outcomes, request["session"], int(words.max()) + 1, int(outcomes.max()) + 1


def by_press(request):
    """Presses: mean and variance, and the margins of each session."""
    words, outcomes, length, nw, no = load_presses(request)
    session = np.arange(len(words)) // length
    sessions = int(session[-1]) + 1
    wc = np.bincount(session * nw + words, minlength=sessions * nw).reshape(sessions, nw)
    oc = np.bincount(session * no + outcomes, minlength=sessions * no).reshape(sessions, no)
    seen = np.bincount(words.astype(np.intp) * no + outcomes, minlength=nw * no).reshape(nw, no)
    mean, variance = chance(wc.sum(axis=1).astype(float), (wc, wc), oc)
    return words, outcomes, length, nw, no, wc, oc, seen, mean, variance


def scaled(request, prepare, draw, judge, drawn):
    """Times the preparation and `drawn` rearrangements; the latter is scaled to the number asked for."""
    once, prepared = timed(lambda: prepare(request), budget=0.5)
    each, tables = timed(lambda: draw(prepared, drawn), budget=0.1)
    judged, found = timed(lambda: judge(prepared, tables), budget=0.1)
    factor = request["draws"] / drawn
    total = {key: once[key] + factor * (each[key] + judged[key]) for key in once}
    return {**total, "answer": found, "note": f"{drawn} drawn, scaled"}


def permuted(request):
    """`Generator.permuted` along the presses of each session, then one count of all presses."""

    def draw(prepared, drawn):
        words, outcomes, length, nw, no, *_ = prepared
        rng = np.random.default_rng(1)
        rows = (words.astype(np.intp) * no).reshape(-1, length)
        grid = outcomes.reshape(-1, length)
        tables = np.empty((drawn, nw, no), dtype=np.int64)
        for i in range(drawn):
            cells = rows + rng.permuted(grid, axis=1)
            tables[i] = np.bincount(cells.ravel(), minlength=nw * no).reshape(nw, no)
        return tables

    return scaled(request, by_press, draw, lambda p, t: p_values(p[7], t, p[8], p[9]), 400)


def random_table(request):
    """`scipy.stats.random_table`: tables with the margins of each session, all draws of a session at once."""

    def draw(prepared, drawn):
        *_, nw, no, wc, oc, _, _, _ = prepared
        rng = np.random.default_rng(1)
        tables = np.zeros((drawn, nw, no))
        for rows, columns in zip(wc, oc):
            tables += scipy.stats.random_table.rvs(rows, columns, size=drawn, random_state=rng)
        return tables

    return scaled(request, by_press, draw, lambda p, t: p_values(p[7], t, p[8], p[9]), 1000)


def episodes(request):
    """Situations change places between episodes of a session: one sort of random keys, then one product of tables.

    An episode brings its presses less the share of its length; the statistic is studentised by the squares of that.
    """

    def prepare(request):
        words, outcomes, length, nw, no = load_presses(request)
        session = np.arange(len(words)) // length
        starts = np.flatnonzero((np.diff(session, prepend=-1) != 0) | (np.diff(outcomes.astype(int), prepend=-1) != 0))
        lengths = np.diff(starts, append=len(words))
        of, situation = session[starts], outcomes[starts].astype(np.intp)
        sessions = int(session[-1]) + 1
        counts = np.zeros((len(starts), nw))
        np.add.at(counts, (np.repeat(np.arange(len(starts)), lengths), words), 1)
        total = np.zeros((sessions, nw))
        np.add.at(total, of, counts)
        size = total.sum(axis=1)
        excess = counts - total[of] * (lengths / size[of])[:, None]
        oc = np.bincount(session * no + outcomes, minlength=sessions * no).reshape(sessions, no)
        seen = np.bincount(words.astype(np.intp) * no + outcomes, minlength=nw * no).reshape(nw, no)
        mean = (total[:, :, None] * oc[:, None, :] / size[:, None, None]).sum(axis=0)
        return excess, situation, of, seen, mean, no

    def statistics(excess, squares, labels, no):
        chosen = np.eye(no)[labels]
        q = squares.T @ chosen
        by_word = np.divide((excess.T @ chosen) ** 2, q, out=np.zeros_like(q), where=q > 1e-9).sum(axis=1)
        return np.append(by_word, by_word.sum())

    def draw(prepared, drawn):
        excess, situation, of, *_, no = prepared
        rng, squares = np.random.default_rng(1), excess**2
        labels = (situation[np.argsort(of + rng.random(len(of)))] for _ in range(drawn))
        return np.array([statistics(excess, squares, here, no) for here in labels])

    def judge(prepared, tables):
        excess, situation, _, seen, mean, no = prepared
        limit = statistics(excess, excess**2, situation, no)
        exceeded = (tables >= limit - 1e-9 * (1 + limit)).sum(axis=0)
        return {"exceeded": exceeded.tolist(), "drawn": len(tables), "seen": seen.tolist(), "mean": mean.tolist()}

    return scaled(request, prepare, draw, judge, 400)


# Likes ----------------------------------------------------------------------------------------------------------


def wins(request):
    return read(request["dir"], "wins").reshape(request["items"], request["items"])


def choix_pairs(request):
    """`choix.opt_pairwise`: strengths only, no standard errors."""
    table = wins(request).astype(int)
    data = [(int(i), int(j)) for i, j in np.argwhere(table) for _ in range(table[i, j])]
    time, found = timed(lambda: choix.opt_pairwise(len(table), data, alpha=request["alpha"]))
    return {**time, "answer": {"values": found.tolist()}}


def newton_pairs(request):
    """Newton's method on the table of wins, vectorised, with standard errors of strengths about their mean."""
    table, alpha = wins(request), request["alpha"]

    def fit():
        n, both, won = len(table), table + table.T, table.sum(axis=1)
        theta = np.zeros(n)
        for _ in range(50):
            share = scipy.special.expit(theta[:, None] - theta[None, :])
            gradient = won - (both * share).sum(axis=1) - 2 * alpha * theta
            weight = both * share * (1 - share)
            information = np.diag(weight.sum(axis=1) + 2 * alpha) - weight
            step = np.linalg.solve(information, gradient)
            theta = theta + step
            if np.abs(step).max() < 1e-10:
                break
        covariance = np.linalg.inv(information)
        covariance = covariance - covariance.mean(axis=0)
        covariance = covariance - covariance.mean(axis=1)[:, None]
        return theta - theta.mean(), np.sqrt(np.diag(covariance))

    time, (values, errors) = timed(fit)
    return {**time, "answer": {"values": values.tolist(), "errors": errors.tolist()}}


# Change points --------------------------------------------------------------------------------------------------


def numpy_pelt(request):
    """PELT with a Poisson cost; the costs of all candidates at once."""
    counts, penalty = read(request["dir"], "counts"), request["penalty"]

    def pelt():
        n = len(counts)
        sums = np.concatenate([[0.0], np.cumsum(counts)])
        best = np.zeros(n + 1)
        best[0] = -penalty
        previous = np.zeros(n + 1, dtype=np.intp)
        starts = np.zeros(1, dtype=np.intp)
        for end in range(1, n + 1):
            events, time = sums[end] - sums[starts], end - starts
            # xlogy is 0 where there were no events.
            total = best[starts] + 2 * (events - scipy.special.xlogy(events, events / time))
            at = total.argmin()
            best[end], previous[end] = total[at] + penalty, starts[at]
            starts = np.append(starts[total <= best[end]], end)
        cuts, end = [], n
        while previous[end] > 0:
            end = previous[end]
            cuts.append(int(end))
        return cuts[::-1], best[n]

    time, (cuts, objective) = timed(pelt, budget=1.0)
    return {**time, "answer": {"cuts": cuts, "objective": float(objective)}}


class PoissonCost(ruptures.base.BaseCost):
    """The same cost for `ruptures`, which brings none of its own for counts."""

    model, min_size = "poisson", 1

    def fit(self, signal):
        self.signal = signal.reshape(-1, 1)
        self.sums = [0.0, *np.cumsum(signal).tolist()]
        return self

    def error(self, start, end):
        events = self.sums[end] - self.sums[start]
        return 2 * (events - events * math.log(events / (end - start))) if events > 0 else 0.0


def ruptures_pelt(request):
    """`ruptures.Pelt` with every step allowed as a change."""
    counts = read(request["dir"], "counts")
    pelt = ruptures.Pelt(custom_cost=PoissonCost(), min_size=1, jump=1)
    time, ends = timed(lambda: pelt.fit_predict(counts, request["penalty"]), budget=1.0)
    cost, begins = PoissonCost().fit(counts), [0, *ends[:-1]]
    objective = sum(cost.error(b, e) for b, e in zip(begins, ends)) + request["penalty"] * (len(ends) - 1)
    return {**time, "answer": {"cuts": ends[:-1], "objective": objective}}


# Waiting times --------------------------------------------------------------------------------------------------


def waits(request):
    return read(request["dir"], "times"), read(request["dir"], "events").astype(bool)


def curve(request, time, times, survival, low, high):
    for name, values in [("at", times), ("survival", survival), ("low", low), ("high", high)]:
        np.asarray(values, dtype=np.float64).tofile(Path(request["dir"]) / f"{name}.out")
    return {**time, "answer": {}}


def lifelines_curve(request):
    """`KaplanMeierFitter.fit`, which makes the interval too."""
    times, events = waits(request)
    time, fit = timed(lambda: lifelines.KaplanMeierFitter().fit(times, events))
    interval = fit.confidence_interval_.to_numpy()
    survival = fit.survival_function_.iloc[:, 0]
    return curve(request, time, survival.index, survival, interval[:, 0], interval[:, 1])


def scipy_curve(request):
    """`scipy.stats.ecdf` of censored data, with its interval on the log-log scale."""
    times, events = waits(request)
    ended, still = times[events], times[~events]

    def fit():
        found = scipy.stats.ecdf(scipy.stats.CensoredData(uncensored=ended, right=still)).sf
        return found, found.confidence_interval(method="log-log")

    time, (found, interval) = timed(fit)
    ends = interval.low.probabilities, interval.high.probabilities
    return curve(request, time, found.quantiles, found.probabilities, *ends)


# Layout ---------------------------------------------------------------------------------------------------------


def assignment(request):
    """`scipy.optimize.quadratic_assignment`; the cheapest of `starts` runs (the first from SciPy's own start)."""
    n = request["places"]
    flow, distance = (read(request["dir"], name).reshape(n, n) for name in ["flow", "distance"])
    ours = np.asarray(request["placing"])

    def run():
        rng, best = np.random.default_rng(1), None
        for start in range(request["starts"]):
            options = {"rng": rng} if start == 0 else {"rng": rng, "P0": "randomized"}
            if request["method"] == "2opt":
                options.pop("P0", None)
            found = scipy.optimize.quadratic_assignment(flow, distance, method=request["method"], options=options)
            if best is None or found.fun < best.fun:
                best = found
        return best

    time, best = timed(run, budget=1.0)
    cost = (flow * distance[np.ix_(ours, ours)]).sum()
    return {**time, "answer": {"cost": float(best.fun), "placing": best.col_ind.tolist(), "ours": float(cost)}}


ROWS = {
    run.__name__: run
    for run in [permuted, random_table, episodes, choix_pairs, newton_pairs, numpy_pelt, ruptures_pelt]
    + [lifelines_curve, scipy_curve, assignment]
}


def main():
    names = ["numpy", "scipy", "choix", "lifelines", "ruptures", "pandas"]
    versions = ", ".join(f"{name} {metadata.version(name)}" for name in names)
    print(json.dumps({"versions": f"Python {sys.version.split()[0]}, {versions}"}), flush=True)
    # A warning about 0 / 0 at a survival of 0 is expected; errors are not caught.
    warnings.simplefilter("ignore")
    for line in sys.stdin:
        request = json.loads(line)
        print(json.dumps(ROWS[request["row"]](request)), flush=True)


if __name__ == "__main__":
    main()
