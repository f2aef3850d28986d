/** A number as JSON text may spell it, which a value cannot hold: stands in a string until the text is made. */
function spelt(number: string): string {
  return `<<${number}>>`
}

/** The text with every number that was set aside in its place. */
export function withSpeltNumbers(text: string): string {
  return text.replace(/"<<([^<>"]*)>>"/g, '$1')
}

/** Names that a careless program would trip over. */
export const hostileNames: readonly string[] = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'valueOf',
  '',
  ' ',
  '0',
  '-',
  '1-2',
  '\0',
  'a\0b',
  '\ud800',
  '\udc00x',
  '\u202eרי',
  'צינור',
  'أنبوب 3',
  '👩‍🔧',
  '🎺'.repeat(31),
  'é',
  'e\u0301',
  '\u2028',
  '\ufeff',
  '../../etc',
  '=1+1',
  '<script>',
  'x'.repeat(60),
  'x'.repeat(100_000),
]

/** Values of every kind that a place in a file may be given in place of its own. */
export const hostileValues: readonly unknown[] = [
  null,
  true,
  false,
  0,
  1,
  -1,
  0.5,
  64,
  65,
  1e-320,
  5e-324,
  1e6,
  1e308,
  -1e308,
  2 ** 53,
  0.1 + 0.2,
  ...[
    '-0',
    '-0.0',
    '1e999',
    '-1e999',
    '1e-999',
    '-1e-999',
    '1E+2',
    '0.1e1',
    '00',
    '01',
    '+1',
    '.5',
    '1.',
  ].map(spelt),
  ...['NaN', 'Infinity', '-Infinity', '0x10', `1${'0'.repeat(400)}`, `0.${'0'.repeat(400)}1`].map(spelt),
  [],
  {},
  [[]],
  [null],
  { kind: 'equal' },
  { kind: 'custom', cents: Array(12).fill(0) },
  { outMm: 5, travelMm: 1 },
  ['1'],
  ['1', '1'],
  'all',
  '1',
  ...hostileNames,
]
