/** One plain word for each value of a byte, in alphabetical order, so that people can read a fingerprint to each other. */
export const fingerprintWords: readonly string[] = Object.freeze(
  `
  acorn actor alarm album alder amber anchor angle ankle apple apron arch arena arrow atlas autumn
  badge baker balsa bamboo banjo barley basil basket beacon beaver bench berry birch bishop blanket
  bottle bridge bronze bucket butter cabin cactus camel candle canoe canyon carpet castle cedar cello
  cement chalk cheese cherry chisel cider circle clay clock clover cobalt comet copper coral cotton
  crane crayon cricket crystal curtain daisy damson dancer desert diary dinner dolphin donkey dragon
  drum eagle easel echo elbow elder elm ember engine estate fabric falcon feather fennel ferry fiddle
  finch flame flint flute forest fossil fountain fox gable galley garden garlic gazelle ginger glacier
  glove goblet granite grape guitar hammer harbour hazel hedge helmet heron honey hornet igloo indigo
  ink iris island ivory ivy jacket jasmine jigsaw jungle juniper kayak kennel kettle kitten ladder
  lagoon lantern larch lavender lemon lentil lilac linen lizard lobster locket lotus magnet mango
  maple marble meadow melon mirror mitten monsoon mosaic mustard napkin nectar needle nettle nickel
  nutmeg oasis oboe ocean olive onion orbit orchard otter oven owl oyster paddle panda parrot pebble
  pelican pepper piano pigeon pillow planet plum pocket poplar potato prism puffin quail quarry quartz
  quilt rabbit radish raven ribbon river robin rocket rope ruby saddle saffron salmon sapphire satin
  saucer scarf sesame shadow shell silver spider spruce squirrel stable sunset swan table tailor
  teapot temple thistle thunder tiger timber tomato trumpet tulip tunnel turtle umbrella urchin valley
  vase velvet vessel village violin vulture walnut water whistle willow window winter wolf wren yarrow
  yew zebra zinc
`
    .trim()
    .split(/\s+/u),
);

/** Bytes of the digest that are said in words, and that are printed in hexadecimal digits. */
const spokenBytes = 4;
const printedDigits = 16;

/**
 * The short form of a digest that stands on pages and labels: four words, then sixteen digits in fours.
 *
 * @param sha256 64 hexadecimal digits, lower case
 * @returns the first 4 bytes in words and the first 8 in digits; the words alone tell 1 in 4 thousand million apart
 * @throws RangeError for anything that is not such a digest
 * Source: own choice, also of the words.
 * @example fingerprintOf("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")
 *   // "plum indigo basil puffin · ba78 16bf 8f01 cfea"
 */
export function fingerprintOf(sha256: string): string {
  if (!/^[0-9a-f]{64}$/u.test(sha256)) throw new RangeError("fingerprintOf: 64 hexadecimal digits are needed");
  const words = Array.from({ length: spokenBytes }, (_, index) => {
    const byte = Number.parseInt(sha256.slice(2 * index, 2 * index + 2), 16);
    return fingerprintWords[byte];
  });
  const digits = sha256.slice(0, printedDigits).match(/.{4}/gu) ?? [];
  return `${words.join(" ")} · ${digits.join(" ")}`;
}
