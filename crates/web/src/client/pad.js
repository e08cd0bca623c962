// What the pad knows and how it notes things: the server's last word, this device's own rows, and what both amount to.

import { clearAnimal } from "./copy.js";
import { complete, keep, onChange, recall, remember, rows, unpaired } from "./outbox.js";
import { dayOf, dayStart } from "./homeday.js";
import { strongOf } from "./rest.js";
import { LATELY_MS, SESSION_MS, isFood, ration, sitting, standing } from "./sitting.js";
import { uuid7 } from "./uuid.js";
import { say } from "./say.js";

/** @import { Body, Event, Now, Pad } from "../../client-checks/client" */

const REFRESH_MS = 25_000;
/** What was noted in this time before now may still be needed after midnight: by a session, or by its summary. */
export const STILL_NEEDED_MS = SESSION_MS + LATELY_MS;
const THEN_S = 12; // how long a delivery waits for "what did it do then?" before it is sent

/** A tap was taken: felt, so that eyes may stay on the animal. */
const tick = () => navigator.vibrate?.(10);

const deviceZone = Intl.DateTimeFormat().resolvedOptions().timeZone;

/**
 * The event a body amends, if it is a correction or withdrawal.
 * @param {Body} body
 */
const amends = (body) => ("of" in body ? body.of : undefined);

/**
 * The name of what went wrong.
 * @param {unknown} error
 */
export const nameOf = (error) => (error instanceof Error || error instanceof DOMException ? error.name : String(error));

/**
 * The pad of one animal. `now` is what the page came with; `changed` is called when something is to be drawn anew.
 * @param {Now} now
 * @param {() => void} changed
 * @returns {Pad}
 */
export function makePad(now, changed) {
  /** @type {Pad} */
  // The rest follows below; nothing uses it before.
  const pad = /** @type {any} */ ({
    now,
    own: [],
    knows: new Set(),
    clockOff: 0,
    memo: {},
    view: undefined,
    words: now.words,
    strong: [],
    asked: undefined,
    offline: undefined,
    left: false,
  });
  const memoKey = `pad-${now.animal}`;

  /** Works out the state at this moment. */
  pad.look = () => {
    const at = Date.now();
    const today = dayStart(dayOf(at, pad.now.zone), pad.now.zone); // an old page must not count yesterday as today
    const from = Math.min(today, at - STILL_NEEDED_MS);
    /** @param {Event} e */
    const when = (e) => Date.parse(e.happened_at);
    const mine = pad.own
      .filter((r) => r.state !== "refused" && r.event.animal === pad.now.animal)
      // What the notebook had when it answered is told by its answer, also where it was put right elsewhere since.
      .filter((r) => !pad.knows.has(r.id))
      .map((r) => r.event);
    const all = [...pad.now.today, ...mine].filter((e) => amends(e.body) || when(e) >= from);
    pad.view = sitting(all, at, pad.memo.carriedOnAt ?? 0, today);
    pad.ration = ration(
      pad.view.stand.filter((e) => when(e) >= today),
      pad.now.ration.budget_kcal,
    );
    const signs = [...pad.now.today, ...mine].filter((e) => amends(e.body) || e.body.kind === "sign");
    pad.strong = [...pad.now.strong.map((s) => Date.parse(s)), ...strongOf(standing(signs))];
    const advice = held()?.advice;
    pad.words = advice ? pad.now.words.map((w) => ({ ...w, ...advice[w.id] })) : pad.now.words;
    return pad.view;
  };

  /** The plan that the running session was begun with: what is advised meanwhile, at midnight say, is for the next one. */
  const held = () => (pad.memo.plan && pad.memo.plan.session === pad.view.session ? pad.memo.plan : undefined);

  pad.word = (id) => pad.words.find((w) => w.id === id);
  pad.says = (id) => pad.word(id)?.says ?? say("client-board-no-word");
  pad.reward = (id) => pad.now.rewards.find((r) => r.id === id);
  pad.rewardOf = (word) => pad.reward(pad.word(word)?.reward);

  pad.planned = () => held()?.showings ?? Object.fromEntries(pad.now.plan.map((p) => [p.word, p.showings]));
  pad.minutes = () => (held() ? held()?.minutes : pad.now.minutes) ?? undefined;
  pad.invitations = () =>
    held()?.invitations ??
    Object.fromEntries(pad.now.plan.filter((p) => p.invitations > 0).map((p) => [p.word, p.invitations]));
  pad.invites = () => Object.keys(pad.invitations());
  pad.plan = (session) => ({
    session,
    invitations: pad.invitations(),
    showings: pad.planned(),
    minutes: pad.minutes(),
    advice: Object.fromEntries(pad.words.map(({ id, stage, may_invite, draws }) => [id, { stage, may_invite, draws }])),
  });

  /** An event of this device. */
  pad.event = (body, at = Date.now()) => ({
    id: uuid7(),
    home: pad.now.home,
    animal: pad.now.animal,
    ...(pad.now.person ? { person: pad.now.person } : {}),
    happened_at: new Date(at).toISOString(),
    zone: deviceZone || pad.now.zone,
    recorded_at: recordedAt(body),
    source: "tap",
    body,
  });

  // The last change of an event counts: one made now is dated after what a clock that was ahead wrote.
  /** @param {Body} body */
  function recordedAt(body) {
    const of = amends(body);
    const own = pad.own.filter((r) => of && amends(r.event.body) === of).map((r) => r.event.recorded_at);
    const changes = [...own, of && pad.now.changed_ahead[of]]
      .filter((at) => at !== undefined)
      .map((at) => Date.parse(at));
    return new Date(Math.max(Date.now(), ...changes.map((at) => at + 1))).toISOString();
  }

  /** The open session as a field, if there is one. */
  pad.in = () => (pad.view?.session ? { session: pad.view.session } : {});

  /** Notes bodies as one tap. Gives the events. */
  pad.note = async (bodies, options = {}) => {
    // Only whole events say when they were recorded; a correction is a body that holds a body.
    const events = bodies.map((b) => ("recorded_at" in b ? b : pad.event(b)));
    try {
      await keep(events, options);
    } catch (error) {
      pad.broken = say("client-board-not-kept", { why: nameOf(error) });
      changed();
      throw error;
    }
    tick();
    await pad.reload();
    return events;
  };

  /** Completes an event while it is held, else corrects it. */
  pad.amend = async (event, change) => {
    if (!(await complete(event.id, change))) {
      await pad.note([{ kind: "correction", of: event.id, body: { ...event.body, ...change } }]);
    } else tick();
    await pad.reload();
  };

  /** A press. */
  pad.press = (word, by, more = {}) =>
    pad.note([
      { kind: "press", word, by, certainty: 1, accident: by === "person" ? "no" : "unsure", ...pad.in(), ...more },
    ]);

  /** Answers a press, or what was asked for without one; food given is counted in the same tap. */
  pad.deliver = async (press, answer = "given", more = {}) => {
    const { word, session } = press.body;
    const answers = press.body.kind === "press" ? { answers: press.id } : {};
    const seconds = (Date.now() - Date.parse(press.happened_at)) / 1000;
    const gives = answer === "given" || answer === "partly" || answer === "alternative";
    const reward = answer === "alternative" ? pad.reward(more.alternative) : pad.rewardOf(word);
    const where = session ? { session } : {};
    /** @type {Body[]} */
    const bodies = [];
    if (gives && isFood(reward))
      bodies.push({ kind: "feed", reward: reward.id, pieces: 1, kcal: reward.kcal, ...where });
    const delay =
      answers.answers && gives && seconds >= 0 && seconds <= 600 ? { delay_s: Math.round(seconds * 10) / 10 } : {};
    bodies.push({ kind: "delivery", ...answers, word, answer, ...delay, ...where, ...more });
    const events = await pad.note(bodies, { hold: THEN_S });
    return events[events.length - 1];
  };

  pad.setMemo = async (change) => {
    if ("mode" in change) pad.asked = undefined;
    pad.memo = { ...pad.memo, ...change };
    changed(); // what was chosen shows at once, however slow the device is to keep it
    await remember(memoKey, pad.memo);
  };

  /** Reads this device's rows anew. */
  pad.reload = async () => {
    pad.own = await rows();
    changed();
  };

  /** Asks the notebook how things stand, for what others noted meanwhile. */
  pad.refresh = async () => {
    if (document.visibilityState !== "visible") return;
    try {
      const sent = (await rows()).filter((r) => r.state === "sent").map((r) => r.id);
      const response = await fetch(`/api/board/${now.animal}`, { credentials: "same-origin" });
      // Led elsewhere, or refused: it answers, and lets nobody in here any more.
      pad.left = response.redirected || [403, 404, 410].includes(response.status);
      pad.offline = !response.ok && !pad.left;
      if (pad.left) await clearAnimal(now.animal);
      if (response.status === 401) await unpaired();
      if (!response.ok || pad.left) return changed();
      pad.now = await response.json();
      pad.knows = new Set(sent);
      pad.clockOff = Date.now() - Date.parse(pad.now.at);
      await remember(`now-${now.animal}`, pad.now);
    } catch {
      pad.offline = true;
    }
    changed();
  };

  pad.begin = async () => {
    // What was chosen while the page still came stands.
    pad.memo = { ...((await recall(memoKey)) ?? {}), ...pad.memo };
    const remembered = await recall(`now-${now.animal}`);
    // A page from the cache may be older than what was last heard.
    if (remembered && remembered.at > pad.now.at) pad.now = { ...remembered, person: pad.now.person };
    onChange(pad.reload);
    await pad.reload();
    pad.refresh();
    setInterval(pad.refresh, REFRESH_MS);
    document.addEventListener("visibilitychange", pad.refresh);
    for (const change of ["online", "offline"]) addEventListener(change, pad.refresh);
  };
  return pad;
}
