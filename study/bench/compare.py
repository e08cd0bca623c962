"""The five questions asked of the same tables by `study` and, as referees, by DuckDB and Spark in SQL: answers must be equal.

    python3 bench/compare.py STUDY DIR [--threads 2] [--referees duckdb spark]

STUDY is the binary, DIR a folder it wrote. Each answer is a process of its own, start of the engine included. Ends with an error where
an answer differs.
"""

import argparse
import csv
import io
import json
import math
import os
import platform
import sys
from importlib.metadata import version
from pathlib import Path

import watch
from questions import QUESTIONS

CLOSE = 1e-9
PACKAGE = {"duckdb": "duckdb", "spark": "pyspark"}
CALLED = {"duckdb": "DuckDB", "spark": "Spark"}


def ours(binary, folder, question, threads, more=(), **watched):
    """Rows, seconds, seconds of processor, bytes at the most."""
    asked = [binary, "ask", question, str(folder), "--threads", str(threads), "--csv", *more]
    text, *took = watch.run(asked, **watched)
    cells = csv.DictReader(io.StringIO(text))
    return [{name: value or None for name, value in row.items()} for row in cells], *took


def theirs(engine, folder, question, threads, more=(), **watched):
    """The same of a referee."""
    referee = Path(__file__).with_name("referee.py")
    asked = [sys.executable, str(referee), engine, str(folder), question, "--threads", str(threads), *more]
    text, *took = watch.run(asked, **watched)
    # An engine may say things of its own.
    return [json.loads(line) for line in text.splitlines() if line.startswith("{")], *took


def same(mine, other):
    if mine is None or other is None:
        return mine is other
    try:
        return math.isclose(float(mine), float(other), rel_tol=CLOSE, abs_tol=CLOSE)
    except ValueError:
        return mine == str(other)


def differing(question, mine, other, of):
    """How many values were compared; how many differ, each told on standard error."""
    wrong = compared = 0
    if len(mine) != len(other):
        wrong += 1
        print(f"{question}: {len(mine)} rows, {of} has {len(other)}", file=sys.stderr)
    for row, reference in zip(mine, other):
        for name, value in reference.items():
            compared += 1
            if not same(row[name], value):
                wrong += 1
                print(f"{question}: {name} is {row[name]}, in {of} {value}, of {row}", file=sys.stderr)
    return compared, wrong


def machine(folder):
    """What the figures are of."""
    manifest = json.loads((folder / "manifest.json").read_text())
    events = sum(bucket["events"] for bucket in manifest["whole"])
    load = ", ".join(f"{x:.1f}" for x in os.getloadavg())
    return f"{manifest['of']}: {events} events; {os.cpu_count()} processors, {platform.machine()}, load before {load}"


def took(wall, busy, peak):
    return f"{wall:.2f} | {busy:.2f} | {peak / 2**20:.0f}"


def main():
    read = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    read.add_argument("study")
    read.add_argument("dir", type=Path)
    read.add_argument("--threads", type=int, default=2)
    read.add_argument("--questions", nargs="*", default=list(QUESTIONS))
    read.add_argument("--referees", nargs="*", choices=list(CALLED), default=list(CALLED))
    asked = read.parse_args()
    versions = ", ".join(f"{CALLED[engine]} {version(PACKAGE[engine])}" for engine in asked.referees)
    print(f"{machine(asked.dir)}; {asked.threads} threads; {versions}\n")
    columns = ["s", "of processor", "MiB at most"]
    heads = ["study"] + [CALLED[engine] for engine in asked.referees]
    print("| question | rows | values compared | " + " | ".join(f"{head}: {' | '.join(columns)}" for head in heads) + " |")
    print("| --- " * (3 + 3 * len(heads)) + "|")
    wrong, sums = 0, dict.fromkeys(heads, 0.0)
    for question in asked.questions:
        mine, *mine_took = ours(asked.study, asked.dir, question, asked.threads)
        sums["study"] += mine_took[1]
        cells, values = [took(*mine_took)], []
        for engine in asked.referees:
            other, *other_took = theirs(engine, asked.dir, question, asked.threads)
            sums[CALLED[engine]] += other_took[1]
            cells.append(took(*other_took))
            compared, differs = differing(question, mine, other, CALLED[engine])
            wrong += differs
            values.append(compared)
        print(f"| {question} | {len(mine)} | {' and '.join(map(str, values))} | {' | '.join(cells)} |", flush=True)
    if asked.referees:
        cells = ["–"] + [took(*theirs(engine, asked.dir, "none", asked.threads)[1:]) for engine in asked.referees]
        print(f"| starting alone | | | – | – | {' | '.join(cells)} |")
    print(f"\nProcessor in all: {', '.join(f'{head} {busy:.1f} s' for head, busy in sums.items())}. {wrong} values differ.")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
