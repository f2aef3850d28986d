import type { App, Session, WebContents, WebPreferences } from 'electron'

/** How every page of the program runs: apart from Node, apart from the preload's world, in the OS sandbox. */
export function confinedPage(preload: string): WebPreferences {
  return {
    preload,
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    nodeIntegrationInWorker: false,
    nodeIntegrationInSubFrames: false,
    webSecurity: true,
    allowRunningInsecureContent: false,
    experimentalFeatures: false,
    webviewTag: false,
    navigateOnDragDrop: false,
    spellcheck: false,
  }
}

/** No page, whoever made it, may leave the program's own page, open another or embed one. */
export function confinePages(app: App, isOwnPage: (url: string) => boolean): void {
  app.on('web-contents-created', (_event, contents) => confine(contents, isOwnPage))
}

function confine(contents: WebContents, isOwnPage: (url: string) => boolean): void {
  contents.setWindowOpenHandler(() => ({ action: 'deny' }))
  contents.on('will-navigate', (event) => {
    if (!isOwnPage(event.url)) event.preventDefault()
  })
  contents.on('will-frame-navigate', (event) => {
    if (!isOwnPage(event.url)) event.preventDefault()
  })
  contents.on('will-redirect', (event) => event.preventDefault())
  contents.on('will-attach-webview', (event) => event.preventDefault())
}

/** The program works without camera, place, notices, devices or network; so all of them are refused. */
export function refusePermissions(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false))
  session.setPermissionCheckHandler(() => false)
  session.setDevicePermissionHandler(() => false)
  session.setDisplayMediaRequestHandler((_request, decide) => decide({}))
}

/** Nothing goes out to the network even if the page's own policy failed. */
export function refuseNetwork(session: Session, isOwnAddress: (url: string) => boolean): void {
  session.webRequest.onBeforeRequest((details, decide) => decide({ cancel: !isOwnAddress(details.url) }))
}
