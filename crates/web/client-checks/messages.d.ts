// Written by tests/http/shared.rs from the catalogues.

export interface Messages {
  "client-close": {};
}
