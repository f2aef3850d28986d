import { type DragEvent, type ReactNode, useState } from 'react'
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components'
import { Dialogs } from './dialogs/Dialogs.tsx'
import { useDialog } from './dialogs/dialogStore.ts'
import { LineUp } from './lineUp/LineUp.tsx'
import { useThemeOnPage } from './look/useTheme.ts'
import { Compare } from './pages/Compare.tsx'
import { Curves } from './pages/Curves.tsx'
import { Fingerings } from './pages/Fingerings.tsx'
import { Lengths } from './pages/Lengths.tsx'
import { StartPage } from './start/StartPage.tsx'
import { takeDropped, whenKept } from './state/fileActions.ts'
import { useForm } from './state/useForm.ts'
import { type Page, useView } from './state/viewStore.ts'
import { useWorkbook } from './state/workbookStore.ts'
import { Header } from './strip/Header.tsx'
import { Tubing } from './tubing/Tubing.tsx'

const pages: readonly { readonly id: Page; readonly name: string; readonly page: () => ReactNode }[] = [
  { id: 'curves', name: 'Curves', page: Curves },
  { id: 'fingerings', name: 'Fingerings', page: Fingerings },
  { id: 'lengths', name: 'Lengths', page: Lengths },
  { id: 'compare', name: 'Compare', page: Compare },
]

/** The window: start page, or strip, line-up, pages and tubing. */
export function App(): ReactNode {
  useThemeOnPage()
  useForm()
  const hasWorkbook = useWorkbook((state) => state.workbook !== null)
  const { dropping, ...drop } = useFileDrop()
  return (
    <div className={dropping ? 'window dropping' : 'window'} {...drop}>
      {hasWorkbook ? <Workbench /> : <StartPage />}
      <Dialogs />
    </div>
  )
}

function Workbench(): ReactNode {
  const page = useView((state) => state.page)
  const empty = useWorkbook((state) => state.workbook?.designs.length === 0)
  return (
    <>
      <Header />
      <div className="bench">
        <LineUp />
        <main className="middle">{empty ? <NoDesigns /> : <Pages page={page} />}</main>
        {empty ? null : <Tubing />}
      </div>
    </>
  )
}

function Pages({ page }: { readonly page: Page }): ReactNode {
  return (
    <Tabs
      className="tabs"
      selectedKey={page}
      onSelectionChange={(key) => useView.setState({ page: key as Page })}
      keyboardActivation="manual"
    >
      <TabList className="tabList" aria-label="Pages">
        {pages.map(({ id, name }) => (
          <Tab key={id} id={id} className="tab">
            {name}
          </Tab>
        ))}
      </TabList>
      {pages.map(({ id, page: Content }) => (
        <TabPanel key={id} id={id} className="tabPanel">
          <Content />
        </TabPanel>
      ))}
    </Tabs>
  )
}

function NoDesigns(): ReactNode {
  return (
    <section className="sheet noDesigns">
      <h1>No designs yet</h1>
      <p>A design is one instrument with one valve system. Add two or three to compare them.</p>
      <button type="button" className="main" onClick={() => useDialog.setState({ open: 'newDesign' })}>
        Add a design…
      </button>
    </section>
  )
}

/** Opens a workbook dropped on the window. */
function useFileDrop() {
  const [dropping, setDropping] = useState(false)
  const hasFiles = (event: DragEvent): boolean => event.dataTransfer.types.includes('Files')
  return {
    dropping,
    onDragOver: (event: DragEvent) => {
      if (!hasFiles(event)) return
      event.preventDefault()
      setDropping(true)
    },
    onDragLeave: (event: DragEvent) => {
      if (event.relatedTarget === null) setDropping(false)
    },
    onDrop: (event: DragEvent) => {
      setDropping(false)
      const file = event.dataTransfer.files[0]
      if (!hasFiles(event) || file === undefined) return
      event.preventDefault()
      whenKept(() => void takeDropped(file))
    },
  }
}
