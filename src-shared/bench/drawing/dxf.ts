import { type Drawing, type Point, type Shape, type StrokeKind, strokeKinds } from './drawing.ts'

/** Dashes of each stroke's line type, mm, positive drawn and negative left open. */
const dashes: Readonly<Record<StrokeKind, readonly number[]>> = {
  outline: [],
  hidden: [2, -1],
  centre: [6, -1, 1, -1],
  dimension: [],
}

/**
 * A drawing as a DXF file of release 12 (AC1009), the one that everything reads. One unit is one millimetre; each
 * stroke is a layer of its own, words are on the dimension layer. Letters outside ASCII become `?`, save for the
 * signs of diameter, degree and plus-minus, which DXF can spell.
 *
 * @example dxfText(drawing).startsWith('0\nSECTION\n') // true
 */
export function dxfText({ shapes }: Drawing): string {
  const groups = [
    ...section('HEADER', ['9 $ACADVER', '1 AC1009']),
    ...section('TABLES', [...table('LTYPE', lineType), ...table('LAYER', layer)]),
    ...section('ENTITIES', shapes.flatMap(entity)),
    '0 EOF',
  ]
  // A group is written as its code on one line and its value on the next.
  return groups.map((group) => `${group.replace(' ', '\n')}\n`).join('')
}

function section(name: string, groups: readonly string[]): readonly string[] {
  return ['0 SECTION', `2 ${name}`, ...groups, '0 ENDSEC']
}

function table(name: string, row: (kind: StrokeKind) => readonly string[]): readonly string[] {
  return ['0 TABLE', `2 ${name}`, `70 ${strokeKinds.length}`, ...strokeKinds.flatMap(row), '0 ENDTAB']
}

function lineType(kind: StrokeKind): readonly string[] {
  const lengthMm = dashes[kind].reduce((sum, dashMm) => sum + Math.abs(dashMm), 0)
  const pattern = ['72 65', `73 ${dashes[kind].length}`, `40 ${lengthMm}`]
  return ['0 LTYPE', name(2, kind), '70 0', name(3, kind), ...pattern, ...dashes[kind].map((d) => `49 ${d}`)]
}

function layer(kind: StrokeKind): readonly string[] {
  return ['0 LAYER', name(2, kind), '70 0', '62 7', name(6, kind)]
}

function entity(shape: Shape): readonly string[] {
  if (shape.kind === 'line')
    return ['0 LINE', name(8, shape.stroke), ...at(10, shape.from), ...at(11, shape.to)]
  if (shape.kind === 'arc') {
    const turn = [number(50, shape.startDegrees), number(51, shape.endDegrees)]
    return ['0 ARC', name(8, shape.stroke), ...at(10, shape.centre), number(40, shape.radiusMm), ...turn]
  }
  const words = [number(40, shape.heightMm), `1 ${ascii(shape.text)}`, `50 ${shape.upright ? 90 : 0}`, '72 1']
  return ['0 TEXT', name(8, 'dimension'), ...at(10, shape.at), ...words, ...at(11, shape.at)]
}

function name(code: number, kind: StrokeKind): string {
  return `${code} ${kind.toUpperCase()}`
}

function at(code: number, { xMm, yMm }: Point): readonly string[] {
  return [number(code, xMm), number(code + 10, yMm), `${code + 20} 0`]
}

function ascii(text: string): string {
  const spelt = text.replace(/[Ø⌀]/g, '%%c').replace(/°/g, '%%d').replace(/±/g, '%%p').replace(/−/g, '-')
  return spelt.replace(/[^ -~]/g, '?')
}

function number(code: number, value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`A drawing cannot hold ${value}`)
  return `${code} ${Math.round(value * 1e6) / 1e6 + 0}`
}
