import { defineConfig } from 'vitest/config'

/** The library needs nothing but Node; the window's tests drive the built program in Chromium. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    // A window waits for frames, letters and fades most of its time: two at once fit two cores.
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: 'library',
          include: ['tests/{shared,main,renderer,proofs}/**/*.test.ts'],
          // A law is tried on hundreds of cases; on a busy machine that takes its time.
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'window',
          include: ['tests/window/**/*.test.ts', 'tests/desktop/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          expect: { poll: { timeout: 10_000 } },
        },
      },
    ],
  },
})
