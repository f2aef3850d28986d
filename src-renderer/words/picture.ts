/** What is said about saving a picture. */
export const pictureWords = {
  picture: 'Picture',
  sideView: (slide: string) => `Side view of ${slide}`,
  group: (name: string) => `Save picture: ${name}`,
  svg: (name: string) => `Save picture as SVG: ${name}`,
  png: (name: string) => `Save picture as PNG: ${name}`,
  svgShown: 'SVG',
  pngShown: 'PNG',
  failed: (name: string) => `${name} was not kept`,
  notDrawn: 'The browser could not draw the picture as pixels.',
} as const
