import { type ReactNode, useRef } from 'react'

interface FileButtonProps {
  readonly text: string
  readonly take: (file: File) => void
}

/** Opens a table of text from a file, a spreadsheet's CSV say. */
export function FileButton({ text, take }: FileButtonProps): ReactNode {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        {text}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        onChange={(event) => {
          const file = event.target.files?.[0]
          event.target.value = ''
          if (file !== undefined) take(file)
        }}
      />
    </>
  )
}
