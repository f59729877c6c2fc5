/** How two ends differ, and whether they look alike from the front: values, no sentences. */
package thrumwright.plan.comparison;
