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

const LEAST = 10;
const MOST = 99;

/** A room word such as `plum-42`. */
export const newWord = (): string => `${WORDS[randomInt(WORDS.length)]}-${randomInt(LEAST, MOST + 1)}`;

/**
 * What somebody typed, as a room word: case, blanks and a missing dash don't matter. Undefined where
 * it cannot be one.
 */
export function wordTyped(text: string): string | undefined {
  const plain = text.trim().toLowerCase();
  const parts = /^([a-z]+)[\s_–—-]*(\d+)$/.exec(plain);
  return parts ? `${parts[1]}-${parts[2]}` : undefined;
}
