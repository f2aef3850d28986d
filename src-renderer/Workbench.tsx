import { type KeyboardEvent, type ReactNode, Suspense, useEffect, useLayoutEffect, useRef } from 'react'
import { InsteadOfSheet } from './bench/sheet/InsteadOfSheet.tsx'
import { useDialog } from './dialogs/dialogStore.ts'
import { LineUp } from './lineUp/LineUp.tsx'
import { focusIsLost } from './look/focusIsLost.ts'
import { pages } from './pages/pages.ts'
import { Guide } from './start/Guide.tsx'
import { useView } from './state/viewStore.ts'
import { useWorkbook } from './state/workbookStore.ts'
import { Header } from './strip/Header.tsx'
import { Tubing } from './tubing/Tubing.tsx'
import { pagesWords as words } from './words/pages.ts'

/** The window with a workbook in it: strip, line-up, pages, tubing. */
export function Workbench(): ReactNode {
  const page = useView((state) => state.page)
  const empty = useWorkbook((state) => state.workbook?.designs.length === 0)
  return (
    <>
      <Header />
      <div className="bench" data-page={page}>
        <LineUp />
        <main className="middle">
          <Guide />
          {empty ? <NoDesigns /> : <Pages />}
        </main>
        {empty ? null : <Tubing />}
      </div>
      <InsteadOfSheet />
    </>
  )
}

/** The tabs and the page that is chosen. Arrow keys move between tabs; only the chosen one is in the tab order. */
function Pages(): ReactNode {
  const chosen = useView((state) => state.page)
  const list = useRef<HTMLDivElement>(null)
  // A workbook takes the place of the start page and of what had the focus there.
  useLayoutEffect(() => {
    const tab = list.current?.querySelector<HTMLElement>('[aria-selected=true]')
    if (focusIsLost()) tab?.focus({ preventScroll: true })
  }, [])
  // Another way to a page than its tab leaves the focus on no tab but the chosen one.
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      const tabs = [...(list.current?.querySelectorAll<HTMLElement>('[role=tab]') ?? [])]
      if (tabs.some((tab) => tab === document.activeElement))
        tabs[pages.findIndex(({ id }) => id === chosen)]?.focus({ preventScroll: true })
    })
    return () => cancelAnimationFrame(frame)
  }, [chosen])
  const at = Math.max(
    0,
    pages.findIndex(({ id }) => id === chosen),
  )
  const Content = pages[at]?.page ?? (() => null)
  const goTo = (index: number): void => {
    const next = (index + pages.length) % pages.length
    useView.setState({ page: pages[next]!.id })
    list.current?.querySelectorAll('button')[next]?.focus()
  }
  const key = (event: KeyboardEvent): void => {
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: pages.length - 1 }[event.key]
    if (to === undefined) return
    event.preventDefault()
    goTo(to)
  }
  return (
    <div className="tabs">
      <div className="tabList" role="tablist" aria-label={words.tabs} ref={list}>
        {pages.map(({ id, name, load }, i) => (
          <button
            key={id}
            type="button"
            role="tab"
            id={`tab-${id}`}
            className="tab"
            aria-selected={i === at}
            aria-controls="page"
            tabIndex={i === at ? 0 : -1}
            onClick={() => useView.setState({ page: id })}
            onKeyDown={key}
            onPointerEnter={() => void load?.()}
            onFocus={() => void load?.()}
          >
            {name}
          </button>
        ))}
      </div>
      <div className="tabPanel" role="tabpanel" id="page" aria-labelledby={`tab-${pages[at]!.id}`}>
        <Suspense fallback={<section className="sheet" aria-busy />}>
          <Content />
        </Suspense>
      </div>
    </div>
  )
}

function NoDesigns(): ReactNode {
  return (
    <section className="sheet noDesigns">
      <h1>{words.noDesigns}</h1>
      <p>{words.noDesignsText}</p>
      <button type="button" className="main" onClick={() => useDialog.setState({ open: 'newDesign' })}>
        {words.addDesign}
      </button>
    </section>
  )
}
