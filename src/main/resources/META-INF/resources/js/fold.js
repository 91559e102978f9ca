// Escape closes the fold that the focus is in, and gives the focus back to its summary.
addEventListener('keydown', event => {
  if (event.key !== 'Escape' || event.defaultPrevented) return;
  const fold = document.activeElement?.closest('details.more[open]:not(.fold)');
  if (!fold) return;
  fold.open = false;
  fold.querySelector('summary').focus();
});

// A link to something inside a fold opens the fold; not every browser does it by itself.
const reveal = () => {
  const wanted = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (!wanted) return;
  for (let fold = wanted.closest('details'); fold; fold = fold.parentElement.closest('details')) fold.open = true;
  wanted.scrollIntoView();
};
addEventListener('hashchange', reveal);
addEventListener('DOMContentLoaded', reveal);
