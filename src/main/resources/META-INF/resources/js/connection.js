// Says in words whether the server can be reached. Without scripts the place stays empty.
(() => {
  const place = document.getElementById('connection');
  if (!place) return;
  const say = connected => {
    const text = connected ? place.dataset.connected : place.dataset.reconnecting;
    place.classList.toggle('lost', !connected);
    if (place.textContent !== text) place.textContent = text;
  };
  say(navigator.onLine);
  addEventListener('online', () => say(true));
  addEventListener('offline', () => say(false));
  for (const good of ['htmx:afterOnLoad', 'live:open']) addEventListener(good, () => say(true));
  for (const bad of ['htmx:sendError', 'htmx:timeout', 'live:lost']) addEventListener(bad, () => say(false));
  // A form that came back with faults: the summary takes the focus.
  document.getElementById('faults')?.focus();
  addEventListener('htmx:afterSettle', () => document.getElementById('faults')?.focus());
})();
