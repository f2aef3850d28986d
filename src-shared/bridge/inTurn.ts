/** A queue of one: each task starts when the one before it has ended, well or badly. */
export function inTurn(): <Result>(task: () => Promise<Result>) => Promise<Result> {
  let last: Promise<unknown> = Promise.resolve()
  return (task) => {
    const next = last.then(task, task)
    last = next.catch(() => undefined)
    return next
  }
}
