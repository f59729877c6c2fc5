package thrumwright.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static thrumwright.testing.WindowTest.onEventThread;

import com.sun.net.httpserver.HttpServer;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JToolTip;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import thrumwright.editor.library.StructureChooser;
import thrumwright.piece.Piece;
import thrumwright.piece.Place;
import thrumwright.piece.Structure;
import thrumwright.store.BuiltIn;
import thrumwright.store.FileProblem;
import thrumwright.store.PieceFile;
import thrumwright.store.Structures;
import thrumwright.testing.WindowTest;

/** A name that looks like HTML is a name: nothing is fetched because of it, wherever it is shown. */
class TextIsTextIT {
    @RegisterExtension
    final WindowTest window = new WindowTest();

    private final AtomicInteger requests = new AtomicInteger();
    private HttpServer server;
    private String name;
    private int looked;

    @BeforeEach
    void listen() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            requests.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
        });
        server.start();
        name = "<html><img src='http://127.0.0.1:" + server.getAddress().getPort() + "/x'>";
    }

    @AfterEach
    void stop() {
        server.stop(0);
    }

    private Piece hostile() throws FileProblem {
        String text = BuiltIn.DEMO.text("saltmarsh-panel.json");
        for (String field : List.of("title", "note", "name", "label")) {
            text = text.replaceAll("(\"" + field + "\"\\s*:\\s*)\"[^\"]*\"", "$1\"" + name + "\"");
        }
        return PieceFile.read(text).piece();
    }

    private Structure structure() {
        Structure known = Structures.builtIn().all().get(0);
        return new Structure(
                "saltmarsh", name, name, name, known.difficulty(), false, List.of(name), name, known.end());
    }

    @Test
    void nothingIsFetched() throws Exception {
        Piece piece = hostile();
        assertThat(piece.title()).isEqualTo(name);
        Stage stage = Stage.open(window, Locale.UK, piece);
        stage.eachView(state -> look(stage));
        stage.eachForm(state -> look(stage));
        stage.run(() -> stage.editor().problem(name));
        look(stage);
        stage.run(() -> stage.editor().classWindow().show());
        stage.run(() -> look(stage.editor().classWindow().frame().getRootPane()));
        stage.run(() -> {
            look(new JOptionPane(name));
            StructureChooser chooser = new StructureChooser(
                    stage.editor().room().texts(),
                    stage.editor().room().theme().palette(),
                    piece,
                    Place.START,
                    () -> {});
            chooser.setStructures(List.of(structure()));
            look(chooser);
        });
        Thread.sleep(500);
        assertThat(looked).isGreaterThan(1_000);
        assertThat(requests).hasValue(0);
    }

    /** Without that the test above would hold of anything. */
    @Test
    void aComponentThatIsAllowedToWouldFetch() throws Exception {
        onEventThread(() -> {
            JLabel label = new JLabel();
            label.putClientProperty("html.disable", null);
            label.setText(name);
            look(label);
            return null;
        });
        for (int i = 0; i < 100 && requests.get() == 0; i++) {
            Thread.sleep(100);
        }
        assertThat(requests.get()).isPositive();
    }

    private void look(Stage stage) {
        stage.settle();
        stage.run(() -> look(stage.editor().frame().getRootPane()));
    }

    private void look(JComponent whole) {
        if (whole.getWidth() == 0) {
            whole.setSize(800, 600);
            whole.doLayout();
            whole.validate();
        }
        Graphics2D g =
                new BufferedImage(whole.getWidth(), whole.getHeight(), BufferedImage.TYPE_INT_RGB).createGraphics();
        whole.paint(g);
        walk(whole, g);
        g.dispose();
    }

    private void walk(Component component, Graphics2D g) {
        looked++;
        if (component instanceof JComponent each) {
            tip(each);
        }
        if (component instanceof JComboBox<?> box) {
            cells(box, g);
        }
        if (component instanceof JMenuItem item) {
            for (var inner : item.getSubElements()) {
                walk(inner.getComponent(), g);
            }
        }
        if (component instanceof Container container) {
            for (Component inner : container.getComponents()) {
                walk(inner, g);
            }
        }
    }

    private void tip(JComponent component) {
        MouseEvent at = new MouseEvent(component, MouseEvent.MOUSE_MOVED, 0, 0, 8, 8, 0, false);
        String text = component.getToolTipText(at);
        if (text != null) {
            JToolTip tip = component.createToolTip();
            tip.setTipText(text);
            tip.getPreferredSize();
            looked++;
        }
    }

    private <E> void cells(JComboBox<E> box, Graphics2D g) {
        ListCellRenderer<? super E> renderer = box.getRenderer();
        JList<E> list = new JList<>(box.getModel());
        for (int i = 0; i < box.getItemCount(); i++) {
            Component cell = renderer.getListCellRendererComponent(list, box.getItemAt(i), i, false, false);
            cell.setSize(cell.getPreferredSize());
            SwingUtilities.paintComponent(g, cell, list, 0, 0, 100, 20);
            looked++;
        }
    }
}
