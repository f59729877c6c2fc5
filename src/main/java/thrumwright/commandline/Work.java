package thrumwright.commandline;

import thrumwright.plan.ClassPlan;
import thrumwright.plan.Plan;

/** What a command is about. */
sealed interface Work {
    record OfPiece(Plan plan) implements Work {}

    record OfClass(ClassPlan plan) implements Work {}
}
