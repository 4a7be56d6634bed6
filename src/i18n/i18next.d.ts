import type { Areas } from './words.ts';

declare module 'i18next' {
  interface CustomTypeOptions {
    defaultNS: 'common';
    resources: Areas;
  }
}
