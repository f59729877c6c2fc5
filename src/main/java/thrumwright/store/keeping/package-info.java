/** What keeps an evening's work: journals of what isn't saved yet, claims on files that are open, and the version before. */
package thrumwright.store.keeping;
