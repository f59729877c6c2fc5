package thrumwright.editor.form;

import java.util.List;
import java.util.Map;
import thrumwright.measure.Sett;
import thrumwright.measure.Shown;
import thrumwright.piece.Design;
import thrumwright.piece.Loom;
import thrumwright.piece.Piece;
import thrumwright.piece.Warp;
import thrumwright.plan.Plan;

/** The piece at a glance, for as long as no block is selected: what every new piece is asked, and what it comes to. */
record GlanceForm(Desk desk) {
    Filling filling() {
        FieldPanel panel = new FieldPanel(desk, "glance.");
        return new Filling(panel)
                .then(() -> title(panel))
                .then(() -> warp(panel))
                .then(() -> design(panel))
                .then(() -> rest(panel));
    }

    private static void title(FieldPanel panel) {
        panel.heading("heading.glance");
        panel.about(Subject.always("piece", piece -> piece, (piece, other) -> other))
                .text("title", Piece::title, (Piece piece, String typed) -> piece.withTitle(typed.strip()));
    }

    private void rest(FieldPanel panel) {
        panel.about(Subject.always("loom", Piece::loom, Piece::withLoom))
                .length("loom.open", Loom::open, Loom::withOpen);
        panel.heading("heading.comes-to");
        panel.prose(this::comesTo);
        panel.prose(() -> desk.texts().say("block.none"));
    }

    private void warp(FieldPanel panel) {
        FieldPanel.Section<Warp> warp = panel.about(Subject.always("warp", Piece::warp, Piece::withWarp));
        warp.length("warp.width", Warp::width, Warp::withWidth);
        warp.measure("warp.sett", part -> part.sett().text(), (part, typed) -> part.withSett(Sett.parse(typed)));
        warp.choice("warp.yarn", this::yarns, Warp::yarnId, Warp::withYarn);
    }

    private void design(FieldPanel panel) {
        FieldPanel.Section<Design> design = panel.about(Subject.always("design", Piece::design, Piece::withDesign));
        design.length("design.height", Design::height, Design::withHeight);
        design.choice("design.first", this::yarns, Design::firstYarnId, Design::withFirstYarn);
        design.choice("design.last", this::yarns, Design::lastYarnId, Design::withLastYarn);
    }

    private List<Choice<String>> yarns() {
        return new PieceForm(desk).yarns();
    }

    private String comesTo() {
        Plan plan = desk.session().plan();
        Shown shown = plan.piece().shown();
        double left = plan.budget().left();
        String key = left < -0.05 ? "glance.short" : "glance.left";
        return desk.texts()
                .say(
                        key,
                        Map.of(
                                "ends", plan.piece().warp().ends(),
                                "width", shown.height(plan.finishedWidth()),
                                "height", shown.height(plan.finishedHeight()),
                                "warp", shown.total(plan.warpYarn()),
                                "left", shown.height(Math.abs(left))));
    }
}
