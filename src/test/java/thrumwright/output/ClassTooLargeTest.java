package thrumwright.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thrumwright.drawing.Fonts;
import thrumwright.measure.Refused;
import thrumwright.output.page.PageSetup;
import thrumwright.output.page.Paper;
import thrumwright.output.page.Progress;
import thrumwright.piece.ClassMember;
import thrumwright.piece.ClassSet;
import thrumwright.plan.finding.ClassPlan;
import thrumwright.testing.Pieces;

class ClassTooLargeTest {
    private final List<String> written = new ArrayList<>();

    private static ClassSheets sheets() {
        int looms = ClassSheets.MOST_DRAWN / Pieces.panel().countBlocks() + 1;
        ClassSet set = new ClassSet("", Pieces.panel(), List.of(), Collections.nCopies(looms, ClassMember.named("")));
        SheetLook look = new SheetLook(PageSetup.usual(Paper.A4), true, SheetSection.USUAL);
        return new ClassSheets(ClassPlan.of(set), look, Fonts::load, Locale.UK);
    }

    @ParameterizedTest
    @EnumSource(names = "TEXT", mode = EnumSource.Mode.EXCLUDE)
    void moreThanAnybodyPrintsIsRefusedWithItsFigure(SheetForm form) {
        ClassSheets sheets = sheets();
        assertThatThrownBy(() ->
                        sheets.together(form, "class", 150, Progress.UNWATCHED, (name, file) -> written.add(name)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("at most 1000 blocks on all looms together, not 1001 on 77 looms");
        assertThatThrownBy(() -> sheets.each(form, "class", 150, Progress.UNWATCHED, (name, file) -> written.add(name)))
                .isInstanceOf(Refused.class);
        assertThat(written).isEmpty();
    }

    @Test
    void asTextItIsWritten() throws IOException {
        sheets().together(SheetForm.TEXT, "class.txt", 150, Progress.UNWATCHED, (name, file) -> written.add(name));
        assertThat(written).containsExactly("class.txt");
    }
}
