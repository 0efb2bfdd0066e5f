import { defineConfig } from 'vitest/config';
import { standIn } from './dev/standIn.ts';

export default defineConfig({
  base: './',
  plugins: [standIn()],
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2022',
    // Inlined assets would need data: in the content security policy for scripts and styles.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  test: {
    environment: 'happy-dom',
    include: ['test/**/*.test.{ts,tsx}'],
    reporters: ['default', 'junit'],
    outputFile: { junit: 'target/vitest.xml' },
  },
});
