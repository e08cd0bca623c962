// Forms need the notebook. Before one is sent, on any page, it is asked for a sign of life: where there is none, the page says
// so beside the form, and what was typed stays, instead of the browser's own error in its place.

/** Forms that were asked for, on their way. */
const asked = new WeakSet();

/** @param {HTMLFormElement} form */
function told(form) {
  const own = form.querySelector("[data-offline]");
  if (own) return own;
  const line = document.createElement("p");
  line.className = "caution";
  line.setAttribute("role", "status");
  line.dataset.offline = "";
  line.hidden = true;
  form.append(line);
  line.textContent = document.querySelector('meta[name="sayso-unsent"]')?.getAttribute("content") ?? "";
  return line;
}

addEventListener("submit", (event) => {
  const form = /** @type {HTMLFormElement} */ (event.target);
  // Not of the form's own field of that name: the attribute.
  const writes = form.getAttribute("method")?.toLowerCase() === "post";
  if (event.defaultPrevented || !writes || asked.delete(form)) return;
  event.preventDefault();
  if (form.dataset.asking) return; // a second tap meanwhile
  form.dataset.asking = "yes";
  form.querySelector("[data-offline]")?.setAttribute("hidden", "");
  // Any answer will do, also that there is no such page.
  fetch("/manifest.webmanifest", { method: "HEAD", cache: "no-store", redirect: "manual" })
    .then(
      () => {
        asked.add(form);
        form.requestSubmit(event.submitter);
      },
      () => told(form).removeAttribute("hidden"),
    )
    .finally(() => delete form.dataset.asking);
});
