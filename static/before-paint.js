(function () {
  var root = document.documentElement;
  var kept = {};
  try {
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
  root.setAttribute('data-coming', 'yes');
  setTimeout(function () {
    root.removeAttribute('data-coming');
  }, 5000);
  if (/^[a-z]+$/.test(kept.skin || '')) root.setAttribute('data-skin', kept.skin);
  if (kept.side === 'left' || kept.side === 'right') root.setAttribute('data-side', kept.side);

  var page = document.querySelector('meta[name="bare-toes-page"]');
  var name = page ? page.getAttribute('content') : '';
  // a language that the ward has taken away since is asked for anew
  var spoken = page ? (page.getAttribute('data-languages') || '').split(' ') : [];
  var known = spoken.indexOf(kept.locale) >= 0;
  var letters = location.hash;
  var card = /^#[0-9A-Za-z-]{20,60}$/.test(letters);
  var plan = /^#[Pp][0-9A-Za-z-]{71,8000}$/.test(letters);
  var take = card ? 'bed-card/take/' : plan ? 'things-to-do/take/' : '';
  if (take && name === 'languages') {
    if (known) location.replace('./' + kept.locale + '/' + take + letters);
    addEventListener(
      'click',
      function (event) {
        var link = event.target.closest('a.language');
        if (!link || link.hash || location.hash !== letters) return;
        link.href += take + letters;
        // nobody who goes back later finds a child in the address
        history.replaceState(history.state, '', location.pathname + location.search);
      },
      true,
    );
  }
  if (letters !== '#choose' && !take) {
    if (name === 'languages' && known) location.replace('./' + kept.locale + '/');
    if (name === 'who' && kept.role === 'grown-up') location.replace('./look/');
  }
})();
