import { sha256 } from '@noble/hashes/sha2.js';

// Test data of the authors of RFC 8785 (json-canonicalization, testdata/README.md, Apache-2.0): the values that their
// file of numbers begins with, and the hashes of its first lines. The generator is written afresh from its description
// there: these values, then 2000 doubles from the smallest normal one up, then a chain of SHA-256 over 32 zero bytes,
// each link read as four little-endian doubles of which those that are zero or not finite are left out.

/** Bits of thirds across the exponents; the file has all of them negative first, then positive. */
const thirds = `46696695dbd1cc3 43211ede4974a35 3fce97ca0f21056 3c7213080c1a6ac 39280f39a348556 35d9b1f5d20d557
327af4c4a80aaac 2f2f2a36ecd5556 2be51057e155558 28840d131aaaaac 253670dc1555557 21f0b4935555557 1e8d5d42aaaaaac
1b3de4355555556 17fca0555555556 1496e6aaaaaaaab 114585555555555 0e046aaaaaaaaab 0aa0aaaaaaaaaaa 074d55555555555
040aaaaaaaaaaab 00aaaaaaaaaaaab`.split(/\s+/);

const smallThirds = `fd5555555555555 fa1111111111111 f6b4e81b4e81b4f f35d867c3ece2a5 f0179ec9cbd821e ecbf647612f3696
e965e9f80f29212 e61e54c672874db e2ca213d840baf8 df6e80fe033c8c6 dc2533fe68fd3d2 d8d51ffd74c861c d5774ccac3d3817
d22c3d6f030f9ac cee0624b3818f79 cb804ea293472c7 c833721ba905bd3 c4ebe9c5db3c61e c18987d17c304e5 be3ad30dfcf371d
baf7b816618582f b792f9ab81379bf b442615600f9499 b101e77800c76e1 ad9ca58cce0be35 aa4a1e0a3e6fe90 a708180831f320d
a3a68cd9e985016`.split(/\s+/);

const others = `4024000000000000 4014000000000000 3fe0000000000000 3fa999999999999a 3f747ae147ae147b 3f40624dd2f1a9fc
3f0a36e2eb1c432d 3ed4f8b588e368f1 3ea0c6f7a0b5ed8d 3e6ad7f29abcaf48 3e35798ee2308c3a 3ed539223589fa95
3ed4ff26cd5a7781 3ed4f95a762283ff 3ed4f8c60703520c 3ed4f8b72f19cd0d 3ed4f8b5b31c0c8d 3ed4f8b58d1c461a
3ed4f8b5894f7f0e 3ed4f8b588ee37f3 3ed4f8b588e47da4 3ed4f8b588e3849c 3ed4f8b588e36bb5 3ed4f8b588e36937
3ed4f8b588e368f8 3ed4f8b588e368f1 3ff0000000000000 bff0000000000000 bfeffffffffffffa bfeffffffffffffb
3feffffffffffffa 3feffffffffffffb 3feffffffffffffc 3feffffffffffffe bfefffffffffffff bfefffffffffffff
3fefffffffffffff 3fefffffffffffff 3fd3333333333332 3fd3333333333333 3fd3333333333334 0010000000000000
000ffffffffffffd 000fffffffffffff 7fefffffffffffff ffefffffffffffff 4340000000000000 c340000000000000
4430000000000000 44b52d02c7e14af5 44b52d02c7e14af6 44b52d02c7e14af7 444b1ae4d6e2ef4e 444b1ae4d6e2ef4f
444b1ae4d6e2ef50 3eb0c6f7a0b5ed8c 3eb0c6f7a0b5ed8d 41b3de4355555553 41b3de4355555554 41b3de4355555555
41b3de4355555556 41b3de4355555557 becbf647612f3696 43143ff3c1cb0959`.split(/\s+/);

const signed = (large: string, small: string): string[] => [
  ...thirds.map((digits) => `${large}${digits}`),
  ...smallThirds.map((digits) => `${small}${digits}`),
];

const edgeCases: readonly bigint[] = [
  '0000000000000000',
  '8000000000000000',
  '0000000000000001',
  '8000000000000001',
  ...signed('c', 'b'),
  ...signed('4', '3'),
  ...others,
].map((bits) => BigInt(`0x${bits}`));

const smallestNormal = 0x0010000000000000n;
const consecutive = 2000;

/** Hash of the first lines `bits,text\n`, by their number. */
export const hashesOfFirstLines: Readonly<Record<number, string>> = {
  1000: 'be18b62b6f69cdab33a7e0dae0d9cfa869fda80ddc712221570f9f40a5878687',
  10000: 'b9f7a8e75ef22a835685a52ccba7f7d6bdc99e34b010992cbc5864cd12be6892',
  100000: '22776e6d4b49fa294a0d0f349268e5c28808fe7e0cb2bcbe28f63894e494d4c7',
  1000000: '49415fee2c56c77864931bd3624faad425c3c577d6d74e89a83bc725506dad16',
};

/** The numbers of the file, without end, each with its bits in hex. */
export function* numbersOfFile(): Generator<readonly [bits: string, number: number]> {
  const view = new DataView(new ArrayBuffer(8));
  const pair = (bits: bigint) => {
    view.setBigUint64(0, bits);
    return [bits.toString(16), view.getFloat64(0)] as const;
  };
  for (const bits of edgeCases) yield pair(bits);
  for (let i = 0; i < consecutive; i++) yield pair(smallestNormal + BigInt(i));
  for (let link = sha256(new Uint8Array(32)); ; link = sha256(link)) {
    const words = new DataView(link.buffer, link.byteOffset, 32);
    for (let i = 0; i < 32; i += 8) {
      const [bits, number] = pair(words.getBigUint64(i, true));
      if (number !== 0 && Number.isFinite(number)) yield [bits, number];
    }
  }
}
