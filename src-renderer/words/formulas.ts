/** A formula of the program with where it comes from. */
export interface FormulaEntry {
  readonly id: string
  readonly title: string
  /** `_` lowers what follows it, `^` raises it; what is raised in brackets stands without them. */
  readonly formula: string
  readonly meaning: string
  readonly source: string
}

const geometry = 'Geometry.'

/** Every formula that a figure of the program rests on. */
export const formulas: readonly FormulaEntry[] = [
  {
    id: 'speedOfSound',
    title: 'Speed of sound',
    formula:
      'c = a_0 + a_1·t + a_2·t² + (a_3 + a_4·t + a_5·t²)·x_w + (a_6 + a_7·t + a_8·t²)·p + (a_9 + a_10·t + a_11·t²)·x_c + a_12·x_w² + a_13·p² + a_14·x_c² + a_15·x_w·p·x_c',
    meaning:
      't in °C, p in Pa, xw and xc the mole fractions of water and carbon dioxide. Stated for 0 to 30 °C and 75 to 102 kPa; beyond, the value is carried on and said to be.',
    source: 'Cramer, J. Acoust. Soc. Am. 93, 2510 (1993).',
  },
  {
    id: 'airOfBore',
    title: 'Air of the bore',
    formula:
      'ρ = 1.1769·(1 − 0.00335·D), c = 347.23·(1 + 0.00166·D), η = 1.846·10^(−5)·(1 + 0.0025·D), D = t − 26.85',
    meaning: 'Density, speed of sound and viscosity for the acoustic bore, at t °C.',
    source: 'Keefe, J. Acoust. Soc. Am. 75, 58 (1984).',
  },
  {
    id: 'openLength',
    title: 'Effective length',
    formula: 'L = c / (2·f_1)',
    meaning:
      'f1 is harmonic 1 of the open route. What exceeds the bore length is what mouthpiece and bell add.',
    source: 'Half a wave in an open tube; any textbook of acoustics.',
  },
  {
    id: 'cents',
    title: 'Cents',
    formula: 'cents = 1200·log_2(f / target)',
    meaning: 'Positive when f is sharp of its target. 100 to the tempered semitone.',
    source: 'Ellis, appendix to Helmholtz, On the Sensations of Tone (1885).',
  },
  {
    id: 'gateRule',
    title: 'Length of a route',
    formula: 'route = body + Σ loops whose pressed valves are down and whose released valves are up',
    meaning: 'One rule for every system: plain, compensating, double, independent, ascending, cut-off.',
    source: geometry,
  },
  {
    id: 'requiredLength',
    title: 'Required length',
    formula: 'required = L·2^(k/12)',
    meaning: 'k is the nominal drop of the fingering in semitones.',
    source: 'Equal temperament; frequency and length are inverse.',
  },
  {
    id: 'combinationError',
    title: 'Combination error',
    formula: 'error = 1200·log_2(required / route)',
    meaning: 'Positive when the route is short, and so the note sharp.',
    source: 'From cents and required length.',
  },
  {
    id: 'harmonicPitch',
    title: 'Harmonic of a route',
    formula: 'f = n·c / (2·route), times its measured offset',
    meaning: 'The offset of a harmonic is 0 cents until one is typed or the bore gives it.',
    source: 'Half waves in an open tube; any textbook of acoustics.',
  },
  {
    id: 'loopForDrop',
    title: 'Loop for a drop',
    formula: 'loop = L·(2^(k/12) − 1)',
    meaning: 'Exact when the valve is used alone.',
    source: 'From required length.',
  },
  {
    id: 'compensatingLoop',
    title: 'Compensating loop',
    formula: 'loop(i,k) = L·(2^((k_i + k_k)/12) − 1) − loop(i) − loop(k)',
    meaning: 'What valves i and k lack together. It lies in the route only when both are down.',
    source: 'From required length.',
  },
  {
    id: 'slideMovement',
    title: 'Slide movement',
    formula: 'Δtube = route·(2^(e/1200) − 1), movement = Δtube / 2',
    meaning: 'Turns an error of e cents into zero; out when it is positive.',
    source: 'From cents; a slide has two legs.',
  },
  {
    id: 'loopMakeUp',
    title: 'Make-up of a slide',
    formula: 'loop = knuckles + 2·outer leg + bow + passages − straight passage + 2·out',
    meaning: 'Fully in, the inner legs add nothing.',
    source: geometry,
  },
  {
    id: 'bowLength',
    title: 'Bow',
    formula: 'bow = π·R + 2·straight end, R = leg spacing / 2',
    meaning: 'Along the centre line.',
    source: geometry,
  },
  {
    id: 'bowInertance',
    title: 'Bow, as sound has it',
    formula: 'm = (1 + √(1 − (a/R)²)) / 2',
    meaning:
      'The inertance of a bend of bore radius a against a straight tube; its mean acoustic length is shorter by √m.',
    source: 'Nederveen, Acoustical Aspects of Woodwind Instruments (1969, 1998).',
  },
  {
    id: 'pitchChange',
    title: 'New pitch from old',
    formula: 'q = f_old / f_new; body + (q − 1)·L, each loop + (q − 1)·loop',
    meaning:
      'Every acoustic length changes in the same proportion. L holds the loops of the open route: what they take is part of the body’s.',
    source: 'Frequency and length are inverse.',
  },
  {
    id: 'onePiece',
    title: 'Open length from one loop',
    formula: 'L = loop / (2^(k/12) − 1)',
    meaning: 'For a loop that is right for its k semitones.',
    source: 'From loop for a drop.',
  },
  {
    id: 'fit',
    title: 'Finding lengths',
    formula: 'least Σ w·e², or least max w·|e|, within the bounds',
    meaning:
      'e the errors of the fingerings that count, w their weights; over loop lengths that are free, and the open note if it is.',
    source: 'Least squares with bounds by active sets; least largest by linear programming.',
  },
  {
    id: 'readings',
    title: 'From a tuner to a length',
    formula: 'cents = 1200·log_2(n·c / (2·route) / target) + h_n',
    meaning:
      'h_n is the offset of harmonic n, shared by all fingerings. Found by least squares, with standard errors.',
    source: 'From harmonic of a route.',
  },
  {
    id: 'tolerance',
    title: 'Tolerance in cents',
    formula: 'worst = Σ |∂e/∂l|·δ, as a rule = √Σ (∂e/∂l·δ)²',
    meaning: 'δ is the tolerance of each length of the route.',
    source: 'Propagation of small independent errors.',
  },
  {
    id: 'impedance',
    title: 'Resonances of a bore',
    formula: 'p_1 = A·p_2 + B·U_2, U_1 = C·p_2 + D·U_2',
    meaning:
      'Section by section from the bell to the lips, with losses at the walls; resonances are the peaks of |p/U| at the lips.',
    source:
      'Transmission matrices with the losses of Zwikker and Kosten (1949); bell mouth after Silva et al., J. Sound Vib. 322, 255 (2009).',
  },
  {
    id: 'bellMouth',
    title: 'Bell mouth',
    formula: '|R| = (1 + 0.8x)/(1 + 1.3x + 0.266x² + 0.0263x³), x = (k·a)²',
    meaning:
      'What an unflanged rim of radius a sends back of a wave; the air beyond it moves along and makes the tube longer. An ideal mouth sends back all and adds nothing: for comparison with textbook tubes.',
    source: 'Silva et al., J. Sound Vib. 322, 255 (2009).',
  },
  {
    id: 'beats',
    title: 'Beats',
    formula: 'cos a + cos b = 2·cos((a − b)/2)·cos((a + b)/2)',
    meaning: 'Two tones of f and g Hz swell |f − g| times a second; partial n swells n·|f − g| times.',
    source: 'An identity of trigonometry.',
  },
]

/** A formula by its id; `undefined` when there is none. */
export function formulaEntry(id: string): FormulaEntry | undefined {
  return formulas.find((each) => each.id === id)
}
