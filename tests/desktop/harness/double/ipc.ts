import { EventEmitter } from 'node:events'

type Handler = (event: unknown, ...payload: unknown[]) => unknown

class IpcMain extends EventEmitter {
  private readonly handlers = new Map<string, Handler>()
  handle(channel: string, handler: Handler): void {
    if (this.handlers.has(channel)) throw new Error(`There is a handler for ${channel} already.`)
    this.handlers.set(channel, handler)
  }
  async answer(event: unknown, channel: string, payload: readonly unknown[]): Promise<unknown> {
    const handler = this.handlers.get(channel)
    if (handler === undefined) throw new Error(`There is no handler for ${channel}.`)
    return handler(event, ...payload)
  }
}

export const ipcMain = new IpcMain()
