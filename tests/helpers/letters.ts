import fc from 'fast-check';

const ofCode = (code: number) => String.fromCodePoint(code);

/** Every character there is, by its number. fast-check's own "binary" sorts them all first, which takes two seconds. */
export const anyLetter = fc
  .oneof(
    fc.integer({ min: 0, max: 0x7f }),
    fc.integer({ min: 0, max: 0xd7_ff }),
    fc.integer({ min: 0xe0_00, max: 0x10_ff_ff }),
  )
  .map(ofCode);
