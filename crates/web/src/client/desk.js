// Keys at the coach's desk: j and k move from row to row, wherever one is on the page unless that was turned off; while the focus is in the
// list the arrows do, too, Enter opens as any link does, a puts aside. Everything is a link or a button besides.

/** Where one was before the page was made anew: the list and the row in it. */
const PLACE = "sayso-desk-place";
/** Whether letters count outside the list: "no" where they do not. */
const ANYWHERE = "sayso-desk-keys";

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
  if (!(open instanceof HTMLElement)) return;
  const folded = list.closest("details");
  if (folded) folded.open = true;
  open.focus();
}

/**
 * Keeps where one is, for the page that what is sent leads back to.
 * @param {Element[]} lists
 * @param {Element} row
 */
function keepPlace(lists, row) {
  const list = lists.findIndex((list) => list.contains(row));
  if (lists[list]) sessionStorage.setItem(PLACE, `${list} ${rows(lists[list]).indexOf(row)}`);
}

/**
 * Where one was before; at the heading where no row is left.
 * @param {Element[]} lists
 */
function backToPlace(lists) {
  const place = sessionStorage.getItem(PLACE);
  sessionStorage.removeItem(PLACE);
  if (place === null) return;
  const [at, row] = place.split(" ").map(Number);
  const list = lists[at ?? 0] ?? lists[0];
  if (list) {
    to(list, row ?? 0);
    return;
  }
  const heading = document.querySelector("main h1");
  if (!(heading instanceof HTMLElement)) return;
  heading.tabIndex = -1;
  heading.focus();
}

/**
 * Which way a key leads from row to row; 0 for any other.
 * @param {string} key
 */
const way = (key) => (key === "j" || key === "ArrowDown" ? 1 : key === "k" || key === "ArrowUp" ? -1 : 0);

/**
 * Puts aside what a row needs first; false where it has nothing of that kind.
 * @param {Element} row
 */
function putAside(row) {
  const button = row.querySelector(".does > .row [data-aside]");
  if (!(button instanceof HTMLElement)) return false;
  button.click();
  return true;
}

/** @param {Element[]} lists */
function listen(lists) {
  /** The row that had the focus last. */
  let last = -1;
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
    const at = event.target instanceof Element ? event.target : document.body;
    if (at.closest("input:not([type=checkbox]), select, textarea, [contenteditable]")) return;
    const row = at.closest(".desk-row");
    const list = lists.find((list) => row && list.contains(row)) ?? lists[0];
    if (!list) return;
    const inside = row !== null && list.contains(row);
    // Outside the list letters alone count: the arrows scroll the page there.
    const moves = inside || (localStorage.getItem(ANYWHERE) !== "no" && event.key.length === 1) ? way(event.key) : 0;
    if (inside) last = rows(list).indexOf(row);
    if (moves !== 0) to(list, last + moves);
    else if (!(inside && event.key === "a" && putAside(row))) return;
    event.preventDefault();
  });
  // Whatever is sent from a row, or about what was just put aside, leads back to this page.
  document.addEventListener("submit", (event) => {
    const form = event.target instanceof Element ? event.target : document.body;
    const row = form.closest(".desk-row");
    if (row) keepPlace(lists, row);
    else if (form.closest("[data-back]")) sessionStorage.setItem(PLACE, "0 0");
  });
  backToPlace(lists);
}

listen([...document.querySelectorAll("ul.desk")]);
for (const box of document.querySelectorAll("[data-keys]")) {
  if (!(box instanceof HTMLInputElement)) continue;
  box.checked = localStorage.getItem(ANYWHERE) !== "no";
  box.addEventListener("change", () => localStorage.setItem(ANYWHERE, box.checked ? "yes" : "no"));
}
