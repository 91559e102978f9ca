// A part of the page that the server tells anew. Only what differs is changed: focus, selection and open folds stay.
(() => {
  const live = document.querySelector('[data-live]')?.dataset;
  if (!live) return;
  const SILENCE_MS = 45_000, AGAIN_MS = 3_000, ENDED_MS = 1_000, KEEP_MS = 3_600_000;
  const say = word => dispatchEvent(new Event('live:' + word));
  const like = (old, fresh) => old.nodeName === fresh.nodeName && (old.id ?? '') === (fresh.id ?? '');
  const change = (old, fresh) => {
    if (old.isEqualNode(fresh)) return;
    if (!like(old, fresh)) return old.replaceWith(fresh);
    if (old.nodeType !== Node.ELEMENT_NODE) return void (old.nodeValue = fresh.nodeValue);
    for (const { name } of [...old.attributes]) if (name !== 'open' && !fresh.hasAttribute(name)) old.removeAttribute(name);
    for (const { name, value } of fresh.attributes) if (old.getAttribute(name) !== value) old.setAttribute(name, value);
    const was = [...old.childNodes], is = [...fresh.childNodes];
    is.forEach((node, i) => was[i] ? change(was[i], node) : old.append(node));
    was.slice(is.length).forEach(node => node.remove());
  };
  const take = text => {
    const focus = document.activeElement?.id;
    for (const part of [...new DOMParser().parseFromString(text, 'text/html').body.children]) {
      const old = document.getElementById(part.id);
      if (old) change(old, part);
    }
    if (focus && document.activeElement?.id !== focus) document.getElementById(focus)?.focus({ preventScroll: true });
  };
  let stream, silence;
  const listen = () => {
    quiet();
    stream = new EventSource(live.live);
    const hear = (name, act) => stream.addEventListener(name, event => {
      clearTimeout(silence);
      silence = setTimeout(() => { lost(); listen(); }, SILENCE_MS);
      act?.(event);
    });
    hear('open', () => say('open'));
    hear('beat');
    hear('message', event => event.lastEventId === document.documentElement.dataset.assets ? take(event.data) : location.reload());
    // The answer to signing out may still be on its way, and with it the end of the cookie.
    hear('ended', () => { lost(); setTimeout(() => location.reload(), ENDED_MS); });
    stream.onerror = () => {
      say('lost');
      if (stream.readyState !== EventSource.CLOSED) return;
      lost();
      setTimeout(again, AGAIN_MS);
    };
  };
  const quiet = () => { clearTimeout(silence); stream?.close(); };
  const lost = () => { quiet(); say('lost'); };
  // The stream was refused: the server is not up yet, or nobody is signed in any more, and then the page goes to sign in.
  const again = () => fetch(location.href, { redirect: 'manual' })
    .then(answer => answer.type === 'opaqueredirect' ? location.reload() : answer.ok ? listen() : setTimeout(again, AGAIN_MS))
    .catch(() => setTimeout(again, AGAIN_MS));
  // A screen that nobody touches stays signed in.
  if (live.keep) setInterval(() => fetch(live.keep).catch(() => {}), KEEP_MS);
  // A browser has few connections to one server: pages that nobody sees leave theirs to others.
  document.addEventListener('visibilitychange', () => document.hidden ? quiet() : listen());
  listen();
})();
