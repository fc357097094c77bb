/** Names of things in a room. */
export type RoomId = string;
export type TeamId = string;
export type EntryId = string;
/** Hash of an immutable document. */
export type DocumentId = string;
