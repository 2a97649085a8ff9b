import type { ColumnMetaData, SchemaElement } from 'hyparquet';
import { compressors } from 'hyparquet-compressors';
import { parquetHeader } from 'hyparquet/src/column.js';
import { decompressPage } from 'hyparquet/src/datapage.js';

/*
 * The library that decodes takes a page at its word: a few bytes may say that a value stands a thousand million times. So before a part of a
 * column is decoded its pages are walked, and what they say is held against how many rows there are to be (Apache Parquet format: page headers,
 * run length / bit packing hybrid).
 */

/** Bytes of one page, unpacked. Writers make pages of about one megabyte. */
const MOST_PAGE_BYTES = 1 << 28;
/** A writer may fill the last bit-packed run up. */
const FILLED_UP = 512;
const DICTIONARY: ReadonlySet<string> = new Set(['PLAIN_DICTIONARY', 'RLE_DICTIONARY']);

const wrong = (what: string): never => {
  throw new Error(what);
};

/**
 * Throws where the pages of one column of a row group cannot hold what is said of them: other numbers of values than rows, sizes beyond the
 * bytes that are there, runs longer than what is to come.
 * @param chunk the bytes of that column in that row group
 */
export function checkPages(chunk: ArrayBuffer, column: ColumnMetaData, { repetition_type: repetition }: SchemaElement, rows: number): void {
  const reader = { view: new DataView(chunk), offset: 0 };
  const optional = repetition !== 'REQUIRED' && repetition !== undefined;
  const unpacked = (bytes: Uint8Array, size: number): Uint8Array => decompressPage(bytes, size, column.codec, compressors);
  let values = 0;
  while (values < rows) {
    if (reader.offset >= chunk.byteLength - 1) wrong(`it has ${values} values`);
    const header = parquetHeader(reader);
    const { compressed_page_size: packedSize, uncompressed_page_size: size, data_page_header: v1, data_page_header_v2: v2, dictionary_page_header: dictionary } = header;
    if (!(packedSize >= 0 && packedSize <= chunk.byteLength - reader.offset)) wrong('a page is longer than its column');
    if (!(size >= 0 && size <= MOST_PAGE_BYTES)) wrong(`a page of ${size} bytes`);
    const bytes = new Uint8Array(chunk, reader.offset, packedSize);
    reader.offset += packedSize;
    if (header.type === 'DICTIONARY_PAGE') {
      if (!(dictionary && dictionary.num_values >= 0 && dictionary.num_values <= rows)) wrong('a dictionary of more values than rows');
      continue;
    }
    const page = header.type === 'DATA_PAGE' ? v1 : header.type === 'DATA_PAGE_V2' ? v2 : undefined;
    if (!page) return wrong(`a page of the kind ${header.type}`);
    const count = page.num_values;
    if (!(count > 0 && count <= rows - values)) wrong(`a page of ${count} values`);
    values += count;
    const coded = DICTIONARY.has(page.encoding);
    if (v2 && page === v2) {
      const { repetition_levels_byte_length: before, definition_levels_byte_length: levels } = v2;
      if (!(before >= 0 && levels >= 0 && before + levels <= bytes.length && before + levels <= size)) wrong('levels are longer than their page');
      if (!(v2.num_nulls >= 0 && v2.num_nulls <= count && v2.num_rows === count)) wrong(`a page of ${v2.num_rows} rows`);
      if (optional && levels > 0) checkRuns(bytes.subarray(before, before + levels), 1, count);
      const rest = bytes.subarray(before + levels);
      if (coded) checkCodes(v2.is_compressed === false ? rest : unpacked(rest, size - before - levels), count);
    } else if (optional || coded) {
      const plain = unpacked(bytes, size);
      let at = 0;
      if (optional) {
        const levels = plain.length >= 4 ? new DataView(plain.buffer, plain.byteOffset).getUint32(0, true) : wrong('a page ends before its levels');
        if (levels > plain.length - 4) wrong('levels are longer than their page');
        checkRuns(plain.subarray(4, 4 + levels), 1, count);
        at = 4 + levels;
      }
      if (coded) checkCodes(plain.subarray(at), count);
    }
  }
}

/** Places in the dictionary: their width in bits, then runs. */
function checkCodes(bytes: Uint8Array, count: number): void {
  const width = bytes[0] ?? 0;
  if (width > 32) wrong(`codes of ${width} bits`);
  if (width > 0) checkRuns(bytes.subarray(1), width, count);
}

/** Runs of as many values as are wanted, or fewer: what is missing stands as nothing. */
function checkRuns(bytes: Uint8Array, width: number, count: number): void {
  for (let at = 0, seen = 0; seen < count && at < bytes.length; ) {
    let header = 0;
    for (let shift = 0, more = true; more; shift += 7) {
      const byte = bytes[at++] ?? wrong('a run ends before its length');
      header += (byte & 0x7f) * 2 ** shift;
      more = byte >= 0x80;
    }
    const packed = header % 2 === 1;
    const run = packed ? 8 * ((header - 1) / 2) : header / 2;
    // Read behind its last byte, a run is nothing.
    at += packed ? (run / 8) * width : Math.ceil(width / 8);
    if (run > count - seen + (packed ? FILLED_UP : 0)) wrong(`a run of ${run} values`);
    seen += run;
  }
}
