// Keys at the coach's desk, while the focus is in its list: j and k or the arrows move, Enter opens as any link does, a puts aside.
// Everything is a link or a button besides.

/** Where one was in the list before the page was made anew. */
const PLACE = "sayso-desk-place";

/** @param {Element} list */
const rows = (list) => [...list.querySelectorAll(".desk-row")];

/**
 * Moves the focus to a row, the last one where there are fewer.
 * @param {Element} list
 * @param {number} place
 */
function to(list, place) {
  const all = rows(list);
  const row = all[Math.max(0, Math.min(place, all.length - 1))];
  const open = row?.querySelector("a.open");
  if (open instanceof HTMLElement) open.focus();
}

/** @param {HTMLElement} list */
function listen(list) {
  list.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
    const at = /** @type {Element} */ (event.target);
    const row = at.closest(".desk-row");
    if (!row || at.closest("input, select, textarea, [contenteditable]")) return;
    const place = rows(list).indexOf(row);
    if (event.key === "j" || event.key === "ArrowDown") to(list, place + 1);
    else if (event.key === "k" || event.key === "ArrowUp") to(list, place - 1);
    else if (event.key === "a") {
      const button = row.querySelector(".does > .row [data-aside]");
      if (!(button instanceof HTMLElement)) return;
      sessionStorage.setItem(PLACE, String(place));
      button.click();
    } else return;
    event.preventDefault();
  });
  const place = sessionStorage.getItem(PLACE);
  sessionStorage.removeItem(PLACE);
  if (place !== null) to(list, Number(place));
}

for (const list of document.querySelectorAll("ul.desk")) listen(/** @type {HTMLElement} */ (list));
