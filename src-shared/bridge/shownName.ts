/** A title, a menu or a dialog shows no more of a name, in UTF-16 units. */
const longestShown = 160

/**
 * A name as it goes to the form that the window runs in: a workbook may call things by names of any length, a title or a
 * menu may not.
 *
 * @example shownName('a'.repeat(500)).length // 161
 */
export function shownName(name: string): string {
  return name.length <= longestShown
    ? name
    : `${name.slice(0, longestShown).replace(/[\ud800-\udbff]$/, '')}…`
}
