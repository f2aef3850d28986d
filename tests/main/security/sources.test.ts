import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { sourcesOf } from '../../shared/imports/sources.ts'

/** What the program must not do anywhere, each with a line that would do it. */
const forbidden: readonly (readonly [string, RegExp, string])[] = [
  [
    'hand an address to the system',
    /openExternal|openPath\b.*shell|\bshell\b[^\n]*from 'electron'/,
    "import { shell } from 'electron'",
  ],
  [
    'embed a webview or let one open windows',
    /<webview|createElement\(['"]webview|allowpopups/i,
    '<webview src="x" allowpopups>',
  ],
  [
    'switch on features of the engine',
    /enableBlinkFeatures|appendSwitch|appendArgument/,
    "enableBlinkFeatures: 'x'",
  ],
  ['show a page from a file address', /loadFile\(|['"`]file:\/\//, 'window.loadFile("index.html")'],
  ['show a page from the network', /loadURL\(\s*['"`]https?:/, "window.loadURL('https://example.com')"],
  [
    'loosen the page',
    /nodeIntegration\w*: true|contextIsolation: false|sandbox: false|webSecurity: false/,
    'sandbox: false',
  ],
  ['run code made from text', /\beval\(|new Function\(|setTimeout\(\s*['"`]/, "new Function('x')"],
  [
    'put text into the page as markup',
    /dangerouslySetInnerHTML|\.(?:inner|outer)HTML\s*=|document\.write\(/,
    'element.innerHTML = text',
  ],
  [
    'trust a bad certificate',
    /certificate-error|setCertificateVerifyProc|ignore-certificate-errors/,
    "app.on('certificate-error'",
  ],
]

const sources = ['src-main', 'src-renderer', 'src-shared'].flatMap(sourcesOf)

describe('No line of the program', () => {
  for (const [what, pattern, example] of forbidden) {
    test(`is there to ${what}`, () => {
      expect(example).toMatch(pattern)
      expect(sources.filter(({ text }) => pattern.test(text)).map(({ path }) => path)).toEqual([])
    })
  }

  test('of the page’s own markup names another address or runs in place', () => {
    const markup = readFileSync(new URL('../../../src-renderer/index.html', import.meta.url), 'utf8')
    expect(markup).not.toMatch(/https?:|\/\/|<script(?![^>]*src=)|\son\w+=|<style/i)
  })
})
