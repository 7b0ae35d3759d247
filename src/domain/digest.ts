import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import type { Digest } from './identity.ts';

/** Canonical JSON after RFC 8785: the same value gives the same text on every machine. */
export const canonicalJson = (value: unknown): string => {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('Only values that JSON can carry have a canonical form.');
  return text;
};

/** SHA-256 of a value's canonical JSON. */
export const digestOf = (value: unknown): Digest => bytesToHex(sha256(utf8ToBytes(canonicalJson(value)))) as Digest;
