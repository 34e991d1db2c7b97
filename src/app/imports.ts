/** Reading other people's files, loaded when somebody first wants to. */
export * from '#exchange/imports/index';
