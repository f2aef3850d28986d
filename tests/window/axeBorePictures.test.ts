import { scenesAreClear } from './scenesAreClear.ts'

scenesAreClear('Bore and pictures, free of what hinders people, in both themes', (name) =>
  /^(bore|pictures)/.test(name),
)
