package thrumwright.output.pdf;

import thrumwright.output.vector.Outline;

/** Writes outlines as a PDF tells them (ISO 32000-1, 8.5.2), from the origin on. */
record PdfOutlines(PdfBytes out, boolean filled) implements Outline.Taker {
    void write(Outline outline) {
        if (outline.rectangle()) {
            out.add("0 0 ")
                    .hundredths(outline.across())
                    .hundredths(outline.down())
                    .add("re\n");
        } else {
            outline.tell(this);
        }
    }

    private PdfOutlines to(int x, int y) {
        out.hundredths(x).hundredths(y);
        return this;
    }

    @Override
    public void move(int x, int y) {
        to(x, y).out.add("m\n");
    }

    @Override
    public void line(int x, int y) {
        to(x, y).out.add("l\n");
    }

    @Override
    public void curve(int x1, int y1, int x2, int y2, int x, int y) {
        to(x1, y1).to(x2, y2).to(x, y).out.add("c\n");
    }

    /** What is filled is closed by itself. */
    @Override
    public void close() {
        if (!filled) {
            out.add("h\n");
        }
    }
}
