import basics from './catalogue/basics.json' with { type: 'json' };
import cuts from './catalogue/cuts.json' with { type: 'json' };
import mixes from './catalogue/mixes.json' with { type: 'json' };
import rounds from './catalogue/rounds.json' with { type: 'json' };
import greens from './catalogue/routes/braised-greens.json' with { type: 'json' };
import brisket from './catalogue/routes/brisket-whole-or-parted.json' with { type: 'json' };
import burntEnds from './catalogue/routes/burnt-ends.json' with { type: 'json' };
import chicken from './catalogue/routes/chicken-halves.json' with { type: 'json' };
import beans from './catalogue/routes/pit-beans.json' with { type: 'json' };
import rendered from './catalogue/routes/rendered-fat.json' with { type: 'json' };
import ribTips from './catalogue/routes/rib-tips.json' with { type: 'json' };
import ribs from './catalogue/routes/ribs-squared.json' with { type: 'json' };
import sausage from './catalogue/routes/sausage.json' with { type: 'json' };
import shortRibs from './catalogue/routes/short-ribs-plate.json' with { type: 'json' };
import shoulder from './catalogue/routes/shoulder-boneless.json' with { type: 'json' };
import slaw from './catalogue/routes/slaw.json' with { type: 'json' };
import stock from './catalogue/routes/stock.json' with { type: 'json' };
import sauce from './catalogue/routes/table-sauce.json' with { type: 'json' };

const meat = [ribs, shoulder, brisket, burntEnds, shortRibs, chicken];
const trim = [ribTips, sausage, stock, rendered];
const sides = [beans, greens, slaw, sauce];

/** All that the invented kitchen knows how to make, as a person would write it into one file. */
export const catalogue = { ...basics, cuts, mixes, rounds, routes: [...meat, ...trim, ...sides] };
