import { gzipSync } from 'node:zlib';
import { builtFile, scriptsOf } from '../built.ts';

const TONGUES = ['english', 'spanish'].map((language) => `shared/words/${language}-tongue.ts`);

/**
 * Gzipped JavaScript of everything the station wall loads, now or late, in the language that weighs
 * more: it fetches one, not both. A KB is 1,000 bytes.
 */
export async function bench(): Promise<Record<string, unknown>> {
  const totals = TONGUES.map((own) => {
    console.log(own);
    const others = TONGUES.filter((tongue) => tongue !== own);
    return scriptsOf('station.html', others)
      .map(weighKb)
      .reduce((sum, kb) => sum + kb, 0);
  });
  return { wall_gzip_kb: Math.round(Math.max(...totals) * 10) / 10 };
}

function weighKb(file: string): number {
  const kb = gzipSync(builtFile(file)).length / 1000;
  console.log(`${kb.toFixed(1).padStart(7)} KB  ${file}`);
  return kb;
}
