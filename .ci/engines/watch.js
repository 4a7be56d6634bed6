// Stands before the first script of each page while the three engines are tried: keeps what goes wrong in it.
(function () {
  let leaving = false;
  // what is broken off because the reader goes on is no fault
  addEventListener('beforeunload', function () {
    leaving = true;
  });
  addEventListener('pageshow', function () {
    leaving = false;
  });
  function note(text) {
    if (leaving) return;
    const all = JSON.parse(sessionStorage.getItem('engine-faults') || '[]');
    all.push(location.pathname + ': ' + text);
    sessionStorage.setItem('engine-faults', JSON.stringify(all));
  }
  addEventListener(
    'error',
    function (event) {
      const from = event.target && (event.target.src || event.target.href);
      // a hint to fetch early: Firefox refuses one for a module that is on its way; what the page needs it imports itself
      if (event.target && event.target.rel === 'modulepreload') return;
      note(from ? 'not loaded: ' + from : event.message + ' ' + (event.error && event.error.stack));
    },
    true,
  );
  addEventListener('unhandledrejection', function (event) {
    note('nobody took: ' + ((event.reason && event.reason.stack) || event.reason));
  });
  addEventListener('securitypolicyviolation', function (event) {
    note('against the policy ' + event.violatedDirective + ': ' + event.blockedURI);
  });
})();
