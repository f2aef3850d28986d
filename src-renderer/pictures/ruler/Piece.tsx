import type { ReactNode } from 'react'

/** A piece with the place where it begins, mm. */
export type Laid<Piece> = Piece & { readonly fromMm: number }

/** Pieces laid end to end from 0. */
export function piecesOf<Piece extends { readonly lengthMm: number }>(
  pieces: readonly Piece[],
  startMm = 0,
): readonly Laid<Piece>[] {
  const laid: Laid<Piece>[] = []
  let fromMm = startMm
  for (const piece of pieces) {
    laid.push({ ...piece, fromMm })
    fromMm += piece.lengthMm
  }
  return laid
}

interface PieceProps {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
  readonly name: string
  /** Stands where there is no room for the name. */
  readonly short?: string
  readonly shaded: boolean
}

/** A piece of tube in outline, with its name, or its name in short, where there is room for it. */
export function Piece({ x, y, width, height, name, short = '', shaded }: PieceProps): ReactNode {
  if (width < 0.3) return null
  const shown = [name, short].find((each) => each !== '' && width > 7.4 * each.length + 8)
  return (
    <g>
      <rect
        x={x}
        y={y}
        width={width}
        height={height}
        fill={shaded ? 'var(--desk)' : 'var(--paper)'}
        stroke="var(--ink)"
      />
      {shown === undefined ? null : (
        <text x={x + width / 2} y={y + height / 2 + 4.5} fontSize={12.5} textAnchor="middle">
          {shown}
        </text>
      )}
    </g>
  )
}
