export { type SealingSubtle, webPersonCrypto } from './aes-gcm.ts';
export {
  commitment,
  newAlias,
  type PersonErased,
  type PersonNoted,
  type PersonsInLog,
  personErased,
  personNoted,
  personsIn,
  salt_bytes,
} from './person-form.ts';
export {
  erasePerson,
  notePerson,
  type PersonCrypto,
  type PersonKeeping,
  type PersonKnown,
  type PersonRow,
  type PersonStore,
  readPerson,
  type SealedText,
} from './person-vault.ts';
