// Shows a print button where scripts run; without it the browser's own menu prints.
for (const button of document.querySelectorAll('[data-print]')) {
  button.hidden = false;
  button.addEventListener('click', () => window.print());
}
