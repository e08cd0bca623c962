// How things stand at a moment of a rehearsal, and where the animal is.

import assert from "node:assert/strict";
import { test } from "node:test";

const { WAIT_MS, isAtHome, standing, whereabouts } = await import("../../src/client/rehearsal.js");

const told = (...all) => all.map(([at, what, thing, level]) => ({ at, what, thing, level, mine: false, says: "" }));

test("a shown word waits for its thing, and a press of the animal for its answer", () => {
  const all = told(
    [100, "show", 1],
    [900, "give", 1],
    [1500, "took", 1],
    [3000, "pressed", 2],
    [9000, "unanswered", 2],
  );
  assert.deepEqual(standing(all, 500).shown, { thing: 1, at: 100 });
  assert.equal(standing(all, 950).shown, undefined);
  assert.equal(standing(all, 950).lies, true);
  assert.equal(standing(all, 1600).lies, false);
  assert.deepEqual(standing(all, 3100).own, { thing: 2, at: 3000 });
  assert.equal(standing(all, 9000).own, undefined);
});

test("what was just shown is given for that, and the animal's press of another word still waits", () => {
  const all = told([0, "show", 1], [400, "pressed", 2], [900, "give", 1], [2000, "give", 2]);
  assert.deepEqual(standing(all, 950).own, { thing: 2, at: 400 });
  assert.equal(standing(all, 950).shown, undefined);
  assert.equal(standing(all, 2100).own, undefined);
  assert.equal(standing(told([0, "show", 1], [400, "pressed", 2], [900, "give", 3]), 950).own, undefined);
});

test("an offer waits until the animal presses, the wait is over or the person does something else", () => {
  const offered = [1000, "offer", 0];
  assert.ok(standing(told(offered), 3000).waits);
  for (const what of ["show", "back", "leaves", "pressed", "wait-over"])
    assert.equal(standing(told(offered, [2000, what, 0]), 3000).waits, undefined, what);
  assert.deepEqual(standing(told(offered, [1000 + WAIT_MS, "wait-over", 0]), 7000).then, { thing: 0, at: 6000 });
});

test("an offer ends where the animal's own press from just before is answered, and nothing is asked for after it", () => {
  for (const answer of ["give", "instead"]) {
    const all = told([950, "pressed", 2], [1000, "offer", 0], [1800, answer, 2]);
    assert.ok(standing(all, 1700).waits, answer);
    assert.equal(standing(all, 1800).waits, undefined, answer);
    // Where there is no press to answer, the wait goes on.
    assert.ok(standing(told([1000, "offer", 0], [1800, answer, 2]), 1800).waits, answer);
  }
  // Nor is it asked to show where the answer comes once the wait is over.
  for (const answer of ["give", "instead"]) {
    const late = told([950, "pressed", 2], [1000, "offer", 0], [6000, "wait-over", 0], [6500, answer, 2]);
    assert.ok(standing(late, 6400).then, answer);
    assert.equal(standing(late, 6500).then, undefined, answer);
  }
});

test("nothing is asked for of an animal that has left, until it sets out to come back", () => {
  const over = [6000, "wait-over", 0];
  for (const away of [
    [[2000, "leaves"]],
    [
      [2000, "leaves"],
      [3000, "gone"],
    ],
  ]) {
    assert.equal(standing(told([1000, "offer", 0], ...away, over), 6500).then, undefined);
    // Nor where it was invited as it left.
    const invited = told(...away, [3500, "offer", 0]);
    assert.equal(standing(invited, 4000).waits, undefined);
    assert.equal(standing(invited, 4000).offers, 1);
  }
  for (const back of ["comes", "barred"])
    assert.ok(standing(told([1000, "leaves"], [2000, back], [2500, "offer", 0]), 3000).waits, back);
  // What is held out, or lies there, ends with that too.
  const held = [{ at: 100, what: "held", pair: [2, 0], mine: false, says: "" }, ...told([900, "leaves"])];
  const { holds, lies, pair } = standing(held, 950);
  assert.deepEqual({ holds, lies, pair }, { holds: false, lies: false, pair: undefined });
});

test("at a mild sign in or after an invitation's wait the page asks for a pause, and for nothing after it", () => {
  const offer = [1000, "offer", 0];
  const over = [6000, "wait-over", 0];
  const mild = (at) => [at, "sign", undefined, "mild"];
  const at = (t, ...all) => {
    const { waits, then, pauses } = standing(told(...all), t);
    return { waits: waits !== undefined, then: then !== undefined, pauses };
  };
  const paused = { waits: false, then: false, pauses: true };
  assert.deepEqual(at(5800, offer, mild(5600), over), { waits: true, then: false, pauses: true });
  assert.deepEqual(at(6200, offer, mild(5600), over), paused);
  // It is at ease again, yet five seconds are not over; then nothing is asked for.
  assert.deepEqual(at(6200, offer, mild(2000), [4000, "eases"], over), paused);
  assert.deepEqual(at(7100, offer, mild(2000), [4000, "eases"], over), { ...paused, pauses: false });
  assert.deepEqual(at(12000, offer, mild(5600), over), paused);
  // The sign shows after the wait, or stood before the invitation and stands still.
  assert.deepEqual(at(6600, offer, over, mild(6500)), paused);
  assert.deepEqual(at(14500, mild(1000), [9000, "offer", 0], [14000, "wait-over", 0]), paused);
  // One that was over before the wait was asks for nothing.
  const before = [mild(1000), [9000, "offer", 0], [10000, "eases"], [14000, "wait-over", 0]];
  assert.deepEqual(at(14500, ...before), { waits: false, then: true, pauses: false });
  // Whatever is done, and a press of its own, is another matter; so is a sign without an invitation.
  for (const what of ["show", "give", "instead", "offer", "pressed", "back", "leaves", "gone"])
    assert.equal(at(6800, offer, mild(5600), over, [6700, what, 0]).pauses, false, what);
  assert.equal(at(6200, mild(5600)).pauses, false);
  assert.deepEqual(at(6600, offer, over, [6500, "sign", undefined, "strong"]), { ...paused, pauses: false });
});

test("a sign stays until the animal is at ease or gone, and treats are counted", () => {
  const all = told([100, "sign", undefined, "mild"], [300, "sign", undefined, "strong"], [900, "gone"]);
  assert.deepEqual(
    [50, 200, 400, 950].map((t) => standing(all, t).sign),
    ["", "mild", "strong", ""],
  );
  const given = told([100, "show", 0], [200, "give", 0], [300, "pressed", 1], [400, "instead", 0], [500, "give", 1]);
  assert.equal(standing(given, 600).treats, 2);
});

test("two things held out stand on their sides until one is chosen, or whoever chooses has gone", () => {
  const held = { at: 100, what: "held", pair: [2, 0], mine: false, says: "" };
  for (const what of ["chose", "chose-none", "gone"]) {
    const all = [held, { at: 900, what, mine: false, says: "" }];
    assert.deepEqual(standing(all, 500).pair, [2, 0]);
    assert.equal(standing(all, 950).pair, undefined, what);
  }
});

test("the animal is where its last way led, between two where it walks, and looks where it goes", () => {
  const moments = {
    begins: [10, 10],
    motions: [
      [1000, 2000, 10, 10, 110, 10],
      [1500, 1500, 60, 10, 60, 10],
    ],
  };
  assert.deepEqual(whereabouts(moments, 0), { x: 10, y: 10, turn: 0 });
  assert.deepEqual(whereabouts(moments, 1250), { x: 35, y: 10, turn: 90 });
  assert.deepEqual(whereabouts(moments, 5000), { x: 60, y: 10, turn: 90 });
  // Where motion is not wanted it is at the end of its way at once.
  assert.equal(whereabouts(moments, 1001, true).x, 110);
});

test("what has to be fetched lies there once somebody is back with it", () => {
  const all = told([0, "show", 1], [500, "give", 1], [500, "fetches", 1], [8500, "fetched", 1]);
  assert.equal(standing(all, 4000).lies, false);
  assert.equal(standing(all, 9000).lies, true);
  assert.equal(standing(all, 9000).shown, undefined);
});

test("invitations are counted, and it shows for a while that somebody called or stood in the way", () => {
  const told = [
    { at: 1000, what: "offer", thing: 1, mine: true, says: "" },
    { at: 8000, what: "offer", thing: 2, mine: true, says: "" },
    { at: 9000, what: "gone", mine: false, says: "" },
    { at: 10000, what: "call", mine: true, says: "" },
    { at: 12000, what: "block", mine: true, says: "" },
    { at: 20000, what: "comes", mine: false, says: "" },
  ];
  assert.deepEqual(
    [500, 1000, 8000].map((t) => standing(told, t).offers),
    [0, 1, 2],
  );
  assert.deepEqual(
    [8999, 9000, 20000].map((t) => standing(told, t).gone),
    [false, true, false],
  );
  assert.deepEqual(
    [10000, 12000, 13000].map((t) => standing(told, t).calls),
    [true, true, false],
  );
  assert.deepEqual(
    [11999, 12000, 15000].map((t) => standing(told, t).bars),
    [false, true, false],
  );
});

test("an address at home is told from one that opens elsewhere", () => {
  const home = [
    "localhost",
    "127.0.0.1",
    "[::1]",
    "192.168.1.4",
    "10.0.0.2",
    "172.20.0.1",
    "[fd12::1]",
    "pi.local",
    "kitchen",
  ];
  for (const host of home) assert.equal(isAtHome(host), true, host);
  for (const host of ["sayso.example", "172.40.0.1", "11.0.0.1", "localhost.example", "[2001:db8::1]"])
    assert.equal(isAtHome(host), false, host);
});

test("a showing waits on while the animal's press of something else is answered", () => {
  const all = told([0, "pressed", 0], [300, "show", 1], [1100, "give", 0], [1600, "give", 1]);
  assert.equal(standing(all, 1200).own, undefined);
  assert.deepEqual(standing(all, 1200).shown, { thing: 1, at: 300 });
  assert.equal(standing(all, 1700).shown, undefined);
  // What was shown is had by it, too, where both are of one thing.
  assert.equal(standing(told([0, "pressed", 1], [300, "show", 1], [1100, "give", 1]), 1200).shown, undefined);
});
