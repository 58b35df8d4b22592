export { type OpenFolder, openFolder } from './open-folder.ts';
export {
  type FolderFault,
  type FolderRead,
  faultLine,
  type PlanOfDay,
  readFolder,
  readJsonFile,
} from './read-folder.ts';
export { watchFolder } from './watch-folder.ts';
export { writePlan } from './write-plan.ts';
