"""The five questions in SQL, written apart from the plans of the study, in words that DuckDB and Spark both take."""

STAGES = ["prepare", "show", "invite", "converse"]
STRETCHES = [10 * 2**at for at in range(7)]
# A name that is a word of the language in one of them.
RENAMED = {"good_presses": "right"}


def waits(source, by, time_, event, name):
    """Kaplan-Meier in SQL: quantiles of `time_` of the rows of `source`, by the columns `by`."""
    g = ", ".join(by)
    places = {"quarter": 0.75, "half": 0.5, "three_quarters": 0.25, "nine_tenths": 0.1}
    reached = ", ".join(f"min(case when s <= {left} + 1e-12 then t end) as {place}" for place, left in places.items())
    return f"""
    {name}_t as (select {g}, {time_} as t, sum(cast({event} as int)) as d, count(*) as c from {source} group by {g}, {time_}),
    {name}_r as (select *, sum(c) over (partition by {g} order by t desc) as r from {name}_t),
    {name}_s as (select *, exp(sum(case when d = r then -1e9 else ln(1 - d / r) end)
                 over (partition by {g} order by t)) as s from {name}_r),
    {name} as (select {g}, cast(sum(c) as bigint) as n, cast(sum(d) as bigint) as events, {reached} from {name}_s group by {g})"""


def first_press():
    own = "(kind = 'press' and pressed_by = 'animal') or (kind = 'invitation' and outcome = 'right')"
    by = ["species", "age_band", "word_kind"]
    return f"""
    with e as (select * from events where word is not null and kind in ('showing', 'press', 'invitation')),
    f as (select household, animal, word, max(word_kind) as word_kind, min(case when kind = 'showing' then at_s end) as begin_s,
          min(case when {own} then at_s end) as first_s from e group by household, animal, word),
    x as (select e.household, e.animal, e.word, count(*) as n from e join f
          on e.household = f.household and e.animal = f.animal and e.word = f.word
          where e.kind = 'showing' and (f.first_s is null or e.at_s < f.first_s) group by e.household, e.animal, e.word),
    w as (select a.species, a.age_band, f.word_kind, f.household, cast(coalesce(x.n, 0) as double) as exposures,
          greatest(cast(coalesce(f.first_s, a.until_s) - f.begin_s as double), cast(0 as double)) / 86400 as days,
          f.first_s is not null as pressed
          from f left join x on f.household = x.household and f.animal = x.animal and f.word = x.word
          join animals a on f.household = a.household and f.animal = a.animal where f.begin_s is not null),
    {waits("w", by, "exposures", "pressed", "k")}, {waits("w", by, "days", "pressed", "l")},
    h as (select species, age_band, word_kind, count(distinct household) as households from w
          group by species, age_band, word_kind)
    select h.species, h.age_band, h.word_kind, h.households, k.n as words, k.events as pressed, k.quarter as showings_quarter,
        k.half as showings_half, k.three_quarters as showings_three_quarters, l.half as days_half
    from h join k on h.species = k.species and h.age_band = k.age_band and h.word_kind = k.word_kind
    join l on h.species = l.species and h.age_band = l.age_band and h.word_kind = l.word_kind
    order by 1, 2, 3"""


def hours():
    all_hours = " union all ".join(f"select {hour} as hour" for hour in range(24))
    return f"""
    with p as (select household, animal, hour, count(*) as n from events where kind = 'press' and pressed_by = 'animal'
               group by household, animal, hour),
    t as (select household, animal, sum(n) as total from p group by household, animal),
    d as ({all_hours}),
    c as (select t.household, t.animal, t.total, d.hour from t cross join d),
    s as (select a.species, c.hour, c.household, coalesce(p.n, 0) as n, coalesce(p.n, 0) / c.total as part
          from c left join p on c.household = p.household and c.animal = p.animal and c.hour = p.hour
          join animals a on c.household = a.household and c.animal = a.animal)
    select species, hour, count(distinct household) as households, count(*) as animals, cast(sum(n) as bigint) as presses,
        avg(part) as share
    from s group by species, hour order by 1, 2"""


def sessions():
    by = ["species", "age_band"]
    return f"""
    with s as (select household, animal, count(*) as sessions, sum(cast(joined as int)) as joined, count(tenths) as timed,
               sum(tenths) as tenths from events where kind = 'session' group by household, animal),
    a as (select m.species, m.age_band, s.household, s.sessions, s.joined, s.joined / s.sessions as part,
          case when s.timed > 0 then s.tenths / s.timed / 600 end as minutes, true as done
          from s join animals m on s.household = m.household and s.animal = m.animal),
    m as (select * from a where minutes is not null),
    {waits("m", by, "minutes", "done", "k")},
    g as (select species, age_band, count(distinct household) as households, count(part) as animals,
          cast(sum(sessions) as bigint) as sessions, cast(sum(joined) as bigint) as joined, avg(part) as share
          from a group by species, age_band)
    select g.species, g.age_band, g.households, g.animals, g.sessions, g.joined, g.share, k.quarter as minutes_quarter,
        k.half as minutes_half, k.three_quarters as minutes_three_quarters
    from g left join k on g.species = k.species and g.age_band = k.age_band order by 1, 2"""


def stuck():
    by = ["species", "stage"]
    number = " ".join(f"when '{stage}' then {at}" for at, stage in enumerate(STAGES, 1))
    name = " ".join(f"when {at} then '{stage}'" for at, stage in enumerate(STAGES, 1))
    return f"""
    with e as (select household, animal, word, at_s, max(case outcome {number} end) as stage from events
               where kind = 'stage' and word is not null group by household, animal, word, at_s),
    c as (select *, lag(stage) over (partition by household, animal, word order by at_s) as earlier from e),
    b as (select *, lead(at_s) over (partition by household, animal, word order by at_s) as end_s from c
          where earlier is distinct from stage),
    w as (select a.species, case b.stage {name} end as stage, b.household,
          greatest(cast(coalesce(b.end_s, a.until_s) - b.at_s as double), cast(0 as double)) / 86400 as days,
          b.end_s is not null as done
          from b join animals a on b.household = a.household and b.animal = a.animal where b.stage < 4),
    {waits("w", by, "days", "done", "k")},
    h as (select species, stage, count(distinct household) as households from w group by species, stage),
    l as (select w.species, w.stage, case when max(k.nine_tenths) is not null
          then count(case when not w.done and w.days > k.nine_tenths then 1 end) end as longer
          from w join k on w.species = k.species and w.stage = k.stage group by w.species, w.stage)
    select h.species, h.stage, h.households, k.n as words, k.events as moved, k.half as days_half,
        k.nine_tenths as days_nine_tenths, l.longer
    from k join h on k.species = h.species and k.stage = h.stage join l on k.species = l.species and k.stage = l.stage
    order by 1, 2"""


def curve():
    stretch = " ".join(f"when shown >= {begin} then {begin}" for begin in reversed(STRETCHES))
    return f"""
    with e as (select household, animal, word, at_s, kind, outcome, coalesce(joined, false) as wanted,
               coalesce(outcome in ('right', 'wrong'), false) as pressed, coalesce(outcome = 'right', false) as good
               from events where word is not null and kind in ('showing', 'invitation')),
    n as (select *, count(case when kind = 'showing' then 1 end) over (partition by household, animal, word order by at_s
          range between unbounded preceding and 1 preceding) as shown from e),
    i as (select *, case {stretch} else 0 end as shown_from from n where kind = 'invitation' and (wanted or pressed)),
    a as (select m.species, i.household, i.animal, i.shown_from, sum(cast(wanted as int)) as wanted,
          sum(cast(wanted and pressed as int)) as pressed, sum(cast(pressed as int)) as presses, sum(cast(good as int)) as good
          from i join animals m on i.household = m.household and i.animal = m.animal
          group by m.species, i.household, i.animal, i.shown_from)
    select species, shown_from, count(distinct household) as households, cast(sum(wanted) as bigint) as wanted,
        cast(sum(pressed) as bigint) as pressed, avg(case when wanted > 0 then pressed / wanted end) as pressed_share,
        cast(sum(presses) as bigint) as presses, cast(sum(good) as bigint) as good_presses,
        avg(case when presses > 0 then good / presses end) as right_share
    from a group by species, shown_from order by 1, 2"""


QUESTIONS = {"first-press": first_press, "hours": hours, "sessions": sessions, "stuck": stuck, "curve": curve}
