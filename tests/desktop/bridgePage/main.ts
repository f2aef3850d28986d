import { bridge } from '../../../src-renderer/bridge/bridge.ts'

/** The bridge in force, alone on a page, where a test can ask it. */
Object.assign(globalThis, { bridgeInForce: bridge })
