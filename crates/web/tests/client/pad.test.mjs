// What the pad makes of what the notebook said, what this device noted and the hour. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { afterEach, beforeEach, mock, test } from "node:test";
import { due, isDue } from "../../src/client/due.js";
import { makePad } from "../../src/client/pad.js";
import { tap as asksFor } from "../../src/client/catch.js";
import { restUntil, urges } from "../../src/client/rest.js";
import { cutOff } from "../../src/client/settle.js";
import { noteStrong } from "../../src/client/signs.js";

const HOME = "00000000-0000-7000-8000-000000000001";
const PIP = "00000000-0000-7000-8000-000000000002";
const [BALL, OUT] = ["ball", "out"];
let n = 100;

function event(at, body) {
  n += 1;
  const id = `00000000-0000-7000-8000-${String(n).padStart(12, "0")}`;
  return { id, home: HOME, animal: PIP, happened_at: at, recorded_at: at, zone: "Europe/Berlin", source: "tap", body };
}
const row = (e, state = "sent") => ({ n, id: e.id, tap: e.id, event: e, state, at: Date.parse(e.happened_at) });
const word = (id, more = {}) => ({ id, says: id, stage: "show", may_invite: false, draws: false, ...more });

/** What the notebook says at that moment. */
const told = (at, more = {}) => ({
  home: HOME,
  animal: PIP,
  name: "Pip",
  zone: "Europe/Berlin",
  at,
  words: [word(BALL), word(OUT)],
  plan: [{ word: BALL, showings: 2 }],
  minutes: 3,
  rewards: [],
  ration: { budget_kcal: 20 },
  today: [],
  rest_until: null,
  strong: [],
  ...more,
});
const clock = (at) => mock.timers.setTime(Date.parse(at));

beforeEach(() => mock.timers.enable({ apis: ["Date"] }));
afterEach(() => mock.timers.reset());

// Midnight in Berlin is at 23:00 UTC.
const start = event("2026-03-02T22:50:00Z", { kind: "session_start", session: "A", purpose: "showing", words: [BALL] });
const press = event("2026-03-02T22:52:00Z", { kind: "press", word: BALL, by: "person", session: "A" });
const given = event("2026-03-02T22:52:02Z", { kind: "delivery", answers: press.id, word: BALL, answer: "given" });
const fed = event("2026-03-02T22:52:02Z", { kind: "feed", reward: "r", pieces: 1, kcal: 5, session: "A" });
const all = [start, press, given, fed];

test("a session goes on over midnight, whether the page was loaded before, asked after, or heard nothing", () => {
  const before = told("2026-03-02T22:53:00Z", { today: all });
  const after = told("2026-03-02T23:10:00Z", { today: all });
  for (const [what, now, own, knows] of [
    ["loaded before", before, [], []],
    ["asked after", after, all.map((e) => row(e)), all.map((e) => e.id)],
    ["heard nothing", told("2026-03-02T22:40:00Z"), all.map((e) => row(e, "kept")), []],
  ]) {
    clock("2026-03-02T23:10:00Z");
    const pad = makePad(now, () => {});
    Object.assign(pad, { own, knows: new Set(knows) });
    pad.look();
    assert.deepEqual([pad.view.session, pad.view.shownNow[BALL], pad.view.showings], ["A", 1, 1], what);
    assert.deepEqual([pad.view.shownToday, pad.ration.given], [{}, 0], `${what}: figures of the day begin anew`);
    clock("2026-03-02T23:50:00Z");
    pad.look();
    assert.equal(pad.view.session, undefined, `${what}: an hour is an hour`);
  }
});

test("one that ended after midnight is summed up from its start", () => {
  clock("2026-03-02T23:20:00Z");
  const end = event("2026-03-02T23:15:00Z", { kind: "session_end", session: "A", reason: "done" });
  const pad = makePad(told("2026-03-02T23:16:00Z", { today: [...all, end] }), () => {});
  pad.look();
  assert.equal(pad.view.ended.body.session, "A");
  assert.ok(pad.view.stand.includes(start));
});

test("yesterday's taps do not count today, nor can they be undone", () => {
  clock("2026-03-03T09:00:00Z");
  const pad = makePad(told("2026-03-02T22:53:00Z", { today: all }), () => {});
  pad.own = all.map((e) => row(e));
  pad.look();
  assert.deepEqual(pad.view.stand, []);
});

test("plan, length and advice stay as they were at the start until the session ends", () => {
  clock("2026-03-02T22:50:00Z");
  const pad = makePad(
    told("2026-03-02T22:50:00Z", {
      words: [word(BALL, { stage: "invite", may_invite: true, draws: true }), word(OUT)],
    }),
    () => {},
  );
  pad.look();
  pad.memo = { plan: pad.plan("A") };
  clock("2026-03-02T23:10:00Z");
  // What is advised for the new day.
  pad.now = told("2026-03-02T23:10:00Z", { today: all, plan: [{ word: OUT, showings: 4 }], minutes: 5 });
  pad.look();
  assert.deepEqual([pad.planned(), pad.minutes()], [{ [BALL]: 2 }, 3]);
  const { stage, may_invite, draws } = pad.word(BALL);
  assert.deepEqual([stage, may_invite, draws], ["invite", true, true]);
  const end = event("2026-03-02T23:11:00Z", { kind: "session_end", session: "A", reason: "done" });
  pad.now.today.push(end);
  pad.look();
  assert.deepEqual([pad.planned(), pad.minutes(), pad.word(BALL).stage], [{ [OUT]: 4 }, 5, "show"]);
});

test("a word is offered first as often as the plan says, while nothing speaks against it", () => {
  clock("2026-03-02T22:52:00Z");
  const toy = { id: "toy", name: "ball", kcal: null };
  const told_ = (more = {}) =>
    told("2026-03-02T22:51:00Z", {
      words: [
        word(BALL, { stage: "invite", may_invite: true, draws: true, reward: "toy" }),
        word(OUT, { reward: "toy" }),
      ],
      plan: [
        { word: BALL, showings: 3, invitations: 2 },
        { word: OUT, showings: 3, invitations: 1 },
      ],
      rewards: [toy],
      today: [start],
      ...more,
    });
  const offered = (at) => event(at, { kind: "invitation", word: BALL, way: "offer_in_view", wait_s: 5, shown: true });
  const [one, two] = ["2026-03-02T22:51:10Z", "2026-03-02T22:51:40Z"].map(offered);
  const before = offered("2026-03-02T22:40:00Z");
  const look = (now, memo = {}) => {
    const pad = makePad(now, () => {});
    pad.memo = memo;
    pad.look();
    return pad;
  };
  // What may not be invited today is not, whatever the plan says.
  assert.deepEqual(due(look(told_())), [BALL]);
  assert.deepEqual(due(look(told_({ today: [before, start, one] }))), [BALL], "one before the session counts not");
  assert.deepEqual(due(look(told_({ today: [start, one, two] }))), []);
  assert.deepEqual(due(look(told_({ today: [] }))), [], "no session");
  assert.deepEqual(due(look(told_({ rewards: [{ ...toy, never: "poison" }] }))), []);
  assert.deepEqual(due(look(told_({ rewards: [{ ...toy, kcal: 30 }] }))), [], "nothing left to give");
  assert.deepEqual(due(look(told_({ strong: ["2026-03-02T22:50:30Z"] }))), [], "rest");
  const shown = { session: "A", invitations: { [BALL]: 0 }, showings: { [BALL]: 3 } };
  assert.equal(isDue(look(told_(), { plan: shown }), BALL), false, "a person shows it instead");
});

test("a growl noted here rests the night, while nothing answers", () => {
  const growl = event("2026-03-02T22:30:00Z", { kind: "sign", sign: "growl", level: "strong", when: "during" });
  const pad = makePad(told("2026-03-02T20:00:00Z"), () => {});
  pad.own = [row(growl, "kept")];
  const until = Date.parse("2026-03-03T10:30:00Z");
  for (const at of ["2026-03-02T22:31:00Z", "2026-03-02T23:30:00Z", "2026-03-03T10:29:00Z"]) {
    clock(at);
    pad.look();
    assert.equal(restUntil(pad), until, at);
  }
  clock("2026-03-03T10:30:00Z");
  pad.look();
  assert.equal(restUntil(pad), undefined);
  // With one three days before that, it rests until that one is a week ago.
  pad.now = told("2026-03-02T20:00:00Z", { strong: ["2026-02-27T08:00:00Z"] });
  pad.look();
  assert.equal(restUntil(pad), Date.parse("2026-03-05T23:00:00Z"));
  // Undone, it never was.
  pad.own.push(row(event("2026-03-03T10:20:00Z", { kind: "withdrawal", of: growl.id }), "kept"));
  pad.look();
  assert.equal(restUntil(pad), undefined);
});

test("what the notebook said of a rest holds on a page that hears no more", () => {
  clock("2026-03-03T05:00:00Z");
  const pad = makePad(told("2026-03-02T22:40:00Z", { rest_until: "2026-03-03T10:30:00Z" }), () => {});
  pad.look();
  assert.equal(restUntil(pad), Date.parse("2026-03-03T10:30:00Z"));
  clock("2026-03-03T10:30:00Z");
  assert.equal(restUntil(pad), undefined);
});

test("a strong sign that the notebook knew of holds nothing once it is taken back here; one of before still does", () => {
  const growl = event("2026-03-02T08:00:00Z", { kind: "sign", sign: "growl", level: "strong", when: "during" });
  const back = row(event("2026-03-02T08:01:00Z", { kind: "withdrawal", of: growl.id }), "kept");
  clock("2026-03-02T08:02:00Z");
  const before = ["2026-02-27T08:00:00Z"];
  for (const [all_signs, strong, rest_until, after] of [
    [true, [], "2026-03-02T23:00:00Z", undefined],
    [true, before, "2026-03-05T23:00:00Z", undefined],
    // Yesterday's alone rests until its twelve hours are over.
    [true, ["2026-03-01T21:00:00Z"], "2026-03-07T23:00:00Z", Date.parse("2026-03-02T09:00:00Z")],
    // What rests on a sign that is not told here holds.
    [false, [], "2026-03-02T23:00:00Z", Date.parse("2026-03-02T23:00:00Z")],
    [true, [], "2026-03-04T23:00:00Z", Date.parse("2026-03-04T23:00:00Z")],
  ]) {
    const now = told("2026-03-02T08:00:30Z", { today: [growl], strong, rest_until, all_signs });
    const pad = makePad(now, () => {});
    pad.look();
    assert.equal(restUntil(pad), Date.parse(rest_until), rest_until);
    pad.own = [back];
    pad.look();
    assert.equal(restUntil(pad), after, rest_until);
  }
});

test("a strong sign of another phone counts at once, also where that clock is ahead of this one", () => {
  clock("2026-03-02T08:00:00Z");
  const growl = event("2026-03-02T08:02:00Z", { kind: "sign", sign: "growl", level: "strong", when: "during" });
  const now = told("2026-03-02T08:02:30Z", { today: [growl], rest_until: "2026-03-02T23:00:00Z", all_signs: true });
  const pad = makePad(now, () => {});
  pad.look();
  assert.equal(restUntil(pad), Date.parse("2026-03-02T23:00:00Z"));
});

test("nothing hurries what was pressed before a strong sign, or while the session stops", () => {
  clock("2026-03-02T08:01:00Z");
  const press_ = event("2026-03-02T08:00:00Z", { kind: "press", word: BALL, by: "person" });
  const growl = event("2026-03-02T08:00:10Z", { kind: "sign", sign: "growl", level: "strong", when: "during" });
  const later = event("2026-03-02T08:00:20Z", { kind: "press", word: BALL, by: "animal" });
  const pad = makePad(told("2026-03-02T08:00:30Z", { today: [press_] }), () => {});
  pad.look();
  assert.equal(urges(pad, press_), true);
  pad.now = told("2026-03-02T08:00:30Z", { today: [press_, growl] });
  pad.look();
  assert.deepEqual([urges(pad, press_), urges(pad, later)], [false, true]);
  assert.equal(urges({ strong: [], view: { stop: "left" } }, press_), false);
});

/** A pad whose notes are heard of at once. */
function noting(now) {
  const pad = makePad(now, () => {});
  pad.look();
  pad.note = async (bodies) => {
    const events = bodies.map((body) => event(new Date().toISOString(), body));
    pad.own = [...pad.own, ...events.map((e) => row(e, "kept"))];
    pad.look();
    return events;
  };
  return pad;
}

test("at rest what was asked for without a button is given by a second tap, and its food counted", async () => {
  clock("2026-03-02T08:10:00Z");
  const growl = event("2026-03-02T08:00:00Z", { kind: "sign", sign: "growl", level: "strong", when: "during" });
  const snack = { id: "snack", name: "snack", kind: "food", kcal: 4 };
  const words = [word(BALL, { reward: "snack" })];
  const pad = noting(told("2026-03-02T08:09:00Z", { today: [growl], words, rewards: [snack] }));
  const kinds = () => pad.view.stand.map((e) => e.body.kind).filter((kind) => kind !== "sign");
  await asksFor(pad, BALL);
  mock.timers.tick(3_000);
  await asksFor(pad, BALL);
  assert.deepEqual(kinds(), ["catch", "feed", "delivery"]);
  assert.equal(pad.ration.given, 4);
  const { body } = pad.view.last;
  // No press was noted: it answers none, and tells no time since one.
  assert.deepEqual([body.word, body.answer, body.answers, body.delay_s], [BALL, "given", undefined, undefined]);
  // The next tap is the next time it asks.
  mock.timers.tick(60_000);
  await asksFor(pad, BALL);
  assert.equal(kinds().filter((kind) => kind === "catch").length, 2);
});

test("an offer is cut off by a strong sign that fell in its wait, whoever noted it, and by no earlier one", async () => {
  const at = Date.parse("2026-03-02T08:00:00Z");
  const growl = (seen) => event(seen, { kind: "sign", sign: "growl", level: "strong", when: "during" });
  for (const [seen, step] of [
    ["2026-03-02T08:00:03Z", undefined],
    ["2026-03-02T07:59:00Z", "waiting"],
  ]) {
    clock("2026-03-02T08:00:20Z");
    const pad = noting(told("2026-03-02T08:00:10Z", { today: [growl(seen)] }));
    pad.setMemo = (change) => void (pad.memo = { ...pad.memo, ...change });
    pad.memo = { invitation: { step: "waiting", word: BALL, wait: 5, way: "offer_in_view", at } };
    await cutOff(pad);
    assert.deepEqual([pad.memo.invitation.step, pad.own.length], [step, 0], seen);
  }
});

test("a press of an offer that a strong sign closes is a tap of its own before it: one Undo takes back the sign", async () => {
  clock("2026-03-02T08:00:30Z");
  const pad = noting(
    told("2026-03-02T08:00:00Z", { swap: null, today: [{ ...start, happened_at: "2026-03-02T08:00:00Z" }] }),
  );
  const taps = [];
  const note = pad.note;
  pad.note = (bodies) => {
    const kinds = bodies.map((b) => ("body" in b ? b.body.kind : b.kind));
    taps.push(kinds);
    return note(bodies.map((b) => ("body" in b ? b.body : b)));
  };
  pad.setMemo = (change) => void (pad.memo = { ...pad.memo, ...change });
  const at = Date.parse("2026-03-02T08:00:10Z");
  pad.memo = { invitation: { step: "late", late: OUT, tappedAt: at + 9_000, word: BALL, wait: 5, at } };
  assert.equal(pad.view.session, "A");
  await noteStrong(pad, "growl");
  assert.deepEqual(taps, [["press"], ["sign"]]);
  assert.equal(pad.memo.invitation.step, undefined);
  // Nor is what was chosen by hand offered on.
  assert.equal(pad.memo.invitation.word, undefined);
});
