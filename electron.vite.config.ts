import { resolve } from 'node:path'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'electron-vite'

const at = (path: string): string => resolve(import.meta.dirname, path)

export default defineConfig(({ command }) => ({
  main: {
    define: { DEVELOPMENT: JSON.stringify(command === 'serve') },
    build: { rollupOptions: { input: at('src-main/main/index.ts') } },
  },
  preload: {
    build: {
      rollupOptions: {
        input: at('src-main/preload/index.ts'),
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: at('src-renderer'),
    plugins: [react()],
    build: {
      outDir: at('out/renderer'),
      emptyOutDir: true,
      minify: true,
      // The browser form meets more browsers than the one that the desktop form brings along.
      target: 'es2022',
      rollupOptions: { input: at('src-renderer/index.html') },
    },
  },
}))
