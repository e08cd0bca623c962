// Shows a print button where scripts run; without it the browser's own menu prints.
for (const button of document.querySelectorAll("[data-print]")) {
  button.removeAttribute("hidden");
  button.addEventListener("click", () => window.print());
}
