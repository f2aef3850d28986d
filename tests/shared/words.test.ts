import { describe, expect, it } from 'vitest'
import { sourcesOf } from './imports/sources.ts'
import { isAllowed, unneeded } from './words/allowed.ts'
import { textsOf } from './words/texts.ts'

const sources = sourcesOf('src-renderer').filter(({ path }) => !path.startsWith('src-renderer/words/'))
const texts = sources.flatMap(textsOf)

describe('the text that a person reads', () => {
  it('stands in the folder of words, and nowhere else in the window', () => {
    expect(sources.length).toBeGreaterThan(0)
    const strays = texts.filter(({ text }) => !isAllowed(text))
    expect(strays.map(({ path, line, text }) => `${path}:${line}: ${text}`)).toEqual([])
  })

  it('has no exception that nothing needs', () => {
    expect(unneeded(texts.map(({ text }) => text))).toEqual([])
  })
})

describe('the search for text', () => {
  const found = (code: string) => textsOf({ path: 'Part.tsx', text: code }).map(({ text }) => text)

  it.each([
    ['<p>Some text</p>', ['Some text']],
    ['<p>\n  <b>{name}</b> cents, <i>sharp</i>\n</p>', ['cents,', 'sharp']],
    ['<p aria-label="Bore" />', ['Bore']],
    [`<Field label={on ? 'shown' : \`hidden \${why}\`} />`, ['shown', 'hidden']],
    ["<p>{open ? 'hide' : null}{name ?? 'Nameless'}</p>", ['hide', 'Nameless']],
    ["<p>{'Size' + of}</p>", ['Size']],
    [
      "const options = [{ value: 'usual', text: 'one a step' }, { value: 'all', text: 'all' }]",
      ['one a step', 'all'],
    ],
    [`const said = \`\${name} is in tune\``, ['is in tune']],
    ["const trouble = refuse('It was not saved')", ['It was not saved']],
    ['<Fact name="valves" />', ['valves']],
  ])('finds what %s says', (code, expected) => {
    expect(found(code)).toEqual(expected)
  })

  it.each([
    "import { words } from './two words.ts'",
    '<p className="soft captionOf" id="page" role="group">{words.title}</p>',
    "<p title={kind === 'bell' ? words.bell : words.of(kind, 'cup')}>¼ · x</p>",
    '<input name="system" type="radio" />',
    "throw new RangeError('a loop has no length')",
    "<p>{steps['bell']}</p>",
    "useView.setState({ page: 'bench', by: 'note' })",
    `const path = \`M\${x} \${y}h2V\${z}\``,
  ])('leaves %s alone', (code) => {
    expect(found(code)).toEqual([])
  })

  it('knows the line', () => {
    expect(textsOf({ path: 'Part.tsx', text: '\n\nconst part = (\n  <p>Text</p>)' })).toEqual([
      { path: 'Part.tsx', line: 4, text: 'Text' },
    ])
  })

  it('refuses what it cannot read', () => {
    expect(() => textsOf({ path: 'Part.tsx', text: '<p>' })).toThrow('Part.tsx')
  })
})
