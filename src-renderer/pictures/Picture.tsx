import { type ReactNode, useId } from 'react'

interface PictureProps {
  /** Which picture it is, for whoever takes it out of the program. */
  readonly name: string
  readonly title: string
  readonly description: string
  readonly width: number
  readonly height: number
  readonly children: ReactNode
}

/**
 * One picture: an SVG that stands by itself. It carries its title, description and paper, and every colour and
 * the typeface as attributes that name tokens of the theme, so that nothing of a style sheet is needed to draw it
 * elsewhere but the values of those tokens.
 */
export function Picture({ name, title, description, width, height, children }: PictureProps): ReactNode {
  const id = useId()
  return (
    <svg
      className="picture"
      data-picture={name}
      xmlns="http://www.w3.org/2000/svg"
      role="img"
      aria-labelledby={`${id}title`}
      aria-describedby={`${id}description`}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      fontFamily="var(--font)"
      fontSize={14}
      fill="var(--ink)"
    >
      <title id={`${id}title`}>{title}</title>
      <desc id={`${id}description`}>{description}</desc>
      <rect width={width} height={height} fill="var(--paper)" />
      {children}
    </svg>
  )
}

/** Hatching for tube that is missing. */
export function Hatch({ id }: { readonly id: string }): ReactNode {
  return (
    <defs>
      <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="5" height="5" fill="var(--paper)" />
        <rect width="2" height="5" fill="var(--brass)" />
      </pattern>
    </defs>
  )
}
