/** The words a lesson may use. */
export {};
