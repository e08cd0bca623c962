// Days as the home counts them, in its own zone, also while nothing answers. Pure.

const DAY_MS = 86_400_000;
const WIDEST_MS = 16 * 3_600_000; // no zone is further from UTC

/** @type {Map<string, Intl.DateTimeFormat>} */
const written = new Map();
/** @type {Map<string, number>} */
const starts = new Map();

/** @param {string} zone */
function writer(zone) {
  const known = written.get(zone);
  if (known) return known;
  /** @type {Intl.DateTimeFormatOptions} */
  const date = { calendar: "iso8601", numberingSystem: "latn", year: "numeric", month: "2-digit", day: "2-digit" };
  let made;
  try {
    made = new Intl.DateTimeFormat("en-CA", { ...date, timeZone: zone });
  } catch {
    made = new Intl.DateTimeFormat("en-CA", date); // a zone that this browser does not know: the device's own
  }
  written.set(zone, made);
  return made;
}

/**
 * The day of a moment: days since 1 January 1970.
 * @param {number} at
 * @param {string} zone
 */
export function dayOf(at, zone) {
  const parts = Object.fromEntries(
    writer(zone)
      .formatToParts(at)
      .map((part) => [part.type, Number(part.value)]),
  );
  return Math.round(Date.UTC(parts.year, parts.month - 1, parts.day) / DAY_MS);
}

/**
 * The first moment of a day.
 * @param {number} day
 * @param {string} zone
 */
export function dayStart(day, zone) {
  const known = starts.get(`${zone} ${day}`);
  if (known !== undefined) return known;
  let [before, from] = [day * DAY_MS - WIDEST_MS, day * DAY_MS + WIDEST_MS];
  while (from - before > 1) {
    const middle = Math.floor((before + from) / 2);
    if (dayOf(middle, zone) < day) before = middle;
    else from = middle;
  }
  starts.set(`${zone} ${day}`, from);
  return from;
}
