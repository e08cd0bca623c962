"""The five questions asked of the same tables by `study` and, as a reference, by DuckDB in SQL of its own: answers must be equal.

    python3 bench/compare.py STUDY DIR [--threads 2]

STUDY is the binary, DIR a folder it wrote. Ends with an error where an answer differs.
"""

import argparse
import csv
import io
import json
import math
import os
import platform
import subprocess
import sys
import time
from importlib.metadata import version
from pathlib import Path

CLOSE = 1e-9


def waits(source, by, time_, event, name):
    """Kaplan-Meier in SQL: quantiles of `time_` of the rows of `source`, by the columns `by`."""
    g = ", ".join(by)
    return f"""
    {name}_t as (select {g}, {time_} as t, sum({event}::int) d, count(*) c from {source} group by {g}, t),
    {name}_r as (select *, sum(c) over (partition by {g} order by t desc) r from {name}_t),
    {name}_s as (select *, exp(sum(case when d = r then -1e9 else ln(1 - d / r) end)
                 over (partition by {g} order by t)) s from {name}_r),
    {name} as (select {g}, sum(c)::bigint n, sum(d)::bigint events,
        min(t) filter (s <= 0.75 + 1e-12) as quarter, min(t) filter (s <= 0.5 + 1e-12) as half,
        min(t) filter (s <= 0.25 + 1e-12) as three_quarters, min(t) filter (s <= 0.1 + 1e-12) as nine_tenths
        from {name}_s group by {g})"""


def first_press():
    own = "((kind = 'press' and pressed_by = 'animal') or (kind = 'invitation' and outcome = 'right'))"
    by = ["species", "age_band", "word_kind"]
    return f"""
    with e as (select * from events where word is not null and kind in ('showing', 'press', 'invitation')),
    f as (select household, animal, word, any_value(word_kind) word_kind, min(at_s) filter (kind = 'showing') begin_s,
          min(at_s) filter ({own}) first_s from e group by all),
    x as (select e.household, e.animal, e.word, count(*) n from e join f using (household, animal, word)
          where e.kind = 'showing' and (f.first_s is null or e.at_s < f.first_s) group by all),
    w as (select species, age_band, f.word_kind, household, coalesce(x.n, 0)::double exposures,
          greatest((coalesce(first_s, until_s) - begin_s)::double, 0) / 86400 as days, first_s is not null as pressed
          from f left join x using (household, animal, word) join animals a using (household, animal)
          where begin_s is not null),
    {waits("w", by, "exposures", "pressed", "k")}, {waits("w", by, "days", "pressed", "l")},
    h as (select species, age_band, word_kind, count(distinct household) households from w group by all)
    select species, age_band, word_kind, households, k.n words, k.events pressed, k.quarter showings_quarter,
        k.half showings_half, k.three_quarters showings_three_quarters, l.half days_half
    from h join k using (species, age_band, word_kind) join l using (species, age_band, word_kind)
    order by 1, 2, 3"""


def hours():
    return """
    with p as (select household, animal, hour, count(*) n from events where kind = 'press' and pressed_by = 'animal' group by all),
    t as (select household, animal, sum(n) total from p group by all),
    c as (select household, animal, hour::utinyint as hour, total from t cross join range(24) r(hour)),
    s as (select species, c.hour, c.household, coalesce(n, 0) as n, coalesce(n, 0) / total as share
          from c left join p using (household, animal, hour) join animals using (household, animal))
    select species, hour, count(distinct household) households, count(*) animals, sum(n)::bigint as presses, avg(share) as share
    from s group by all order by 1, 2"""


def sessions():
    by = ["species", "age_band"]
    return f"""
    with s as (select household, animal, count(*) sessions, sum(joined::int) joined, count(tenths) timed, sum(tenths) tenths
               from events where kind = 'session' group by all),
    a as (select species, age_band, household, sessions, joined, joined / sessions as share,
          case when timed > 0 then tenths / timed / 600 end as minutes, true as over
          from s join animals using (household, animal)),
    m as (select * from a where minutes is not null),
    {waits("m", by, "minutes", "over", "k")},
    g as (select species, age_band, count(distinct household) households, count(share) animals,
          sum(sessions)::bigint sessions, sum(joined)::bigint joined, avg(share) as share from a group by all)
    select species, age_band, households, animals, sessions, joined, share, quarter minutes_quarter, half minutes_half,
        three_quarters minutes_three_quarters
    from g left join k using (species, age_band) order by 1, 2"""


def stuck():
    by = ["species", "stage"]
    number = "list_position(['prepare', 'show', 'invite', 'converse'], outcome::varchar)"
    return f"""
    with e as (select household, animal, word, at_s, max({number}) as stage from events
               where kind = 'stage' and word is not null group by all),
    c as (select *, lag(stage) over w as before from e window w as (partition by household, animal, word order by at_s)),
    b as (select *, lead(at_s) over w as end_s from c where before is distinct from stage
          window w as (partition by household, animal, word order by at_s)),
    w as (select species, ['prepare', 'show', 'invite', 'converse'][stage] as stage, household,
          greatest((coalesce(end_s, until_s) - at_s)::double, 0) / 86400 as days, end_s is not null as over
          from b join animals using (household, animal) where stage < 4),
    {waits("w", by, "days", "over", "k")},
    h as (select species, stage, count(distinct household) households from w group by all),
    l as (select species, stage, case when any_value(nine_tenths) is not null
          then count(*) filter (not over and days > nine_tenths) end longer
          from w join k using (species, stage) group by all)
    select species, stage, households, n words, events moved, half days_half, nine_tenths days_nine_tenths, longer
    from k join h using (species, stage) join l using (species, stage) order by 1, 2"""


def curve():
    return """
    with e as (select household, animal, word, at_s, kind, outcome, coalesce(joined, false) wanted,
               coalesce(outcome in ('right', 'wrong'), false) pressed, coalesce(outcome = 'right', false) good
               from events where word is not null and kind in ('showing', 'invitation')),
    n as (select *, count(*) filter (kind = 'showing') over (partition by household, animal, word order by at_s
          range between unbounded preceding and 1 preceding) shown from e),
    i as (select *, case when shown < 10 then 0 else 10 * pow(2, floor(log2(shown / 10)))::int end stretch
          from n where kind = 'invitation' and (wanted or pressed)),
    a as (select species, household, animal, least(stretch, 640) shown_from, sum(wanted::int) wanted,
          sum((wanted and pressed)::int) pressed, sum(pressed::int) presses, sum(good::int) good
          from i join animals using (household, animal) group by all)
    select species, shown_from, count(distinct household) households, sum(wanted)::bigint wanted,
        sum(pressed)::bigint pressed, avg(case when wanted > 0 then pressed / wanted end) pressed_share,
        sum(presses)::bigint presses, sum(good)::bigint "right", avg(case when presses > 0 then good / presses end) right_share
    from a group by all order by 1, 2"""


QUESTIONS = {"first-press": first_press, "hours": hours, "sessions": sessions, "stuck": stuck, "curve": curve}


def ours(binary, folder, question, threads):
    """Rows, seconds, seconds of processor, bytes at the most."""
    begin = time.perf_counter()
    asked = [binary, "ask", question, str(folder), "--threads", str(threads), "--csv"]
    run = subprocess.Popen(asked, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)
    text = run.stdout.read()
    _, status, used = os.wait4(run.pid, 0)
    seconds = time.perf_counter() - begin
    if status:
        sys.exit(f"{question}: {binary} ended with {status}")
    return list(csv.DictReader(io.StringIO(text))), seconds, used.ru_utime + used.ru_stime, used.ru_maxrss * 1024


def theirs(folder, question, threads):
    """Rows, seconds, seconds of processor."""
    import duckdb

    db = duckdb.connect()
    db.execute(f"set threads = {threads}")
    for table in ("events", "animals"):
        db.execute(f"create view {table} as select * from read_parquet('{folder}/{table}/*.parquet')")
    wall, busy = time.perf_counter(), time.process_time()
    rows = db.execute(QUESTIONS[question]())
    names = [column[0] for column in rows.description]
    answer = [dict(zip(names, row)) for row in rows.fetchall()]
    return answer, time.perf_counter() - wall, time.process_time() - busy


def same(mine, other):
    if mine == "" or other is None:
        return mine == "" and other is None
    try:
        return math.isclose(float(mine), float(other), rel_tol=CLOSE, abs_tol=CLOSE)
    except ValueError:
        return mine == str(other)


def main():
    read = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    read.add_argument("study")
    read.add_argument("dir", type=Path)
    read.add_argument("--threads", type=int, default=2)
    read.add_argument("--questions", nargs="*", default=list(QUESTIONS))
    asked = read.parse_args()
    manifest = json.loads((asked.dir / "manifest.json").read_text())
    events = sum(bucket["events"] for bucket in manifest["whole"])
    print(f"{manifest['of']}: {events} events, {asked.threads} threads, DuckDB {version('duckdb')},")
    print(f"load of the machine before: {', '.join(f'{x:.1f}' for x in os.getloadavg())}; {os.cpu_count()} processors, "
          f"{platform.machine()}\n")
    print("| question | rows | values compared | study: s | of processor | MiB at most | DuckDB: s | of processor |")
    print("| --- | --- | --- | --- | --- | --- | --- | --- |")
    wrong, sums = 0, [0.0, 0.0]
    # First all of ours: a child is charged with what its parent held when it was made, and DuckDB would make that much.
    answers = {question: ours(asked.study, asked.dir, question, asked.threads) for question in asked.questions}
    for question, (mine, wall, busy, peak) in answers.items():
        other, their_wall, their_busy = theirs(asked.dir, question, asked.threads)
        compared = 0
        if len(mine) != len(other):
            wrong += 1
            print(f"{question}: {len(mine)} rows, DuckDB has {len(other)}", file=sys.stderr)
        for row, reference in zip(mine, other):
            for name, value in reference.items():
                compared += 1
                if not same(row[name], value):
                    wrong += 1
                    print(f"{question}: {name} is {row[name]}, in DuckDB {value}, of {row}", file=sys.stderr)
        sums = [sums[0] + busy, sums[1] + their_busy]
        print(f"| {question} | {len(mine)} | {compared} | {wall:.2f} | {busy:.2f} | {peak / 2**20:.0f} | {their_wall:.2f} "
              f"| {their_busy:.2f} |", flush=True)
    print(f"\nProcessor in all: study {sums[0]:.1f} s, DuckDB {sums[1]:.1f} s.")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
