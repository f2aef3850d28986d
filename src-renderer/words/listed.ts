/**
 * Names one after the other, as one says them; with semicolons where a name has a comma of its own.
 *
 * @example listed(['first', 'second', 'third']) // 'first, second and third'
 */
export function listed(names: readonly string[]): string {
  if (names.some((name) => name.includes(','))) return names.join('; ')
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
