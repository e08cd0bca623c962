// What the last events amount to, for the pad: who is at the board, what was shown, what is left to give.
// Pure: takes events and a time, touches nothing.

/** @import { Event, Kind, RewardNow, RationLeft, Stop, Summary, Told, View } from "../../client-checks/client" */

export const SESSION_MS = 3_600_000; // without an end it is over after this: a phone was put away
export const LATELY_MS = 1_800_000; // so long after its end a session's summary is told; later it is for the log
const CLOCKS_APART_MS = 60_000;
const ANSWER_MS = 120_000; // a press not answered by then stays unanswered

/** @param {Event} event */
const ms = (event) => Date.parse(event.happened_at);

/** @param {Event} event */
const recorded = (event) => Date.parse(event.recorded_at);

/**
 * Whether an event is of this kind.
 * @template {Kind} K
 * @param {K} kind
 * @returns {(event: Event) => event is Told<K>}
 */
export const isA = (kind) => /** @type {(event: Event) => event is any} */ ((event) => event.body.kind === kind);

/**
 * Whether it is food, whose energy is counted.
 * @param {RewardNow | undefined} reward
 * @returns {reward is RewardNow & { kcal: number }}
 */
export const isFood = (reward) => (reward?.kcal ?? 0) > 0;

/**
 * The session an event names.
 * @param {Event} event
 */
const sessionOf = ({ body }) => ("session" in body ? (body.session ?? undefined) : undefined);

/**
 * Events as they stand after corrections and withdrawals, by time.
 * @param {Event[]} events
 */
export function standing(events) {
  const byId = new Map(events.map((e) => [e.id, e]));
  /** @type {Map<string, Told<"correction"> | Told<"withdrawal">>} */
  const last = new Map();
  for (const e of byId.values()) {
    if (!isA("correction")(e) && !isA("withdrawal")(e)) continue;
    if (byId.get(e.body.of)?.home !== e.home) continue; // one written in another home's name has no say here
    const known = last.get(e.body.of);
    const later = known && (recorded(e) > recorded(known) || (recorded(e) === recorded(known) && e.id > known.id));
    if (!known || later) last.set(e.body.of, e);
  }
  /** @type {Event[]} */
  const stand = [];
  for (const e of byId.values()) {
    const { kind } = e.body;
    if (kind === "correction" || kind === "withdrawal") continue;
    const amendment = last.get(e.id)?.body;
    if (!amendment) stand.push(e);
    else if (amendment.kind === "correction") {
      stand.push({
        ...e,
        happened_at: amendment.happened_at ?? e.happened_at,
        animal: amendment.animal ?? e.animal,
        body: amendment.body,
      });
    }
  }
  return stand.sort((a, b) => ms(a) - ms(b) || (a.id < b.id ? -1 : 1));
}

/**
 * Why to stop, of the events of the open session: strong, left, mild (two in a row), or undefined.
 * @param {Event[]} events
 * @param {number} [carriedOnAt]
 * @returns {Stop | undefined}
 */
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

/**
 * The middle value; undefined of none.
 * @param {number[]} values
 */
export function median(values) {
  if (values.length === 0) return undefined;
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/**
 * The state of the pad.
 * events: those of the day and of the session, amendments too. carriedOnAt: when the person last chose to carry on after mild
 * signs. today: the day's first moment; a session goes on over midnight, figures of the day do not.
 * @param {Event[]} events
 * @param {number} now
 * @param {number} [carriedOnAt]
 * @param {number} [today]
 * @returns {View}
 */
export function sitting(events, now, carriedOnAt = 0, today = -Infinity) {
  const stand = standing(events);
  const deliveries = stand.filter(isA("delivery"));
  /** @type {Map<string, Told<"delivery">>} */
  const answered = new Map();
  // Of two answers to one press the first counts.
  for (const e of deliveries) if (e.body.answers && !answered.has(e.body.answers)) answered.set(e.body.answers, e);
  const ended = new Set(stand.filter(isA("session_end")).map((e) => e.body.session));
  const start = stand
    .filter(isA("session_start"))
    .filter((e) => !ended.has(e.body.session) && now - ms(e) < SESSION_MS && ms(e) <= now + CLOCKS_APART_MS)
    .at(-1);
  const session = start?.body.session;
  const own = session ? stand.filter((e) => sessionOf(e) === session) : [];

  const shown = stand.filter(isA("press")).filter((e) => e.body.by === "person" && gave(answered.get(e.id)));
  const here = shown.filter((e) => e.body.session && e.body.session === session);
  const delays = here.map((e) => answered.get(e.id)?.body.delay_s).filter((d) => typeof d === "number");
  const minutes = start ? (now - ms(start)) / 60_000 : 0;

  /** @type {Record<string, Told<"press">>} */
  const pending = {};
  for (const e of stand.filter(isA("press"))) {
    if (e.body.by === "unknown") continue;
    // What was shown in a session that is over may still be given, but not into the next one.
    if (e.body.by === "person" && session && e.body.session !== session) continue;
    if (!answered.has(e.id) && now - ms(e) < ANSWER_MS) pending[e.body.word] = e;
    else delete pending[e.body.word];
  }
  const ends = stand.filter(isA("session_end"));
  const comings = own.filter((e) => e.body.kind === "joining" || e.body.kind === "leaving");
  return {
    stand,
    session,
    ended: session ? undefined : ends.at(-1),
    here: comings.at(-1)?.body.kind === "joining",
    startedAt: start && ms(start),
    joined: own.some((e) => e.body.kind === "joining"),
    stop: session ? stopReason(own, carriedOnAt) : undefined,
    shownNow: byWord(here),
    invitedNow: byWord(start ? stand.filter(isA("invitation")).filter((e) => ms(e) >= ms(start)) : []),
    shownToday: byWord(shown.filter((e) => ms(e) >= today)),
    showings: here.length,
    perMinute: minutes >= 0.25 ? here.length / minutes : undefined,
    delay: median(delays),
    delays: delays.length,
    pending,
    last: deliveries.at(-1),
  };
}

/**
 * How many there are of each word.
 * @param {Told<"press" | "invitation">[]} list
 */
function byWord(list) {
  /** @type {Record<string, number>} */
  const counts = {};
  for (const { body } of list) counts[body.word] = (counts[body.word] ?? 0) + 1;
  return counts;
}

/** @param {Told<"delivery"> | undefined} delivery */
const gave = (delivery) => delivery?.body.answer === "given" || delivery?.body.answer === "partly";

/**
 * Energy given and left, and whole pieces left of a food: what the day's energy leaves, and no more than its card allows.
 * @param {Event[]} stand
 * @param {number | null | undefined} budget
 * @returns {RationLeft}
 */
export function ration(stand, budget) {
  const feeds = stand.filter(isA("feed"));
  const given = feeds.reduce((sum, e) => sum + e.body.kcal, 0);
  const left = budget === null || budget === undefined ? undefined : Math.max(0, budget - given);
  /** @type {RationLeft["bound"]} */
  const bound = ({ id, kcal, most_per_day: most }) => {
    if (left === undefined || !kcal || kcal < 0) return undefined;
    const had = feeds.filter((e) => id && e.body.reward === id).reduce((sum, e) => sum + (e.body.pieces ?? 1), 0);
    // A hair's breadth more, so that ten tenths of a piece are one piece.
    const byEnergy = Math.floor(left / kcal + 1e-9);
    const byCard = Math.max(0, (most ?? Infinity) - had);
    return byCard < byEnergy ? { n: byCard, by: "card" } : { n: byEnergy, by: "food" };
  };
  return { given, left, bound, pieces: (reward) => bound(reward)?.n };
}

/**
 * What a session amounts to: minutes, presses of the person and of the animal by word, invitations, how many were given, and
 * those that still wait.
 * @param {Event[]} stand
 * @param {string} session
 * @param {number} now
 * @returns {Summary}
 */
export function summary(stand, session, now) {
  const start = stand.filter(isA("session_start")).find((e) => e.body.session === session);
  const end = stand.filter(isA("session_end")).find((e) => e.body.session === session);
  const presses = stand.filter(isA("press")).filter((e) => e.body.session === session && e.body.by !== "unknown");
  const invitations = stand.filter(isA("invitation")).filter((e) => e.body.session === session);
  const answers = new Map(stand.filter(isA("delivery")).map((e) => [e.body.answers, e]));
  /** @param {Told<"press">} e */
  const waits = (e) => !answers.has(e.id) && now - ms(e) < ANSWER_MS;
  /**
   * A press without its thing showed nothing, as Today counts it too.
   * @param {Told<"press">} e
   */
  const shows = (e) => gave(answers.get(e.id)) || waits(e);
  return {
    minutes: start && ((end ? ms(end) : now) - ms(start)) / 60_000,
    shown: byWord(presses.filter((e) => e.body.by === "person" && shows(e))),
    pressed: byWord(presses.filter((e) => e.body.by === "animal")),
    stumbled: byWord(presses.filter((e) => e.body.by === "animal" && e.body.accident === "likely")),
    invited: byWord(invitations),
    undrawn: invitations.some((e) => !e.body.call),
    given: presses.filter((e) => gave(answers.get(e.id))).length,
    presses: presses.length,
    waiting: presses.filter(waits),
  };
}
