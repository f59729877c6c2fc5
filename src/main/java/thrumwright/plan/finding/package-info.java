/** What won't work in a plan and what would mend it: codes and values, no sentences. */
package thrumwright.plan.finding;
