// A style sheet that hangs would keep the page blank: after a while it is let go, the words stand there plain, and the
// styles come when they come.
(function () {
  var root = document.documentElement;
  var waiting = 0;
  function arrived() {
    waiting -= 1;
    if (!waiting) root.removeAttribute('data-plain');
  }
  function wait(link) {
    var later = link.cloneNode();
    later.media = 'print';
    later.onload = function () {
      later.media = 'all';
      arrived();
    };
    later.onerror = arrived;
    waiting += 1;
    link.replaceWith(later);
  }
  setTimeout(function () {
    // once the page stands, its own first sheets are there; a later one is waited for by whoever asked for it
    if (document.readyState !== 'loading') return;
    var links = document.querySelectorAll('link[rel="stylesheet"]');
    for (var n = 0; n < links.length; n++) if (!links[n].sheet) wait(links[n]);
    if (waiting) root.setAttribute('data-plain', 'yes');
  }, 4000);
})();
