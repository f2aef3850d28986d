/** Pixels of a file for each pixel of the screen. */
export const pixelScale = 2

/** No canvas is made wider or higher than this. */
const mostPixels = 12_000

/** Time that the faces inside a picture take to be read, at the most, ms. */
const faceReadMs = 300

/** An SVG document as a PNG of twice its size; `null` when the browser cannot draw it. */
export async function pngOf(svg: string): Promise<Uint8Array | null> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }))
  try {
    const image = new Image()
    image.src = address
    await image.decode()
    return await drawn(image)
  } catch {
    return null
  } finally {
    URL.revokeObjectURL(address)
  }
}

async function drawn(image: HTMLImageElement): Promise<Uint8Array | null> {
  const scale = Math.min(pixelScale, mostPixels / Math.max(image.width, image.height, 1))
  const canvas = document.createElement('canvas')
  canvas.width = Math.round(image.width * scale)
  canvas.height = Math.round(image.height * scale)
  const draw = (): void => canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height)
  // A face inside the picture is only read once its words are drawn; until then they are blank.
  draw()
  await new Promise((resolve) => setTimeout(resolve, faceReadMs))
  draw()
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'))
  return blob === null ? null : new Uint8Array(await blob.arrayBuffer())
}
