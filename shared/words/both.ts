import { englishTongue } from './english-tongue.ts';
import { oddSayer } from './happening-refusals.ts';
import { sayOddRefused } from './odd-words.ts';
import { spanishTongue } from './spanish-tongue.ts';
import { learn } from './tongue.ts';

// Whoever comes in by this room's door can say everything. A built screen leaves this behind, as it
// does all of a room's that it does not use, and learns the one language that it shows.
learn('en', englishTongue);
learn('es', spanishTongue);
oddSayer.say = sayOddRefused;
