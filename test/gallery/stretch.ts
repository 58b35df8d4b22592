const VOWEL = /[aeiouáéíóú]/i;
/** A text in another language may be so much longer than in English. */
const LONGER = 1.4;

/**
 * A text that is two fifths longer and can still be read: its vowels are doubled, from the left,
 * and the last letter is drawn out for what is missing.
 * @example stretched('rub') //=> 'ruubb'
 */
export function stretched(text: string): string {
  if (!/\p{L}/u.test(text)) return text;
  let missing = Math.ceil(text.length * LONGER) - text.length;
  const longer = [...text].map((letter) => {
    if (missing === 0 || !VOWEL.test(letter)) return letter;
    missing -= 1;
    return letter + letter.toLowerCase();
  });
  const last = longer.findLastIndex((letter) => /\p{L}/u.test(letter));
  longer[last] += (text.match(/\p{L}/gu)?.at(-1) ?? '').repeat(missing);
  return longer.join('');
}

/** Stretches what stands between the words that a sentence was given. */
function stretchedRound(sentence: string, given: readonly unknown[]): string {
  const named = given.find(
    (word): word is string => typeof word === 'string' && word !== '' && sentence.includes(word),
  );
  if (named === undefined) return stretched(sentence);
  return sentence
    .split(named)
    .map((part) => stretchedRound(part, given))
    .join(named);
}

/** The words of a language, each two fifths longer; what they are given is left as it is. */
export function stretchedWords<Words>(words: Words): Words {
  if (typeof words === 'string') return stretched(words) as Words;
  if (typeof words === 'function') {
    const say = (...given: unknown[]) => {
      const said: unknown = words(...given);
      return typeof said === 'string' ? stretchedRound(said, given) : said;
    };
    return say as Words;
  }
  if (typeof words !== 'object' || words === null) return words;
  const longer = Object.entries(words).map(([key, word]) => [key, stretchedWords(word)]);
  return Object.fromEntries(longer) as Words;
}

/** A table with a column for each language: the English one is two fifths longer. */
export const longerTable = <Table extends { readonly en: unknown }>(table: Table): Table => ({
  ...table,
  en: stretchedWords(table.en),
});

/** A view, or whatever else holds texts of a kitchen: each of them is two fifths longer. */
export function stretchedTexts<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(stretchedTexts) as Value;
  if (value instanceof Map || typeof value !== 'object' || value === null) return value;
  const isText = 'en' in value && typeof value.en === 'string';
  const longer = Object.entries(value).map(([key, each]) => [
    key,
    isText && typeof each === 'string' ? stretched(each) : stretchedTexts(each),
  ]);
  return Object.fromEntries(longer) as Value;
}
