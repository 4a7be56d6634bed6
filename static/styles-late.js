setTimeout(() => {
  if (document.readyState !== 'loading') return;
  const { dataset } = document.documentElement;
  for (const link of document.querySelectorAll('[rel=stylesheet]')) {
    if (link.sheet) continue;
    const later = link.cloneNode();
    later.media = 'print';
    later.onload = () => {
      later.media = 'all';
      delete dataset.plain;
    };
    link.replaceWith(later);
    dataset.plain = 'yes';
  }
}, 4000);
