import type { Stats } from 'node:fs'
import { mostBytes } from '#shared/workbook/fileLimit.ts'

/** What stands in the way of reading a workbook at all, seen before anything of it is read; `null` when nothing does. */
export function obstacleOf(stats: Stats): 'directory' | 'notAFile' | 'tooLarge' | null {
  if (stats.isDirectory()) return 'directory'
  if (!stats.isFile()) return 'notAFile'
  return stats.size > mostBytes ? 'tooLarge' : null
}
