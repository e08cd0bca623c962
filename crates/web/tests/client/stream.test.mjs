// Samples on their way to the notebook, with a made-up connection. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { mock, test } from "node:test";
import { makeStream } from "../../src/client/stream.js";
import { trimmed, wav } from "../../src/client/sound.js";

const RATE = 1000; // a tenth of a second is a hundred frames

/** A stream and the connections it opened; each can be answered and cut. */
function begun() {
  const lines = [];
  const told = [];
  const connect = () => {
    const line = {
      readyState: 0,
      bufferedAmount: 0,
      sent: [],
      send: (m) => line.sent.push(m),
      close: () => {
        line.readyState = 3;
      },
    };
    line.open = () => {
      line.readyState = 1;
      line.onopen();
    };
    line.say = (content) => line.onmessage({ data: JSON.stringify(content) });
    line.cut = () => {
      line.readyState = 3;
      line.onclose();
    };
    line.positions = () =>
      line.sent.filter((m) => typeof m !== "string").map((m) => Number(new DataView(m.buffer).getBigUint64(0, true)));
    lines.push(line);
    return line;
  };
  const stream = makeStream({
    url: "ws://home/",
    rate: RATE,
    began: 1_800_000_000_000,
    options: {},
    tell: (k, c) => told.push([k, c]),
    changed() {},
    connect,
  });
  const block = (i) => ({ position: 100 * i, samples: new Int16Array(100).fill(i) });
  return { stream, lines, told, block };
}

test("nothing is sent before the notebook asks for it, then all in order", () => {
  const { stream, lines, block } = begun();
  stream.add(block(0));
  lines[0].open();
  assert.equal(JSON.parse(lines[0].sent[0]).begin.rate, RATE);
  stream.add(block(1));
  assert.deepEqual(lines[0].positions(), []);
  lines[0].say({ go: { from: null, words: [], left_out: [] } });
  stream.add(block(2));
  assert.deepEqual(lines[0].positions(), [0, 100, 200]);
  const second = lines[0].sent.find((m) => typeof m !== "string" && m[0] === 100);
  assert.deepEqual([...new Int16Array(second.buffer.slice(8))].slice(0, 2), [1, 1]);
});

test("after a lost connection the same stream goes on from where the notebook says", () => {
  mock.timers.enable({ apis: ["setTimeout"] });
  const { stream, lines, block } = begun();
  lines[0].open();
  lines[0].say({ go: { from: null, words: [], left_out: [] } });
  for (let i = 0; i < 5; i += 1) stream.add(block(i));
  lines[0].cut();
  assert.equal(stream.link, "waiting");
  for (let i = 5; i < 8; i += 1) stream.add(block(i));
  mock.timers.tick(1_000);
  lines[1].open();
  assert.equal(JSON.parse(lines[1].sent[0]).begin.stream, JSON.parse(lines[0].sent[0]).begin.stream);
  lines[1].say({ go: { from: 300, words: [], left_out: [] } });
  assert.deepEqual(lines[1].positions(), [300, 400, 500, 600, 700]);
  assert.equal(stream.lost, 0);
  // A notebook that was restarted knows nothing of it and gets all that is still here.
  lines[1].say({ upto: 200 });
  lines[1].cut();
  mock.timers.tick(1_000);
  lines[2].open();
  lines[2].say({ go: { from: null, words: [], left_out: [] } });
  assert.deepEqual(lines[2].positions(), [200, 300, 400, 500, 600, 700]);
  mock.timers.reset();
});

test("what is kept is bounded; the oldest is dropped and counted, and what was heard is not", () => {
  const { stream, lines, block } = begun();
  for (let i = 0; i < 450; i += 1) stream.add(block(i));
  assert.ok(Math.abs(stream.lost - 5) < 1e-9, String(stream.lost));
  assert.ok(Math.abs(stream.waiting - 40) < 1e-9);
  lines[0].open();
  lines[0].say({ go: { from: null, words: [], left_out: [] } });
  assert.equal(lines[0].positions()[0], 5000);
  for (let i = 450; i < 600; i += 1) stream.add(block(i));
  assert.ok(Math.abs(stream.lost - 5) < 1e-9, "dropped after it was sent is not lost");
});

test("a full connection is not filled further", () => {
  const { stream, lines, block } = begun();
  lines[0].open();
  lines[0].say({ go: { from: null, words: [], left_out: [] } });
  lines[0].bufferedAmount = 1e9;
  stream.add(block(0));
  assert.deepEqual(lines[0].positions(), []);
  lines[0].bufferedAmount = 0;
  stream.add(block(1));
  assert.deepEqual(lines[0].positions(), [0, 100]);
});

test("a page that was told another one listens does not try again", () => {
  mock.timers.enable({ apis: ["setTimeout"] });
  const { stream, lines, told } = begun();
  lines[0].open();
  lines[0].say({ busy: "2026-03-01T18:00:00Z" });
  lines[0].onclose?.();
  mock.timers.tick(60_000);
  assert.equal(lines.length, 1);
  assert.equal(stream.link, "over");
  assert.equal(told[0][0], "busy");
  mock.timers.reset();
});

test("a jump of the clock begins another stream on the same connection", () => {
  const { stream, lines, block } = begun();
  lines[0].open();
  lines[0].say({ go: { from: null, words: [], left_out: [] } });
  stream.add(block(0));
  stream.anew(1_800_000_100_000);
  const [first, , second] = lines[0].sent;
  assert.notEqual(JSON.parse(second).begin.stream, JSON.parse(first).begin.stream);
  assert.equal(JSON.parse(second).begin.began, new Date(1_800_000_100_000).toISOString());
  stream.add(block(0));
  assert.equal(lines[0].positions().length, 1, "waits to be asked");
  lines[0].say({ go: { from: null, words: [], left_out: [] } });
  assert.equal(lines[0].positions().length, 2);
});

test("ending waits for the notebook", async () => {
  const { stream, lines } = begun();
  lines[0].open();
  lines[0].say({ go: { from: null, words: [], left_out: [] } });
  const over = stream.end();
  assert.equal(lines[0].sent.at(-1), '"end"');
  lines[0].say("ended");
  await over;
  assert.equal(stream.link, "over");
});

test("a recording is cut to what sounds and written as a WAV file", () => {
  const samples = new Int16Array(3000);
  for (let i = 1000; i < 2000; i += 1) samples[i] = i % 2 ? 8000 : -8000;
  for (let i = 0; i < 3000; i += 1) if (!samples[i]) samples[i] = i % 3;
  const cut = trimmed(samples, RATE);
  assert.ok(cut.length >= 1100 && cut.length <= 1200, String(cut.length));
  assert.equal(trimmed(new Int16Array(0), RATE).length, 0);
  const bytes = new Uint8Array(wav(cut, RATE));
  assert.equal(String.fromCharCode(...bytes.slice(0, 4), ...bytes.slice(8, 12)), "RIFFWAVE");
  assert.equal(bytes.length, 44 + 2 * cut.length);
  assert.equal(new DataView(bytes.buffer).getInt16(44, true), cut[0]);
});
