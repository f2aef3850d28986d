import { basename, dirname } from 'node:path'

/** The code that the system gave an error, `''` when it gave none. */
export function codeOf(error: unknown): string {
  if (typeof error !== 'object' || error === null || !('code' in error)) return ''
  return typeof error.code === 'string' ? error.code : ''
}

/** One sentence for the person on why the file at `path` could not be written. */
export function writingTrouble(error: unknown, path: string): string {
  const name = basename(path)
  const folder = dirname(path)
  switch (codeOf(error)) {
    case 'ENOSPC':
    case 'EDQUOT':
      return `The disk is full, so “${name}” could not be written; the file there is unchanged.`
    case 'EFBIG':
      return `“${name}” is larger than this disk allows for one file; the file there is unchanged.`
    case 'EROFS':
    case 'EACCES':
    case 'EPERM':
      return `“${name}” or its folder is read-only, so it could not be written.`
    case 'ENOENT':
      return `The folder “${folder}” is no longer there, so “${name}” could not be written.`
    case 'ENOTDIR':
      return `“${folder}” is not a folder, so “${name}” could not be written.`
    case 'EISDIR':
      return `“${name}” is the name of a folder, so no file can be written there.`
    case 'ENAMETOOLONG':
    case 'EINVAL':
    case 'EILSEQ':
    case 'ERR_INVALID_ARG_VALUE':
      return 'The system refuses this file name; choose a shorter or plainer one.'
    case 'EBUSY':
    case 'ETXTBSY':
      return `Another program holds “${name}” fast, so it could not be written.`
    default:
      return `“${name}” could not be written${reported(error)}.`
  }
}

/** One sentence for the person on why the file at `path` could not be read. */
export function readingTrouble(error: unknown, path: string): string {
  const name = basename(path)
  switch (codeOf(error)) {
    case 'ENOENT':
    case 'ENOTDIR':
      return `“${name}” is no longer there.`
    case 'EACCES':
    case 'EPERM':
      return `The system does not allow “${name}” to be read.`
    case 'EISDIR':
      return `“${name}” is a folder, not a file.`
    default:
      return `“${name}” could not be read${reported(error)}.`
  }
}

function reported(error: unknown): string {
  const code = codeOf(error)
  return code === '' ? '' : ` (the system reports ${code})`
}
