package thrumwright.commandline;

import thrumwright.plan.Plan;
import thrumwright.plan.finding.ClassPlan;

/** What a command is about. */
sealed interface Loaded {
    record OfPiece(Plan plan) implements Loaded {}

    record OfClass(ClassPlan plan) implements Loaded {}
}
