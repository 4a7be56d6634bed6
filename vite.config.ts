import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { languagesPlugin } from './.ci/languages-plugin.mjs';

export default defineConfig({
  plugins: [languagesPlugin(), sveltekit()],
  build: { target: 'es2020' },
  test: {
    include: ['tests/{unit,reference,rules}/**/*.test.ts'],
    environment: 'node',
  },
});
