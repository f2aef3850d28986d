import { seriesLook } from '../look/seriesLook.ts'

/** The theme's inks as a canvas needs them. */
export interface Inks {
  readonly ink: string
  readonly soft: string
  readonly hair: string
  readonly paper: string
  readonly band: string
  readonly brass: string
  readonly font: string
  readonly ofSeries: (series: number) => string
}

/** Reads the tokens of the style sheet where `element` stands. */
export function inksAt(element: Element): Inks {
  const style = getComputedStyle(element)
  const token = (name: string): string => style.getPropertyValue(name).trim()
  return {
    ink: token('--ink'),
    soft: token('--soft'),
    hair: token('--hair'),
    paper: token('--paper'),
    band: token('--band'),
    brass: token('--brass'),
    font: style.fontFamily,
    ofSeries: (series) => token(seriesLook(series).colour),
  }
}
