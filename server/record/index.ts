export { type Archive, type ArchivedDay, archiveOf, printedDay } from './archive.ts';
export type { ChainCheck } from './check-chain.ts';
export { sealsPass } from './check-chain.ts';
export { exportText } from './export-file.ts';
export { type OpenRecord, openRecord } from './open-record.ts';
export { type ReadArchive, readArchive } from './read-archive.ts';
export { fingerprintOf } from './signing.ts';
export { type ExportFault, type Verified, verifyExport } from './verify-export.ts';
export { type FolderVerified, verifyFolder } from './verify-folder.ts';
