// Escape closes the fold that the focus is in, and gives the focus back to its summary.
addEventListener('keydown', event => {
  if (event.key !== 'Escape' || event.defaultPrevented) return;
  const fold = document.activeElement?.closest('details.more[open]:not(.fold)');
  if (!fold) return;
  fold.open = false;
  fold.querySelector('summary').focus();
});
