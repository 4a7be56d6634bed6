import adapter from '@sveltejs/adapter-static';

/** The folder of a site that this build is for; links are relative and lead anywhere, but the page for a wrong address. */
const base = process.env.BARE_TOES_BASE ?? '';
if (!/^(\/[a-z0-9][a-z0-9._-]*)*$/i.test(base))
  throw new Error(`BARE_TOES_BASE: a path like /toes, or nothing, saw ${JSON.stringify(base)}`);

/** @type {import('@sveltejs/kit').Config} */
export default {
  kit: {
    adapter: adapter(),
    paths: { base, relative: true },
    prerender: { entries: ['/', '/404.html'] },
    csp: {
      mode: 'hash',
      directives: {
        'default-src': ['self'],
        'script-src': ['self'],
        'style-src': ['self', 'unsafe-inline'],
        'img-src': ['self', 'data:'],
        'connect-src': ['self'],
        'object-src': ['none'],
        'base-uri': ['none'],
        'form-action': ['self'],
      },
    },
  },
};
