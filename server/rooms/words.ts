import { randomInt } from 'node:crypto';

/** Short plain words that are read out easily and spelled one way; none is about people. */
const WORDS =
  `apple apricot autumn bamboo banana barley basil beach beech berry birch bread breeze brick bridge
brook butter cabin cactus canal carrot cedar cellar cherry chestnut cliff clover coconut copper coral corner
cotton cream creek crystal daisy desert dune ebony elm ember fern fiddle field flint forest fountain garden
garlic ginger glacier grape grass hazel hedge heron honey hill igloo island ivory jasmine jelly juniper kettle
lagoon lake lavender lemon lentil lilac lily lime linen maple marble meadow melon mint mist morning moss
mountain mustard nectar nettle nutmeg oak oat olive onion orange orchard orchid otter paper parsley pasture
peach pebble pepper pine plum pocket pond poplar poppy potato prairie pumpkin quartz radish rain raisin
raspberry reed ribbon river rocket rose saffron sage salt sand sapphire sesame shore silver slate snow
sparrow spring spruce star stone straw stream summer sunset teak thistle thunder thyme timber tomato topaz
tulip turnip valley vanilla velvet violet walnut water wave wheat willow window winter wood yarrow`
    .trim()
    .split(/\s+/);

/** A guess shall hit one of a server's rooms at most once in so many times, up to so many digits. */
const WORDS_A_ROOM = 10_000;
const DIGITS = { least: 2, most: 8 } as const;

/** A word for a room beside `rooms` others: `plum-42`, with more digits where there are many to hit. */
export function newWord(rooms: number): string {
  let first = 10 ** (DIGITS.least - 1);
  const enough = () => WORDS.length * 9 * first >= WORDS_A_ROOM * (rooms + 1);
  while (first < 10 ** (DIGITS.most - 1) && !enough()) first *= 10;
  return `${WORDS[randomInt(WORDS.length)]}-${randomInt(first, 10 * first)}`;
}

/** Whether a room that comes in a file may keep its word: one of ours, never a seat's code or a guess at first try. */
export function isRoomWord(word: string): boolean {
  const [name = '', number = ''] = word.split('-');
  return WORDS.includes(name) && Number(number) >= 10 ** (DIGITS.least - 1);
}

/** What a link is called: a plain word, so that nobody types a name. */
export const linkWord = (): string => WORDS[randomInt(WORDS.length)]!;

/**
 * What somebody typed, as a room word: case, blanks and a missing dash don't matter. Undefined where
 * it cannot be one.
 */
export function wordTyped(text: string): string | undefined {
  const plain = text.trim().toLowerCase();
  const parts = /^([a-z]+)[\s_–—-]*(\d+)$/.exec(plain);
  return parts ? `${parts[1]}-${parts[2]}` : undefined;
}
