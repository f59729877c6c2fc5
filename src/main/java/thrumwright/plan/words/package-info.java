/** What plans, findings, repairs and comparisons are called and how they are said, from text bundles. */
package thrumwright.plan.words;
