package thrumwright.editor.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thrumwright.editor.text.Texts;
import thrumwright.measure.Shown;
import thrumwright.piece.Structure;
import thrumwright.plan.finding.Finding;
import thrumwright.plan.finding.Severity;
import thrumwright.plan.finding.StructureFit;
import thrumwright.plan.words.FindingWords;
import thrumwright.yarn.Yarn;

/** What is said of a structure on a piece. */
record StructureWords(Texts texts) {
    /** Difficulty and how it fits, for one line of the list. */
    String brief(StructureFit fit) {
        List<String> parts = new ArrayList<>();
        fit.structure().difficulty().ifPresent(difficulty -> parts.add(texts.name("difficulty", difficulty)));
        Shown shown = fit.plan().piece().shown();
        parts.add(fit.hemDepth()
                .map(depth -> texts.say("structure.brief.hem", Map.of("depth", shown.height(depth))))
                .orElseGet(() -> texts.say("structure.brief.no-hem")));
        parts.add(texts.say(
                fit.worst().filter(Severity.PROBLEM::equals).isPresent()
                        ? "structure.brief.problem"
                        : "structure.brief.fits"));
        return String.join(" · ", parts);
    }

    /** Everything, in paragraphs. */
    String all(StructureFit fit) {
        Structure structure = fit.structure();
        List<String> all = new ArrayList<>();
        all.add(structure.use());
        all.add(takes(fit));
        findings(fit).ifPresent(all::add);
        if (!structure.needs().isEmpty()) {
            all.add(texts.say("structure.needs", Map.of("needs", structure.needs())));
        }
        if (!structure.goodFor().isEmpty()) {
            all.add(texts.say("structure.good-for", Map.of("words", String.join(", ", structure.goodFor()))));
        }
        structure
                .difficulty()
                .ifPresent(difficulty -> all.add(
                        texts.say("structure.difficulty", Map.of("difficulty", texts.name("difficulty", difficulty)))));
        all.add(texts.say("structure.source", Map.of("source", structure.source())));
        return String.join("\n\n", all);
    }

    /** What it takes on this piece: hem, warp and yarns. */
    private String takes(StructureFit fit) {
        Shown shown = fit.plan().piece().shown();
        List<String> taken = new ArrayList<>();
        fit.hemDepth().ifPresent(depth -> taken.add(texts.say("structure.hem", Map.of("depth", shown.height(depth)))));
        taken.add(texts.say("structure.warp", Map.of("warp", shown.height(fit.warp()))));
        if (fit.freeWarp() > 0) {
            taken.add(texts.say(
                    "structure.free",
                    Map.of(
                            "needed", shown.height(fit.freeWarp()),
                            "free", shown.height(Math.max(0, fit.end().free())))));
        }
        taken.add(texts.say("structure.cord", Map.of("cord", shown.cut(fit.cord()))));
        for (Yarn yarn : fit.yarns()) {
            if (!yarn.id().equals(fit.plan().piece().cordId())) {
                taken.add(texts.say("structure.yarn", Map.of("yarn", yarn.name(), "length", shown.cut(fit.cut(yarn)))));
            }
        }
        return texts.say("structure.takes") + "\n" + String.join("\n", taken);
    }

    private Optional<String> findings(StructureFit fit) {
        List<String> found = new ArrayList<>();
        FindingWords words = FindingWords.of(fit.plan().piece(), texts.locale());
        for (Finding finding : fit.findings()) {
            if (finding.severity() != Severity.NOTE) {
                found.add(texts.name("severity", finding.severity()) + " " + words.say(finding));
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", found));
    }
}
