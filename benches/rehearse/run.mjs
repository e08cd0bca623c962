// A rehearsal's drawing measured in Chromium while the page is slowed four times: frames a second by the clock, and for each the
// processor time of the page's main thread, all its tasks together (script, style, layout, paint), which a busy machine does not
// stretch. Nothing but Node, a browser (CHROME_PATH, or chromium) and a notebook that answers.
//
//   cargo run --release -p sayso -- demo --port 8080
//   node benches/rehearse/run.mjs http://127.0.0.1:8080 [--seconds 30]

import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { loadavg, tmpdir } from "node:os";
import { join } from "node:path";

const SLOWED = 4;
const EXERCISE = "/rehearse/evening?character=quick&seed=8";
const given = process.argv.slice(2);
const at = given.indexOf("--seconds");
const seconds = at < 0 ? 30 : Number(given.splice(at, 2)[1]);
const [base] = given;
if (!base || !(seconds > 0)) {
  console.error("node benches/rehearse/run.mjs http://127.0.0.1:8080 [--seconds 30]");
  process.exit(2);
}

/** A browser spoken to through pipes. */
function open() {
  const profile = mkdtempSync(join(tmpdir(), "rehearse-"));
  const flags = ["--headless=new", "--no-sandbox", "--disable-gpu", "--no-first-run", "--remote-debugging-pipe", "--window-size=390,844"];
  const child = spawn(process.env.CHROME_PATH ?? "chromium", [...flags, `--user-data-dir=${profile}`], {
    stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"],
  });
  const waiting = new Map();
  let id = 0;
  let rest = "";
  child.stdio[4].on("data", (bytes) => {
    const all = (rest + bytes).split("\0");
    rest = all.pop();
    for (const message of all.map((m) => JSON.parse(m))) {
      const { resolve, reject } = waiting.get(message.id) ?? {};
      waiting.delete(message.id);
      if (message.error) reject?.(new Error(message.error.message));
      else resolve?.(message.result);
    }
  });
  const ask = (method, params = {}, sessionId = undefined) =>
    new Promise((resolve, reject) => {
      id += 1;
      waiting.set(id, { resolve, reject });
      child.stdio[3].write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    });
  const close = async () => {
    const gone = new Promise((resolve) => child.on("exit", resolve));
    await ask("Browser.close");
    await gone;
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  return { ask, close };
}

const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
const part = (sorted, share) => sorted[Math.floor((sorted.length - 1) * share)];

const { ask, close } = open();
try {
  const { targetId } = await ask("Target.createTarget", { url: "about:blank" });
  const { sessionId } = await ask("Target.attachToTarget", { targetId, flatten: true });
  const run = async (expression) => {
    const { result, exceptionDetails: wrong } = await ask("Runtime.evaluate", { expression, awaitPromise: true, returnByValue: true }, sessionId);
    if (wrong) throw new Error(wrong.exception?.description ?? wrong.text);
    return result.value;
  };
  await ask("Page.navigate", { url: base + EXERCISE }, sessionId);
  while (!(await run("document.querySelector('#rehearse')?.dataset.ready === 'yes'").catch(() => false))) await pause(50);
  await ask("Performance.enable", { timeDomain: "threadTicks" }, sessionId);
  const busy = async () => (await ask("Performance.getMetrics", {}, sessionId)).metrics.find((m) => m.name === "TaskDuration").value;
  console.log("| page slowed | frames a second, by the clock | processor time a frame, all tasks | room for so many a second | script of a frame, by the clock: middle, 95 % |\n| --- | --- | --- | --- | --- |");
  for (const rate of [1, SLOWED]) {
    await ask("Page.reload", {}, sessionId);
    await pause(500);
    while (!(await run("document.querySelector('#rehearse')?.dataset.ready === 'yes'").catch(() => false))) await pause(50);
    await ask("Emulation.setCPUThrottlingRate", { rate }, sessionId);
    await run(`{
      globalThis.worked = [];
      const own = requestAnimationFrame.bind(globalThis);
      globalThis.requestAnimationFrame = (f) => own((at) => { const from = performance.now(); f(at); worked.push(performance.now() - from); });
      document.querySelector("[data-part=start]").click();
    }`);
    const before = await busy();
    const begun = performance.now();
    // A person answers whatever is pressed.
    while (performance.now() - begun < seconds * 1000) {
      await run(`document.querySelector(".pads [data-state=give]")?.click()`);
      await pause(700);
    }
    const long = (performance.now() - begun) / 1000;
    const spent = (await busy()) - before;
    const worked = (await run("worked")).sort((a, b) => a - b);
    const each = (1000 * spent) / worked.length;
    const [middle, most] = [0.5, 0.95].map((share) => part(worked, share).toFixed(2));
    console.log(
      `| ${rate === 1 ? "no" : `${rate} times`} | ${(worked.length / long).toFixed(1)} | ${each.toFixed(2)} ms | ${(1000 / each).toFixed(0)} | ${middle}, ${most} ms |`,
    );
  }
  console.log(`\nLoad of the machine (one minute): ${loadavg()[0].toFixed(1)}. Node ${process.version}.`);
} finally {
  await close();
}
