import type { PrintRequest, SaveAnswer } from '#shared/bridge/bridge.ts'

/** Prints through the browser's dialog, which also offers a PDF. What the person does there is not told. */
export async function printPage({ paper, landscape, name }: PrintRequest): Promise<SaveAnswer> {
  const sheet = new CSSStyleSheet()
  sheet.replaceSync(`@page { size: ${paper} ${landscape ? 'landscape' : 'portrait'} }`)
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet]
  try {
    window.print()
  } finally {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet)
  }
  return { kind: 'saved', name }
}
