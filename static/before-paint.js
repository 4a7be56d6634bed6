// Runs before the first paint: the page's light, the child's tone and leg side, and the way back to where this
// phone was. Small and old-fashioned on purpose; without it the page is a day page in the default drawing.
(function () {
  var root = document.documentElement;
  var kept = {};
  try {
    // the made-up child has choices of her own, and a mark on every page
    var madeUp = localStorage.getItem('bare-toes:made-up') === 'yes';
    if (madeUp) root.setAttribute('data-made-up', 'yes');
    kept = JSON.parse(localStorage.getItem('bare-toes:family' + (madeUp ? '-made-up' : '')) || '{}') || {};
  } catch (error) {
    kept = {};
  }
  var hour = new Date().getHours();
  var byClock = hour >= 22 || hour < 6 ? 'night' : 'day';
  root.setAttribute('data-light', kept.light === 'day' || kept.light === 'night' ? kept.light : byClock);
  root.setAttribute('data-early', 'yes');
  // the page keeps room for what script adds; after five seconds it stops waiting
  root.setAttribute('data-coming', 'yes');
  setTimeout(function () {
    root.removeAttribute('data-coming');
  }, 5000);
  if (/^[a-z]+$/.test(kept.skin || '')) root.setAttribute('data-skin', kept.skin);
  if (kept.side === 'left' || kept.side === 'right') root.setAttribute('data-side', kept.side);

  var page = document.querySelector('meta[name="bare-toes-page"]');
  var name = page ? page.getAttribute('content') : '';
  var plain = /^[a-z]{2,3}(-[A-Za-z]{2,4})?$/;
  // a nurse's card came with the link: on to where it is taken, in this phone's language
  var card = /^#[0-9A-Za-z-]{20,60}$/.test(location.hash);
  if (card && name === 'languages' && plain.test(kept.locale || ''))
    location.replace('./' + kept.locale + '/bed-card/take/' + location.hash);
  // "#choose" is how a page links here on purpose
  if (location.hash !== '#choose' && !card) {
    if (name === 'languages' && plain.test(kept.locale || '')) location.replace('./' + kept.locale + '/');
    if (name === 'who' && kept.role === 'grown-up') location.replace('./look/');
  }
})();
