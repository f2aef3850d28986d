import '@fontsource/ibm-plex-sans/latin-400.css'
import '@fontsource/ibm-plex-sans/latin-600.css'
import './look/tokens.css'
import './look/controls.css'
import './look/window.css'
import './look/pages.css'
import './look/tubing.css'
import './look/lengths.css'
import './look/bench.css'
import './look/narrow.css'
import './look/print.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { FailureGuard } from './look/FailureGuard.tsx'

const root = document.getElementById('root')
if (root === null) throw new Error('the page has no place for the window')
createRoot(root).render(
  <StrictMode>
    <FailureGuard>
      <App />
    </FailureGuard>
  </StrictMode>,
)
