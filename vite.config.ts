import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';
import { firstDrawingPlugin, languagesPlugin } from './.ci/languages-plugin.mjs';

export default defineConfig({
  plugins: [languagesPlugin(), firstDrawingPlugin(), sveltekit()],
  build: { target: 'es2020' },
  test: {
    include: ['tests/{unit,reference,rules}/**/*.test.ts'],
    environment: 'node',
  },
});
