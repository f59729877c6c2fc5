package thrumwright.commandline;

import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;

/** What a command is about. */
sealed interface Work {
    record OfPiece(Plan plan) implements Work {}

    record OfClass(ClassPlan plan) implements Work {}
}
