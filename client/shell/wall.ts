import { inkToCome } from '../parts/ink.ts';
import { Part } from '../parts/part.ts';

/** A whole screen: it is drawn anew when the ink of a tap is on the glass, not before. */
export abstract class Wall extends Part {
  protected override async scheduleUpdate(): Promise<void> {
    await inkToCome();
    await super.scheduleUpdate();
  }
}
