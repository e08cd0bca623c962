// The page's ear measured in Chromium, where it runs: time until it is ready, times real time, memory, and what is lost of
// the microphone's sound while the page is slowed six times. Nothing but Node and a browser (CHROME_PATH, or chromium).
//
//   node benches/ear/run.mjs MODULE.wasm [--seconds 30] CORPUS...
//
// Corpora are those of `lab hearing scenes`. The protocol's own throttle (Emulation.setCPUThrottlingRate) slows the page's
// main thread only, which hands blocks on; worker and audio thread keep their pace. So the whole process of the page is also
// halted for five sixths of each 60 ms, which slows every thread of it, in bursts: harsher than a slow processor.

import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { loadavg } from "node:os";
import { dirname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { asked, open, page, pause } from "../browser.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const client = join(here, "../../crates/web/src/client");
const SLOWED = 6;
const PERIOD_MS = 60;
const TICKS = 100; // of the processor's account a second, on Linux
const TYPES = { html: "text/html", js: "text/javascript", json: "application/json", wasm: "application/wasm", wav: "audio/wav" };

const {
  given: [module, ...corpora],
  seconds,
} = asked();
if (!module || corpora.length === 0 || !(seconds > 0)) {
  console.error("node benches/ear/run.mjs MODULE.wasm [--seconds 30] CORPUS...");
  process.exit(2);
}

/** Where a path of the page lies on the disk. */
function place(path) {
  const [, folder, ...rest] = normalize(path).split("/");
  if (folder === "client") return join(client, ...rest);
  if (folder === "module.wasm") return module;
  if (/^\d+$/.test(folder)) return join(corpora[Number(folder)], ...rest);
  return join(here, folder, ...rest);
}

const server = createServer(({ url }, answer) => {
  try {
    const file = place(new URL(url, "http://localhost").pathname);
    answer.setHeader("content-type", TYPES[file.split(".").pop()] ?? "application/octet-stream").end(readFileSync(file));
  } catch {
    answer.writeHead(404).end();
  }
});
await new Promise((resolve) => server.listen(0, "127.0.0.1", resolve));
const base = `http://127.0.0.1:${server.address().port}/`;

/** A browser that plays a sound at its microphone. */
const hears = (sound) =>
  open(["--site-per-process", "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", `--use-file-for-fake-audio-capture=${sound}`]);

/** Resident megabytes of a process. */
const resident = (pid) => Number(/^VmRSS:\s+(\d+)/m.exec(readFileSync(`/proc/${pid}/status`, "utf8"))[1]) / 1024;

/** Seconds of processor time of a process so far, all its threads. */
function spent(pid) {
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1].split(" ");
  return (Number(fields[11]) + Number(fields[12])) / TICKS;
}

/** Halts a process for all but one part in SLOWED of each period, until it is told to end. */
function halting(pid) {
  let over = false;
  const done = (async () => {
    while (!over) {
      process.kill(pid, "SIGSTOP");
      await pause((PERIOD_MS * (SLOWED - 1)) / SLOWED);
      process.kill(pid, "SIGCONT");
      await pause(PERIOD_MS / SLOWED);
    }
  })();
  return () => {
    over = true;
    return done;
  };
}

async function measured(index) {
  const truth = JSON.parse(readFileSync(join(corpora[index], "truth.json"), "utf8"));
  const browser = hears(join(corpora[index], truth.sounds[0].file));
  try {
    const { ask, run, until } = await page(browser.ask);
    await ask("Page.navigate", { url: `${base}page.html` });
    await until("globalThis.there === true");
    // The page's process: the one that works hardest while it is asked to.
    const renderers = async () => (await browser.ask("SystemInfo.getProcessInfo")).processInfo.filter((p) => p.type === "renderer");
    let pid;
    while (pid === undefined) {
      const before = new Map((await renderers()).map((p) => [p.id, spent(p.id)]));
      await run("{ const t = performance.now(); while (performance.now() - t < 2000); }");
      const alive = new Set((await renderers()).map((p) => p.id));
      const worked = [...before].filter(([id]) => alive.has(id)).map(([id, was]) => ({ id, worked: spent(id) - was })).sort((a, b) => b.worked - a.worked);
      if (worked[0].worked > 0.2 && worked[0].worked > 4 * (worked[1]?.worked ?? 0)) pid = worked[0].id;
    }
    const empty = resident(pid);
    const opened = spent(pid);
    const loaded = await run(`load("/${index}")`);
    const ready = spent(pid) - opened;
    // The first time round the browser still makes the module's code quick.
    const rounds = [];
    for (const round of [0, 1]) {
      const sum = { seconds: 0, took: 0, worked: -spent(pid), round };
      for (const file of loaded.sounds) {
        const { seconds: long, took } = await run(`race("/${index}/${file}")`);
        sum.seconds += long;
        sum.took += took;
      }
      sum.worked += spent(pid);
      rounds.push(sum);
    }
    const memory = resident(pid) - empty;
    const plain = await run(`live(${seconds})`);
    await ask("Emulation.setCPUThrottlingRate", { rate: SLOWED });
    const throttled = await run(`live(${seconds})`);
    await ask("Emulation.setCPUThrottlingRate", { rate: 1 });
    const stop = halting(pid);
    const halted = await run(`live(${seconds})`);
    await stop();
    return { words: loaded.words, ready: [loaded.ready / 1000, ready], rounds, bytes: loaded.bytes, memory, live: { plain, throttled, halted } };
  } finally {
    await browser.close();
  }
}

const load = () => loadavg()[0].toFixed(1);
const begun = load();
console.log("| words | times real time at first: by the clock, by processor time | then | ready: by the clock, by processor time | module when ready | growth of the page's process |\n| --- | --- | --- | --- | --- | --- |");
const all = [];
for (const index of corpora.keys()) {
  const m = await measured(index);
  all.push(m);
  const [first, then] = m.rounds.map((r) => `${(r.seconds / r.took).toFixed(0)}, ${(r.seconds / r.worked).toFixed(0)}`);
  console.log(`| ${m.words} | ${first} | ${then} | ${m.ready.map((s) => s.toFixed(2)).join(", ")} s | ${(m.bytes / 2 ** 20).toFixed(0)} MB | ${m.memory.toFixed(0)} MB |`);
}
console.log("\n| words | slowed | sound heard | lost | blocks dropped | most behind | presses heard |\n| --- | --- | --- | --- | --- | --- | --- |");
const WAYS = { plain: "no", throttled: `main thread, ${SLOWED} times`, halted: `whole process, ${SLOWED} times, in bursts` };
for (const { words, live } of all) {
  for (const [way, l] of Object.entries(live)) {
    console.log(`| ${words} | ${WAYS[way]} | ${l.heard.toFixed(1)} of ${l.passed.toFixed(1)} s | ${l.lost.toFixed(1)} s | ${l.dropped} | ${l.mostBehind.toFixed(1)} s | ${l.presses} |`);
  }
}
console.log(`\nLoad of the machine (one minute): ${begun} at the beginning, ${load()} at the end. Node ${process.version}.`);
server.close();
