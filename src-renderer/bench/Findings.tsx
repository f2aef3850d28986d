import type { ReactNode } from 'react'

interface FindingsProps {
  readonly title: string
  readonly messages: readonly string[]
  /** Something to know, not something that is wrong. */
  readonly mild?: boolean
}

/** What speaks against a job, or is to be known before it, each a sentence. */
export function Findings({ title, messages, mild }: FindingsProps): ReactNode {
  if (messages.length === 0) return null
  return (
    <section className={mild ? 'findings mild' : 'findings'} aria-label={title}>
      <h2>{title}</h2>
      <ul>
        {messages.map((message) => (
          <li key={message}>{message}</li>
        ))}
      </ul>
    </section>
  )
}

/** What a typed value may have been meant as, under its field. Nothing is changed by it. */
export function Likely({ messages }: { readonly messages: readonly string[] }): ReactNode {
  return messages.map((message) => (
    <p key={message} className="likely" role="status">
      {message}
    </p>
  ))
}
