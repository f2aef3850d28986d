/**
 * An example workbook. Its text lies beside this file under the name `file`; how it is read is the business of
 * whoever shows it, for the library touches neither disk nor window.
 */
export interface Example {
  readonly id: string
  readonly title: string
  /** One sentence. */
  readonly description: string
  /** Name of the design file in this folder. */
  readonly file: `${string}.ferrule`
}

/** The examples offered to start from, in their order: work of the fictional Saltmarsh Lane workshop. */
export const examples: readonly Example[] = [
  {
    id: 'bass-in-f',
    title: 'Bass in F, four ways',
    description:
      'One bass body with four valves: plain, compensating on the fourth, a compensating block of three, and a loop for every combination.',
    file: 'bass-in-f.ferrule',
  },
  {
    id: 'alto-in-e-flat',
    title: 'Alto in E♭, three ways',
    description: 'Three plain valves, three compensating ones, and loops made long as a compromise.',
    file: 'alto-in-e-flat.ferrule',
  },
  {
    id: 'double-horn-in-f',
    title: 'Double horn in F, full and compensating',
    description: 'The same horn with two full sets of loops and with one set that serves both sides.',
    file: 'double-horn-in-f.ferrule',
  },
  {
    id: 'six-valve-trombone',
    title: 'Six-valve trombone against a plain one',
    description: 'Cut-off valves used one at a time beside three plain valves in B♭.',
    file: 'six-valve-trombone.ferrule',
  },
  {
    id: 'early-two-valve',
    title: 'Early two-valve horn',
    description:
      'The semitone first, A at 430 and mean-tone: what a longer crook does when the valve slides stay as they were.',
    file: 'early-two-valve.ferrule',
  },
]
