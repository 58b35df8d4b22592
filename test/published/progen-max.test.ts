import { describe, expect, it } from 'vitest';
import { solveExactly } from '../../shared/schedule/rcpsp/index.ts';
import { readSch } from '../bench/rcpsp/read-sch.ts';
import { faultsOf } from '../shared/schedule/rcpsp/check-starts.ts';

/*
 * Instances PSP1 to PSP3 of the set of 10 activities with least and most lags made by ProGen/max:
 * R. Kolisch, C. Schwindt and A. Sprecher, "Benchmark instances for project scheduling problems",
 * in J. Weglarz (ed.), *Project Scheduling*, Kluwer 1999; in the collection PSPLIB. Optimum 26,
 * none (although no circle of lags forbids it), 36.
 */

const PSP1 = `
10 5 0 0
0 1 4 4 2 1 3 [0] [0] [0] [0]
1 1 4 9 7 8 10 [9] [1] [8] [2]
2 1 1 8 [24]
3 1 2 10 7 [4] [8]
4 1 3 10 9 5 [0] [0] [7]
5 1 1 6 [0]
6 1 1 11 [5]
7 1 1 11 [10]
8 1 3 1 2 11 [-22] [-34] [2]
9 1 1 11 [6]
10 1 1 11 [1]
11 1 0
0 1 0 0 0 0 0 0
1 1 3 4 1 0 0 0
2 1 10 1 0 3 0 0
3 1 3 4 0 2 2 3
4 1 3 0 0 0 3 0
5 1 3 0 1 2 4 0
6 1 5 2 3 4 0 0
7 1 10 0 4 4 0 4
8 1 2 2 0 0 4 4
9 1 6 5 0 0 1 1
10 1 1 0 1 0 0 0
11 1 0 0 0 0 0 0
5 5 5 5 5
`;

const PSP2 = `
10 5 0 0
0 1 5 3 2 4 1 5 [0] [0] [0] [0] [0]
1 1 1 7 [0]
2 1 1 10 [6]
3 1 1 8 [-3]
4 1 1 6 [3]
5 1 1 8 [11]
6 1 1 10 [2]
7 1 2 1 10 [-1] [0]
8 1 1 9 [5]
9 1 2 11 5 [8] [-17]
10 1 2 2 11 [-10] [9]
11 1 0
0 1 0 0 0 0 0 0
1 1 4 3 4 5 4 0
2 1 9 0 3 0 2 5
3 1 10 0 3 4 1 0
4 1 1 0 5 0 0 0
5 1 9 0 0 1 0 4
6 1 10 4 3 4 3 4
7 1 2 2 0 0 4 0
8 1 9 0 0 0 0 5
9 1 8 1 0 0 0 2
10 1 9 3 3 0 0 0
11 1 0 0 0 0 0 0
4 5 5 5 5
`;

const PSP3 = `
10 5 0 0
0 1 5 3 8 1 4 2 [0] [0] [0] [0] [0]
1 1 1 9 [3]
2 1 1 5 [11]
3 1 1 10 [5]
4 1 2 11 8 [9] [-4]
5 1 1 6 [9]
6 1 2 7 9 [1] [-2]
7 1 2 11 6 [5] [-2]
8 1 1 11 [5]
9 1 1 11 [10]
10 1 2 11 3 [6] [-6]
11 1 0
0 1 0 0 0 0 0 0
1 1 1 3 5 1 4 0
2 1 7 5 0 3 1 4
3 1 3 0 0 1 4 0
4 1 9 3 5 0 0 0
5 1 6 4 0 0 1 3
6 1 3 2 0 0 1 0
7 1 5 1 0 4 0 1
8 1 5 0 0 0 5 0
9 1 10 2 0 3 0 0
10 1 6 0 0 0 5 2
11 1 0 0 0 0 0 0
5 5 5 5 5
`;

const toTheEnd = { shouldStop: () => false };

describe('projects of ten activities under least and most lags', () => {
  it.each([
    ['PSP1', PSP1, 26],
    ['PSP3', PSP3, 36],
  ])('%s is solved to the published optimum', (_, text, optimum) => {
    const project = readSch(text);
    const { status, best } = solveExactly(project, toTheEnd);
    expect(status).toBe('optimal');
    expect(best?.makespan).toBe(optimum);
    expect(faultsOf(project, best?.starts ?? [])).toEqual([]);
  });

  it('PSP1 and PSP3 keep their rules in the published schedules', () => {
    expect(faultsOf(readSch(PSP1), [0, 3, 0, 0, 0, 7, 20, 10, 24, 12, 5, 26])).toEqual([]);
    expect(faultsOf(readSch(PSP3), [0, 7, 0, 17, 23, 11, 20, 21, 29, 26, 23, 36])).toEqual([]);
  });

  it('PSP2 is proven to have no schedule, as published', () => {
    expect(solveExactly(readSch(PSP2), toTheEnd).status).toBe('infeasible');
  });
});
