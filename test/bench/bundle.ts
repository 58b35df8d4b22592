import { gzipSync } from 'node:zlib';
import { builtFile, scriptsOf } from '../built.ts';

/** Gzipped JavaScript of everything the station wall loads, now or late; a KB is 1,000 bytes. */
export async function bench(): Promise<Record<string, unknown>> {
  const scripts = scriptsOf('station.html').map((file) => {
    const kb = gzipSync(builtFile(file)).length / 1000;
    console.log(`${kb.toFixed(1).padStart(7)} KB  ${file}`);
    return kb;
  });
  const total = scripts.reduce((sum, kb) => sum + kb, 0);
  return { wall_gzip_kb: Math.round(total * 10) / 10 };
}
