// A page measured in Chromium (CHROME_PATH, or chromium), spoken to through pipes: what the measurements share.

import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** What was given on the command line, and the seconds after `--seconds`: 30, where they are not said. */
export function asked() {
  const given = process.argv.slice(2);
  const number = (name, usual) => {
    const at = given.indexOf(name);
    return at < 0 ? usual : Number(given.splice(at, 2)[1]);
  };
  return { seconds: number("--seconds", 30), most: number("--most", undefined), given };
}

export const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * A browser with further flags. `ask` asks it something by the protocol of its developers' tools.
 * @param {string[]} further
 */
export function open(further) {
  const profile = mkdtempSync(join(tmpdir(), "measured-"));
  const flags = ["--headless=new", "--no-sandbox", "--disable-gpu", "--no-first-run", "--remote-debugging-pipe", ...further];
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

/** A page in it: what is asked of the page, what it runs, and a wait until something holds there. */
export async function page(askBrowser) {
  const { targetId } = await askBrowser("Target.createTarget", { url: "about:blank" });
  const { sessionId } = await askBrowser("Target.attachToTarget", { targetId, flatten: true });
  const ask = (method, params = {}) => askBrowser(method, params, sessionId);
  const run = async (expression) => {
    const { result, exceptionDetails: wrong } = await ask("Runtime.evaluate", { expression, awaitPromise: true, returnByValue: true });
    if (wrong) throw new Error(wrong.exception?.description ?? wrong.text);
    return result.value;
  };
  const until = async (expression) => {
    while (!(await run(expression).catch(() => false))) await pause(50);
  };
  return { ask, run, until };
}
