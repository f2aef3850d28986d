import { pageTest } from './pageTest.ts'

/** A test with the browser form of the bridge, alone on its page. */
export const bridgeTest = pageTest(new URL('../bridgePage', import.meta.url))
