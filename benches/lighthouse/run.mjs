// Lighthouse over Today, Board, Evidence and Days of a running demo, as a phone with a slow line sees them; ends with 1
// where a score is under its floor. `node run.mjs http://127.0.0.1:8080`; CHROME_PATH names the browser.

import lighthouse from "lighthouse";
import { launch } from "chrome-launcher";

const FLOOR = { performance: 95, accessibility: 100, "best-practices": 100 };
const PAGES = ["today", "board", "evidence", "days"];

const base = process.argv[2];
if (!base) throw new Error("which notebook? Give its address, such as http://127.0.0.1:8080");
// The front page leads to an animal.
const front = new URL((await fetch(base)).url);
const animal = /^\/a\/[^/]+\//.exec(front.pathname)?.[0];
if (!animal) throw new Error(`${front} is no page of an animal; is this the demo?`);

const browser = await launch({ chromeFlags: ["--headless=new", "--no-sandbox"] });
let under = 0;
try {
  for (const page of PAGES) {
    const url = new URL(animal + page, front).href;
    const flags = { port: browser.port, onlyCategories: Object.keys(FLOOR), formFactor: "mobile", logLevel: "error" };
    const { lhr } = await lighthouse(url, flags);
    for (const [name, floor] of Object.entries(FLOOR)) {
      const score = Math.round(100 * lhr.categories[name].score);
      console.log(`${page}\t${name}\t${score}${score < floor ? `\tunder ${floor}` : ""}`);
      if (score >= floor) continue;
      under += 1;
      for (const { id, weight } of lhr.categories[name].auditRefs) {
        const audit = lhr.audits[id];
        if (weight > 0 && audit.score !== null && audit.score < 0.9) console.log(`\t${audit.title}: ${audit.displayValue ?? ""}`);
      }
    }
    const shift = lhr.audits["cumulative-layout-shift"].numericValue;
    console.log(`${page}\tlayout shift\t${shift.toFixed(3)}`);
  }
} finally {
  browser.kill();
}
process.exitCode = under > 0 ? 1 : 0;
