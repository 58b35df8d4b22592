export { genetic } from './genetic.ts';
export { heads, precedenceOf } from './precedence.ts';
export { type Project, type ProjectActivity, type ProjectLag, projectOf } from './project.ts';
