/** Everything that Help says; the first steps, the words of the trade and the formulas have files of their own. */
export const helpWords = {
  title: 'Help',
  parts: { steps: 'First steps', keys: 'Signs and keys', words: 'Words', formulas: 'Formulas' },
  partsLabel: 'Parts of the help',
  close: 'Close',
  source: 'Source:',
  allWords: 'All words and formulas…',
  signs:
    'Cents are positive when a note is sharp. Tube is length along the centre line; out is how far a slide is moved, and each millimetre out adds two of tube. What you typed is bold, what follows from it is light. A small raised figure is a harmonic: 1-3³ is valves 1 and 3 on the third. A dot stands where there is nothing to show.',
  typed: 'A field takes 2*62.5 + pi*19, 2 ft 9 in, 1 3/16 in, 12,5 mm.',
  stepsLead: 'Ways in, each with an example from Saltmarsh Lane. What is open is asked about first.',
} as const

/** What the keys do, by what they are pressed in; `main` is what stands before a letter: `Ctrl+` or `⌘`. */
export const helpKeys = (main: string): readonly (readonly [keys: string, act: string])[] => [
  [`${main}K`, 'find anything: fields, designs, notes, commands, words'],
  [`${main}S, ${main}Shift+S`, 'save, save as'],
  [`${main}O`, 'open'],
  [`${main}P`, 'paper: the report, or the sheet of the job on the bench'],
  ['F1', 'this help'],
  [`${main}Z, ${main}Shift+Z`, 'undo, redo'],
  ['F6, Shift+F6', 'to the next part of the window, and back'],
  ['← → ↑ ↓ in a chart', 'read the values; Enter shows the account'],
  ['← → on a loop’s bow', 'half a millimetre of tube; with Shift 5 mm, Page keys 10 mm'],
  ['↑ ↓ in a field', 'a step up or down; with Shift ten'],
  ['Alt+↑ ↓ on a design', 'move it in the line-up; F2 renames, Del deletes'],
  ['1 to 9, 0 beside the air', 'press a valve or let it up; 0 lets all of them up'],
  ['C, L on a fingering', 'choose it for its note, listen to it'],
  ['Esc', 'silence, whatever sounds'],
]
