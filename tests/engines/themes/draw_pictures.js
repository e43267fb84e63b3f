// Draws the themes' pictures as PNG files, for the themes that keep them beside the page: sky, a disc, land and water.
// usage: node draw_pictures.js
import {writeFile} from 'node:fs/promises';
import {deflateSync} from 'node:zlib';

/** Width and height in px, colours as [red, green, blue], the rest as shares of width or height. */
const scenes = {
  'slack-water': {size: [360, 240], sky: [[244, 214, 178], [216, 228, 226]], disc: [0.72, 0.36, 0.09, [252, 244, 214]], land: [0.58, 0.05, 2.3, [112, 132, 120]], water: [0.66, [134, 168, 172]]},
  'landing-stage': {size: [320, 320], sky: [[188, 210, 222], [236, 236, 226]], disc: [0.3, 0.28, 0.07, [255, 255, 246]], land: [0.5, 0.09, 1.4, [74, 92, 104]], water: [0.62, [92, 128, 144]]},
  'first-stars': {size: [384, 216], sky: [[20, 26, 54], [84, 76, 116]], disc: [0.8, 0.24, 0.08, [240, 236, 214]], land: [0.76, 0.08, 3.1, [14, 18, 32]], water: [0.95, [10, 12, 24]]},
  'long-orchard': {size: [240, 360], sky: [[210, 226, 232], [248, 240, 214]], disc: [0.4, 0.22, 0.12, [255, 252, 232]], land: [0.54, 0.06, 4.2, [122, 146, 88]], water: [0.8, [164, 178, 112]]},
};

const mix = (a, b, share) => a.map((each, i) => Math.round(each + (b[i] - each) * share));

function colourAt({size: [width, height], sky, disc, land, water}, x, y) {
  const [middle, level, radius, light] = disc;
  const [edge, rise, waves, ground] = land;
  if (y > water[0] * height) return mix(water[1], sky[0], (Math.floor(y / 6) % 3) * 0.08);
  if (y > (edge + rise * Math.sin((waves * Math.PI * x) / width)) * height) return ground;
  if (Math.hypot(x - middle * width, y - level * height) < radius * width) return light;
  return mix(sky[0], sky[1], Math.floor((y / height) * 24) / 24);
}

/** CRC-32 as PNG 3 § D has it. */
function crc32(bytes) {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; ++bit) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const length = Buffer.alloc(4);
  const check = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}

/** PNG 3 § 11: eight bits of red, green and blue, no filter. */
function png(scene) {
  const [width, height] = scene.size;
  const head = Buffer.from([0, 0, 0, 0, 0, 0, 0, 0, 8, 2, 0, 0, 0]);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  const rows = [];
  for (let y = 0; y < height; ++y) {
    rows.push(0);
    for (let x = 0; x < width; ++x) rows.push(...colourAt(scene, x, y));
  }
  const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', deflateSync(Buffer.from(rows), {level: 9})), chunk('IEND', Buffer.alloc(0))]);
}

for (const [name, scene] of Object.entries(scenes)) await writeFile(new URL(`pictures/${name}.png`, import.meta.url), png(scene));
