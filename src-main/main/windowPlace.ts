import { join } from 'node:path'
import * as z from 'zod'
import { readStored, writeStored } from '../files/stored.ts'

export interface Area {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

export interface WindowPlace extends Area {
  readonly maximized: boolean
}

export const leastWidth = 1024
export const leastHeight = 700

const usual = { width: 1360, height: 880 }

const pixels = z.number().int().min(-100_000).max(100_000)
const shape = z.strictObject({
  x: pixels,
  y: pixels,
  width: pixels.min(1),
  height: pixels.min(1),
  maximized: z.boolean(),
})

/** How much of the title bar must lie on a screen for the window to be taken hold of, pixels. */
const graspWidth = 120
const titleHeight = 32

/**
 * Where the window opens: where it was, if enough of its title bar lies on a screen that is there now, else in
 * the middle of the first screen; never larger than that screen. `screens` holds at least one working area.
 */
export function placeOn(screens: readonly [Area, ...Area[]], stored: WindowPlace | null): WindowPlace {
  const home = stored === null ? undefined : screens.find((screen) => isGraspable(stored, screen))
  if (stored === null || home === undefined) return centred(screens[0], stored?.maximized ?? false)
  const fitted = {
    ...stored,
    width: Math.min(Math.max(stored.width, leastWidth), home.width),
    height: Math.min(Math.max(stored.height, leastHeight), home.height),
  }
  return isGraspable(fitted, home) ? fitted : centred(home, stored.maximized)
}

function isGraspable(place: Area, screen: Area): boolean {
  const shownWidth = Math.min(place.x + place.width, screen.x + screen.width) - Math.max(place.x, screen.x)
  const titleIsShown = place.y >= screen.y && place.y + titleHeight <= screen.y + screen.height
  return shownWidth >= graspWidth && titleIsShown
}

function centred(screen: Area, maximized: boolean): WindowPlace {
  const width = Math.min(usual.width, screen.width)
  const height = Math.min(usual.height, screen.height)
  const x = screen.x + Math.floor((screen.width - width) / 2)
  const y = screen.y + Math.floor((screen.height - height) / 2)
  return { x, y, width, height, maximized }
}

export interface PlaceStore {
  read(): Promise<WindowPlace | null>
  keep(place: WindowPlace): Promise<void>
}

export function placeStoreIn(dataFolder: string): PlaceStore {
  const file = join(dataFolder, 'window.json')
  return {
    read: () => readStored(file, shape),
    keep: async (place) => void (await writeStored(file, place)),
  }
}
