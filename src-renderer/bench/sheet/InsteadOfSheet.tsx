import type { ReactNode } from 'react'
import { createPortal } from 'react-dom'
import { useOnPaper } from './paper.ts'

/** What is printed in place of the sheet, on paper only while it is printed. */
export function InsteadOfSheet(): ReactNode {
  const instead = useOnPaper((state) => state.instead)
  return instead === null ? null : createPortal(instead, document.body)
}
