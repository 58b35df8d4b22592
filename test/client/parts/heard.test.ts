// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { Heard } from '../../../client/parts/heard.ts';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
});
afterEach(() => {
  vi.useRealTimers();
});

function part() {
  let shown = '';
  const said: string[] = [];
  const draw = () => {
    const heard = spoken.of(shown);
    if (heard !== '' && heard !== said.at(-1)) said.push(heard);
  };
  const spoken = new Heard({
    addController: () => {},
    removeController: () => {},
    requestUpdate: draw,
    updateComplete: Promise.resolve(true),
  });
  const show = (words: string) => {
    shown = words;
    draw();
  };
  return { said, show };
}

it('says of a burst of changes the first at once, and some seconds later the last', () => {
  const { said, show } = part();
  for (let n = 1; n <= 20; n++) show(`change ${n}`);
  expect(said).toEqual(['change 1']);
  vi.advanceTimersByTime(60_000);
  expect(said).toEqual(['change 1', 'change 20']);
});

it('does not say again what still stands there, nor what was gone before it was said', () => {
  const { said, show } = part();
  for (let n = 0; n < 100; n++) {
    show('the same');
    vi.advanceTimersByTime(1000);
  }
  expect(said).toEqual(['the same']);
  show('one');
  show('another');
  show('one');
  vi.advanceTimersByTime(60_000);
  expect(said).toEqual(['the same', 'one']);
});

it('says at once what comes after a while of silence', () => {
  const { said, show } = part();
  show('first');
  show('');
  vi.advanceTimersByTime(9000);
  show('second');
  expect(said).toEqual(['first', 'second']);
});
