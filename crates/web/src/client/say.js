// Messages of the catalogue, and numbers and times, as the reader's language writes them. The page loads the messages of its
// language before any other module (`text/en.js` and the like); they come from the `client*.ftl` files of crates/wording.

/** @import { Messages } from "../../client-checks/messages" */

/** @typedef {string | { v: string } | { s: string, o: Record<string, Part[]> }} Part */

/** @returns {Record<string, Part[]>} */
const messages = () => /** @type {any} */ (globalThis).saysoText ?? {};

const page = globalThis.document?.documentElement;
const language = page?.lang || "en";
// Britain's dates and times for English, as the notebook's own pages write them.
const region = language === "en" ? "en-GB" : language;
const whole = new Intl.NumberFormat(language);
const plural = new Intl.PluralRules(language);

/**
 * What a message says.
 * @template {keyof Messages} K
 * @param {K} id
 * @param {keyof Messages[K] extends never ? [] : [Messages[K]]} given its arguments by name: numbers and texts
 * @returns {string}
 */
export function say(id, ...given) {
  const parts = messages()[id];
  if (!parts) throw new Error(`no message ${id}`);
  const all = /** @type {Record<string, string | number>} */ (given[0] ?? {});
  // The full stop of an argument, such as the time "7:06 a. m.", ends the sentence as well.
  const stops = Object.values(all).filter((value) => typeof value === "string" && value.endsWith("."));
  return stops.reduce(
    (/** @type {string} */ text, stop) => text.replaceAll(`${stop}.`, String(stop)),
    joined(parts, all),
  );
}

/**
 * @param {Part[]} parts
 * @param {Record<string, string | number>} given
 * @returns {string}
 */
function joined(parts, given) {
  return parts
    .map((part) => {
      if (typeof part === "string") return part;
      if ("v" in part) {
        const value = given[part.v] ?? "";
        return typeof value === "number" ? trueMinus(whole.format(value)) : value;
      }
      const value = given[part.s] ?? "";
      const category = typeof value === "number" ? plural.select(value) : value;
      return joined(part.o[String(value)] ?? part.o[category] ?? part.o.other ?? [], given);
    })
    .join("");
}

/**
 * With a true minus, as the notebook's own pages write it.
 * @param {string} written
 */
const trueMinus = (written) => written.replace("-", "\u2212");

/**
 * A number with so many decimals. A rounded nothing has no sign.
 * @param {number} value
 * @param {number} [decimals]
 */
export const number = (value, decimals = 0) =>
  trueMinus(
    new Intl.NumberFormat(language, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
      signDisplay: "negative",
    }).format(value),
  );

/**
 * The time of day, on the reader's clock, in the home's zone.
 * @param {Date | number} at
 * @param {string} [timeZone]
 */
export const time = (at, timeZone) => new Intl.DateTimeFormat(region, { ...hours(), timeZone }).format(at);

/**
 * Hour and minute on the reader's clock: of twelve hours `7:06 am`, of twenty-four `07:06`, as the notebook's own pages
 * write them.
 * @returns {Intl.DateTimeFormatOptions}
 */
function hours() {
  const twelve = page?.dataset.clock === "h12";
  return { hour: twelve ? "numeric" : "2-digit", minute: "2-digit", hourCycle: twelve ? "h12" : "h23" };
}

/**
 * The same with the day of the week before it.
 * @param {Date | number} at
 * @param {string} [timeZone]
 */
export const weekdayTime = (at, timeZone) =>
  `${new Intl.DateTimeFormat(region, { weekday: "long", timeZone }).format(at)}, ${time(at, timeZone)}`;

/**
 * Minutes of a plan, with half ones where it has them.
 * @param {number} n
 */
export const minutes = (n) => number(n, Number.isInteger(n) ? 0 : 1);

/**
 * Milliseconds that passed, as minutes and seconds.
 * @param {number} ms
 */
export const clock = (ms) => `${Math.floor(ms / 60_000)}:${String(Math.floor(ms / 1000) % 60).padStart(2, "0")}`;

/**
 * The time of day with seconds, in this device's zone.
 * @param {Date} at
 */
export const timeSeconds = (at) => new Intl.DateTimeFormat(region, { ...hours(), second: "2-digit" }).format(at);
