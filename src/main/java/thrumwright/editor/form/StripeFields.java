package thrumwright.editor.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JToggleButton;
import thrumwright.editor.look.Swatch;
import thrumwright.measure.Unit;
import thrumwright.piece.Design;
import thrumwright.piece.Piece;
import thrumwright.piece.Portion;
import thrumwright.piece.Stripes;
import thrumwright.yarn.Yarn;

/** How much of the design is woven in which yarn: fields for who asks for them, or told it before. */
final class StripeFields {
    private static final String USUAL = "10 %";

    private final Desk desk;
    private final JToggleButton ask;

    StripeFields(Desk desk) {
        this.desk = desk;
        ask = new JToggleButton(desk.texts().say("stripes.ask"));
        ask.setName("stripes");
        ask.setToolTipText(desk.texts().say("stripes.ask.tip"));
        ask.setSelected(told());
    }

    private Stripes stripes() {
        return desk.session().shown().design().stripes();
    }

    private boolean told() {
        return stripes().told();
    }

    void addTo(FieldPanel panel, FieldPanel.Section<Design> design) {
        panel.underField(ask);
        ask.addActionListener(event -> panel.refresh());
        panel.shownWhile(
                this::asked,
                () -> design.measure(
                        "design.first-part",
                        part -> part.stripes().first().map(Portion::text).orElse(""),
                        (part, typed) -> part.withStripes(part.stripes().withFirst(portion(typed)))));
        for (int i = 0; i < Stripes.MOST; i++) {
            int at = i;
            panel.shownWhile(() -> asked() && others() >= at && others(at).size() > 1, () -> yarn(design, at));
            panel.shownWhile(() -> asked() && others() > at, () -> part(design, at));
        }
    }

    private boolean asked() {
        return ask.isSelected();
    }

    private int others() {
        return stripes().others().size();
    }

    private void yarn(FieldPanel.Section<Design> design, int at) {
        design.numbered(at + 1)
                .choice(
                        "design.other",
                        () -> others(at),
                        part -> other(part, at).map(Stripes.Stripe::yarnId),
                        (part, id) -> with(part, at, id));
    }

    private void part(FieldPanel.Section<Design> design, int at) {
        design.numbered(at + 1)
                .measure(
                        "design.other-part",
                        part -> other(part, at).map(one -> one.part().text()).orElse(""),
                        (part, typed) -> with(part, at, typed));
    }

    private static Optional<Stripes.Stripe> other(Design design, int at) {
        List<Stripes.Stripe> all = design.stripes().others();
        return at < all.size() ? Optional.of(all.get(at)) : Optional.empty();
    }

    /** None, and the yarns that the design isn't told to have yet. */
    private List<Choice<Optional<String>>> others(int at) {
        Piece piece = desk.session().shown();
        Design design = piece.design();
        List<Choice<Optional<String>>> all = new ArrayList<>();
        all.add(Choice.of(Optional.empty(), desk.texts().say("yarns.strand.none")));
        for (Yarn yarn : piece.yarns()) {
            boolean outermost =
                    yarn.id().equals(design.firstYarnId()) || yarn.id().equals(design.lastYarnId());
            boolean here = other(design, at)
                    .filter(one -> one.yarnId().equals(yarn.id()))
                    .isPresent();
            boolean elsewhere = design.stripes().others().stream()
                    .anyMatch(one -> one.yarnId().equals(yarn.id()));
            if (here || !outermost && !elsewhere) {
                all.add(new Choice<>(Optional.of(yarn.id()), yarn.name(), new Swatch(yarn.colour())));
            }
        }
        return all;
    }

    private Design with(Design design, int at, Optional<String> id) {
        Portion part = other(design, at).map(Stripes.Stripe::part).orElseGet(() -> spare(design));
        return design.withStripes(design.stripes().with(at, id.map(yarn -> new Stripes.Stripe(yarn, part))));
    }

    /** What a further yarn is taken for until it is said: little, and no more than there is. */
    private static Portion spare(Design design) {
        double left = 1 - design.stripes().share(design.height().mm());
        return Portion.parse(left < 0.1 ? "0 %" : USUAL);
    }

    private Design with(Design design, int at, String typed) {
        Portion part = Portion.parse(typed, usual());
        return other(design, at)
                .map(one -> new Stripes.Stripe(one.yarnId(), part))
                .map(one -> design.withStripes(design.stripes().with(at, Optional.of(one))))
                .orElse(design);
    }

    private Optional<Portion> portion(String typed) {
        return typed.isBlank() ? Optional.empty() : Optional.of(Portion.parse(typed, usual()));
    }

    private Unit usual() {
        return desk.session().piece().habits().units().usual();
    }
}
