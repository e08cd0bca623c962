// Judging heard presses without loading the page anew for each: hear it, tap once, the next one stands on top.

import { text } from "./dom.js";
import { say } from "./say.js";

/** @type {HTMLElement | null} */
const list = document.querySelector("[data-heard-list]");
const said = document.querySelector("[data-heard-said]");
/** @type {HTMLAudioElement | undefined} */
let playing;

/**
 * Plays the sound around a press from its start; another one that plays stops.
 * @param {HTMLButtonElement} button
 */
function play(button) {
  playing?.pause();
  playing = new Audio(button.dataset.play);
  const back = () => button.setAttribute("aria-pressed", "false");
  playing.onended = back;
  playing.onpause = back;
  playing.onerror = () => {
    back();
    button.disabled = true;
    text(button, say("client-ear-sound-gone"));
  };
  button.setAttribute("aria-pressed", "true");
  playing.play().catch(back);
}

/** @param {HTMLElement} list */
function counts(list) {
  for (const part of list.querySelectorAll("section")) {
    const left = part.querySelectorAll("form").length;
    part.hidden = left === 0;
    text(part.querySelector("[data-n]"), String(Number(part.dataset.more ?? 0) + left));
  }
  // Older ones are on the next page.
  if (!list.querySelector("form")) location.reload();
}

/** @param {SubmitEvent} event */
async function judge(event) {
  const form = /** @type {HTMLFormElement} */ (event.target);
  const chosen = /** @type {HTMLButtonElement | null} */ (event.submitter);
  if (!chosen?.name) return;
  event.preventDefault();
  for (const b of form.querySelectorAll("button")) b.disabled = true;
  playing?.pause();
  try {
    const body = new URLSearchParams({ [chosen.name]: chosen.value });
    const response = await fetch(form.action, { method: "POST", body, credentials: "same-origin" });
    // 404: judged on another device meanwhile.
    if (!response.ok && response.status !== 404) throw new Error(String(response.status));
  } catch {
    for (const b of form.querySelectorAll("button")) b.disabled = false;
    text(said, say("client-ear-not-noted"));
    return;
  }
  text(said, say("client-ear-noted", { word: form.dataset.says ?? "", answer: chosen.dataset.label ?? "" }));
  const next = form.nextElementSibling ?? form.previousElementSibling;
  form.remove();
  /** @type {HTMLElement | null | undefined} */
  const first = next?.querySelector("button:not([disabled])");
  first?.focus({ preventScroll: true });
  if (list) counts(list);
}

list?.addEventListener("click", (event) => {
  /** @type {HTMLButtonElement | null} */
  const button = /** @type {Element} */ (event.target).closest("[data-play]");
  if (button) play(button);
});
list?.addEventListener("submit", judge);
for (const button of document.querySelectorAll("[data-play]")) button.removeAttribute("hidden");
