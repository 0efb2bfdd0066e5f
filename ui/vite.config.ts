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
    // What draws in space comes in one piece of 570 kB, and only when the builder asks for it.
    chunkSizeWarningLimit: 600,
    modulePreload: { polyfill: false },
  },
  test: {
    environment: 'happy-dom',
    include: ['test/**/*.test.{ts,tsx}'],
    reporters: ['default', 'junit'],
    outputFile: { junit: 'target/vitest.xml' },
  },
});
