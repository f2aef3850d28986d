/** A word of the trade in our own words. */
export interface GlossaryWord {
  readonly id: string
  readonly word: string
  readonly meaning: string
  /** Formulas that reckon it. */
  readonly formulas?: readonly string[]
}

const word = (id: string, name: string, meaning: string, ...formulas: readonly string[]): GlossaryWord => ({
  id,
  word: name,
  meaning,
  ...(formulas.length === 0 ? {} : { formulas }),
})

/** The words of the trade, by their alphabet. */
export const glossary: readonly GlossaryWord[] = [
  word(
    'a4',
    'A4',
    'The pitch that everything is measured against: the frequency of the A above middle C. 440 Hz as a rule, 442 and 443 in many orchestras; 415, 430, 435 and 452.5 at other times.',
    'cents',
  ),
  word(
    'account',
    'Account',
    'One figure taken apart: what the harmonic, the loops, the slides, the main slide, the air and the targets each add to it. The parts sum to the whole.',
    'combinationError',
  ),
  word(
    'air',
    'Air',
    'The mean of the air column in the instrument, not of the room and not of the breath. One degree warmer is about 3 cents sharper; humid breath sharpens and its carbon dioxide flattens, and the two nearly cancel.',
    'speedOfSound',
  ),
  word(
    'ascendingValve',
    'Ascending valve',
    'A valve that takes tube out of the route when it is pressed, and so raises the note. Its nominal drop is negative.',
    'gateRule',
  ),
  word(
    'band',
    'Band',
    'The tolerance that you set for yourself, either side of in tune. What lies outside is drawn in red. 5, 10 and 15 cents are common to start from.',
  ),
  word(
    'beat',
    'Beat',
    'The slow swelling of two tones that are nearly the same. It comes as often a second as their frequencies differ, and n times as often at partial n.',
    'beats',
  ),
  word(
    'bore',
    'Bore',
    'The inside of the tube, and its inner diameter. The bore length is the centre line from the mouthpiece receiver to the bell rim.',
    'openLength',
    'impedance',
    'airOfBore',
  ),
  word(
    'bow',
    'Bow',
    'The U at the end of a slide. Its radius is half the spacing of the legs, along the centre line.',
    'bowLength',
    'bowInertance',
  ),
  word(
    'cents',
    'Cents',
    'Hundredths of a tempered semitone: 1200 to the octave. Positive is sharp.',
    'cents',
  ),
  word(
    'changeValve',
    'Change valve',
    'A valve that swaps the whole instrument to another length, as the thumb valve of a double horn does.',
    'gateRule',
  ),
  word(
    'combination',
    'Combination',
    'Several valves pressed at once. Their loops add up, but each was cut for the open length, so together they come out short: that is why 1-3 is sharp.',
    'requiredLength',
    'combinationError',
  ),
  word(
    'compensating',
    'Compensating',
    'A system with further loops that are switched in only when two certain valves are down together, and that add what the plain loops lack in company.',
    'compensatingLoop',
    'gateRule',
  ),
  word(
    'cutOff',
    'Cut-off',
    'Valves used one at a time, each of which lets the air out of the rest of the tube sooner. The open route is the longest.',
    'gateRule',
  ),
  word(
    'detuning',
    'Detuning of the open note',
    'How far the open note is set off its pitch on purpose, so that the valve notes come nearer.',
    'fit',
  ),
  word(
    'double',
    'Double',
    'Two instruments in one: two full sets of loops, and a change valve that chooses between them.',
    'gateRule',
  ),
  word(
    'effectiveLength',
    'Effective length',
    'The length of an ideal tube with the same fundamental: the speed of sound over twice the fundamental. Longer than the bore length by what mouthpiece and bell add.',
    'openLength',
  ),
  word('ferrule', 'Ferrule', 'The sleeve over a joint of two tubes.'),
  word(
    'fingering',
    'Fingering',
    'The valves that are down: 0 for open, 1-2, 1-3, T for a thumb valve. A fingering and a harmonic make a note.',
    'harmonicPitch',
  ),
  word(
    'fit',
    'Fit',
    'Lengths found so that the errors together are least: their mean square, or the largest of them.',
    'fit',
    'readings',
  ),
  word(
    'fundamental',
    'Fundamental',
    'Harmonic 1 of the open route as the length has it. Not always the pedal that is played: in an instrument with much cylinder the lowest resonance lies elsewhere.',
    'openLength',
  ),
  word(
    'gate',
    'Gate',
    'What puts a loop into the route: certain valves down, certain valves up. Every valve system is only a set of loops with their gates.',
    'gateRule',
  ),
  word(
    'harmonic',
    'Harmonic',
    'Number n of the notes that one length of tube gives, at n times its fundamental. Also called a partial. Numbers 7, 11, 13 and 14 lie far from the scale.',
    'harmonicPitch',
  ),
  word(
    'independent',
    'Independent',
    'A system with a loop of its own for every step or every combination, so that each can be exact. It costs tube.',
    'gateRule',
  ),
  word('knuckle', 'Knuckle', 'The short tube between the casing and the outer leg of a slide.', 'loopMakeUp'),
  word(
    'leg',
    'Leg',
    'One of the two straight tubes of a slide. The inner leg slides in the outer one, and is shorter by the stop gap.',
    'loopMakeUp',
  ),
  word(
    'loop',
    'Loop',
    'The tube that a valve switches in, from port to port along the centre line, less the straight passage that it takes the place of.',
    'loopForDrop',
    'loopMakeUp',
  ),
  word(
    'mainSlide',
    'Main slide',
    'The tuning slide of the whole instrument. It changes every route by the same tube, and so the long ones by fewer cents.',
    'slideMovement',
  ),
  word(
    'nearest',
    'Nearest',
    'Of all ways to play a note, the one that is least out of tune; not always one that is taught.',
  ),
  word(
    'nominalDrop',
    'Nominal drop',
    'By how many semitones a valve is meant to lower the open note. On early instruments the first valve is often the semitone.',
    'loopForDrop',
  ),
  word(
    'passage',
    'Passage',
    'The way through the piston or rotor, straight when it is up, into the loop when it is down.',
    'loopMakeUp',
  ),
  word('pedal', 'Pedal', 'Harmonic 1, an octave below the second.', 'harmonicPitch'),
  word('rotor', 'Piston, rotor', 'The moving part of a valve: a piston goes up and down, a rotor turns.'),
  word('plain', 'Plain', 'A system with one loop a valve and nothing more.', 'gateRule'),
  word(
    'requiredLength',
    'Required length',
    'The tube that a fingering would need to be in tune: the open length times two to the power of its semitones over twelve.',
    'requiredLength',
  ),
  word(
    'rms',
    'rms',
    'Root mean square: the usual single figure for many errors. Large ones weigh more than small ones.',
    'fit',
  ),
  word(
    'route',
    'Route',
    'The way of the air for one fingering: the body, and the loops whose gates are open.',
    'gateRule',
  ),
  word(
    'slide',
    'Slide',
    'A loop that can be drawn out. Out by a millimetre adds two of tube, one on each leg: movement and tube are never the same figure.',
    'slideMovement',
    'loopMakeUp',
  ),
  word(
    'stoppingValve',
    'Stopping valve',
    'A valve for the stopped notes of a horn: it lowers what stopping has raised.',
  ),
  word(
    'temperament',
    'Temperament',
    'How the twelve notes are spread over the octave: alike in equal temperament, with pure thirds or fifths on a key note in others.',
    'cents',
  ),
  word(
    'tie',
    'Tie',
    'A loop held in proportion to another while lengths are found, as a compensating loop to its main loop.',
    'fit',
  ),
  word(
    'tolerance',
    'Tolerance',
    'How exactly a length can be held at the bench, and what that does in cents: at worst, and as a rule.',
    'tolerance',
  ),
  word(
    'transposition',
    'Transposition',
    'Sounding minus written, in semitones: −9 for an alto in E♭, 0 for an instrument that reads at pitch.',
  ),
  word(
    'trigger',
    'Trigger, kicker',
    'Moves a slide while playing: a pull when it is pressed, or out by its spring.',
    'slideMovement',
  ),
  word(
    'usual',
    'Usual fingering',
    'What the trade teaches for a note: the smallest drop, on a harmonic that is near the scale; 1-2 before 3, and the fewest valves.',
  ),
  word(
    'valve',
    'Valve',
    'Switches tube into the route, or out of it. Here it is pressed or released, nothing between.',
    'gateRule',
  ),
]

/** A word by its id; `undefined` when there is none. */
export function glossaryWord(id: string): GlossaryWord | undefined {
  return glossary.find((each) => each.id === id)
}
