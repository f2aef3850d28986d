import { create } from 'zustand'
import { persist } from 'zustand/middleware'
import type { Spelling } from '#shared/pitch/noteName.ts'

/** What a person sets once and expects to find again, whatever workbook is open. */
export interface Settings {
  readonly unit: 'mm' | 'in'
  readonly spelling: Spelling
  readonly theme: 'system' | 'light' | 'dark'
  /** Half-width of the tolerance band, cents. */
  readonly bandCents: number
}

export const useSettings = create<Settings>()(
  persist((): Settings => ({ unit: 'mm', spelling: 'flats', theme: 'system', bandCents: 15 }), {
    name: 'ferrule settings',
  }),
)
