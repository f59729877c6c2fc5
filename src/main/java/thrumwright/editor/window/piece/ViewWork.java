package thrumwright.editor.window.piece;

import java.awt.GraphicsConfiguration;
import thrumwright.editor.canvas.PieceCanvas;
import thrumwright.editor.canvas.seen.Zoom;
import thrumwright.editor.edit.Session;
import thrumwright.editor.settings.ScreenDialog;
import thrumwright.editor.settings.ScreenScale;
import thrumwright.editor.settings.Workplace;
import thrumwright.editor.text.Commands;
import thrumwright.piece.Place;

/** The commands that have to do with looking at the piece. */
record ViewWork(Session session, PieceCanvas canvas, Workplace room) {
    /** How far a key moves the picture, as a share of the window. */
    private static final double STEP = 0.1;

    private static final double PAGE = 0.8;

    void addTo(Commands commands) {
        commands.add("closer", () -> canvas.looking().closer());
        commands.add("farther", () -> canvas.looking().farther());
        commands.add("fit-loom", () -> canvas.setZoom(Zoom.fitting(Zoom.Fit.LOOM)));
        commands.add("fit-selvedges", () -> canvas.setZoom(Zoom.fitting(Zoom.Fit.SELVEDGES)));
        commands.add("fit-piece", () -> canvas.setZoom(Zoom.fitting(Zoom.Fit.PIECE)));
        commands.add("fit-start", () -> canvas.looking().showEnd(Place.START));
        commands.add("fit-top", () -> canvas.looking().showEnd(Place.TOP));
        commands.add("single-ends", () -> canvas.looking().showSingleEnds());
        commands.add("true-size", () -> canvas.setZoom(Zoom.of(scale().of(screen()))));
        commands.add("measure-screen", this::measure);
        commands.addSwitch("rules", () -> canvas.setRules(!canvas.rules()), canvas::rules);
        commands.add("pan-left", () -> canvas.looking().pan(-STEP, 0));
        commands.add("pan-right", () -> canvas.looking().pan(STEP, 0));
        commands.add("pan-up", () -> canvas.looking().pan(0, -STEP));
        commands.add("pan-down", () -> canvas.looking().pan(0, STEP));
        commands.add("page-up", () -> canvas.looking().pan(0, -PAGE));
        commands.add("page-down", () -> canvas.looking().pan(0, PAGE));
    }

    private ScreenScale scale() {
        return new ScreenScale(room.settings());
    }

    private GraphicsConfiguration screen() {
        return canvas.getGraphicsConfiguration();
    }

    /** A screen that has been measured is shown at once at its true size. */
    private void measure() {
        double known = scale().of(screen());
        new ScreenDialog(canvas, room.texts(), session.piece().habits().units(), known)
                .ask()
                .ifPresent(pixels -> {
                    scale().measured(screen(), pixels);
                    canvas.setZoom(Zoom.of(pixels));
                });
    }
}
