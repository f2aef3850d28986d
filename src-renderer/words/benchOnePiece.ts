/** What is said where the whole instrument is reckoned from one piece. */
export const onePieceWords = {
  title: 'From one known length',
  emptyText:
    'One loop that is known to be right, the bore or the pitch says what the open length and every other loop should be.',
  begin: 'Begin from one length',
  measured: 'Measured',
  kinds: { loop: 'a loop', bore: 'the bore', fundamental: 'the pitch' },
  nothing: 'A length and a drop above 0 are needed.',

  loopOfValve: 'Loop of valve',
  valve: (id: string, semitones: string) =>
    `${id}, ${semitones === '1' ? '1 semitone' : `${semitones} semitones`}`,
  loopLength: 'Its length, tube',
  loopLengthHelp:
    'The whole loop along its centre line, with the slide where the valve’s note is in tune: not one leg.',
  boreLength: 'Bore length',
  boreLengthHelp: 'Centre line from the mouthpiece receiver to the bell rim, valves up.',
  correction: 'Mouthpiece and bell',
  correctionHelp: 'What mouthpiece and bell add, usually below a tenth of the whole.',
  fundamental: 'Fundamental',
  fundamentalHelp: 'Nominal harmonic 1 of the open route: a harmonic’s frequency over its number.',

  answer: (length: string, timesLoop: string | null, hz: string, note: string, cents: string, a4Hz: string) =>
    `The open length is ${length} of tube${timesLoop === null ? '' : `, ${timesLoop} times the loop`}. Its fundamental is ${hz} Hz: ${note} ${cents} cents at A4 = ${a4Hz}.`,
  caption: 'Loops taken alone, in tune with the open instrument',
  columns: { valve: 'valve', semitones: 'semitones', loop: 'loop, tube', inDesign: 'in the design' },
  takeOpen: 'Take the open length into the design',
  takeLoops: 'The loops as well',
  takeOpenStep: 'Take open length',
  takeLoopsStep: 'Take length and loops',
} as const
