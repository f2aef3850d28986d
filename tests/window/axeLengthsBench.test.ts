import { scenesAreClear } from './scenesAreClear.ts'

scenesAreClear('Lengths and bench, free of what hinders people, in both themes', (name) =>
  /^(lengths|bench)/.test(name),
)
