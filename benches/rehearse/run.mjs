// A rehearsal's drawing measured in Chromium while the page is slowed four times: frames a second by the clock, frames
// that were dropped (a sixtieth of a second that passed without one), and for each the
// processor time of the page's main thread, all its tasks together (script, style, layout, paint), which a busy machine does not
// stretch. Nothing but Node, a browser (CHROME_PATH, or chromium) and a notebook that answers.
//
//   cargo run --release -p sayso -- demo --port 8080
//   node benches/rehearse/run.mjs http://127.0.0.1:8080 [--seconds 30] [--most 16.7]
//
// Ends with 1 where a frame takes more processor time than `--most` milliseconds, on the mean of a run, slowed or not.

import { loadavg } from "node:os";
import { asked, open, page, pause } from "../browser.mjs";

const SLOWED = 4;
const FRAME_MS = 1000 / 60;
const EXERCISE = "/rehearse/evening?character=quick&seed=8";
const READY = "document.querySelector('#rehearse')?.dataset.ready === 'yes'";
const {
  given: [base],
  seconds,
  most: bar = FRAME_MS,
} = asked();
if (!base || !(seconds > 0) || !(bar > 0)) {
  console.error("node benches/rehearse/run.mjs http://127.0.0.1:8080 [--seconds 30] [--most 16.7]");
  process.exit(2);
}

const part = (sorted, share) => sorted[Math.floor((sorted.length - 1) * share)];

const browser = open(["--window-size=390,844"]);
try {
  const { ask, run, until } = await page(browser.ask);
  await ask("Page.navigate", { url: base + EXERCISE });
  await until(READY);
  await ask("Performance.enable", { timeDomain: "threadTicks" });
  const busy = async () => (await ask("Performance.getMetrics")).metrics.find((m) => m.name === "TaskDuration").value;
  console.log("| page slowed | frames a second, by the clock | dropped | processor time a frame, all tasks | room for so many a second | script of a frame, by the clock: middle, 95 % |\n| --- | --- | --- | --- | --- | --- |");
  for (const rate of [1, SLOWED]) {
    await ask("Page.reload");
    await pause(500);
    await until(READY);
    await ask("Emulation.setCPUThrottlingRate", { rate });
    await run(`{
      globalThis.worked = [];
      globalThis.stamps = [];
      const own = requestAnimationFrame.bind(globalThis);
      globalThis.requestAnimationFrame = (f) => own((at) => { stamps.push(at); const from = performance.now(); f(at); worked.push(performance.now() - from); });
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
    const stamps = await run("stamps");
    const gaps = stamps.slice(1).map((at, i) => at - stamps[i]);
    const dropped = gaps.reduce((sum, gap) => sum + Math.max(0, Math.round(gap / FRAME_MS) - 1), 0);
    const worked = (await run("worked")).sort((a, b) => a - b);
    const each = (1000 * spent) / worked.length;
    if (!(each <= bar)) {
      console.error(`${rate} times slower: ${each.toFixed(2)} ms of processor time a frame, more than ${bar.toFixed(1)} ms`);
      process.exitCode = 1;
    }
    const [middle, most] = [0.5, 0.95].map((share) => part(worked, share).toFixed(2));
    console.log(
      `| ${rate === 1 ? "no" : `${rate} times`} | ${(worked.length / long).toFixed(1)} | ${dropped} of ${dropped + stamps.length} | ${each.toFixed(2)} ms | ${(1000 / each).toFixed(0)} | ${middle}, ${most} ms |`,
    );
  }
  console.log(`\nLoad of the machine (one minute): ${loadavg()[0].toFixed(1)}. Node ${process.version}.`);
} finally {
  await browser.close();
}
