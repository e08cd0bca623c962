// Lessons that open by themselves, each once for a person and an animal: before the first session, after the first invitation and
// the first "not now" were answered. Never while an animal waits; on a small screen, not while a session runs either.

import { openCatch } from "./catch.js";
import { state } from "./inviting.js";
import { button, el } from "./dom.js";
import { isA } from "./sitting.js";
import { say } from "./say.js";

/** @import { Event, FirstLesson, Pad, Panel } from "../../client-checks/client" */

/** What makes a first time one that was. @type {Record<FirstLesson["at"], (event: Event) => boolean>} */
const WAS = {
  session: isA("session_start"),
  invitation: isA("invitation"),
  not_now: (event) => isA("delivery")(event) && ["declined", "alternative"].includes(event.body.answer),
};

/** A screen this low, in the letters that its reader chose, has no room for a lesson between a question and its answers. */
const LOW = "(max-height: 43rem)";

/** What stands open, until something waits. @type {string | undefined} */
let stood;

/** @param {Pad} pad */
const whose = (pad) => pad.now.person ?? "";
/**
 * What was opened to whoever holds the device: a lesson that is due, or that one was put away.
 * @param {Pad} pad
 */
const opened = (pad) => pad.memo.lessons?.[whose(pad)] ?? {};
/**
 * @param {Pad} pad
 * @param {FirstLesson["at"]} at
 * @param {FirstLesson | "seen"} is
 */
const set = (pad, at, is) =>
  pad.setMemo({ lessons: { ...pad.memo.lessons, [whose(pad)]: { ...opened(pad), [at]: is } } });

/**
 * The lesson that is to stand open now: a first time that has just been, else the session that is about to be the first.
 * @param {Pad} pad
 * @param {boolean} begins whether this is where a session is begun
 * @returns {FirstLesson | undefined}
 */
function now(pad, begins) {
  const mine = pad.view.stand.filter((e) => !pad.now.person || e.person === pad.now.person);
  for (const lesson of pad.now.lessons ?? []) {
    if (opened(pad)[lesson.at] || !mine.some(WAS[lesson.at])) continue;
    // Kept with this device: what the notebook says next is that the first time was.
    set(pad, lesson.at, lesson.at === "session" ? "seen" : lesson);
  }
  const due = Object.values(opened(pad)).find((is) => is !== "seen");
  if (due) return due;
  // Of others who were there today it tells nothing; whoever answered a press themselves has begun another way.
  const began = mine.some(isA("press"));
  if (!begins || pad.view.session || began || pad.now.words.length === 0) return undefined;
  return (pad.now.lessons ?? []).find((lesson) => lesson.at === "session" && !opened(pad)[lesson.at]);
}

/**
 * Its short form, above what is asked; undefined where none is to stand open.
 * @param {Pad} pad
 * @param {boolean} begins
 * @returns {Panel | undefined}
 */
export function first(pad, begins) {
  const lesson = now(pad, begins);
  const waits = pad.view.stop || state(pad).step || Object.keys(pad.view.pending).length > 0 || Boolean(openCatch(pad));
  // It comes once the session is over.
  const later = pad.view.session !== undefined && matchMedia(LOW).matches;
  if (!lesson || waits || later) {
    // Whoever went on to something else has no use for it in between.
    if (waits && lesson && stood === lesson.at && lesson.at !== "session") set(pad, lesson.at, "seen");
    stood = undefined;
    return undefined;
  }
  stood = lesson.at;
  const read = async (/** @type {MouseEvent} */ click) => {
    click.preventDefault();
    await set(pad, lesson.at, "seen");
    location.assign(lesson.address);
  };
  return {
    key: `lesson-${lesson.at}`,
    build: () => [
      el(
        "section",
        { class: "first-lesson", "data-test": `first-${lesson.at}` },
        el("div", { "data-tell": true }, el("p", {}, el("strong", {}, lesson.title)), el("p", {}, lesson.short)),
        el(
          "div",
          { class: "row even" },
          el(
            "a",
            { class: "button", href: lesson.address, "data-test": "lesson-read", onclick: read },
            say("client-board-lesson-read"),
          ),
          button(
            say(lesson.at === "session" ? "client-board-lesson-later" : "client-board-put-away"),
            "lesson-later",
            () => set(pad, lesson.at, "seen"),
          ),
        ),
        // Before the steps: what is below the fold is not read, and here it is acted.
        el("p", { class: "caution" }, lesson.care),
        el("ol", {}, ...lesson.steps.map((step) => el("li", {}, step))),
      ),
    ],
  };
}
