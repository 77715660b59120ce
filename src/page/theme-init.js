// Runs before the first paint, so that a dark page does not flash white.
(function () {
  var wish = null;
  try {
    wish = localStorage.getItem('reckoner-theme');
  } catch (e) {
    // Storage may be closed; then the system's own setting holds.
  }
  var dark = wish === 'dark' || (wish !== 'light' && matchMedia('(prefers-color-scheme: dark)').matches);
  document.documentElement.dataset.theme = dark ? 'dark' : 'light';
  document.documentElement.dataset.jpThemeLight = dark ? 'false' : 'true';
})();
