// Recording buttons and proving them: which sound is which word, what is said of a proof, when a press is over.
// Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { saysOf } from "../../src/client/judge.js";
import { compared, dropped, inOrder, renamed, skipped } from "../../src/client/naming.js";
import { proofSays } from "../../src/client/proof.js";
import { pressed, take } from "../../src/client/sound.js";
import { outline } from "../../src/client/wave.js";

const none = undefined;

test("sounds take the words by their order", () => {
  assert.deepEqual(inOrder(3, 3), [0, 1, 2]);
  assert.deepEqual(inOrder(4, 3), [0, 1, 2, none]);
  assert.deepEqual(inOrder(2, 3), [0, 1]);
  assert.deepEqual(
    [
      [0, 3],
      [2, 3],
      [3, 3],
      [4, 3],
    ].map(([s, w]) => compared(s, w)),
    ["none", "fewer", "match", "more"],
  );
});

test("a voice in between is left out, and the names after it move up", () => {
  const names = dropped(inOrder(4, 3), 1, 3);
  assert.deepEqual(names, [0, null, 1, 2]);
  // One more that is no button: the last word has no sound.
  assert.deepEqual(dropped(names, 0, 3), [null, null, 0, 1]);
});

test("a word that was not pressed is passed over, and the names after it move on", () => {
  const names = skipped(inOrder(2, 3), 1, 3);
  assert.deepEqual(names, [0, 2]);
  assert.deepEqual(skipped(names, 0, 3), [2, none], "the word passed over before stays so");
  // Both at once: a voice first, then a word without a press.
  assert.deepEqual(skipped(dropped(inOrder(3, 3), 0, 3), 1, 3), [null, 1, 2]);
});

test("a name is given by hand, and the sound that had it takes the other", () => {
  assert.deepEqual(renamed([0, 1, 2], 0, 2), [2, 1, 0]);
  assert.deepEqual(renamed([0, none], 1, 0), [none, 0]);
  assert.deepEqual(renamed([0, 1], 0, null), [null, 1]);
  assert.deepEqual(renamed([null, 1], 0, 2), [2, 1]);
});

test("no two sounds ever say the same word", () => {
  let seed = 7;
  const below = (n) => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed % n;
  };
  for (let run = 0; run < 300; run += 1) {
    const [sounds, words] = [1 + below(8), 1 + below(8)];
    let names = inOrder(sounds, words);
    for (let i = 0; i < 6; i += 1) {
      const at = below(sounds);
      names = [dropped, skipped][below(3)]?.(names, at, words) ?? renamed(names, at, below(words));
      const said = names.filter((n) => typeof n === "number");
      assert.equal(new Set(said).size, said.length, JSON.stringify(names));
      assert.ok(said.every((n) => n >= 0 && n < words) && names.length === sounds, JSON.stringify(names));
    }
  }
});

test("a press is over once it has been quiet for a while after a sound", () => {
  const room = Array(20).fill(0.002);
  assert.equal(pressed(room), false);
  assert.equal(pressed([...room, 0.3, 0.3, 0.002]), false, "it may still be sounding");
  assert.equal(pressed([...room, 0.3, 0.3, ...Array(12).fill(0.002)]), true);
  assert.equal(pressed([...Array(30).fill(0.3)]), false, "a loud room is no press");
  assert.equal(pressed([...Array(12).fill(0.3), ...Array(5).fill(0)]), false, "too early to say");
});

/** A microphone of a thousand samples a second. */
function microphone() {
  const made = { stopped: 0 };
  made.open = async (block, lost) => {
    Object.assign(made, { block, lost });
    return {
      rate: 1000,
      resume() {},
      stop: async () => {
        made.stopped += 1;
      },
    };
  };
  made.give = (n) => made.block({ position: 0, samples: new Int16Array(100).fill(n), peak: 0.1, at: 0 });
  return made;
}

test("sound is taken until it is stopped or the time is over, and handed over once", async () => {
  for (const byHand of [true, false]) {
    const made = microphone();
    const done = [];
    const seconds = [];
    const taking = await take({
      most: 0.3,
      passed: (s) => seconds.push(s),
      done: (t) => done.push(t),
      lost: assert.fail,
      open: made.open,
    });
    made.give(1);
    made.give(2);
    assert.deepEqual([...taking.sofar().samples.slice(99, 101)], [1, 2]);
    if (byHand) await taking.stop();
    else made.give(3);
    await new Promise((r) => setTimeout(r));
    made.give(4);
    await taking.stop();
    assert.equal(done.length, 1);
    assert.equal(done[0].rate, 1000);
    assert.equal(done[0].samples.length, byHand ? 200 : 300);
    assert.equal(made.stopped, 1);
    assert.equal(seconds[1], 0.2);
  }
});

test("a microphone that is taken away is told, and nothing is handed over", async () => {
  const made = microphone();
  const told = [];
  await take({ most: 9, passed() {}, done: assert.fail, lost: (why) => told.push(why), open: made.open });
  made.give(1);
  made.lost("gone");
  made.give(2);
  assert.deepEqual(told, ["gone"]);
});

test("each outcome of a proof has words with what to do", () => {
  const client = readFileSync(new URL("../../../wording/catalogues/en/client_enrol.ftl", import.meta.url), "utf8");
  globalThis.saysoText = new Proxy(
    {},
    {
      get: (_, id) =>
        client.includes(`\n${id} =`)
          ? [id, ...["says", "other", "sure", "db", "percent", "way"].flatMap((v) => [" ", { v }])]
          : undefined,
    },
  );
  const vocabulary = {
    home: "",
    zone: "",
    rate: 8000,
    left_out: [],
    words: [
      { word: "w1", says: "ball", clip: "" },
      { word: "w2", says: "walk", clip: "" },
    ],
  };
  const said = (proof) => proofSays(proof, "ball", vocabulary).trim();
  assert.match(
    said({ outcome: "heard", confidence: 0.999, speed: 1 }),
    /^client-enrol-heard .*client-enrol-heard-more +99/,
  );
  assert.match(said({ outcome: "unsure", confidence: 0.7 }), /^client-enrol-unsure ball +70/);
  assert.match(said({ outcome: "too_far", below_db: 24.6 }), /^client-enrol-too-far +25/);
  assert.match(said({ outcome: "too_quiet", over_room_db: -3 }), /^client-enrol-too-quiet +0/);
  assert.match(said({ outcome: "wrong_speed", speed: 0.85 }), /^client-enrol-wrong-speed +15 slower/);
  assert.match(said({ outcome: "wrong_speed", speed: 1.2 }), / 20 faster/);
  assert.match(
    said({ outcome: "another_word", word: "1", confidence: 0.9 }),
    /^client-enrol-another-word ball walk 90/,
  );
  assert.match(said({ outcome: "another_word", word: "w2", confidence: 0.9 }), / walk /);
  assert.equal(said({ outcome: "another_sound" }), "client-enrol-another-sound");
  assert.equal(said({ outcome: "nothing" }), "client-enrol-nothing");
  assert.equal(saysOf(vocabulary, "w2"), "walk");
});

test("the picture of a sound reaches from its lowest to its highest", () => {
  const samples = new Int16Array(1200);
  samples[600] = 1000;
  samples[601] = -500;
  const drawn = outline(samples, 12);
  assert.equal(drawn.length, 12);
  assert.deepEqual(drawn[6], [-0.5, 1]);
  assert.deepEqual(drawn[0], [0, 0]);
});
