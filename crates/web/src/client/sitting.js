// What the events of the day amount to, for the pad: who is at the board, what was shown, what is left to give.
// Pure: takes events and a time, touches nothing.

const SESSION_MS = 3_600_000; // without an end it is over after this: a phone was put away
const ANSWER_MS = 120_000; // a press not answered by then stays unanswered

const ms = (event) => Date.parse(event.happened_at);

/** Events as they stand after corrections and withdrawals, by time. */
export function standing(events) {
  const byId = new Map(events.map((e) => [e.id, e]));
  const last = new Map();
  for (const e of byId.values()) {
    if (e.body.kind !== "correction" && e.body.kind !== "withdrawal") continue;
    const known = last.get(e.body.of);
    const later = known && (e.recorded_at > known.recorded_at || (e.recorded_at === known.recorded_at && e.id > known.id));
    if (!known || later) last.set(e.body.of, e);
  }
  const stand = [];
  for (const e of byId.values()) {
    const { kind } = e.body;
    if (kind === "correction" || kind === "withdrawal") continue;
    const amendment = last.get(e.id)?.body;
    if (!amendment) stand.push(e);
    else if (amendment.kind === "correction") {
      stand.push({ ...e, happened_at: amendment.happened_at ?? e.happened_at, animal: amendment.animal ?? e.animal, body: amendment.body });
    }
  }
  return stand.sort((a, b) => ms(a) - ms(b) || (a.id < b.id ? -1 : 1));
}

/** Why to stop, of the events of the open session: strong, left, mild (two in a row), or undefined. */
export function stopReason(events, carriedOnAt = 0) {
  let left = false;
  let mild = 0;
  for (const e of events) {
    if (e.body.kind === "joining") left = false;
    if (e.body.kind === "leaving") left = true;
    if (e.body.kind !== "sign") continue;
    if (e.body.level === "strong") return "strong";
    if (e.body.level === "joining") mild = 0;
    else if (ms(e) > carriedOnAt) mild += 1;
  }
  if (left) return "left";
  return mild >= 2 ? "mild" : undefined;
}

/** The middle value; undefined of none. */
export function median(values) {
  if (values.length === 0) return undefined;
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/**
 * The state of the pad.
 * events: all events of the day, amendments too. carriedOnAt: when the person last chose to carry on after mild signs.
 */
export function sitting(events, now, carriedOnAt = 0) {
  const stand = standing(events);
  const answered = new Map();
  for (const e of stand) if (e.body.kind === "delivery" && e.body.answers) answered.set(e.body.answers, e);
  const ended = new Set(stand.filter((e) => e.body.kind === "session_end").map((e) => e.body.session));
  const start = stand
    .filter((e) => e.body.kind === "session_start" && !ended.has(e.body.session) && now - ms(e) < SESSION_MS && ms(e) <= now + 60_000)
    .at(-1);
  const session = start?.body.session;
  const own = session ? stand.filter((e) => e.body.session === session) : [];

  const shown = stand.filter((e) => e.body.kind === "press" && e.body.by === "person" && gave(answered.get(e.id)));
  const count = (list) => {
    const counts = {};
    for (const e of list) counts[e.body.word] = (counts[e.body.word] ?? 0) + 1;
    return counts;
  };
  const here = shown.filter((e) => e.body.session && e.body.session === session);
  const delays = here.map((e) => answered.get(e.id).body.delay_s).filter((d) => d !== undefined);
  const minutes = start ? (now - ms(start)) / 60_000 : 0;

  const pending = {};
  for (const e of stand) {
    if (e.body.kind !== "press" || e.body.by === "unknown") continue;
    // What was shown in a session that is over is given no more.
    if (e.body.by === "person" && e.body.session !== session) continue;
    if (!answered.has(e.id) && now - ms(e) < ANSWER_MS) pending[e.body.word] = e;
    else delete pending[e.body.word];
  }
  return {
    stand,
    session,
    startedAt: start && ms(start),
    joined: own.some((e) => e.body.kind === "joining"),
    stop: session ? stopReason(own, carriedOnAt) : undefined,
    shownNow: count(here),
    shownToday: count(shown),
    showings: here.length,
    perMinute: minutes >= 0.25 ? here.length / minutes : undefined,
    delay: median(delays),
    delays: delays.length,
    pending,
    last: stand.filter((e) => e.body.kind === "delivery").at(-1),
  };
}

const gave = (delivery) => delivery && (delivery.body.answer === "given" || delivery.body.answer === "partly");

/** Energy given and left, and whole pieces left of a food. */
export function ration(stand, budget) {
  const given = stand.filter((e) => e.body.kind === "feed").reduce((sum, e) => sum + e.body.kcal, 0);
  const left = budget === null || budget === undefined ? undefined : Math.max(0, budget - given);
  // A hair's breadth more, so that ten tenths of a piece are one piece.
  const pieces = (kcal) => (left === undefined || !(kcal > 0) ? undefined : Math.floor(left / kcal + 1e-9));
  return { given, left, pieces };
}
