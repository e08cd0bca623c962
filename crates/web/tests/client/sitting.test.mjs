// What the events of a day amount to on the pad. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { median, ration, sitting, standing, stopReason, summary } from "../../src/client/sitting.js";

const T0 = Date.parse("2026-03-01T10:00:00Z");
let n = 0;
function event(body, seconds, recorded = seconds) {
  n += 1;
  const id = `00000000-0000-7000-8000-${String(n).padStart(12, "0")}`;
  const iso = (s) => new Date(T0 + s * 1000).toISOString();
  return { id, happened_at: iso(seconds), recorded_at: iso(recorded), body };
}
const start = (s, session = "A") => event({ kind: "session_start", session, purpose: "showing" }, s);
const sign = (level, s, session = "A") => event({ kind: "sign", sign: "x", level, when: "during", session }, s);
const press = (s, word = "out", by = "person", session = "A") => event({ kind: "press", word, by, session }, s);
const give = (p, s, answer = "given") =>
  event(
    {
      kind: "delivery",
      answers: p.id,
      word: p.body.word,
      answer,
      delay_s: s - (Date.parse(p.happened_at) - T0) / 1000,
    },
    s,
  );
const at = (s) => T0 + s * 1000;

test("a press is a showing only once it was given", () => {
  const p = press(10);
  const before = sitting([start(0), p], at(12));
  assert.equal(before.showings, 0);
  assert.equal(before.pending.out.id, p.id);
  const after = sitting([start(0), p, give(p, 12)], at(30));
  assert.deepEqual([after.showings, after.shownToday.out, after.delay, after.delays], [1, 1, 2, 1]);
  assert.deepEqual(after.pending, {});
  assert.equal(after.perMinute, 2);
});

test("declined and missed answers are no showings", () => {
  const p = press(10);
  assert.equal(sitting([start(0), p, give(p, 12, "declined")], at(30)).showings, 0);
});

test("the order of arrival and repeats change nothing", () => {
  const p = press(10);
  const all = [start(0), p, give(p, 12), sign("mild", 20), event({ kind: "joining", session: "A" }, 5)];
  const first = sitting(all, at(60));
  assert.deepEqual(sitting([...all].reverse().concat(all), at(60)), first);
});

test("a withdrawn press is gone, and a later correction brings it back", () => {
  const p = press(10);
  const w = event({ kind: "withdrawal", of: p.id }, 20);
  assert.equal(standing([p, w]).length, 0);
  const c = event({ kind: "correction", of: p.id, body: { ...p.body, word: "play" } }, 30);
  assert.equal(standing([c, w, p])[0].body.word, "play");
});

test("a session without an end is over after an hour, and one with an end at once", () => {
  assert.equal(sitting([start(0)], at(3599)).session, "A");
  assert.equal(sitting([start(0)], at(3600)).session, undefined);
  const end = event({ kind: "session_end", session: "A", reason: "done" }, 5);
  assert.equal(sitting([start(0), end], at(6)).session, undefined);
});

test("a strong sign stops, whatever came after", () => {
  assert.equal(stopReason([sign("strong", 1), sign("joining", 2)]), "strong");
});

test("leaving stops until it comes back by itself", () => {
  const left = event({ kind: "leaving", session: "A" }, 5);
  assert.equal(stopReason([left]), "left");
  assert.equal(stopReason([left, event({ kind: "joining", session: "A" }, 9)]), undefined);
});

test("two mild signs in a row stop; one, or two with ease between, do not", () => {
  assert.equal(stopReason([sign("mild", 1)]), undefined);
  assert.equal(stopReason([sign("mild", 1), sign("joining", 2), sign("mild", 3)]), undefined);
  assert.equal(stopReason([sign("mild", 1), sign("mild", 3)]), "mild");
  assert.equal(stopReason([sign("mild", 1), sign("mild", 3)], at(4)), undefined);
  assert.equal(stopReason([sign("mild", 1), sign("mild", 3), sign("mild", 5), sign("mild", 6)], at(4)), "mild");
});

test("signs of an earlier session do not stop this one", () => {
  const end = event({ kind: "session_end", session: "A", reason: "done" }, 5);
  assert.equal(sitting([start(0), sign("strong", 2), end, start(10, "B")], at(11)).stop, undefined);
});

test("the ration counts down in whole pieces and never below none", () => {
  const feed = (kcal) => event({ kind: "feed", kcal }, 1);
  const r = ration([feed(3.5), feed(3.5)], 14);
  assert.deepEqual([r.given, r.left, r.pieces({ kcal: 3.5 })], [7, 7, 2]);
  assert.equal(ration([feed(20)], 14).left, 0);
  assert.equal(
    ration(
      Array.from({ length: 9 }, () => feed(0.1)),
      1,
    ).pieces({ kcal: 0.1 }),
    1,
  );
  assert.equal(ration([], null).pieces({ kcal: 3 }), undefined);
  assert.equal(ration([], 14).pieces({ kcal: 0 }), undefined);
});

test("the median of none is nothing", () => {
  assert.equal(median([]), undefined);
  assert.equal(median([3, 1, 2]), 2);
  assert.equal(median([1, 2, 3, 10]), 2.5);
});

test("a press of a session that is over waits for nothing, an animal's press does", () => {
  const end = event({ kind: "session_end", session: "A", reason: "done" }, 20);
  const own = press(12, "play", "animal");
  assert.deepEqual(Object.keys(sitting([start(0), press(10), own, end, start(30, "B")], at(40)).pending), ["play"]);
});

test("what its card allows in a day bounds the pieces that energy leaves", () => {
  const fed = (pieces) => event({ kind: "feed", reward: "leaf", pieces, kcal: 1 }, 1);
  const leaf = { id: "leaf", kcal: 1, most_per_day: 12 };
  assert.equal(ration([], 43).pieces(leaf), 12);
  assert.equal(ration([fed(2), fed()], 43).pieces(leaf), 9);
  assert.equal(ration([fed(20)], 43).pieces(leaf), 0);
  assert.equal(ration([fed(20)], 43).pieces({ ...leaf, id: "other" }), 12);
  assert.equal(ration([], 5).pieces(leaf), 5);
  // Said with the limit that it is.
  assert.deepEqual(ration([], 43).bound(leaf), { n: 12, by: "card" });
  assert.deepEqual(ration([], 5).bound(leaf), { n: 5, by: "food" });
  assert.equal(ration([], null).bound(leaf), undefined);
});

test("a press not given when the session ended may still be given", () => {
  const end = event({ kind: "session_end", session: "A", reason: "done" }, 20);
  const p = press(15);
  const view = sitting([start(0), p, end], at(40));
  assert.deepEqual([Object.keys(view.pending), view.ended.body.session], [["out"], "A"]);
  assert.deepEqual(sitting([start(0), p, end, give(p, 50)], at(60)).pending, {});
  assert.deepEqual(sitting([start(0), p, end], at(15 + 121)).pending, {});
});

test("a session is summed up: minutes, presses of both, what was given and what still waits", () => {
  const all = [start(0), press(10), press(30, "play"), press(50, "play", "animal"), press(55, "play")];
  const stand = standing([
    ...all,
    give(all[1], 12),
    give(all[3], 51),
    event({ kind: "session_end", session: "A", reason: "done" }, 90),
  ]);
  const s = summary(stand, "A", at(100));
  assert.deepEqual([s.minutes, s.shown, s.pressed], [1.5, { out: 1, play: 2 }, { play: 1 }]);
  assert.deepEqual([s.given, s.presses, s.waiting.map((e) => e.id)], [2, 4, [all[2].id, all[4].id]]);
});

test("it is there from joining until it goes", () => {
  const join = (s) => event({ kind: "joining", session: "A" }, s);
  const left = event({ kind: "leaving", session: "A" }, 9);
  assert.equal(sitting([start(0)], at(3)).here, false);
  assert.equal(sitting([start(0), join(2)], at(3)).here, true);
  assert.equal(sitting([start(0), join(2), left], at(10)).here, false);
  assert.equal(sitting([start(0), join(2), left, join(12)], at(13)).here, true);
});

test("a press whose thing never came showed nothing, and what was offered is summed up", () => {
  const offer = event({ kind: "invitation", word: "rub", result: { outcome: "nothing_by_wait" }, session: "A" }, 20);
  const end = event({ kind: "session_end", session: "A", reason: "done" }, 60);
  const stand = standing([start(0), press(10, "rub"), offer, end]);
  const soon = summary(stand, "A", at(100));
  assert.deepEqual([soon.shown, soon.waiting.length, soon.invited], [{ rub: 1 }, 1, { rub: 1 }]);
  const later = summary(stand, "A", at(600));
  assert.deepEqual([later.shown, later.waiting.length, later.given], [{}, 0, 0]);
});

test("what looked like a stumble is told beside what was pressed", () => {
  const own = (s, word, accident) => event({ kind: "press", word, by: "animal", accident, session: "A" }, s);
  const presses = [own(10, "out", "likely"), own(20, "out", "unsure"), own(30, "ball", "likely")];
  const shown = event({ kind: "press", word: "out", by: "person", accident: "likely", session: "A" }, 40);
  const s = summary(standing([start(0), ...presses, shown]), "A", at(100));
  assert.deepEqual(
    [s.pressed, s.stumbled],
    [
      { out: 2, ball: 1 },
      { out: 1, ball: 1 },
    ],
  );
});
